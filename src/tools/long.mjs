// The long modes of tests that npm test runs a little of: npm run loss, npm run kills (COUNT of kills as an argument),
// npm run whole (every room without a picture, 100,000 heads of a tolerance run, a log of 200,000 rows).
// They say what they found as they go; the exit code is that of the tests.
import { endWhenAsked, runTool } from './run.mjs';

const modes = {
  loss: {
    tool: 'vitest/vitest.mjs',
    args: ['run', 'tests/state/keep/losses.test.ts'],
    env: () => ({ STILLGRIP_LONG: '1' }),
  },
  kills: {
    tool: '@playwright/test/cli.js',
    args: [
      'test',
      '--config=tests/browser/playwright.config.ts',
      '--reporter=line',
      'tests/browser/kills.spec.ts',
    ],
    env: (count = '300') => ({ STILLGRIP_KILLS: count }),
    // The browser looks at the last build.
    build: true,
  },
  whole: {
    tool: '@playwright/test/cli.js',
    args: [
      'test',
      '--config=tests/browser/playwright.config.ts',
      '--reporter=list',
      'tests/browser/noPicture.spec.ts',
      'tests/browser/closeness.spec.ts',
      'tests/browser/bench.spec.ts',
    ],
    env: () => ({ STILLGRIP_WHOLE: '1', STILLGRIP_HEADS: '100000', STILLGRIP_ROWS: '200000' }),
    build: true,
  },
};

async function main() {
  const [name, ...more] = process.argv.slice(2);
  const mode = modes[name];
  if (!mode) throw new Error(`no such mode: ${name}; there are ${Object.keys(modes).join(', ')}`);
  const built = mode.build ? await runTool('vite/bin/vite.js', ['build', '--logLevel', 'warn']) : 0;
  return built || runTool(mode.tool, mode.args, { env: mode.env(...more) });
}

endWhenAsked(1);
process.exitCode = await main();
