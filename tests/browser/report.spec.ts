import { readFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import { type FoundPdf, readPdf } from '../output/report/pdfText';
import { expect, test } from './fixtures';
import { openDemo, openHead, setPitchForces, settled, verdict, withoutFilePickers } from './head';

async function openReport(page: Page): Promise<void> {
  await page.getByTestId('room-make').click();
  await page.getByTestId('lower-report').click();
  // The room, the writer of links and the picture are fetched and made on a busy machine.
  await expect(page.getByTestId('report-sheet')).toBeVisible({ timeout: 30_000 });
  await expect(sheetOf(page).locator('img')).toBeVisible({ timeout: 30_000 });
}

const sheetOf = (page: Page) => page.getByTestId('report-sheet');

function plain(text: string): string {
  return text.replace(/[\s\u00a0]+/g, ' ');
}

function said(found: FoundPdf): string {
  return plain(found.texts.map(({ text }) => text).join(' '));
}

/** What the browser itself would print. */
async function printed(page: Page): Promise<FoundPdf> {
  const bytes = await page.pdf({ preferCSSPageSize: true });
  return readPdf(new Uint8Array(bytes).buffer);
}

async function savedPdf(page: Page): Promise<FoundPdf> {
  const download = page.waitForEvent('download');
  await page.getByTestId('report-pdf').click();
  const file = await (await download).path();
  return readPdf(new Uint8Array(await readFile(file)).buffer);
}

/** Without blanks: where a printer's text is cut into pieces is its own matter. */
const tight = (text: string) => text.replace(/[\s\u00a0]/g, '');

test.describe('the report', () => {
  test('shows the forces and the verdict that the page shows, with a picture of the stage', async ({
    page,
  }) => {
    await openHead(page);
    const [line, forces] = [await verdict(page), await setPitchForces(page)];
    await openReport(page);
    await expect(sheetOf(page)).toContainText(line);
    const rows = sheetOf(page).locator('.report-beside tbody tr');
    const shown = await rows.locator('td:nth-child(3)').allInnerTexts();
    expect(shown).toHaveLength(forces.length);
    // Beside the chart forces have two decimals.
    shown.forEach((text, i) => {
      const value = Number.parseFloat(text.replace('\u2212', '-'));
      expect(Math.abs(value - forces[i])).toBeLessThanOrEqual(0.0051);
    });
    const size = await sheetOf(page)
      .locator('img')
      .evaluate((image: HTMLImageElement) => [image.naturalWidth, image.naturalHeight]);
    expect(size).toEqual([1600, 1000]);
  });

  test('is printed by the browser on one to three sheets of A4 and of Letter, alone, and stays open', async ({
    page,
  }) => {
    await openHead(page);
    const line = await verdict(page);
    await openReport(page);
    for (const [paper, wide, high] of [
      ['A4', 210, 297],
      ['Letter', 215.9, 279.4],
    ] as const) {
      await page.getByTestId('report-paper').selectOption(paper);
      await page.getByTestId('report-remark').fill('For the club');
      await expect(sheetOf(page)).toContainText('For the club');
      const found = await printed(page);
      expect(found.pages.length).toBeLessThanOrEqual(3);
      for (const { widthMm, heightMm } of found.pages) {
        // Browsers give a sheet in whole points (0.35 mm) or pixels (0.26 mm).
        expect(Math.abs(widthMm - wide)).toBeLessThan(0.4);
        expect(Math.abs(heightMm - high)).toBeLessThan(0.4);
      }
      const text = tight(said(found));
      for (const words of [line, 'For the club', 'Loads and margins', 'Cautions', '50 mm']) {
        expect(text).toContain(tight(words));
      }
      expect(text).not.toContain(tight('Demo heads'));
      expect(text).not.toContain(tight('What is in it'));
      expect(found.images).toBe(1);
      // Every sheet has its foot, all within the margins of 14 mm.
      const foot = tight('An estimate from the dimensions and weights given.');
      expect(text.split(foot).length - 1).toBe(found.pages.length);
      for (const { x, width } of found.texts) {
        expect(x).toBeGreaterThan(13.9);
        expect(x + width).toBeLessThan(wide - 13.6);
      }
      await expect(page.getByTestId('report-remark')).toHaveValue('For the club');
      await expect(sheetOf(page)).toBeVisible();
    }
  });

  test('has the sections that are chosen, also in the saved PDF, and keeps the choice', async ({
    page,
  }) => {
    await withoutFilePickers(page);
    await openHead(page);
    await openReport(page);
    await page.getByTestId('report-section-balance').uncheck();
    await page.getByTestId('report-revision').fill('C');
    await expect(sheetOf(page).locator('[data-section="balance"]')).toHaveCount(0);
    await expect(sheetOf(page)).toContainText('C (content');
    const mark = /content ([0-9a-f]{8})/.exec(await sheetOf(page).innerText())?.[1] ?? 'none';
    const found = await savedPdf(page);
    const text = said(found);
    expect(text).toContain(plain(await verdict(page)));
    expect(text).toContain(`C (content ${mark})`);
    expect(text).not.toContain('In balance: all grips are alike');
    expect(found.images).toBe(1);
    expect(found.links).toHaveLength(1);
    expect(found.links[0]).toMatch(/#d=[\w-]+$/);
    await expect(page.getByRole('status').filter({ hasText: 'Handed' })).toBeVisible();

    await page.getByTestId('lower-files').click();
    await page.getByTestId('lower-report').click();
    await expect(page.getByTestId('report-section-balance')).not.toBeChecked();
    await expect(page.getByTestId('report-revision')).toHaveValue('C');
  });

  test('is dark on white in the dark theme, on the screen and in print', async ({ page }) => {
    await page.emulateMedia({ colorScheme: 'dark' });
    await openHead(page);
    await openReport(page);
    const colours = (selector: string) =>
      page.locator(selector).evaluate((element) => {
        const style = getComputedStyle(element);
        return [style.color, style.backgroundColor];
      });
    const light = ['rgb(26, 29, 27)', 'rgb(255, 255, 255)'];
    expect(await colours('[data-testid="report-sheet"] .report-paper')).toEqual(light);
    await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
    expect(await colours('.report-print .report-paper')).toEqual(light);
    expect((await colours('body'))[1]).toBe('rgb(255, 255, 255)');
    await expect(page.locator('.app')).toBeHidden();
  });

  test('stands still while the pitch is dragged, and follows when it rests', async ({ page }) => {
    await openHead(page);
    await openDemo(page, 'Long bolt');
    await openReport(page);
    const before = await sheetOf(page).innerText();
    await page.evaluate(() => {
      const sheet = document.querySelector('[data-testid="report-sheet"]');
      if (!sheet) throw new Error('no sheet');
      const counted = window as unknown as { changes: number };
      counted.changes = 0;
      new MutationObserver((changes) => {
        counted.changes += changes.length;
      }).observe(sheet, { subtree: true, childList: true, attributes: true, characterData: true });
    });
    const knob = await page.getByTestId('dial-knob').boundingBox();
    if (!knob) throw new Error('the dial has no knob');
    const [x, y] = [knob.x + knob.width / 2, knob.y + knob.height / 2];
    await page.mouse.move(x, y);
    await page.mouse.down();
    for (let k = 1; k <= 12; k++) await page.mouse.move(x, y - 3 * k);
    await settled(page);
    const during = await page.evaluate(() => (window as unknown as { changes: number }).changes);
    await page.mouse.up();
    expect(during).toBe(0);
    await expect.poll(() => sheetOf(page).innerText()).not.toBe(before);
  });
});
