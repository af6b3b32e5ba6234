import { expect, test } from './fixtures';
import { fieldValue, handleAt, openHead, settled } from './head';

const WIDE = { width: 1280, height: 800 };
const MIDDLE = { width: 1024, height: 768 };

test('a number that is being typed is taken over when the window grows narrower, and undo knows it', async ({
  page,
}) => {
  await page.setViewportSize(WIDE);
  await openHead(page);
  await page.getByTestId('rail-part-bolt').click();
  await page.getByTestId('input-extensionLengthMm').fill('4.5');
  await page.setViewportSize(MIDDLE);
  await page.getByTestId('drawer-numbers').click();
  await expect.poll(() => fieldValue(page, 'extensionLengthMm')).toBe(4.5);
  // Back again the step can be undone.
  await page.setViewportSize(WIDE);
  await page.getByRole('button', { name: /undo/i }).click();
  await expect.poll(() => fieldValue(page, 'extensionLengthMm')).toBe(0);
});

test('a window that changes in the middle of a drag leaves the handle in the hand, and the drag is one step', async ({
  page,
}) => {
  await page.setViewportSize(WIDE);
  await openHead(page);
  const handle = await handleAt(page, 'bolt', 'extensionLengthMm');
  await page.mouse.move(handle.x, handle.y);
  await page.mouse.down();
  await page.mouse.move(handle.x, handle.y - 20);
  await settled(page);
  const early = await fieldValue(page, 'extensionLengthMm');
  expect(early).toBeGreaterThan(0);
  await page.setViewportSize(MIDDLE);
  await settled(page);
  // Still the arrangement that it began in.
  await expect(page.locator('.app[data-width="wide"]')).toBeVisible();
  await page.mouse.move(handle.x, handle.y - 40);
  await settled(page);
  expect(await fieldValue(page, 'extensionLengthMm')).not.toBe(early);
  await page.mouse.up();
  await expect(page.locator('.app[data-width="middle"]')).toBeVisible();
  await page.getByRole('button', { name: /undo/i }).click();
  await page.getByTestId('drawer-numbers').click();
  await expect.poll(() => fieldValue(page, 'extensionLengthMm')).toBe(0);
  await expect(page.getByRole('button', { name: /undo/i })).toBeDisabled();
});

test('at 1024 by 600 chart, dial and stage are whole and nothing runs out of the page', async ({
  page,
}) => {
  await page.setViewportSize({ width: 1024, height: 600 });
  await openHead(page);
  const overflow = await page.evaluate(() => {
    const { scrollWidth, scrollHeight, clientWidth, clientHeight } = document.documentElement;
    return { across: scrollWidth - clientWidth, down: scrollHeight - clientHeight };
  });
  expect(overflow.across).toBeLessThanOrEqual(0);
  for (const name of ['pitch-dial', 'force-chart']) {
    const box = await page.getByTestId(name).boundingBox();
    expect(box?.height, name).toBeGreaterThan(200);
  }
  await expect(page.getByTestId('dial-knob')).toBeInViewport();
});
