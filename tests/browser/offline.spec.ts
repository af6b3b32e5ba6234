import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { expect, test, watchFaults } from './fixtures';
import { openHead, setPitchForces, stageDrawn, verdict, withoutFilePickers } from './head';
import { openPlainSite } from './plainSite';
import { tourBench, tourHead, tourImport, tourLearn, tourMake, tourNeutralise } from './tour';

const ROOMS = ['head', 'neutralise', 'make', 'bench', 'learn'];

/** Every tab under the stage of the room that is shown: each fetches its own piece of the page. */
async function openTabs(page: Page): Promise<number> {
  const tabs = page.locator('[data-testid^="lower-"][role="tab"]');
  const count = await tabs.count();
  for (let k = 0; k < count; k++) {
    await tabs.nth(k).click();
    await expect(tabs.nth(k)).toHaveAttribute('aria-selected', 'true');
  }
  return count;
}

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

test.describe('without a network, after a first visit that opened nothing', () => {
  test.use({ serviceWorkers: 'allow' });

  test('every room does its work: heads, bodies, searches, files, readings, lessons', async ({
    page,
    context,
  }) => {
    await withoutFilePickers(page);
    await openHead(page);
    await untilKept(page);
    await context.setOffline(true);
    await page.reload();
    await stageDrawn(page);
    const before = await verdict(page);
    await test.step('head', () => tourHead(page));
    await test.step('import', () => tourImport(page));
    await test.step('neutralise', () => tourNeutralise(page));
    await test.step('make', () => tourMake(page, true));
    await test.step('bench', () => tourBench(page));
    await test.step('learn', () => tourLearn(page));
    expect(await verdict(page)).toBe(before);
  });
});

test.describe('without a network', () => {
  test.use({ serviceWorkers: 'allow' });

  test('the page that was opened once opens again, and every room and tab of it', async ({
    page,
    context,
  }) => {
    await openHead(page);
    await untilKept(page);
    const said = await verdict(page);
    const forces = await setPitchForces(page);

    await context.setOffline(true);
    await page.reload();
    await stageDrawn(page);
    expect(await verdict(page)).toBe(said);
    expect(await setPitchForces(page)).toEqual(forces);
    for (const room of ROOMS) {
      await page.getByTestId(`room-${room}`).click();
      expect(await openTabs(page), `tabs of ${room}`).toBeGreaterThan(0);
      await expect(page.locator('.ui-missing, .app-guard')).toHaveCount(0);
    }
    const licences = await context.newPage();
    await licences.goto('./licences.html');
    await expect(licences.getByRole('heading', { level: 1 })).toHaveText('Licences');
    const listed = await licences.getByRole('heading', { level: 2 }).allInnerTexts();
    const { dependencies } = JSON.parse(
      readFileSync(new URL('../../package.json', import.meta.url), 'utf8'),
    );
    for (const name of Object.keys(dependencies)) {
      expect(
        listed.some((heading) => heading.startsWith(`${name} `)),
        name,
      ).toBe(true);
    }
  });

  test('on plain files in a folder of a host a newer version is offered, waits, and is taken', async ({
    browser,
  }) => {
    const site = await openPlainSite('some/where/');
    const context = await browser.newContext({ serviceWorkers: 'allow' });
    const faults = watchFaults(context, new URL(site.address).origin);
    try {
      const page = await context.newPage();
      await page.goto(site.address);
      await stageDrawn(page);
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
      await stageDrawn(page);
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
      await stageDrawn(working);
      await expect.poll(() => working.evaluate(keptBy), { timeout: 30_000 }).toBe('activated');
      // Under the worker from its beginning, as on any later visit.
      await working.reload();
      await stageDrawn(working);
      const taking = await context.newPage();
      await taking.goto(site.address);
      await expect(taking.getByTestId('verdict-line')).not.toBeEmpty();
      let reloads = 0;
      working.on('framenavigated', () => reloads++);
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
