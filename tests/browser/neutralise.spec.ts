import { expect, test } from './fixtures';
import { boxOf, drag, handleAt, openHead, settled, verdict } from './head';

/** The force to hold the pitch in use that a verdict tells, N. */
function holdOf(line: string): number {
  return Number(/([\d.]+)\s*N to hold/.exec(line)?.[1]);
}

test('the ordinary bolt, neutralised with the nut\u2019s length: found, tried out, adopted, undone', async ({
  page,
}) => {
  await openHead(page);
  const before = await verdict(page);
  expect(before).toMatch(/centres/i);
  await page.getByTestId('room-neutralise').click();
  // Only the nut's height may change.
  await page.getByRole('button', { name: /Take Blade bolt.*head extension/i }).click();
  // What could go along is listed once it is come to: a head of two hundred parts has hundreds of such lists.
  const along = page.locator('[data-testid^="knob-also-"]').first();
  await expect(along.locator('option')).toHaveCount(1);
  await along.focus();
  await along.selectOption({ index: 1 });
  await expect(along).not.toHaveValue('');
  await along.selectOption({ index: 0 });
  await expect(along).toHaveValue('');
  // The goal is out of sight on a small screen: the search begins from where its answers will stand as well.
  await page.getByTestId('answers-find').press('Enter');
  const first = page.getByTestId('answer-1');
  await expect(first).toContainText(/nut M3, height/i);
  await expect(page.getByTestId('answers-room')).toBeFocused();
  await expect(first).toContainText('10.1');
  const nutBefore = await boxOf(page, 'nut');
  await first.getByRole('button', { name: 'Try out' }).click();
  await settled(page);
  const after = await verdict(page);
  expect(after).not.toBe(before);
  // Ten newtons before, under one and a half now.
  expect(holdOf(before)).toBeGreaterThan(9);
  expect(holdOf(after)).toBeLessThan(1.5);
  // The drawn nut has grown by what the answer says, away from the fork.
  const nut = await boxOf(page, 'nut');
  expect(nutBefore.min[2] - nut.min[2]).toBeCloseTo(10.1 - 2.4, 3);
  await first.getByRole('button', { name: 'Adopt' }).click();
  await page.getByTestId('lower-tryOuts').click();
  await expect(page.getByTestId('try-outs-room')).toContainText(/adopted/i);
  await page.keyboard.press('Control+z');
  await page.keyboard.press('Control+z');
  await settled(page);
  expect(await verdict(page)).toBe(before);
});

test('walking along the family: the stage follows, one drag is one undo step, keys step too', async ({
  page,
}) => {
  await openHead(page);
  await page.getByTestId('room-neutralise').click();
  await page.getByTestId('lower-family').click();
  const plot = page.getByTestId('family-plot');
  await expect(plot.locator('.plot-line').first()).toHaveAttribute('d', /^M.*L/);
  const before = await boxOf(page, 'nut');
  const flat = await verdict(page);
  const box = await plot.boundingBox();
  if (!box) throw new Error('the family is not drawn');
  // Down anywhere goes to the nearest place on a curve; then to the right along it.
  const from = { x: box.x + 120, y: box.y + box.height * 0.55 };
  await drag(page, from, { dx: 200, dy: 40 });
  const after = await boxOf(page, 'nut');
  const width = after.max[0] - after.min[0];
  expect(width).toBeGreaterThan(before.max[0] - before.min[0] + 1);
  expect(holdOf(await verdict(page))).toBeLessThan(1.5);
  const handle = page.getByTestId('family-handle');
  const said = await handle.getAttribute('aria-valuetext');
  await page.keyboard.press('ArrowRight');
  await settled(page);
  await expect.poll(() => handle.getAttribute('aria-valuetext')).not.toBe(said);
  expect((await boxOf(page, 'nut')).max[0]).toBeGreaterThan(after.max[0] + 0.04);
  await page.keyboard.press('Control+z');
  await page.keyboard.press('Control+z');
  await settled(page);
  expect(await verdict(page)).toBe(flat);
  expect((await boxOf(page, 'nut')).min[2]).toBeCloseTo(before.min[2], 6);
});

test('a long search is cancelled, and the page answers to a drag while it runs', async ({
  page,
}) => {
  await openHead(page);
  await page.getByTestId('room-neutralise').click();
  for (const offer of [
    'bolt-catalogue',
    'nut-catalogue',
    'washer-top-count',
    'washer-bottom-count',
    'bolt-densityKgM3',
  ]) {
    await page.getByTestId(`offer-${offer}`).check();
  }
  await page.getByTestId('goal-find').click();
  await expect(page.getByTestId('goal-progress')).toContainText(/[1-9]\d* of \d{4,}/);
  const bolt = await boxOf(page, 'bolt');
  const handle = await handleAt(page, 'bolt', 'extensionLengthMm');
  await drag(page, handle, { dx: 0, dy: -40 });
  expect((await boxOf(page, 'bolt')).max[2]).toBeGreaterThan(bolt.max[2] + 1);
  await expect(page.getByTestId('goal-progress')).toBeVisible();
  await page.getByTestId('goal-cancel').click();
  await expect(page.getByTestId('goal-said')).toContainText(/Cancelled after \d+/);
  await expect(page.getByTestId('goal-find')).toBeEnabled();
});

test('limits the wrong way round are said in words, and what was typed stays', async ({ page }) => {
  await openHead(page);
  await page.getByTestId('room-neutralise').click();
  const min = page.getByTestId('input-nut/heightMm-min');
  await min.fill('40');
  await min.press('Enter');
  await page.getByTestId('goal-find').click();
  await expect(page.getByTestId('goal-fault')).toContainText(/height: from 40.mm is not below/i);
  await expect(min).toHaveValue('40');
});
