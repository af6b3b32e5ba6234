import type { Page } from '@playwright/test';
import { expect, test } from './fixtures';
import { openHead, settled } from './head';

async function openLearn(page: Page, tab: 'pulls' | 'racket'): Promise<void> {
  await openHead(page);
  await page.getByTestId('room-learn').click();
  await page.getByTestId(`lower-${tab}`).click();
}

/** The number of a text such as "-130 N mm, to flat", its sign left out. */
function sizeIn(text: string): number {
  return Number(/[\d.]+/.exec(text.replace('\u2212', ''))?.[0]);
}

const arrows = (page: Page) => page.evaluate(() => window.stillgrip?.scene?.pullArrows() ?? -1);
const turned = (page: Page) => page.evaluate(() => window.stillgrip?.scene?.turned() ?? Number.NaN);

test('the pulls are added one by one by keyboard, and come to the numbers of dial and verdict', async ({
  page,
}) => {
  await openLearn(page, 'pulls');
  await page.getByTestId('dial-knob').focus();
  for (let i = 0; i < 20; i++) await page.keyboard.press('ArrowUp');
  await expect(page.getByTestId('pulls-sentence')).toContainText('Nothing is added yet');
  expect(await arrows(page)).toBe(0);
  const count = page.getByTestId('pulls-count');
  const of = Number((await count.innerText()).split(' of ')[1]);
  expect(of).toBeGreaterThan(5);
  await page.getByTestId('pulls-next').focus();
  await page.keyboard.press('Enter');
  await expect(count).toHaveText(`1 of ${of}`);
  await settled(page);
  const first = await arrows(page);
  expect(first).toBeGreaterThan(0);
  await expect(page.locator('.dial-pull-lump:visible')).toHaveCount(first);
  await expect(page.getByTestId('pulls-total')).toHaveText('\u2013');
  await page.keyboard.press('Enter');
  await settled(page);
  expect(await arrows(page)).toBeGreaterThan(first);
  await page.getByTestId('pulls-back').press('Enter');
  await settled(page);
  expect(await arrows(page)).toBe(first);
  await page.getByTestId('pulls-all').press('Enter');
  await expect(count).toHaveText(`${of} of ${of}`);
  // The sum, the dial and the verdict say the same: ordinary bolt at 20 degrees, all at three digits.
  const total = sizeIn(await page.getByTestId('pulls-total').innerText());
  expect(total).toBe(sizeIn(await page.getByTestId('dial-drive').innerText()));
  const sums = page.getByTestId('pulls-table').locator('tbody tr:visible td:last-child');
  expect(sizeIn(await sums.last().innerText())).toBe(total);
  const force = sizeIn(await page.getByTestId('pulls-force').innerText());
  const table = page.getByTestId('set-pitch-table');
  await page.getByTestId('lower-pitch').click();
  const atTwenty = await table.locator('.chart-set-value').last().innerText();
  expect(Math.abs(force)).toBeCloseTo(sizeIn(atTwenty), 1);
});

test('the speed tried goes with its square and leaves the design alone; from outside the rotor goes round', async ({
  page,
}) => {
  await openLearn(page, 'pulls');
  await page.getByTestId('pulls-all').click();
  const pulls = page.getByTestId('pulls-table').locator('tbody tr:visible td:nth-child(2)');
  const full = sizeIn(await pulls.first().innerText());
  await page.getByTestId('pulls-speed').fill('5100');
  await expect(page.getByTestId('pulls-speed-value')).toContainText('25.0');
  await expect
    .poll(async () => sizeIn(await pulls.first().innerText()) / full)
    .toBeCloseTo(0.25, 2);
  await page.getByTestId('pulls-speed').fill('0');
  await settled(page);
  expect(await arrows(page)).toBe(0);
  await page.getByTestId('pulls-speed-back').click();
  await settled(page);
  expect(await arrows(page)).toBeGreaterThan(0);
  await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled();
  await page.getByTestId('pulls-look').selectOption('outside');
  await expect.poll(() => turned(page)).toBeGreaterThan(0.02);
  await expect(page.getByTestId('pulls-look-note')).toContainText('Slowed');
  // Another room puts the stage back.
  await page.getByTestId('lower-pitch').click();
  await expect.poll(() => turned(page)).toBeCloseTo(0, 12);
  expect(await arrows(page)).toBe(0);
});

test('the racket turns over about its middle axis only', async ({ page }) => {
  await openLearn(page, 'racket');
  const said = page.getByTestId('racket-flips');
  const end = async () => {
    await page.getByTestId('racket-time').fill('8');
    return said.innerText();
  };
  await expect(said).toHaveText('Not turned over');
  expect(await end()).toBe('Turned over 5 times');
  await page.getByTestId('racket-axis').selectOption('least');
  expect(await end()).toBe('Not turned over');
  await page.getByTestId('racket-axis').selectOption('greatest');
  expect(await end()).toBe('Not turned over');
  // The picture is its own canvas, given back when the room is left.
  await expect(page.locator('.racket-picture canvas')).toHaveCount(1);
  await page.getByTestId('lower-pitch').click();
  await expect(page.locator('.racket-picture canvas')).toHaveCount(0);
});
