import { expect, test } from './fixtures';
import { verdict, withoutFilePickers, withoutWebGl } from './head';
import { tourBench, tourHead, tourImport, tourLearn, tourMake, tourNeutralise } from './tour';

/** Whether the rooms that never show the picture are gone through as well: `npm run whole` does. */
const WHOLE = Boolean(process.env.STILLGRIP_WHOLE);

test('without WebGL every room and tab does its work, and a plain note stands where the picture would', async ({
  page,
}) => {
  await withoutWebGl(page);
  await withoutFilePickers(page);
  await page.goto('./');
  const note = page.locator('.stage').getByRole('note');
  await expect(note).toContainText('WebGL');
  const before = await verdict(page);
  // A real press: nothing may lie over the rail.
  await page.getByTestId('rail-part-nut').click();
  await expect(page.getByTestId('input-heightMm')).toHaveValue('2.4');
  await test.step('head', () => tourHead(page));
  await test.step('import', () => tourImport(page));
  if (WHOLE) {
    await test.step('neutralise', () => tourNeutralise(page));
    await test.step('make', () => tourMake(page, false));
    await test.step('bench', () => tourBench(page));
    await test.step('learn', () => tourLearn(page));
  }
  await page.getByTestId('room-make').click();
  await page.getByTestId('lower-report').click();
  await expect(page.getByTestId('report-sheet')).toContainText(await verdict(page));
  await expect(page.getByTestId('report-sheet').locator('img')).toHaveCount(0);
  await page.getByTestId('room-learn').click();
  await page.getByTestId('lower-racket').click();
  await expect(page.locator('.racket-picture').getByRole('note')).toContainText('WebGL');
  await page.getByTestId('racket-throw').click();
  await page.getByTestId('racket-time').fill('8');
  await expect(page.getByTestId('racket-flips')).not.toBeEmpty();
  await expect(note).toBeVisible();
  expect(await verdict(page)).toBe(before);
});
