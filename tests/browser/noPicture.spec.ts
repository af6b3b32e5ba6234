import { expect, test } from './fixtures';
import { verdict, withoutFilePickers, withoutWebGl } from './head';
import { tourBench, tourHead, tourImport, tourLearn, tourMake, tourNeutralise } from './tour';

test('without WebGL every room and tab does its work, and a plain note stands where the picture would', async ({
  page,
}) => {
  await withoutWebGl(page);
  await withoutFilePickers(page);
  await page.goto('./');
  const note = page.locator('.stage').getByRole('note');
  await expect(note).toContainText('WebGL');
  const before = await verdict(page);
  await test.step('head', () => tourHead(page));
  await test.step('import', () => tourImport(page));
  await test.step('neutralise', () => tourNeutralise(page));
  await test.step('make', () => tourMake(page, false));
  await test.step('bench', () => tourBench(page));
  await test.step('learn', () => tourLearn(page));
  await page.getByTestId('lower-racket').click();
  await expect(page.locator('.racket-picture').getByRole('note')).toContainText('WebGL');
  await expect(note).toBeVisible();
  expect(await verdict(page)).toBe(before);
});
