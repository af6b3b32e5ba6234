// npm run timing:page [-- --frames 300 --json FILE --dry]: what the built page costs in the test browser. Writes the table of the
// README (`--dry`: prints only).
import { writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { type Browser, chromium, type Page } from '@playwright/test';
import { browserLaunch } from '../../browser/chromium';
import { openPlainSite } from '../../browser/plainSite';
import { writeReadme } from '../readme';
import { laterFiles, sentSum } from './built';
import { openEverything, timeBoltDrag, timeLetGo, timePitchDrag, timeRacket } from './drags';
import { type FirstLoad, firstLoad } from './firstLoad';
import { type Row, readmeTable, wholeTable } from './report';

const { values } = parseArgs({
  options: {
    frames: { type: 'string', default: '300' },
    json: { type: 'string' },
    dry: { type: 'boolean', default: false },
  },
});
const frames = Number(values.frames);

function bytes(what: string, paths: Iterable<string>): Row {
  const sum = sentSum(paths) / 1000;
  return { what, median: sum, p95: sum, worst: sum, unit: 'kB gz' };
}

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

const site = await openPlainSite('page/');
const browser = await chromium.launch(browserLaunch(['--webgl-antialiasing-mode=none']));
try {
  const rows = await openings(browser, site.address);
  for (const parts of [1, 200]) rows.push(...(await drags(browser, site.address, parts)));
  rows.push(...(await movements(browser, site.address)));
  const rooms = [...laterFiles()]
    .filter(([name]) => name.endsWith('Room'))
    .map(([name, files]) => bytes(`sent for ${name}`, files));
  console.log(wholeTable([...rows, ...rooms]));
  if (!values.dry) writeReadme('timing:page', readmeTable(rows, rooms, frames));
  if (values.json !== undefined)
    writeFileSync(values.json, JSON.stringify([...rows, ...rooms], null, 2));
} finally {
  await browser.close();
  await site.close();
}
