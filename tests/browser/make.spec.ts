import { readFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import DxfReader, { type ICircleEntity, type ILineEntity } from 'dxf-parser';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { expect, test } from './fixtures';
import { drag, fieldValue, handleAt, openHead, settled, verdict, withoutFilePickers } from './head';

async function openDrawing(page: Page): Promise<void> {
  await page.getByTestId('room-make').click();
  await page.getByTestId('lower-drawing').click();
  await expect(page.getByTestId('drawing-room')).toBeVisible();
}

/** Presses a button that saves, and gives the bytes of what came down. */
async function saved(page: Page, button: string) {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByTestId(button).click(),
  ]);
  return { name: download.suggestedFilename(), bytes: await readFile(await download.path()) };
}

/** What of the paper is looked at. */
function shownBox(page: Page) {
  return page.getByTestId('drawing-sheet').getAttribute('viewBox');
}

test.describe('the workshop drawing', () => {
  test('is of the part that is chosen in the list or the rail, on the sheet that is chosen, and the choice is kept', async ({
    page,
  }) => {
    await openHead(page);
    await openDrawing(page);
    const sheet = page.getByTestId('drawing-sheet');
    await page.getByTestId('drawing-part').selectOption({ label: 'Locking nut M3' });
    await expect(sheet).toHaveAttribute('aria-label', /Locking nut M3/);
    await expect(sheet).toContainText('M3');
    await page.getByTestId('drawing-format').selectOption('A4 portrait');
    await page.getByTestId('drawing-projection').selectOption('third');
    await page.getByTestId('drawing-unit').selectOption('in');
    await expect(sheet).toHaveAttribute('data-format', 'A4 portrait');
    await expect(sheet).toContainText('Lengths in inches');

    // The blade has no drawing: that is said, and the nut's stays.
    await page.getByText('Blade 92', { exact: false }).first().click();
    await expect(page.getByTestId('drawing-undrawn')).toContainText('Blade 92');
    await expect(sheet).toHaveAttribute('aria-label', /Locking nut M3/);

    await page.reload();
    await expect(page.getByTestId('drawing-sheet')).toHaveAttribute('data-format', 'A4 portrait');
    await expect(page.getByTestId('drawing-unit')).toHaveValue('in');
  });

  test('is zoomed and moved by wheel, drag, buttons and keys, and shown whole again', async ({
    page,
  }) => {
    await openHead(page);
    await openDrawing(page);
    const whole = await shownBox(page);
    const sheet = page.getByTestId('drawing-sheet');
    await sheet.hover();
    await page.mouse.wheel(0, -400);
    await expect.poll(() => shownBox(page)).not.toBe(whole);
    const near = await shownBox(page);
    const box = await sheet.boundingBox();
    if (!box) throw new Error('the sheet is not shown');
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x - 60, y - 30, { steps: 4 });
    await page.mouse.up();
    const moved = await shownBox(page);
    expect(moved).not.toBe(near);
    // As far as the pointer, whatever the zoom: the same width, the corner moved to the right and down.
    const numbers = [near, moved].map((text) => (text ?? '').split(' ').map(Number));
    expect(numbers[1][2]).toBeCloseTo(numbers[0][2], 6);
    expect(numbers[1][0]).toBeGreaterThan(numbers[0][0]);
    expect(numbers[1][1]).toBeGreaterThan(numbers[0][1]);

    await page.getByTestId('drawing-fit').click();
    expect(await shownBox(page)).toBe(whole);
    await page.locator('.drawing-view').focus();
    await page.keyboard.press('+');
    const larger = await shownBox(page);
    expect(larger).not.toBe(whole);
    await page.keyboard.press('ArrowRight');
    expect(await shownBox(page)).not.toBe(larger);
    await page.keyboard.press('0');
    expect(await shownBox(page)).toBe(whole);
  });

  test('stays as it is while a part is dragged on the stage, and is of the new part when it is let go', async ({
    page,
  }) => {
    await openHead(page);
    await openDrawing(page);
    // The stage gives the sheet its room first: a handle that still moves would be missed.
    let last = '';
    await expect
      .poll(async () => {
        const at = await page.evaluate(() =>
          JSON.stringify(
            window.stillgrip?.scene?.handleScreenPosition('bolt', 'extensionLengthMm') ?? null,
          ),
        );
        const isStill = at !== 'null' && at === last;
        last = at;
        return isStill;
      })
      .toBe(true);
    const sheet = page.getByTestId('drawing-sheet');
    const before = await sheet.textContent();
    await page.evaluate(() => {
      const room = document.querySelector('[data-testid="drawing-room"]');
      const counts = { changes: 0 };
      new MutationObserver((found) => {
        counts.changes += found.length;
      }).observe(room as Element, {
        subtree: true,
        childList: true,
        characterData: true,
        attributes: true,
      });
      Object.assign(window, { drawingChanges: counts });
    });
    await drag(page, await handleAt(page, 'bolt', 'extensionLengthMm'), { dx: 0, dy: -40 }, false);
    const changes = await page.evaluate(
      () => (window as unknown as { drawingChanges: { changes: number } }).drawingChanges.changes,
    );
    expect(changes).toBe(0);
    expect(await fieldValue(page, 'extensionLengthMm')).not.toBe(0);
    await page.mouse.up();
    await settled(page);
    await expect.poll(() => sheet.textContent()).not.toBe(before);
  });

  test('is saved as SVG, DXF and PDF that other programs read: the sheet in its size, the washer in its own', async ({
    page,
  }) => {
    await withoutFilePickers(page);
    await openHead(page);
    await openDrawing(page);
    await page.getByTestId('drawing-part').selectOption({ label: 'Washer under the nut' });
    await page.getByTestId('drawing-format').selectOption('A4 landscape');

    const svg = await saved(page, 'drawing-svg');
    expect(svg.name).toMatch(/washer-under-the-nut\.svg$/);
    // As a picture, which no browser makes of a text that is not well formed; in CSS pixels, 96 to the inch.
    const shown = await page.evaluate(async (text) => {
      const picture = new Image();
      // The page's policy lets no picture in from a blob.
      picture.src = `data:image/svg+xml,${encodeURIComponent(text)}`;
      await picture.decode();
      return [picture.naturalWidth, picture.naturalHeight];
    }, svg.bytes.toString('utf8'));
    for (const [i, mm] of [297, 210].entries()) {
      expect(Math.abs(shown[i] - (mm * 96) / 25.4)).toBeLessThanOrEqual(1);
    }
    expect(svg.bytes.toString('utf8')).toContain('width="297mm" height="210mm"');

    const dxf = await saved(page, 'drawing-dxf');
    expect(dxf.name).toMatch(/\.dxf$/);
    const read = new DxfReader().parseSync(dxf.bytes.toString('utf8'));
    const circles = read?.entities.filter(
      (one) => one.type === 'CIRCLE' && one.layer === 'VISIBLE',
    ) as ICircleEntity[];
    // The demo head's washer, ISO 7089 M3: 7 mm outside, 3.2 mm inside, 0.5 mm thick.
    expect(circles.map(({ radius }) => 2 * radius).toSorted((a, b) => a - b)).toEqual([
      expect.closeTo(3.2, 5),
      expect.closeTo(7, 5),
    ]);
    const lines = read?.entities.filter(
      (one) => one.type === 'LINE' && one.layer === 'VISIBLE',
    ) as ILineEntity[];
    expect(Math.min(...lines.flatMap(({ vertices }) => vertices.map(({ x }) => x)))).toBeCloseTo(
      0,
      5,
    );

    const pdf = await saved(page, 'drawing-pdf');
    const doc = await getDocument({ data: new Uint8Array(pdf.bytes), verbosity: 0 }).promise;
    const first = await doc.getPage(1);
    const { width, height } = first.getViewport({ scale: 25.4 / 72 });
    expect([width, height]).toEqual([expect.closeTo(297, 1), expect.closeTo(210, 1)]);
    const { items } = await first.getTextContent();
    const words = items.map((item) => ('str' in item ? item.str : ''));
    expect(words.some((text) => text.startsWith('\u00d87'))).toBe(true);
    await expect(page.getByTestId('drawing-said')).toContainText('.pdf');
  });

  test('is printed alone, on paper of its size', async ({ page }) => {
    await openHead(page);
    await openDrawing(page);
    await page.getByTestId('drawing-format').selectOption('A4 portrait');
    const bytes = await page.pdf({ preferCSSPageSize: true });
    const doc = await getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise;
    expect(doc.numPages).toBe(1);
    const first = await doc.getPage(1);
    const { width, height } = first.getViewport({ scale: 25.4 / 72 });
    // The browser rounds paper to whole CSS pixels, 0.26 mm.
    expect(Math.abs(width - 210)).toBeLessThan(0.3);
    expect(Math.abs(height - 297)).toBeLessThan(0.3);
    const { items } = await first.getTextContent();
    const words = items.map((item) => ('str' in item ? item.str : '')).join('');
    expect(words.replace(/\s+/g, ' ')).toContain('50 mm \u2013 measure');
    expect(words).not.toContain('Centres itself');
  });

  test('says what the scale must show, and the reading becomes the mass of the part in one undo step', async ({
    page,
  }) => {
    await openHead(page);
    const before = await verdict(page);
    await openDrawing(page);
    await page.getByTestId('drawing-part').selectOption({ label: 'Locking nut M3' });
    await page.getByTestId('drawing-step').selectOption('0.001');
    const proof = page.getByTestId('drawing-proof');
    await expect(proof).toContainText(/must show 0\.\d{3}\sg to 0\.\d{3}\sg/);
    const [least, most] = ((await proof.innerText()).match(/0\.\d{3}(?=\sg(?: to|\.))/g) ?? []).map(
      Number,
    );
    await expect(page.getByTestId('drawing-sheet')).toContainText(
      `${least.toFixed(3)} \u2026 ${most.toFixed(3)} g`,
    );

    const field = page.getByTestId('drawing-weighed');
    await field.fill('a lot');
    await page.getByTestId('drawing-take').click();
    await expect(page.locator('.drawing-fault')).toContainText('a lot');
    await expect(field).toHaveValue('a lot');

    await field.fill(((least + most) / 2).toFixed(3));
    await expect(page.getByTestId('drawing-verdict')).toHaveAttribute('data-kind', 'inside');
    await field.fill('0.9');
    await expect(page.getByTestId('drawing-verdict')).toHaveAttribute('data-kind', 'heavy');
    await field.press('Enter');
    await settled(page);
    await expect(page.getByTestId('drawing-counted')).toContainText('0.900');
    expect(await verdict(page)).not.toBe(before);

    await field.press('Control+z');
    await settled(page);
    await expect(page.getByTestId('drawing-counted')).toHaveCount(0);
    await expect(field).toHaveValue('');
    expect(await verdict(page)).toBe(before);
  });
});
