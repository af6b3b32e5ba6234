// npm run timing:page [-- --frames 300]: what the built page costs in the test browser, as a table.
import { parseArgs } from 'node:util';
import { chromium } from '@playwright/test';
import { browserLaunch } from '../../browser/chromium';
import { openPlainSite } from '../../browser/plainSite';
import { openEverything, timeBoltDrag, timePitchDrag } from './drags';

const { values } = parseArgs({ options: { frames: { type: 'string', default: '300' } } });
const frames = Number(values.frames);
const site = await openPlainSite('page/');
const browser = await chromium.launch(browserLaunch(['--webgl-antialiasing-mode=none']));
try {
  for (const parts of [1, 200]) {
    const context = await browser.newContext({
      baseURL: site.address,
      viewport: { width: 1440, height: 900 },
      serviceWorkers: 'block',
    });
    // The runner of this script names functions by a helper that the page does not have.
    await context.addInitScript('globalThis.__name ??= (named) => named;');
    const page = await context.newPage();
    await openEverything(page, parts);
    for (const time of [timeBoltDrag, timePitchDrag]) {
      const { frames: n, median, p95, worst } = await time(browser, page, frames);
      console.log(parts, time.name, n, median.toFixed(2), p95.toFixed(2), worst.toFixed(2));
    }
    await context.close();
  }
} finally {
  await browser.close();
  await site.close();
}
