// Draws the icons of the installed page from assets/favicon.svg with the browser of the tests: npm run icons
// The maskable one leaves a tenth free all round, which a system may cut off (W3C Web Application Manifest, 4.4.2:
// the safe zone is a circle of two fifths of the size).
import { mkdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { chromium } from '@playwright/test';
import { tsImport } from 'tsx/esm/api';

const ICONS = [
  { name: 'icon-192.png', size: 192, part: 1 },
  { name: 'icon-512.png', size: 512, part: 1 },
  { name: 'maskable-512.png', size: 512, part: 0.8 },
];
const assets = fileURLToPath(new URL('../../assets/', import.meta.url));
const svg = readFileSync(`${assets}favicon.svg`);
const address = `data:image/svg+xml;base64,${svg.toString('base64')}`;

mkdirSync(`${assets}icons`, { recursive: true });
const { browserLaunch } = await tsImport('./chromium.ts', import.meta.url);
const browser = await chromium.launch(browserLaunch());
try {
  for (const { name, size, part } of ICONS) {
    const page = await browser.newPage({ viewport: { width: size, height: size } });
    const ground = part < 1 ? '#ffffff' : 'transparent';
    await page.setContent(
      `<body style="margin:0;background:${ground};display:grid;place-items:center;height:100vh">
        <img src="${address}" width="${size * part}" height="${size * part}"></body>`,
    );
    await page.locator('img').evaluate((image) => image.decode());
    await page.screenshot({ path: `${assets}icons/${name}`, omitBackground: true });
    await page.close();
  }
} finally {
  await browser.close();
}
