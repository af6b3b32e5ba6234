import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The project folder, whatever folder the command was called from. */
export const projectFolder = fileURLToPath(new URL('../..', import.meta.url));

/**
 * Ends this process with the given exit code, and with it the program it is running, when it is asked to stop. npm
 * runs a script in a shell that does not pass the request on, so the end of that shell counts as being asked.
 */
export function endWhenAsked(exitCode) {
  for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => process.exit(exitCode));
  if (process.env.npm_lifecycle_event === undefined) return;
  const parent = process.ppid;
  const watch = setInterval(() => {
    if (process.ppid !== parent) process.exit(exitCode);
  }, 500);
  watch.unref();
}

/**
 * Runs a program in the project folder (or in `cwd`) and resolves to its exit code (1 when it could not be started or was killed).
 * Its output is shown as it comes or, where `hear` is given, handed to that in pieces. It is stopped if this process
 * ends first.
 */
export function run(command, args, { env = {}, shell = false, cwd = projectFolder, hear } = {}) {
  return new Promise((resolve) => {
    const output = hear ? 'pipe' : 'inherit';
    const child = spawn(command, args, {
      cwd,
      env: { ...process.env, ...env },
      shell,
      stdio: ['ignore', output, output],
    });
    child.stdout?.on('data', hear);
    child.stderr?.on('data', hear);
    function stop() {
      child.kill();
    }
    function finish(code) {
      process.off('exit', stop);
      resolve(code);
    }
    process.once('exit', stop);
    child.once('error', (error) => {
      console.error(`${command}: ${error.message}`);
      finish(1);
    });
    // Where there are pipes, the last of the output can come after the end of the program.
    child.once(hear ? 'close' : 'exit', (code) => finish(code ?? 1));
  });
}

/** Runs an installed tool, named by its script inside node_modules: the same on every platform, with no shell. */
export function runTool(script, args, options) {
  const path = join(projectFolder, 'node_modules', script);
  return run(process.execPath, [path, ...args], options);
}
