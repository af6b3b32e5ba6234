import type { Page } from '@playwright/test';
import { expect, test } from './fixtures';
import { boxOf, fieldValue, openHead, settled } from './head';

/** Degrees as the page writes them. */
function degrees(text: string): number {
  return Number(text.replace('\u2212', '-').replace(/[^-\d.]/g, ''));
}

async function pitch(page: Page): Promise<number> {
  return Number(await page.getByTestId('dial-knob').getAttribute('aria-valuenow'));
}

async function setPitch(page: Page, deg: number): Promise<void> {
  await page.keyboard.press('0');
  await page.getByTestId('dial-knob').focus();
  for (let i = 0; i < deg; i++) await page.keyboard.press('ArrowUp');
}

/** Waits until a run has ended: the button offers to let go again. */
async function ended(page: Page): Promise<void> {
  await expect(page.getByTestId('dial-let-go')).toHaveText('Let go', { timeout: 30_000 });
}

test('let go at 5 degrees the demo head comes to rest where the verdict says, and one undo does not undo it', async ({
  page,
}) => {
  await openHead(page);
  await page.getByTestId('input-extensionLengthMm').fill('0.4');
  await page.keyboard.press('Enter');
  await page.getByTestId('dial-knob').focus();
  await setPitch(page, 5);
  await settled(page);
  const before = await boxOf(page, 'blade');
  await page.keyboard.press('l');
  await expect(page.getByTestId('dial-let-go')).toHaveText('Take hold');
  await ended(page);
  await settled(page);

  const [low, high] = (await page.getByTestId('dial-bands').innerText())
    .split(' to ')
    .map((text) => degrees(text));
  const end = await pitch(page);
  // The page writes tenths of a degree.
  expect(end).toBeGreaterThan(low - 0.06);
  expect(end).toBeLessThan(high + 0.06);
  const rest = degrees(await page.locator('.dial-angle[data-pitch-deg]').first().innerText());
  expect(rest).toBeGreaterThan(low);
  expect(rest).toBeLessThan(high);
  // The drawn blade went with it: its leading edge came down.
  const after = await boxOf(page, 'blade');
  expect(Math.abs(after.max[2] - before.max[2])).toBeGreaterThan(1e-4);

  await page.keyboard.press('Control+z');
  await settled(page);
  expect(await fieldValue(page, 'extensionLengthMm')).toBe(0);
  expect(await pitch(page)).toBe(end);
});

test('in the room Learn it says what came of it, and a push by key and by pointer changes the force number', async ({
  page,
}) => {
  await openHead(page);
  await page.getByTestId('room-learn').click();
  await page.getByTestId('lower-letGo').click();
  // Nothing of the room makes the page itself longer than the window.
  const spare = () => innerHeight - document.documentElement.scrollHeight;
  expect(await page.evaluate(spare)).toBeGreaterThanOrEqual(0);
  await setPitch(page, 15);
  await expect(page.getByTestId('letgo-said')).toContainText('let go, it moves down');
  await page.getByTestId('letgo-go').click();
  await page.getByTestId('letgo-end').click();
  await expect(page.getByTestId('letgo-said')).toHaveText(
    /^It settles at .+ in [\d.]+\u00a0ms: friction holds it there \(moment .+ of .+\)\.$/,
  );
  await expect(page.getByTestId('letgo-books')).toContainText('taken by friction');

  // At rest a key pushes it away.
  const end = await pitch(page);
  await page.getByTestId('letgo-hills').focus();
  await page.keyboard.down('ArrowUp');
  await expect(page.getByTestId('letgo-push')).toHaveText(/^Push: .+ at the push rod/);
  await expect.poll(() => pitch(page)).toBeGreaterThan(end + 0.5);
  await page.keyboard.up('ArrowUp');
  await expect(page.getByTestId('letgo-push')).toBeHidden();
  await page.getByTestId('letgo-hold').click();

  // While it moves, the dial pushes: farther away, harder.
  await page.getByTestId('letgo-slowness').selectOption('2000');
  await setPitch(page, 15);
  await page.keyboard.press('l');
  const ring = await page.getByTestId('pitch-dial').locator('.dial-ring').boundingBox();
  if (!ring) throw new Error('no ring');
  const [x, y, r] = [ring.x + ring.width / 2, ring.y + ring.height / 2, ring.width / 2];
  const at = (deg: number) => {
    const angle = (deg * Math.PI) / 180;
    return [x + r * Math.cos(angle), y - r * Math.sin(angle)] as const;
  };
  const force = page.getByTestId('dial-let-go-text');
  await page.mouse.move(...at(25));
  await page.mouse.down();
  await expect(force).toHaveText(/^Push .+N/);
  const near = Math.abs(degrees(await force.innerText()));
  await page.mouse.move(...at(60));
  await expect.poll(async () => Math.abs(degrees(await force.innerText()))).toBeGreaterThan(near);
  await page.mouse.up();
  await expect(force).toHaveText('1/2000');
  await page.keyboard.press('Escape');
  await ended(page);
});

test('where no moving pictures are wanted it shows the end and the trace at once', async ({
  page,
}) => {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await openHead(page);
  await page.getByTestId('room-learn').click();
  await page.getByTestId('lower-letGo').click();
  await setPitch(page, 10);
  await page.getByTestId('letgo-go').click();
  await expect(page.getByTestId('letgo-said')).toContainText('It settles at');
  const drawn = await page.getByTestId('letgo-trace').locator('.letgo-trace').getAttribute('d');
  expect(drawn?.split('L').length).toBeGreaterThan(100);
});
