import type { Browser, Page } from '@playwright/test';
import { handleAt, settled, stageDrawn, withoutFilePickers } from '../../browser/head';
import { headOf } from './heads';
import { pictureBegins, type ScriptTime, scriptTimeOf } from './scriptTime';

/** Opens a head with everything shown: every layer of the stage, the shares of the chart, its table, the fields of the bolt. */
export async function openEverything(page: Page, parts: number): Promise<void> {
  await withoutFilePickers(page);
  await page.goto('./');
  await stageDrawn(page);
  // What a newcomer may try is ticked off as it happens, and is rendered then.
  await page.getByTestId('first-dismiss').click();
  // A key that comes while the page is still busy with its opening may be lost: pressed again.
  const chooser = page.waitForEvent('filechooser');
  const again = setInterval(() => void page.keyboard.press('Control+o'), 5000);
  await page.keyboard.press('Control+o');
  const chosen = await chooser.finally(() => clearInterval(again));
  await chosen.setFiles({
    name: 'head.json',
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify(headOf(parts))),
  });
  await page.waitForFunction(
    (count) => document.querySelectorAll('.rail-row[data-part]').length >= count,
    parts,
  );
  await page.getByTestId('rail-part-bolt').click();
  const off = page.locator('.stage-toggle[aria-pressed="false"]');
  while ((await off.count()) > 0) await off.first().click();
  await page.getByTestId('chart-table-toggle').click();
  await page.getByTestId('curve-table').waitFor();
  await settled(page);
}

/** A way to and fro, so that a gesture can be as long as one likes. */
function toAndFro(step: number, span: number): number {
  const phase = step % (2 * span);
  return phase < span ? phase : 2 * span - phase;
}

/** Drags the head of the bolt longer and shorter. */
export async function timeBoltDrag(
  browser: Browser,
  page: Page,
  frames: number,
): Promise<ScriptTime> {
  const from = await handleAt(page, 'bolt', 'extensionLengthMm');
  return timeDrag(browser, page, frames, from, (k) => ({ x: 0, y: -toAndFro(k, 60) }));
}

/** Turns the pointer of the dial. */
export async function timePitchDrag(
  browser: Browser,
  page: Page,
  frames: number,
): Promise<ScriptTime> {
  const box = await page.getByTestId('dial-knob').boundingBox();
  if (!box) throw new Error('timePitchDrag(): the dial has no knob');
  const from = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  return timeDrag(browser, page, frames, from, (k) => ({ x: 0, y: -toAndFro(k, 60) }));
}

interface Spot {
  readonly x: number;
  readonly y: number;
}

async function timeDrag(
  browser: Browser,
  page: Page,
  frames: number,
  from: Spot,
  by: (step: number) => Spot,
): Promise<ScriptTime> {
  // Straight into the browser: the test library's own move runs scripts in the page to watch for dropped files.
  const input = await page.context().newCDPSession(page);
  async function moves(first: number, count: number): Promise<void> {
    for (let k = first; k < first + count; k++) {
      const { x, y } = by(k);
      const at = { x: from.x + x, y: from.y + y, button: 'left', buttons: 1 } as const;
      await input.send('Input.dispatchMouseEvent', { type: 'mouseMoved', ...at });
    }
  }
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  // The compiler has seen everything by then.
  await moves(1, 120);
  const time = await scriptTimeOf(browser, page, () => moves(121, frames));
  await page.mouse.up();
  await settled(page);
  return time;
}

/** The grip let go at 15 degrees in the room Learn, dial, chart, stage and hills with it, as slowly as it can be shown. */
export async function timeLetGo(browser: Browser, page: Page): Promise<ScriptTime> {
  await page.getByTestId('room-learn').click();
  await page.getByTestId('lower-letGo').click();
  await page.getByTestId('letgo-slowness').selectOption('2000');
  await page.getByTestId('dial-knob').focus();
  for (const key of ['PageUp', 'ArrowUp', 'ArrowUp', 'ArrowUp', 'ArrowUp', 'ArrowUp']) {
    await page.keyboard.press(key);
  }
  await settled(page);
  // What is fetched when a grip is first let go has come by then.
  await page.getByTestId('letgo-go').click();
  await page.waitForTimeout(2000);
  return scriptTimeOf(browser, page, () => page.waitForTimeout(6000), pictureBegins);
}

/** The free body of the room Learn, thrown about its middle axis. */
export async function timeRacket(browser: Browser, page: Page): Promise<ScriptTime> {
  await page.getByTestId('room-learn').click();
  await page.getByTestId('lower-racket').click();
  await page.getByTestId('racket-throw').click();
  await page.waitForTimeout(2000);
  return scriptTimeOf(browser, page, () => page.waitForTimeout(6000), pictureBegins);
}
