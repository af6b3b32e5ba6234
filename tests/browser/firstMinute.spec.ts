import { expect, test } from './fixtures';
import { openDemo, openHead, settled } from './head';

test('a newcomer is shown three things; each is ticked when it is done, by keys alone', async ({
  page,
}) => {
  await openHead(page);
  const card = page.getByTestId('first-minute');
  await expect(card).toBeVisible();
  // It has a place of its own: nothing of the page lies under it.
  const box = await card.boundingBox();
  for (const id of ['pitch-dial', 'force-chart', 'verdict-line']) {
    const other = await page.getByTestId(id).boundingBox();
    const apart =
      (box?.y ?? 0) >= (other?.y ?? 0) + (other?.height ?? 0) ||
      (other?.y ?? 0) >= (box?.y ?? 0) + (box?.height ?? 0);
    expect(apart, id).toBe(true);
  }

  await page.getByTestId('first-show-dial').press('Enter');
  await expect(page.locator('#dial').getByRole('slider', { name: 'Pitch angle' })).toBeFocused();
  await page.keyboard.press('PageUp');
  await page.keyboard.press('PageUp');
  await expect(page.getByTestId('first-dial')).toHaveAttribute('data-done', 'true');
  await expect(card.getByRole('status')).toHaveText('1 of 3 done.');

  await page.getByTestId('input-headHeightMm').fill('12');
  await page.getByTestId('input-headHeightMm').press('Enter');
  await expect(page.getByTestId('first-bolt')).toHaveAttribute('data-done', 'true');

  await page.getByTestId('first-dismiss').press('Enter');
  await expect(card).toBeHidden();
  await page.reload();
  await expect(page.getByTestId('verdict-line')).not.toBeEmpty();
  await expect(card).toBeHidden();
  await page.getByTestId('help').click();
  await page.getByTestId('first-again').click();
  await expect(card).toBeVisible();
});

test('a quantity\u2019s name tells what it is with this head\u2019s number, and gives the focus back', async ({
  page,
}) => {
  await openHead(page);
  await openDemo(page, 'Long bolt, no blade');
  const name = page.locator('.verdict').getByRole('button', { name: 'Jyy' });
  await name.focus();
  await page.keyboard.press('Enter');
  const card = page.getByTestId('help-card');
  await expect(card).toBeVisible();
  const shown = await page.getByTestId('figure-difference').innerText();
  await expect(card.getByTestId('help-result')).toHaveText(shown);
  await expect(card).toContainText('from memory');

  // Another entry in its place, then away: Escape closes only this.
  await card.getByTestId('see-jzz').press('Enter');
  await expect(card.getByRole('heading', { level: 3 })).toContainText('spread along the bolt');
  await page.keyboard.press('Escape');
  await expect(card).toBeHidden();
  await expect(name).toBeFocused();
  // The browser tells of the closing a moment after it: a press before that would be one on an open card.
  await expect(name).toHaveAttribute('aria-expanded', 'false');

  await name.press(' ');
  await page.getByTestId('help-more').press('Enter');
  const entry = page.getByTestId('words-entry');
  await expect(entry.getByRole('heading', { level: 3 })).toContainText('Jyy');
  await expect(entry.getByTestId('help-result')).toHaveText(shown);
});

test('the glossary is searched, linked, and follows the head', async ({ page }) => {
  await openHead(page);
  await page.getByTestId('room-learn').click();
  await page.getByTestId('lower-words').click();
  await page.getByTestId('words-search').fill('tennis');
  await expect(page.getByTestId('words-room').getByRole('status')).toHaveText('1 entry');
  await page.getByTestId('words-search').press('Enter');
  const entry = page.getByTestId('words-entry');
  await expect(entry).toContainText('middle axis');
  await entry.getByTestId('see-propellerMoment').click();
  await entry.getByTestId('see-featheringMoment').click();
  const before = await entry.getByTestId('help-result').last().innerText();
  await page.getByTestId('words-room').press('0');
  await page.locator('body').press(']');
  await settled(page);
  await expect(entry.getByTestId('help-result').last()).not.toHaveText(before);
  await page.getByTestId('words-search').fill('nothing at all');
  await expect(page.getByTestId('words-room').getByRole('status')).toContainText('Nothing');
});

test.describe('with a design of an earlier visit', () => {
  test('the three things are not shown', async ({ page }) => {
    await openHead(page);
    await page.getByTestId('input-headHeightMm').fill('5');
    await page.getByTestId('input-headHeightMm').press('Enter');
    await expect(page.getByTestId('autosave-state')).toHaveText('Kept in this browser');
    await page.reload();
    await expect(page.getByTestId('verdict-line')).not.toBeEmpty();
    await expect(page.getByTestId('first-minute')).toBeHidden();
  });
});
