import type { Page } from '@playwright/test';
import { expect, test } from './fixtures';
import { openHead, settled, verdict } from './head';

// None of these looks at the stage.
test.use({ picture: false });

async function openRoom(page: Page): Promise<void> {
  await page.getByTestId('room-neutralise').click();
  await page.getByTestId('lower-closely').click();
  await expect(page.getByTestId('closeness-room')).toBeVisible();
}

async function type(page: Page, name: string, text: string): Promise<void> {
  const field = page.getByTestId(name);
  await field.fill(text);
  await field.press('Enter');
  await settled(page);
}

test('every number has a bar that follows the head, and its part is one press away', async ({
  page,
}) => {
  await openHead(page);
  await openRoom(page);
  const row = page.getByTestId('slope-bolt/headHeightMm');
  await expect(row).toContainText(/\+0\.\d+\sN per 0\.1\smm/, { timeout: 30_000 });
  const before = await row.locator('.closeness-change').textContent();
  await type(page, 'input-extensionLengthMm', '4');
  await expect(row.locator('.closeness-change')).not.toHaveText(before ?? '');
  await page.getByTestId('slopes-more').click();
  await page.getByTestId('slope-arm/armReachMm').locator('button').click();
  await expect(page.getByTestId('fields')).toContainText('Pitch arm');

  // A tolerance of its own is kept in the design, ranks its number, and is taken back by undo.
  await page.getByTestId('slope-rank').selectOption('tolerance');
  await type(page, 'tolerance-arm/armReachMm', '2');
  await expect(page.getByTestId('slope-table').locator('tbody tr').first()).toContainText(
    'Pitch arm',
  );
  await type(page, 'tolerance-arm/armReachMm', '-1');
  await expect(page.getByTestId('slope-arm/armReachMm').getByRole('alert')).toContainText(
    'at least 0',
  );
  await page.getByTestId('tolerance-arm/armReachMm').press('Escape');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByTestId('tolerance-arm/armReachMm')).toHaveValue('');
});

/** Heads of the long run; `npm run whole` asks for 100,000. */
const HEADS = Number(process.env.STILLGRIP_HEADS ?? 12_000);

test('a long run of heads is made up while the page keeps answering; the result says when it is out of date', async ({
  page,
}) => {
  test.setTimeout(240_000);
  await openHead(page);
  await openRoom(page);
  await type(page, 'input-run-samples', String(HEADS));
  await page.getByTestId('tolerance-start').click();
  await expect(page.getByTestId('tolerance-progress')).toContainText(`of ${HEADS}`);
  // A change of the head while it runs: the verdict follows at once, the run goes on.
  const line = await verdict(page);
  await type(page, 'input-extensionLengthMm', '9');
  expect(await verdict(page)).not.toBe(line);
  await expect(page.getByTestId('tolerance-progress')).toBeVisible();
  // Away and back: the run is not lost.
  await page.getByTestId('lower-pitch').click();
  await page.getByTestId('lower-closely').click();
  await expect(page.getByTestId('tolerance-said')).toContainText(`${HEADS} heads in`, {
    timeout: 180_000,
  });
  await expect(page.getByTestId('tolerance-said')).toContainText('Of the head as it was');
  await expect(page.getByTestId('tolerance-chance')).toContainText('of heads stay within');
  await expect(page.getByTestId('tolerance-tighten').locator('tbody tr')).toHaveCount(5);
  await expect(page.getByTestId('tolerance-matching')).toContainText('Static unbalance');
  await expect(page.getByTestId('tolerance-plot').locator('.plot-band')).toHaveAttribute('d', /^M/);
});

test('a run is cancelled and leaves the design as it was', async ({ page }) => {
  await openHead(page);
  await openRoom(page);
  const line = await verdict(page);
  await type(page, 'input-run-samples', '1000000');
  await page.getByTestId('tolerance-start').click();
  await expect(page.getByTestId('tolerance-progress')).toBeVisible();
  await page.getByTestId('tolerance-cancel').click();
  await expect(page.getByText(/Cancelled after/)).toBeVisible();
  expect(await verdict(page)).toBe(line);
});
