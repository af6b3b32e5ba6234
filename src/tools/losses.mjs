import { spawnSync } from 'node:child_process';

// The long mode of tests/browser/losses.spec.ts, on the last build: a hundred losses and kills of each kind.
const env = { STILLGRIP_LOSSES: '100', STILLGRIP_KILLS: '100', ...process.env };
const runner = 'node_modules/@playwright/test/cli.js';
const config = '--config=tests/browser/playwright.config.ts';
const { status } = spawnSync(
  process.execPath,
  [runner, 'test', config, '--reporter=list', 'losses.spec.ts'],
  {
    env,
    stdio: 'inherit',
  },
);
process.exitCode = status ?? 1;
