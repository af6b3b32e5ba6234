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

test('whatever the verdict has to say is there to read, and it does not change its height during a drag', async ({
  page,
}) => {
  await page.setViewportSize(WIDE);
  await openHead(page);
  const height = () =>
    page.locator('.verdict').evaluate((element) => element.getBoundingClientRect().height);
  const before = await height();
  const handle = await handleAt(page, 'bolt', 'extensionLengthMm');
  await page.mouse.move(handle.x, handle.y);
  await page.mouse.down();
  await page.mouse.move(handle.x, handle.y - 30);
  await settled(page);
  const detail = page.getByTestId('verdict-detail');
  const spare = await detail.evaluate((element, text) => {
    element.textContent = text.repeat(9);
    return element.getBoundingClientRect().height;
  }, 'Off the chord plane: 653 g mm\u00b2. ');
  expect(spare).toBeGreaterThan(30);
  expect(await height()).toBe(before);
  await page.mouse.up();
  await settled(page);
  // Torque offset and precone beside both differences: the longest of the demo heads.
  await page.getByTestId('gallery').click();
  await page.getByTestId('demo-6-full-size').click();
  await expect(detail).toContainText('does not cancel.');
  const cut = await page
    .locator('.verdict')
    .evaluate((element) => [
      element.scrollHeight - element.clientHeight,
      ...[...element.querySelectorAll('.verdict-line, .verdict-detail')].map(
        (line) => line.scrollWidth - line.clientWidth,
      ),
    ]);
  for (const pixels of cut) expect(pixels).toBeLessThanOrEqual(0);
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
  // The value stays where it is under another picture, and goes on from there.
  await page.mouse.move(handle.x, handle.y - 19);
  await settled(page);
  expect(await fieldValue(page, 'extensionLengthMm')).toBe(early);
  await page.mouse.move(handle.x, handle.y - 40);
  await settled(page);
  const late = await fieldValue(page, 'extensionLengthMm');
  expect(late).toBeGreaterThan(early);
  expect(late).toBeLessThan(early + 20);
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
