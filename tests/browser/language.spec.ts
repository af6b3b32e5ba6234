import { expect, test } from './fixtures';
import { stageDrawn } from './head';

// None of these looks at the stage.
test.use({ picture: false });

test.describe('in another language', () => {
  test.use({ locale: 'de-DE' });

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
