import { readdirSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Page } from '@playwright/test';
import { writeStl } from '../../src/meshes/writeStl';
import { boxMesh } from '../support/meshes';
import { expect } from './fixtures';
import { drag, settled, verdict } from './head';

/**
 * A tour of the page that does the work of every room and looks into every tab, by what the page itself shows: nothing of
 * it asks the stage, so that it can be made without one. The head is the first demo, put back at the end of each part.
 */
export async function tourHead(page: Page): Promise<void> {
  await page.getByTestId('room-head').click();
  const before = await verdict(page);
  await turnDial(page, 30);
  await expect(page.getByTestId('chart-cursor')).toHaveAttribute(
    'aria-valuenow',
    /^(2[5-9]|3[0-5])/,
  );
  await page.getByTestId('rail-part-bolt').click();
  const field = page.getByTestId('input-extensionLengthMm');
  await field.fill('9');
  await field.press('Enter');
  await expect(page.getByTestId('verdict-line')).not.toHaveText(before);
  for (const [tab, shows] of [
    ['speed', '.lower-panel svg, .lower-panel canvas'],
    ['air', '[data-testid="air-plot"]'],
    ['loads', '[data-testid="loads-table"] tr'],
    ['balance', '[data-testid="balance-table"] tr'],
    ['pitch', '.u-over'],
  ] as const) {
    await page.getByTestId(`lower-${tab}`).click();
    await expect(page.locator(shows).first(), tab).toBeVisible();
  }
  await page.getByTestId('undo').click();
  await expect(page.getByTestId('verdict-line')).toHaveText(before);
  await expectSound(page);
}

/** Drags the pointer of the dial to a pitch, from flat. */
async function turnDial(page: Page, pitchDeg: number): Promise<void> {
  await page.keyboard.press('0');
  const knob = page.getByTestId('dial-knob');
  const ring = await page.locator('.dial-ring').boundingBox();
  if (!ring) throw new Error('the dial has no ring');
  const radius = ring.width / 2;
  const turn = (pitchDeg * Math.PI) / 180;
  const from = { x: ring.x + ring.width, y: ring.y + ring.height / 2 };
  const by = { dx: radius * (Math.cos(turn) - 1), dy: -radius * Math.sin(turn) };
  await drag(page, from, by);
  expect(Math.abs(Number(await knob.getAttribute('aria-valuenow')) - pitchDeg)).toBeLessThan(5);
}

export async function tourNeutralise(page: Page): Promise<void> {
  await page.getByTestId('room-neutralise').click();
  const before = await verdict(page);
  await page.getByTestId('goal-find').click();
  const first = page.getByTestId('answer-1');
  await first.getByRole('button', { name: 'Try out' }).click({ timeout: 60_000 });
  await expect(page.getByTestId('verdict-line')).not.toHaveText(before);
  await page.getByTestId('undo').click();
  await page.getByTestId('lower-answers').click();
  await expect(first).toBeVisible();
  await page.getByTestId('lower-family').click();
  await expect(page.getByTestId('family-plot').locator('.plot-line').first()).toHaveAttribute(
    'd',
    /^M.*L/,
    { timeout: 60_000 },
  );
  await page.getByTestId('lower-closely').click();
  await expect(page.getByTestId('slope-bolt/headHeightMm')).toContainText('per 0.1', {
    timeout: 60_000,
  });
  await page.getByTestId('lower-clearance').click();
  await expect(page.getByTestId('clearance-room')).toBeVisible();
  await page.getByTestId('lower-tryOuts').click();
  await expect(page.getByTestId('try-outs-room')).toBeVisible();
  await expectSound(page);
}

/** Names of files that came down, and their first letters. */
export type Saved = Readonly<Record<string, Buffer>>;

/** Saves a file of every kind but STEP. `withPicture` false: there is no stage to take a picture of. */
export async function tourMake(page: Page, withPicture: boolean): Promise<Saved> {
  const came: Record<string, Buffer> = {};
  const save = async (button: string, kind: string) => {
    const [download] = await Promise.all([
      page.waitForEvent('download', { timeout: 60_000 }),
      page.getByTestId(button).click(),
    ]);
    expect(download.suggestedFilename()).toMatch(new RegExp(`\\.${kind}$`));
    came[button] = await readFile(await download.path());
    expect(came[button].length, kind).toBeGreaterThan(400);
  };
  await page.getByTestId('room-make').click();
  await page.getByTestId('lower-drawing').click();
  for (const kind of ['svg', 'dxf', 'pdf']) await save(`drawing-${kind}`, kind);
  await page.getByTestId('lower-report').click();
  await expect(page.getByTestId('report-sheet')).toContainText(await verdict(page));
  await expect(page.getByTestId('report-sheet').locator('img')).toHaveCount(withPicture ? 1 : 0);
  await save('report-pdf', 'pdf');
  await page.getByTestId('lower-files').click();
  for (const [format, kind] of [
    ['stl', 'stl'],
    ['threeMf', '3mf'],
    ['glb', 'glb'],
  ]) {
    await page.getByTestId('files-format').selectOption(format);
    await save('files-save-solid', kind);
    came[kind] = came['files-save-solid'];
  }
  await page.getByTestId('files-which').selectOption('dial');
  await save('files-save-picture', 'png');
  if (withPicture) {
    await page.getByTestId('files-which').selectOption('stage');
    await save('files-save-picture', 'png');
  }
  for (const table of ['curve', 'parts', 'loads']) await save(`files-save-${table}`, 'csv');
  await save('files-save-design', 'json');
  await expectSound(page);
  return came;
}

/** Makes a STEP file in the room of files, the CAD kernel fetched or kept. */
export async function makeStep(page: Page, part = 'bolt'): Promise<void> {
  await page.getByTestId('room-make').click();
  await page.getByTestId('lower-files').click();
  await page.getByTestId('files-what').selectOption('part');
  await page.getByTestId('files-part').selectOption(part);
  await page.getByTestId('files-format').selectOption('step');
  await page.getByTestId('files-step-make').click();
}

const EXAMPLES = fileURLToPath(new URL('../../assets/bench/', import.meta.url));

export async function tourBench(page: Page): Promise<void> {
  await page.getByTestId('room-bench').click();
  await page.getByTestId('lower-benchPlan').click();
  await expect(page.getByTestId('bench-expected').locator('tbody tr').first()).toBeVisible();
  await page.getByTestId('lower-readings').click();
  const files = readdirSync(EXAMPLES).filter((name) => name.endsWith('.csv'));
  await page.getByTestId('bench-file').setInputFiles(files.map((name) => join(EXAMPLES, name)));
  await page.getByTestId('bench-take-all').click();
  await expect(page.getByTestId('bench-runs').locator('li')).toHaveCount(files.length);
  await page.getByTestId('lower-fit').click();
  await expect(page.getByTestId('bench-plot-left').locator('.bench-point').first()).toBeVisible();
  await page.getByTestId('lower-correct').click();
  await expect(page.getByTestId('bench-lack')).not.toBeEmpty();
  await page.getByTestId('lower-practice').click();
  await page.getByTestId('bench-make').click();
  await expect(page.getByTestId('bench-practice-said')).not.toBeEmpty();
  await expectSound(page);
  // Taking the runs is one undo step for each.
  for (let k = 0; k < files.length; k++) await page.getByTestId('undo').click();
}

export async function tourLearn(page: Page): Promise<void> {
  await page.getByTestId('room-learn').click();
  await page.getByTestId('lesson-two-lumps').click();
  await expect(page.getByTestId('lesson-line')).toBeVisible();
  await page.getByTestId('choice-0').check();
  await page.getByTestId('lesson-answer').click();
  await expect(page.getByTestId('lesson-told')).toBeVisible();
  await page.getByTestId('lessons-all').click();
  await expect(page.getByTestId('lesson-line')).toHaveCount(0);

  await page.getByTestId('lower-letGo').click();
  await turnDial(page, 20);
  await page.getByTestId('letgo-go').click();
  await expect(page.getByTestId('letgo-said')).not.toBeEmpty({ timeout: 30_000 });
  await page.getByTestId('lower-pulls').click();
  await page.getByTestId('pulls-all').click();
  await expect(page.getByTestId('pulls-total')).toContainText('N');
  await page.getByTestId('lower-racket').click();
  await page.getByTestId('racket-throw').click();
  await page.getByTestId('racket-time').fill('8');
  await expect(page.getByTestId('racket-flips')).not.toBeEmpty();
  await page.getByTestId('lower-words').click();
  await page.getByTestId('words-search').fill('precone');
  await expect(page.getByTestId('words-entry').first()).toBeVisible();
  await page.getByTestId('lower-pitch').click();
  await expectSound(page);
}

/** Brings in a body of triangles and takes it out again. */
export async function tourImport(page: Page): Promise<void> {
  await page.getByTestId('room-head').click();
  await dropFiles(page, [{ name: 'lug.stl', bytes: writeStl([boxMesh(30, 8, 6)], 1, 'lug') }]);
  await expect(page.getByTestId('import-report')).toContainText('Closed and sound');
  await page.getByTestId('import-put').click();
  await expect(page.getByTestId('rail-part-meshBody-1')).toBeVisible();
  await page.getByTestId('undo').click();
  await expect(page.getByTestId('rail-part-meshBody-1')).toHaveCount(0);
}

/** Drops files on the page as a file manager would. */
export async function dropFiles(
  page: Page,
  files: readonly { readonly name: string; readonly bytes: Uint8Array | string }[],
): Promise<void> {
  const plain = files.map(({ name, bytes }) => ({
    name,
    base64: Buffer.from(bytes as Uint8Array).toString('base64'),
  }));
  await page.evaluate((given) => {
    const carried = new DataTransfer();
    for (const { name, base64 } of given) {
      const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
      carried.items.add(new File([bytes], name));
    }
    window.dispatchEvent(new DragEvent('drop', { dataTransfer: carried, cancelable: true }));
  }, plain);
}

/** Nothing of the page has stopped or is missing. */
async function expectSound(page: Page): Promise<void> {
  await settled(page);
  await expect(page.locator('.ui-missing, .app-guard')).toHaveCount(0);
}
