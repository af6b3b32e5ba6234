import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/**
 * What the page may cost: bytes that a host sends (packed by gzip), and counted work. Counts and bytes are the same on every
 * machine, times are not: those are measured by `npm run timing:page` and held to nothing.
 */
export interface Budget {
  readonly bytes: {
    /** Before the page can be used: chart, dial and verdict. */
    readonly first: number;
    /** What is fetched when it is asked for, by the name of its script; `other` for those without an entry. */
    readonly later: Readonly<Record<string, number>>;
  };
  /** Of one step of a drag of the bolt's head in the demo head, everything counted. */
  readonly step: Readonly<Record<StepCount, number>>;
  /** The same in the real browser, with every layer of the stage, the chart's table and the fields on the page. */
  readonly frame: Readonly<Record<FrameCount, number>>;
}

/**
 * Parts weighed, posed, entries of the ledger, solutions of the air, moments asked for one by one, shares of air, rod and lag
 * worked out for curve, equilibria and bands, writes to the store, tellings.
 */
export type StepCount =
  | 'weighed'
  | 'posed'
  | 'entries'
  | 'airSolves'
  | 'moments'
  | 'termSamples'
  | 'storeWrites'
  | 'tellings';

/**
 * In one step of a drag: React commits, layouts of the page, changes of the document, pictures of the stage, strokes of the pen on
 * the chart's canvas. In one picture of the stage: calls to the card that draw, buffers handed to it and their bytes.
 */
export type FrameCount =
  | 'commits'
  | 'layouts'
  | 'changes'
  | 'pictures'
  | 'draws'
  | 'uploads'
  | 'uploadedBytes'
  | 'penStrokes';

export const BUDGET_PATH = fileURLToPath(new URL('../../budget.json', import.meta.url));

export function readBudget(): Budget {
  return JSON.parse(readFileSync(BUDGET_PATH, 'utf8')) as Budget;
}
