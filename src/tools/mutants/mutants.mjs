// npm run mutants [FOLDER...]: StrykerJS on the engine and the readers, folder by folder, in a copy of the project.
// Without a folder it lists them; `all` takes all. Options: --only=GLOB (files inside them),
// --runner=vitest, --cache=FOLDER.
import {
  copyFileSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { dirname, join } from 'node:path';
import { endWhenAsked, projectFolder, run } from '../run.mjs';
import { copyOfProject } from './copy.mjs';
import { folders } from './folders.mjs';
import { scoreLine, survivorLines } from './report.mjs';

/** The own runner is the usual one; vitest's is there to check it by, and takes five to ten times as long. */
const RUNNERS = {
  quick: {
    plugins: ['./tests/mutants/quick/runner.mjs'],
    settings: { testRunner: 'quick', buildCommand: 'node tests/mutants/quick/bundle.mjs' },
  },
  vitest: {
    plugins: ['@stryker-mutator/vitest-runner'],
    settings: {
      testRunner: 'vitest',
      vitest: { configFile: 'tests/mutants/vitest.config.ts', related: false },
    },
  },
};

/** What StrykerJS is told; every path is inside the copy. */
function settings(folder, { only, runner }) {
  return {
    inPlace: true,
    disableTypeChecks: false,
    mutate: only ? [only] : folder.files,
    plugins: ['./tests/mutants/messages.mjs', ...RUNNERS[runner].plugins],
    ignorers: ['messages'],
    ...RUNNERS[runner].settings,
    coverageAnalysis: 'perTest',
    incremental: true,
    incrementalFile: 'incremental.json',
    concurrency: 2,
    // Mutants that go round for ever are found by counting; this is for a machine that does other work as well.
    timeoutMS: 6_000,
    dryRunTimeoutMinutes: 20,
    reporters: ['json', 'progress-append-only'],
    jsonReporter: { fileName: 'mutants.json' },
    tempDirName: '.stryker',
    clearTextReporter: { allowColor: false },
  };
}

/** The files of tests of a folder, from the project. */
function testsOf({ tests, without = [] }) {
  return tests
    .flatMap((path) =>
      statSync(join(projectFolder, path)).isDirectory()
        ? readdirSync(join(projectFolder, path), { recursive: true }).map(
            (name) => `${path}/${name}`,
          )
        : [path],
    )
    .filter((path) => path.endsWith('.test.ts'))
    .filter((path) => !without.some((name) => path.endsWith(`/${name}`)));
}

async function mutate(folder, { only, runner, cache }) {
  const name = `${folder.name.replaceAll('/', '-')}-${runner}.json`;
  const kept = join(cache, name);
  const copy = copyOfProject();
  const remove = () => rmSync(copy, { recursive: true, force: true });
  process.once('exit', remove);
  try {
    writeFileSync(
      join(copy, 'stryker.config.json'),
      JSON.stringify(settings(folder, { only, runner })),
    );
    if (existsSync(kept)) copyFileSync(kept, join(copy, 'incremental.json'));
    const script = join(projectFolder, 'node_modules/@stryker-mutator/core/bin/stryker.js');
    const env = { MUTANT_TESTS: testsOf(folder).join(',') };
    const code = await run(process.execPath, [script, 'run'], { env, cwd: copy });
    if (code !== 0) throw new Error(`${folder.name}: StrykerJS ended with ${code}`);
    mkdirSync(dirname(kept), { recursive: true });
    copyFileSync(join(copy, 'incremental.json'), kept);
    return JSON.parse(readFileSync(join(copy, 'mutants.json'), 'utf8'));
  } finally {
    remove();
    process.off('exit', remove);
  }
}

function optionOf(name, fallback) {
  const start = `--${name}=`;
  return process.argv.find((word) => word.startsWith(start))?.slice(start.length) ?? fallback;
}

async function main() {
  const asked = process.argv.slice(2).filter((word) => !word.startsWith('--'));
  const chosen = folders.filter(({ name }) => asked.includes('all') || asked.includes(name));
  if (chosen.length === 0) {
    console.log(`Name a folder, or all:\n${folders.map(({ name }) => `  ${name}`).join('\n')}`);
    process.exitCode = 1;
    return;
  }
  const cache = optionOf('cache', join(projectFolder, 'node_modules/.cache/mutants'));
  const lines = [];
  for (const folder of chosen) {
    const report = await mutate(folder, {
      only: optionOf('only'),
      runner: optionOf('runner', 'quick'),
      cache,
    });
    for (const line of survivorLines(report)) console.log(line);
    lines.push(scoreLine(folder.name, report));
    console.log(lines.at(-1));
  }
  console.log(`\n${lines.join('\n')}`);
}

endWhenAsked(1);
await main();
