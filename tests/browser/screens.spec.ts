import type { Page } from '@playwright/test';
import { expect, test } from './fixtures';
import { settled, stageDrawn } from './head';
import { pointed, shownTexts, unmarked } from './language/shownText';
import { markGerman, type See, WALKS } from './language/walk';
import { findings, withAxe } from './open/axe';

// axe-core is an independent reader of the rules of WCAG 2.2 that a machine can judge; the rest was judged by eye.

/**
 * What is no text of the page: headings and cells of the example tables as their files have them, what those files say of
 * themselves, the number of a drawing, and the link itself.
 */
const DATA =
  /^(?:bench-preview|(?:aria-label in )?bench-(?:role|unit|preview)|bench-understood|bench-runs|value of bench-meta|bench-left-out|bench-series|(?:value of )?share-link)/;

test.describe('on every screen, in a language whose texts are all marked,', () => {
  test.use({ locale: 'de-DE' });

  for (const [name, walk] of Object.entries(WALKS)) {
    test(`no English is left, and axe finds nothing, light and dark: ${name}`, async ({
      page,
      context,
    }) => {
      await withAxe(context);
      await markGerman(context);
      await page.goto('./');
      await stageDrawn(page);
      let seen = 0;
      const english: string[] = [];
      await expectNothing(page, async (see) => {
        await walk(page, async (screen, changed) => {
          for (const { text, place } of await shownTexts(page)) {
            seen++;
            const left = DATA.test(place) ? '' : unmarked(text) || pointed(text);
            if (left !== '') english.push(`${screen}, ${place}: ${text}`);
          }
          await see(screen, changed);
        });
      });
      expect(seen).toBeGreaterThan(50);
      expect([...new Set(english)]).toEqual([]);
    });
  }
});

test('axe finds nothing on a phone in English, light and dark', async ({ page, context }) => {
  await withAxe(context);
  await page.setViewportSize({ width: 390, height: 844 });
  await page.goto('./');
  await expect(page.getByTestId('verdict-line')).not.toBeEmpty();
  await expectNothing(page, async (see) => {
    for (const room of ['head', 'neutralise', 'make', 'bench', 'learn']) {
      await page.getByTestId(`room-${room}`).click();
      // Folds that were opened stay open from room to room.
      const folded = page.locator('.app-fold:not([open]) > summary');
      while ((await folded.count()) > 0) await folded.first().click();
      await settled(page);
      await see(room);
    }
  });
});

async function expectNothing(page: Page, walk: (see: See) => Promise<void>): Promise<void> {
  const found: string[] = [];
  let looked = 0;
  await walk(async (screen, changed) => {
    looked++;
    found.push(...(await findings(page, changed)).map((line) => `${screen}, ${line}`));
  });
  expect(looked).toBeGreaterThan(0);
  expect(found).toEqual([]);
}
