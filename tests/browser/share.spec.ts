import { readFileSync } from 'node:fs';
import { deflateRawSync, crc32 as nodeCrc32 } from 'node:zlib';
import type { Page } from '@playwright/test';
import { expect, test } from './fixtures';
import { withoutFilePickers } from './head';

// None of these looks at the stage.
test.use({ picture: false });

const nameField = (page: Page) => page.getByRole('textbox', { name: 'Name of the design' });

/** A link packed by Node's zlib, not by the page. */
function linkAround(text: string): string {
  const raw = Buffer.from(text);
  const head = Buffer.alloc(5);
  head.writeUInt8(1, 0);
  head.writeUInt32BE(nodeCrc32(raw), 1);
  return `#d=${Buffer.concat([head, deflateRawSync(raw)]).toString('base64url')}`;
}

/** A demo file by another name: somebody else's design. */
function sent(name: string): string {
  const file = new URL('../../assets/designs/4-turned-nut.json', import.meta.url);
  return JSON.stringify({ ...JSON.parse(readFileSync(file, 'utf8')), name });
}

test.describe('a link that holds the design', () => {
  test('is made by Share and opens the same design in another browser', async ({
    page,
    browser,
  }) => {
    await page.goto('./');
    await nameField(page).fill('Of the first');
    await nameField(page).press('Enter');
    await page.getByTestId('share').click();
    const link = await page.getByTestId('share-link').inputValue();
    expect(link).toMatch(/^http:\/\/[^#]+#d=[\w-]+$/);
    const other = await browser.newPage();
    await other.goto(link);
    await expect(nameField(other)).toHaveValue('Of the first');
    await expect.poll(() => new URL(other.url()).hash).toBe('');
    await other.close();
  });

  test('never takes the place of work without asking', async ({ page }) => {
    await page.goto('./');
    await nameField(page).fill('Mine');
    await nameField(page).press('Enter');
    const link = linkAround(sent('Theirs'));
    await page.evaluate((hash) => {
      window.location.hash = hash;
    }, link);
    await expect(page.getByTestId('share-arrived')).toContainText('Theirs');
    await expect(nameField(page)).toHaveValue('Mine');
    // Enter by mistake keeps one's own.
    await expect(page.getByTestId('share-keep')).toBeFocused();
    await page.keyboard.press('Enter');
    await expect(page.getByTestId('share-arrived')).toHaveCount(0);
    await expect(nameField(page)).toHaveValue('Mine');
    expect(new URL(page.url()).hash).toBe('');

    // As a chat hands it on, and while another dialog is open: it waits for that.
    await page.getByTestId('share').click();
    await expect(page.getByTestId('share-link')).toBeVisible();
    await page.evaluate(
      (hash) => {
        window.location.hash = hash;
      },
      `${link.replace('=', '%3D')}.`,
    );
    await page.waitForTimeout(500);
    await expect(page.getByTestId('share-arrived')).toHaveCount(0);
    await page.keyboard.press('Escape');
    await expect(page.getByTestId('share-arrived')).toContainText('\u201cTheirs\u201d');
    await page.getByTestId('share-open').click();
    await expect(nameField(page)).toHaveValue('Theirs');
    await page.getByTestId('undo').click();
    await expect(nameField(page)).toHaveValue('Mine');
  });

  test('asks also when the page is opened by it again after work was kept', async ({ page }) => {
    await withoutFilePickers(page);
    await page.goto('./');
    await nameField(page).fill('Kept work');
    await nameField(page).press('Enter');
    await expect(page.getByText('Kept in this browser')).toBeVisible();
    await page.goto('about:blank');
    await page.goto(`./${linkAround(sent('Theirs'))}`);
    await expect(page.getByTestId('share-arrived')).toContainText('Kept work');
    // A key that comes before the dialog has the focus does not close it.
    await expect(page.getByTestId('share-keep')).toBeFocused();
    // Nothing had the focus before: afterwards it is on the dial and not lost.
    await page.keyboard.press('Escape');
    await expect(page.locator('#dial')).toBeFocused();
    await page.goto('about:blank');
    await page.goto(`./${linkAround(sent('Theirs'))}`);
    const download = page.waitForEvent('download');
    await page.getByTestId('share-save-first').click();
    expect((await download).suggestedFilename()).toBe('kept-work.json');
    await expect(nameField(page)).toHaveValue('Theirs');
  });

  test('that is mangled ends in a message and changes nothing', async ({ page }) => {
    await page.goto('./');
    const before = await nameField(page).inputValue();
    const link = linkAround(sent('Theirs'));
    for (const bad of [link.slice(0, -9), '#d=', '#d=AAAA$$', `#d=B${link.slice(4)}`]) {
      await page.evaluate((hash) => {
        window.location.hash = hash;
      }, bad);
      await expect(page.getByTestId('notice')).toContainText('The link was not opened');
      await page.getByTestId('notice').getByRole('button', { name: 'Dismiss' }).click();
      await expect(nameField(page)).toHaveValue(before);
    }
  });
});
