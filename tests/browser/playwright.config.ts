import { availableParallelism } from 'node:os';
import { defineConfig } from '@playwright/test';
import { browserLaunch } from './chromium';

// The tests look at the last build (npm run build), served on any free port; npm test builds first.
export default defineConfig({
  testDir: '.',
  outputDir: 'test-results',
  workers: Math.min(2, availableParallelism()),
  // Every test opens a page of its own, so that the tests of one file are shared out as well.
  fullyParallel: true,
  forbidOnly: Boolean(process.env.CI),
  retries: 0,
  // Drawing in software on a busy machine is slow, not wrong.
  timeout: 120_000,
  expect: { timeout: 20_000 },
  reporter: 'line',
  projects: [{ name: 'chromium', use: { browserName: 'chromium' } }],
  use: {
    headless: true,
    baseURL: `http://127.0.0.1:${process.env.STILLGRIP_PORT}/`,
    viewport: { width: 1440, height: 900 },
    // The stage asks for smooth edges, a third of the work of drawing it in software; no test looks at them.
    launchOptions: browserLaunch(['--webgl-antialiasing-mode=none']),
    // Each test opens a browser without a past, and would fetch the whole page to keep it; offline.spec.ts lets it.
    serviceWorkers: 'block',
    screenshot: 'only-on-failure',
  },
  webServer: {
    command: `"${process.execPath}" src/tools/start.mjs --built`,
    cwd: '../..',
    env: { PORT: '0' },
    // The port it found becomes STILLGRIP_PORT, which the test processes see when they read this file.
    wait: { stdout: /http:\/\/localhost:(?<stillgrip_port>\d+)\// },
    gracefulShutdown: { signal: 'SIGTERM', timeout: 2000 },
  },
});
