// The long modes of tests that npm test runs a little of; how many may follow.
// npm run loss: storage that fails, is cut off, or is shared by several tabs. npm run kills: the whole browser killed.
// npm run losses: graphics contexts lost and workers killed, a hundred of each. npm run whole: every room without a
// picture, a tolerance run of 100,000 heads, a log of 200,000 rows.
// They say what they found as they go; the exit code is that of the tests.
import { endWhenAsked, runTool } from './run.mjs';

const modes = {
  loss: {
    tool: 'vitest/vitest.mjs',
    args: ['run', 'tests/state/keep/losses.test.ts'],
    env: () => ({ STILLGRIP_LONG: '1' }),
  },
  kills: inBrowser(['kills'], (count = '300') => ({ STILLGRIP_KILLS: count })),
  losses: inBrowser(['losses', 'workers'], (count = '100') => ({
    STILLGRIP_LOSSES: count,
    STILLGRIP_WORKER_KILLS: count,
  })),
  whole: inBrowser(['noPicture', 'closeness', 'bench'], () => ({
    STILLGRIP_WHOLE: '1',
    STILLGRIP_HEADS: '100000',
    STILLGRIP_ROWS: '200000',
  })),
};

/** Browser tests, which look at the last build. */
function inBrowser(names, env) {
  const config = '--config=tests/browser/playwright.config.ts';
  const files = names.map((name) => `tests/browser/${name}.spec.ts`);
  const tool = '@playwright/test/cli.js';
  return { tool, args: ['test', config, '--reporter=list', ...files], env, build: true };
}

async function main() {
  const [name, ...more] = process.argv.slice(2);
  const mode = modes[name];
  if (!mode) throw new Error(`no such mode: ${name}; there are ${Object.keys(modes).join(', ')}`);
  const built = mode.build ? await runTool('vite/bin/vite.js', ['build', '--logLevel', 'warn']) : 0;
  return built || runTool(mode.tool, mode.args, { env: mode.env(...more) });
}

endWhenAsked(1);
process.exitCode = await main();
