import { readFileSync } from 'node:fs';
import type { Browser, Page } from '@playwright/test';
import {
  BENCH_VIEWS,
  LEARN_VIEWS,
  LOWER_ROOMS,
  MAKE_VIEWS,
  NEUTRALISE_VIEWS,
} from '../../src/state/settings';
import { expect, test, watchFaults } from './fixtures';
import { openHead, setPitchForces, stageDrawn, verdict, withoutFilePickers } from './head';
import { openPlainSite } from './plainSite';
import {
  makeStep,
  tourBench,
  tourHead,
  tourImport,
  tourLearn,
  tourMake,
  tourNeutralise,
} from './tour';

/** How far the service worker is that answers for the page. */
async function keptBy(): Promise<string | undefined> {
  return (await navigator.serviceWorker.getRegistration())?.active?.state;
}

/** Waits until the page says that it is kept for use without a network. */
async function untilKept(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Cautions and limits' }).click();
  await expect(page.getByTestId('offline-kept')).toHaveAttribute('data-kept', 'yes', {
    timeout: 30_000,
  });
  await page.keyboard.press('Escape');
}

/**
 * Opens the page once on a host of plain files, waits until it is kept, does `visit`, and then takes the host away: its
 * server is closed and every connection to it cut, for the page and for its service worker alike.
 */
async function visitOnce(
  browser: Browser,
  visit: (page: Page) => Promise<void> = async () => {},
): Promise<{ readonly page: Page; readonly faults: readonly string[] }> {
  const site = await openPlainSite('some/where/');
  const context = await browser.newContext({ serviceWorkers: 'allow', baseURL: site.address });
  const faults = watchFaults(context, new URL(site.address).origin);
  try {
    const page = await context.newPage();
    await withoutFilePickers(page);
    await page.addInitScript(noteTabs);
    await page.goto('./');
    await untilKept(page);
    await visit(page);
    return { page, faults };
  } finally {
    await site.close();
    await expect(context.request.get(site.address)).rejects.toThrow('ECONNREFUSED');
  }
}

/** Runs in the page: keeps the names of the tabs under the stage that were chosen. */
function noteTabs(): void {
  const chosen: string[] = [];
  Object.assign(window, { chosenTabs: chosen });
  document.addEventListener(
    'click',
    ({ target }) => {
      const tab = (target as Element).closest('[role="tab"]')?.getAttribute('data-testid');
      if (tab?.startsWith('lower-')) chosen.push(tab.slice('lower-'.length));
    },
    true,
  );
}

const TABS = [LOWER_ROOMS, NEUTRALISE_VIEWS, MAKE_VIEWS, BENCH_VIEWS, LEARN_VIEWS].flat();

test('without a host, after a first visit that opened nothing, every room does its work: heads, bodies, searches, files, readings, lessons', async ({
  browser,
}) => {
  let before = '';
  let forces: readonly number[] = [];
  const { page, faults } = await visitOnce(browser, async (first) => {
    before = await verdict(first);
    forces = await setPitchForces(first);
  });
  await page.reload();
  await stageDrawn(page);
  expect(await verdict(page)).toBe(before);
  expect(await setPitchForces(page)).toEqual(forces);
  await test.step('head', () => tourHead(page));
  await test.step('import', () => tourImport(page));
  await test.step('neutralise', () => tourNeutralise(page));
  await test.step('make', () => tourMake(page, true));
  await test.step('bench', () => tourBench(page));
  await test.step('learn', () => tourLearn(page));
  expect(await verdict(page)).toBe(before);
  const chosen = await page.evaluate(
    () => (window as unknown as { chosenTabs: string[] }).chosenTabs,
  );
  expect(TABS.filter((name) => !chosen.includes(name))).toEqual([]);
  expect(faults).toEqual([]);
  await test.step('STEP, whose kernel was never fetched', () => stepRefused(page));
  expect(await verdict(page)).toBe(before);
  await test.step('licences', () => readLicences(page));
  // The kernel that was asked for in vain, and nothing else.
  expect(faults.filter((fault) => !/ERR_FAILED|ERR_CONNECTION_REFUSED/.test(fault))).toEqual([]);
  await page.context().close();
});

test('without a host STEP is made by the kernel that was used once', async ({ browser }) => {
  const said = (page: Page) => page.getByTestId('files-step-said');
  const { page, faults } = await visitOnce(browser, async (first) => {
    await makeStep(first);
    await expect(said(first)).toContainText('one body', { timeout: 90_000 });
  });
  await page.reload();
  await makeStep(page);
  await expect(said(page)).toContainText('one body', { timeout: 90_000 });
  const download = page.waitForEvent('download');
  await page.getByTestId('files-save-solid').click();
  const step = readFileSync(await (await download).path(), 'latin1');
  // ISO 10303-21: the first line and the last.
  expect(step.startsWith('ISO-10303-21;')).toBe(true);
  expect(step.trimEnd().endsWith('END-ISO-10303-21;')).toBe(true);
  expect(faults).toEqual([]);
  await page.context().close();
});

/** STEP cannot be made, which is said in words; another kind of file is made of the same choice. */
async function stepRefused(page: Page): Promise<void> {
  await makeStep(page);
  await expect(page.getByTestId('files-step-said')).toHaveText(
    'Nothing was made: the CAD kernel is not in this browser yet and could not be fetched. It needs the network once.',
  );
  await page.getByTestId('files-format').selectOption('stl');
  const download = page.waitForEvent('download');
  await page.getByTestId('files-save-solid').click();
  expect((await download).suggestedFilename()).toMatch(/\.stl$/);
  await expect(page.getByTestId('autosave-state')).toHaveText('Kept in this browser');
}

/** The list of licences names every package that the page is made of. */
async function readLicences(page: Page): Promise<void> {
  await page.goto('./licences.html');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Licences');
  const listed = await page.getByRole('heading', { level: 2 }).allInnerTexts();
  const { dependencies } = JSON.parse(
    readFileSync(new URL('../../package.json', import.meta.url), 'utf8'),
  );
  for (const name of Object.keys(dependencies)) {
    expect(
      listed.some((heading) => heading.startsWith(`${name} `)),
      name,
    ).toBe(true);
  }
}

test.describe('a newer version', () => {
  test('is offered, waits, and is taken, on plain files in a folder of a host', async ({
    browser,
  }) => {
    const site = await openPlainSite('some/where/');
    const context = await browser.newContext({ serviceWorkers: 'allow' });
    const faults = watchFaults(context, new URL(site.address).origin);
    try {
      const page = await context.newPage();
      await page.goto(site.address);
      await expect.poll(() => page.evaluate(keptBy), { timeout: 30_000 }).toBe('activated');
      const manifest = await page.locator('link[rel=manifest]').getAttribute('href');
      const said = await (await context.request.get(site.address + manifest)).json();
      for (const { src, sizes } of said.icons) {
        const icon = await (await context.request.get(site.address + src)).body();
        // Width of a PNG: ISO/IEC 15948, IHDR.
        expect(icon.readUInt32BE(16), src).toBe(Number.parseInt(sizes, 10));
      }
      await page.getByTestId('room-make').click();
      site.release('a newer one');
      await page.evaluate(async () => {
        await (await navigator.serviceWorker.getRegistration())?.update();
      });
      const line = page.getByTestId('update-line');
      await expect(line).toContainText('newer version', { timeout: 30_000 });
      // Until it is taken a reload opens the version that was there.
      await page.reload();
      expect(await page.locator('meta[name=release]').count()).toBe(0);
      await line.getByRole('button', { name: 'Load it' }).click();
      await expect(page.locator('meta[name=release]')).toHaveCount(1, { timeout: 30_000 });
      await expect(line).toHaveCount(0);
      await expect.poll(() => page.evaluate(async () => (await caches.keys()).length)).toBe(2);
      expect(faults).toEqual([]);
    } finally {
      await context.close();
      await site.close();
    }
  });
});

test.describe('an update that another tab takes', () => {
  test.use({ serviceWorkers: 'allow' });

  test('reloads that tab alone: one with work goes on with it, keeps it, and says what has happened', async ({
    browser,
  }) => {
    const site = await openPlainSite('');
    const context = await browser.newContext({ serviceWorkers: 'allow' });
    const faults = watchFaults(context, new URL(site.address).origin);
    try {
      const working = await context.newPage();
      await working.goto(site.address);
      await expect.poll(() => working.evaluate(keptBy), { timeout: 30_000 }).toBe('activated');
      // Under the worker from its beginning, as on any later visit.
      await working.reload();
      await expect(working.getByTestId('verdict-line')).not.toBeEmpty();
      const taking = await context.newPage();
      await taking.goto(site.address);
      await expect(taking.getByTestId('verdict-line')).not.toBeEmpty();
      let reloads = 0;
      working.on('domcontentloaded', () => reloads++);
      const name = working.getByTestId('design-name');
      await name.fill('In the middle of it');
      await name.press('Enter');
      site.release('a newer one');
      await taking.evaluate(async () => {
        await (await navigator.serviceWorker.getRegistration())?.update();
      });
      const line = taking.getByTestId('update-line');
      await line.getByRole('button', { name: 'Load it' }).click({ timeout: 30_000 });
      await expect(taking.locator('meta[name=release]')).toHaveCount(1, { timeout: 30_000 });
      await expect(working.getByTestId('update-line')).toContainText('Another tab has taken');
      // It goes on: what is done after that is kept too, and a room that was not fetched yet opens.
      await name.fill('Gone on with');
      await name.press('Enter');
      await expect(working.getByTestId('autosave-state')).toHaveText('Kept in this browser');
      await working.getByTestId('room-make').click();
      await expect(working.getByTestId('lower-drawing')).toBeVisible();
      expect(await working.locator('meta[name=release]').count()).toBe(0);
      expect(reloads).toBe(0);
      await working.reload();
      await expect(name).toHaveValue('Gone on with');
      await expect(working.locator('meta[name=release]')).toHaveCount(1);
      expect(faults).toEqual([]);
    } finally {
      await context.close();
      await site.close();
    }
  });
});
test.describe('the content policy', () => {
  test.use({ violates: true, allowed: /Refused|violates|Failed to load|blocked/ });

  test('stops what a page that was broken into could do, and the watch of all tests sees it', async ({
    page,
    faults,
  }) => {
    await openHead(page);
    expect(faults).toEqual([]);
    const broken = await page.evaluate(async () => {
      const found: string[] = [];
      document.addEventListener('securitypolicyviolation', (event) =>
        found.push(event.effectiveDirective),
      );
      const tries: readonly (() => unknown)[] = [
        () => {
          const script = document.createElement('script');
          script.append('window.brokenInto = 1');
          document.body.append(script);
        },
        () => document.body.insertAdjacentHTML('beforeend', '<b>x</b>'),
        () => new Worker('./elsewhere.js'),
        () => document.body.setAttribute('onclick', 'window.brokenInto = 2'),
        () => document.body.setAttribute('style', 'color: red'),
        () => fetch('https://other.example/'),
        () => fetch('data:text/plain,x'),
        () => {
          new Image().src = 'https://other.example/x.png';
        },
        () => {
          const frame = document.createElement('iframe');
          frame.src = './licences.html';
          document.body.append(frame);
        },
        () => {
          const base = document.createElement('base');
          base.href = 'https://other.example/';
          document.head.append(base);
        },
      ];
      for (const one of tries) {
        try {
          await one();
        } catch {
          // What is stopped at once throws as well.
        }
      }
      await new Promise((done) => setTimeout(done, 200));
      return { found, into: 'brokenInto' in window };
    });
    expect(broken.into).toBe(false);
    for (const directive of [
      'require-trusted-types-for',
      'style-src-attr',
      'connect-src',
      'img-src',
      'frame-src',
      'base-uri',
    ]) {
      expect(broken.found, directive).toContain(directive);
    }
    expect(faults.length).toBeGreaterThan(5);
  });
});

test.describe('a room that fails', () => {
  test.use({ allowed: /planted/ });

  test('says so with a report to copy, and the rest of the page goes on', async ({ page }) => {
    await page.route(/assets\/AirRoom-.*\.js$/, (route) =>
      route.fulfill({
        contentType: 'text/javascript',
        body: "export function AirRoom() { throw new Error('planted fault'); }",
      }),
    );
    await openHead(page);
    await page.getByTestId('lower-air').click();
    const guard = page.getByRole('alert').filter({ hasText: 'planted fault' });
    await guard.getByText('Report of the fault').click();
    const report = guard.getByRole('textbox', { name: 'Text of the report' });
    await expect(report).toHaveValue(/What: Error: planted fault[\s\S]*AirRoom/);
    expect(await report.inputValue()).not.toContain(new URL(page.url()).host);
    await guard.getByRole('button', { name: 'Copy the report' }).click();
    await expect(guard.getByRole('status')).toHaveText(/^(Copied|The browser does not let)/);
    const before = await verdict(page);
    await page.getByTestId('lower-loads').click();
    await expect(guard).toHaveCount(0);
    expect(await verdict(page)).toBe(before);
  });
});
