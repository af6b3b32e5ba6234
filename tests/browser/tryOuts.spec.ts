import type { Page } from '@playwright/test';
import { expect, test } from './fixtures';
import { boxOf, chartPicture, openHead, setPitchForces, settled, verdict } from './head';

async function openTryOuts(page: Page): Promise<void> {
  await page.getByTestId('room-neutralise').click();
  await page.getByTestId('lower-tryOuts').click();
  await expect(page.getByTestId('try-outs-room')).toBeVisible();
}

/** Head extension of the selected bolt. */
async function extendHead(page: Page, mm: string): Promise<void> {
  const field = page.getByTestId('input-extensionLengthMm');
  await field.fill(mm);
  await field.press('Enter');
  await settled(page);
}

test('a try-out is kept, changed, compared, stepped through and adopted; undo takes each back', async ({
  page,
}) => {
  await openHead(page);
  const before = { line: await verdict(page), bolt: await boxOf(page, 'bolt') };
  await openTryOuts(page);
  await expect(page.getByTestId('try-out-choose')).toHaveCount(0);
  await page.getByTestId('try-outs-keep').click();
  await expect(page.getByTestId('try-out-choose')).toHaveValue('try-2');
  await extendHead(page, '9');
  const longer = { line: await verdict(page), bolt: await boxOf(page, 'bolt') };
  expect(longer.line).not.toBe(before.line);
  expect(longer.bolt.max[2]).toBeGreaterThan(before.bolt.max[2] + 8.9);

  // The table names the number, from and to, and the mass that it adds.
  const row = page.getByTestId('try-row-bolt-extensionLengthMm');
  await expect(row).toHaveText(/9\smm.*0\smm/);
  await expect(page.getByTestId('try-row-mass').locator('td').nth(1)).toHaveText(
    /g\s\(\u2212.*\sg\)/,
  );

  // Its curve lies over the chart, and taking the tick away takes it off.
  await page.getByTestId('lower-pitch').click();
  await expect(page.locator('.chart-name-try-out', { hasText: 'Head as it was' })).toBeVisible();
  const both = await chartPicture(page);
  await page.getByTestId('lower-tryOuts').click();
  await page.getByTestId('try-out-compare-try-1').uncheck();
  await page.getByTestId('lower-pitch').click();
  await settled(page);
  await expect(page.locator('.chart-name-try-out')).toHaveCount(0);
  expect(await chartPicture(page)).not.toBe(both);

  // A step shows the other: stage, verdict and forces; undo shows this one again.
  const forces = await setPitchForces(page);
  await page.getByTestId('try-out-next').click();
  await settled(page);
  expect(await verdict(page)).toBe(before.line);
  expect((await boxOf(page, 'bolt')).max[2]).toBeCloseTo(before.bolt.max[2], 3);
  expect(await setPitchForces(page)).not.toEqual(forces);
  await page.keyboard.press('Control+z');
  await settled(page);
  expect(await verdict(page)).toBe(longer.line);
  expect(await setPitchForces(page)).toEqual(forces);

  // By the chooser and its keys, then adopted.
  await page.getByTestId('try-out-choose').selectOption('try-1');
  await settled(page);
  expect(await verdict(page)).toBe(before.line);
  await page.getByTestId('lower-tryOuts').click();
  await page.getByTestId('try-out-adopt-try-2').click();
  await settled(page);
  expect(await verdict(page)).toBe(longer.line);
  await expect(page.getByTestId('try-out-try-2')).toContainText('Adopted');
  await page.keyboard.press('Control+z');
  await expect(page.getByTestId('try-out-choose')).toHaveValue('try-1');
  await expect(page.getByTestId('try-out-try-2')).not.toContainText('Adopted');
});

test('try-outs with their names and notes are there again after a reload', async ({ page }) => {
  await openHead(page);
  await openTryOuts(page);
  await page.getByTestId('try-outs-keep').click();
  await page.getByTestId('try-out-name-try-2').fill('Longer head');
  await page.getByTestId('try-out-name-try-2').press('Enter');
  await page.getByTestId('try-out-note-try-2').fill('as turned on Friday');
  await page.getByTestId('try-out-note-try-2').press('Enter');
  await extendHead(page, '7');
  const line = await verdict(page);
  await expect(page.locator('.app-foot-state')).toHaveText('Kept in this browser');
  await openHead(page);
  expect(await verdict(page)).toBe(line);
  await openTryOuts(page);
  await expect(page.getByTestId('try-out-name-try-2')).toHaveValue('Longer head');
  await expect(page.getByTestId('try-out-note-try-2')).toHaveValue('as turned on Friday');
  await expect(page.getByTestId('try-row-bolt-extensionLengthMm')).toBeVisible();
});
