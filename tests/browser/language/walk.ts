import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { BrowserContext, Page } from '@playwright/test';
import { pseudo, ROOM_TEXTS } from '../../support/pseudo';
import { expect } from '../fixtures';
import { settled } from '../head';

/** Puts the marked language in the place of German. */
export async function markGerman(context: BrowserContext): Promise<void> {
  const { opening, later } = pseudo();
  const rooms = ROOM_TEXTS.map((room) => `${room}: async () => later`);
  const body = `
    const later = ${JSON.stringify(later)};
    export const GERMAN = { opening: ${JSON.stringify(opening)}, rooms: { ${rooms.join(', ')} } };
  `;
  await context.route(/\/assets\/de-[\w-]+\.js$/, (route) =>
    route.fulfill({ contentType: 'text/javascript', body }),
  );
}

const EXAMPLES = fileURLToPath(new URL('../../../assets/bench/', import.meta.url));

/**
 * Looks at one screen after the other; `see` is told what it sees and, where the rest of the page is as it was on a screen
 * before, a selector of what is new.
 */
export type See = (screen: string, changed?: string) => Promise<void>;
type Walk = (page: Page, see: See) => Promise<void>;

/** Short walks over every screen, each from a page that was just opened with the first demo. */
export const WALKS: Readonly<Record<string, Walk>> = {
  'head, menus and dialogs': inTurn(walkHead, walkMenus),
  'fields of every part': walkParts,
  neutralise: walkNeutralise,
  'make and learn': inTurn(walkMake, walkLearn, walkLesson),
  bench: walkBench,
};

function inTurn(...walks: readonly Walk[]): Walk {
  return async (page, see) => {
    for (const walk of walks) await walk(page, see);
  };
}

async function tabs(page: Page, names: readonly string[], see: See): Promise<void> {
  for (const [k, name] of names.entries()) {
    await page.getByTestId(`lower-${name}`).click();
    await shown(page);
    await see(`tab ${name}`, k === 0 ? undefined : '.lower-panel');
  }
}

/** Waits until what was fetched for a room is there and has been drawn. */
async function shown(page: Page): Promise<void> {
  await expect(page.locator('.app-loading')).toHaveCount(0);
  await settled(page);
}

async function walkHead(page: Page, see: See): Promise<void> {
  await see('the first page');
  const field = page.getByTestId('input-extensionLengthMm');
  await field.fill('7..7');
  await field.press('Enter');
  await see('a value refused');
  await field.press('Escape');
  await tabs(page, ['pitch', 'speed', 'air', 'loads', 'balance'], see);
  await page.getByTestId('rail-whole').click();
  for (const fold of await page.locator('details.fields-fold, .fields-fold-head').all()) {
    await fold.click({ timeout: 1000 }).catch(() => {});
  }
  await see('conditions');
}

async function walkMenus(page: Page, see: See): Promise<void> {
  await page.getByTestId('rail-part-bolt').click();
  for (const name of ['gallery', 'add-part']) {
    await page.getByTestId(name).click();
    await see(`menu ${name}`, '[role="menu"]');
    await page.keyboard.press('Escape');
  }
  for (const name of [
    'help',
    'designs',
    'share',
    'open-mass-card',
    'open-shelf',
    'catalogue-choose',
  ]) {
    await page.getByTestId(name).first().click();
    await page.locator('dialog[open]').waitFor();
    await shown(page);
    await see(`dialog ${name}`, 'dialog[open]');
    await page.keyboard.press('Escape');
  }
  await page.locator('.app-foot-button').click();
  await see('cautions', 'dialog[open]');
  await page.keyboard.press('Escape');
}

async function walkParts(page: Page, see: See): Promise<void> {
  const rows = page.locator('[data-testid^="rail-part-"]');
  for (let k = 0; k < (await rows.count()); k++) {
    await rows.nth(k).click({ position: { x: 40, y: 10 } });
    for (const fold of await page.locator('.fields-fold:not([open]) > summary').all()) {
      await fold.click({ timeout: 1000 }).catch(() => {});
    }
    await see(`part ${k}`, k === 0 ? undefined : '[data-testid="fields"]');
  }
}

async function walkNeutralise(page: Page, see: See): Promise<void> {
  await page.getByTestId('room-neutralise').click();
  await tabs(page, ['answers', 'family', 'closely', 'clearance', 'tryOuts'], see);
  await page.getByTestId('goal-find').click();
  await page.getByTestId('lower-answers').click();
  await page.getByTestId('answers-table').waitFor();
  await see('answers found', '.lower-panel');
}

async function walkMake(page: Page, see: See): Promise<void> {
  await page.getByTestId('room-make').click();
  await tabs(page, ['drawing', 'files'], see);
  await page.getByTestId('lower-report').click();
  // Its picture is taken on the stage.
  await page.getByTestId('report-sheet').locator('img').waitFor();
  await see('tab report', '.lower-panel');
}

async function walkBench(page: Page, see: See): Promise<void> {
  await page.getByTestId('room-bench').click();
  await tabs(page, ['benchPlan', 'readings', 'fit', 'correct', 'practice'], see);
  await page.getByTestId('lower-readings').click();
  const files = readdirSync(EXAMPLES).filter((name) => name.endsWith('.csv'));
  await page.getByTestId('bench-file').setInputFiles(files.map((name) => join(EXAMPLES, name)));
  await page.getByTestId('bench-preview').waitFor();
  await see('readings understood', '.lower-panel');
  await page.getByTestId('bench-take-all').click();
  await tabs(page, ['readings', 'fit', 'correct'], see);
}

async function walkLearn(page: Page, see: See): Promise<void> {
  await page.getByTestId('room-learn').click();
  await page.getByTestId('lessons').waitFor();
  await see('lessons');
  await tabs(page, ['pitch', 'letGo', 'pulls', 'racket', 'words'], see);
}

async function walkLesson(page: Page, see: See): Promise<void> {
  await page.getByTestId('room-learn').click();
  await see('lessons');
  await page.getByTestId('lesson-two-lumps').click();
  await page.getByTestId('choice-0').check();
  await page.getByTestId('lesson-answer').click();
  await page.getByTestId('lesson-told').waitFor();
  await see('a lesson, answered');
}
