import { expect, test } from './fixtures';
import { stageDrawn } from './head';
import { pointed, shownTexts, unmarked } from './language/shownText';
import { markGerman, WALKS } from './language/walk';

/**
 * What is no text of the page: headings and cells of the example tables as their files have them, what those files say of
 * themselves, the number of a drawing, and the link itself.
 */
const DATA =
  /^(?:bench-preview|(?:aria-label in )?bench-(?:role|unit|preview)|bench-understood|bench-runs|value of bench-meta|bench-left-out|bench-series|(?:value of )?share-link)/;

test.describe('in another language', () => {
  test.use({ locale: 'de-DE' });

  for (const [name, walk] of Object.entries(WALKS)) {
    test(`no English is left: ${name}`, async ({ page, context }) => {
      await markGerman(context);
      await page.goto('./');
      await stageDrawn(page);
      const found: string[] = [];
      let seen = 0;
      await walk(page, async (screen) => {
        for (const { text, place } of await shownTexts(page)) {
          seen++;
          if (DATA.test(place)) continue;
          const left = unmarked(text) || pointed(text);
          if (left !== '') found.push(`${screen}, ${place}: ${text}`);
        }
      });
      expect(seen).toBeGreaterThan(50);
      expect([...new Set(found)]).toEqual([]);
    });
  }

  test('the page opens in German by the browser’s wish, changes at once, keeps the work and remembers', async ({
    page,
  }) => {
    await page.goto('./');
    await stageDrawn(page);
    await expect(page.locator('html')).toHaveAttribute('lang', 'de');
    await expect(page.getByTestId('room-head')).toHaveText('Kopf');
    await expect(page.getByTestId('design-name')).toHaveValue('Dunlin 260, gewöhnlicher Bolzen');
    await expect(page.getByTestId('verdict-line')).toContainText(/\d,\d/);

    // A comma and a point mean the same; three digits behind a point could be a thousand.
    const field = page.getByTestId('input-extensionLengthMm');
    for (const [typed, shown] of [
      ['2,5', '2,5'],
      ['3.5', '3,5'],
      ['4,125', '4,125'],
    ]) {
      await field.fill(typed);
      await field.press('Enter');
      await expect(field).toHaveValue(shown);
    }
    await field.fill('1.125');
    await field.press('Enter');
    await expect(page.getByText('lässt sich auf zwei Arten lesen')).toBeVisible();
    await field.press('Escape');

    await page.getByTestId('language').selectOption('en');
    await expect(page.locator('html')).toHaveAttribute('lang', 'en');
    await expect(page.getByTestId('room-head')).toHaveText('Head');
    await expect(page.getByTestId('input-extensionLengthMm')).toHaveValue('4.125');
    await page.getByTestId('undo').click();
    await expect(page.getByTestId('input-extensionLengthMm')).toHaveValue('3.5');
    await page.reload();
    await expect(page.getByTestId('room-head')).toHaveText('Head');
  });
});

test('German is fetched only where it is spoken', async ({ page }) => {
  const asked: string[] = [];
  page.on('request', (request) => asked.push(request.url()));
  await page.goto('./');
  await stageDrawn(page);
  expect(asked.filter((address) => /\/assets\/de-/.test(address))).toEqual([]);
  await page.getByTestId('language').selectOption('de');
  await expect(page.getByTestId('room-head')).toHaveText('Kopf');
  expect(asked.filter((address) => /\/assets\/de-/.test(address))).toHaveLength(1);
});
