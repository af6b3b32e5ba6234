// npm run timing:page [-- --frames 300 --json FILE]: what the built page costs in the test browser, as a table.
import { writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { type Browser, chromium, type Page } from '@playwright/test';
import { browserLaunch } from '../../browser/chromium';
import { openPlainSite } from '../../browser/plainSite';
import { laterFiles, sentSum } from './built';
import { openEverything, timeBoltDrag, timeLetGo, timePitchDrag, timeRacket } from './drags';
import { type FirstLoad, firstLoad } from './firstLoad';

/** One line of the table. */
interface Row {
  readonly what: string;
  readonly median: number;
  readonly p95: number;
  readonly worst: number;
  readonly unit: string;
}

const { values } = parseArgs({
  options: { frames: { type: 'string', default: '300' }, json: { type: 'string' } },
});
const frames = Number(values.frames);

/** Openings of which the middle one counts. */
const OPENINGS = 5;

async function newPage(browser: Browser, address: string): Promise<Page> {
  const context = await browser.newContext({
    baseURL: address,
    viewport: { width: 1440, height: 900 },
    serviceWorkers: 'block',
  });
  // The runner of this script names functions by a helper that the page does not have.
  await context.addInitScript('globalThis.__name ??= (named) => named;');
  return context.newPage();
}

async function openings(browser: Browser, address: string): Promise<Row[]> {
  const loads: FirstLoad[] = [];
  for (let k = 0; k < OPENINGS; k++) {
    const page = await newPage(browser, address);
    loads.push(await firstLoad(page, address));
    await page.context().close();
  }
  const time = (what: string, of: (load: FirstLoad) => number): Row => {
    const sorted = loads.map(of).toSorted((a, b) => a - b);
    const last = sorted[sorted.length - 1];
    return { what, median: sorted[sorted.length >> 1], p95: last, worst: last, unit: 'ms' };
  };
  const bytes = (what: string, paths: readonly string[]): Row => {
    const sum = sentSum(paths) / 1000;
    return { what, median: sum, p95: sum, worst: sum, unit: 'kB gz' };
  };
  const [{ first, after }] = loads;
  return [
    bytes('sent before the page can be used', first),
    bytes('sent then, by itself: stage and fields', after),
    time('first picture of the page', (load) => load.firstPaint),
    time('chart, dial and verdict with their numbers', (load) => load.usable),
    time('fields', (load) => load.fields),
    time('stage with its parts', (load) => load.stage),
  ];
}

async function drags(browser: Browser, address: string, parts: number): Promise<Row[]> {
  const page = await newPage(browser, address);
  await openEverything(page, parts);
  const rows: Row[] = [];
  const head = parts === 1 ? 'demo head' : `${parts} parts`;
  for (const [what, time] of [
    ['bolt dragged', timeBoltDrag],
    ['pitch dragged', timePitchDrag],
  ] as const) {
    const { median, p95, worst } = await time(browser, page, frames);
    rows.push({ what: `script in a frame, ${what}, ${head}`, median, p95, worst, unit: 'ms' });
  }
  await page.context().close();
  return rows;
}

/** Pictures that follow one another without a hand. */
async function movements(browser: Browser, address: string): Promise<Row[]> {
  const rows: Row[] = [];
  for (const [what, time] of [
    ['grip let go, demo head', timeLetGo],
    ['racket thrown', timeRacket],
  ] as const) {
    const page = await newPage(browser, address);
    await openEverything(page, 1);
    const { median, p95, worst } = await time(browser, page);
    rows.push({ what: `script in a picture, ${what}`, median, p95, worst, unit: 'ms' });
    await page.context().close();
  }
  return rows;
}

function print(rows: readonly Row[]): void {
  console.log('| what | median | p95 | worst | unit |\n| --- | --- | --- | --- | --- |');
  for (const { what, median, p95, worst, unit } of rows) {
    const digits = unit === 'ms' && worst < 100 ? 2 : 0;
    const texts = [median, p95, worst].map((value) => value.toFixed(digits));
    console.log(`| ${what} | ${texts.join(' | ')} | ${unit} |`);
  }
}

const site = await openPlainSite('page/');
const browser = await chromium.launch(browserLaunch(['--webgl-antialiasing-mode=none']));
try {
  const rows = await openings(browser, site.address);
  for (const parts of [1, 200]) rows.push(...(await drags(browser, site.address, parts)));
  rows.push(...(await movements(browser, site.address)));
  for (const [name, files] of laterFiles()) {
    const sum = sentSum(files) / 1000;
    if (name.endsWith('Room')) {
      rows.push({ what: `sent for ${name}`, median: sum, p95: sum, worst: sum, unit: 'kB gz' });
    }
  }
  print(rows);
  if (values.json !== undefined) writeFileSync(values.json, JSON.stringify(rows, null, 2));
} finally {
  await browser.close();
  await site.close();
}
