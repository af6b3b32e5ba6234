// Takes a picture of a page with the browser of the tests:
//   npm run look -- URL OUT.png [--width 1440] [--height 900] [--dark] [--wait 1500] [--eval 'script']
// The script runs in the page after the wait, its value is printed, and the page settles again before the picture.
import { parseArgs } from 'node:util';
import { chromium } from '@playwright/test';
import { tsImport } from 'tsx/esm/api';

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    width: { type: 'string', default: '1440' },
    height: { type: 'string', default: '900' },
    dark: { type: 'boolean', default: false },
    wait: { type: 'string', default: '1500' },
    eval: { type: 'string' },
  },
});
const [address, picture] = positionals;
if (address === undefined || picture === undefined) {
  console.error(
    'usage: look URL OUT.png [--width N] [--height N] [--dark] [--wait MS] [--eval JS]',
  );
  process.exit(2);
}

const { browserLaunch } = await tsImport('./chromium.ts', import.meta.url);
const browser = await chromium.launch(browserLaunch());
try {
  const page = await browser.newPage({
    viewport: { width: Number(values.width), height: Number(values.height) },
    colorScheme: values.dark ? 'dark' : 'light',
  });
  page.on('console', (message) => console.log(`[${message.type()}] ${message.text()}`));
  page.on('pageerror', (error) => console.log(`[uncaught] ${error.stack ?? error.message}`));
  page.on('requestfailed', (request) => console.log(`[request failed] ${request.url()}`));
  await page.goto(address);
  await page.waitForTimeout(Number(values.wait));
  if (values.eval !== undefined) {
    console.log(await page.evaluate(values.eval));
    await page.waitForTimeout(300);
  }
  await page.screenshot({ path: picture });
} finally {
  await browser.close();
}
