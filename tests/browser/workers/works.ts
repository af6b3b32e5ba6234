import type { Page } from '@playwright/test';
import { writeStl } from '../../../src/meshes/writeStl';
import { ballMesh } from '../../support/meshes';
import { dropFiles, makeStep } from '../tour';

/** A piece of work that a kind of worker does for the page. */
export interface Work {
  /** Name of the worker's file. */
  readonly worker: string;
  /** Brings the page to where the work is started. */
  readonly prepare: (page: Page) => Promise<void>;
  /** `turn` counts the starts; work with two `turns` is another one every other time. */
  readonly start: (page: Page, turn: number) => Promise<void>;
  readonly turns?: 1 | 2;
  /** Puts away what came of it, so that it can be started again. */
  readonly clear?: (page: Page) => Promise<void>;
  /** How long after its start it may be killed at the latest, ms. */
  readonly within: number;
}

export async function openClosely(page: Page): Promise<void> {
  await page.getByTestId('room-neutralise').click();
  await page.getByTestId('lower-closely').click();
}

export async function fillSamples(page: Page, count: number): Promise<void> {
  await page.getByTestId('input-run-samples').fill(String(count));
  await page.getByTestId('input-run-samples').press('Enter');
}

/** What depends on the head is worked out anew. */
async function changeHead(page: Page, turn: number): Promise<void> {
  const field = page.getByTestId('input-extensionLengthMm');
  await field.fill(turn % 2 === 0 ? '9' : '9.5');
  await field.press('Enter');
}

export const WORKS: readonly Work[] = [
  {
    worker: 'searchWorker',
    prepare: async (page) => {
      await page.getByTestId('room-neutralise').click();
      await page.getByTestId('offer-nut-catalogue').check();
    },
    start: (page) => page.getByTestId('goal-find').click(),
    within: 200,
  },
  {
    worker: 'familyWorker',
    prepare: async (page) => {
      await page.getByTestId('room-neutralise').click();
      await page.getByTestId('lower-family').click();
    },
    start: changeHead,
    turns: 2,
    within: 200,
  },
  {
    worker: 'slopeWorker',
    prepare: openClosely,
    start: changeHead,
    turns: 2,
    within: 60,
  },
  {
    worker: 'toleranceWorker',
    prepare: async (page) => {
      await openClosely(page);
      await fillSamples(page, 4000);
    },
    start: (page) => page.getByTestId('tolerance-start').click(),
    within: 200,
  },
  {
    worker: 'worker',
    prepare: (page) => page.getByTestId('room-head').click(),
    start: (page) => {
      const bytes = writeStl([ballMesh(10, 160)], 1, 'ball');
      return dropFiles(page, [{ name: 'ball.stl', bytes }]);
    },
    clear: (page) => page.keyboard.press('Escape'),
    within: 200,
  },
  {
    worker: 'offerWorker',
    prepare: async (page) => {
      await page.getByTestId('room-bench').click();
      await page.getByTestId('lower-readings').click();
    },
    start: (page, turn) => {
      const rows = Array.from({ length: 40_000 }, (_, k) => `${k / 20},${Math.sin(k / 99)}`);
      const table = `time [s],force [N]\n${rows.join('\n')}\n`;
      return page.getByTestId('bench-file').setInputFiles({
        name: `log${turn}.csv`,
        mimeType: 'text/csv',
        buffer: Buffer.from(table),
      });
    },
    clear: (page) => page.getByRole('button', { name: 'Cancel', exact: true }).click(),
    within: 200,
  },
  {
    worker: 'stepWorker',
    prepare: async (page) => {
      await page.getByTestId('room-make').click();
      await page.getByTestId('lower-files').click();
    },
    start: (page, turn) => makeStep(page, turn % 2 === 0 ? 'bolt' : 'grip'),
    turns: 2,
    within: 2000,
  },
];
