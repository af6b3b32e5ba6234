import { fail, type Result, succeed } from '../result';

/** One measured or computed point of a section. */
export interface PolarRow {
  readonly angleDeg: number;
  readonly lift: number;
  readonly drag: number;
  /** About the quarter chord, nose up positive. */
  readonly moment: number;
}

/** Rows at one Reynolds number, angles ascending. */
export interface PolarBlock {
  /** Null when the table does not say: only for a table of one block, which then holds at any Reynolds number. */
  readonly reynolds: number | null;
  readonly rows: readonly PolarRow[];
}

export interface PolarTable {
  readonly name: string;
  /** In any order of Reynolds numbers. */
  readonly blocks: readonly PolarBlock[];
}

export const MOST_ROWS = 20_000;
export const MOST_BLOCKS = 200;
const MOST_DEG = 180;
/** A coefficient beyond this is a slip of unit or column. */
const MOST_COEFFICIENT = 20;

export type PolarFaultKind =
  | 'tooLong'
  | 'tooManyRows'
  | 'tooManyBlocks'
  | 'lineTooLong'
  | 'noHeader'
  | 'columnMissing'
  | 'columnRepeated'
  | 'wrongColumns'
  | 'notANumber'
  | 'notFinite'
  | 'angleOutOfRange'
  | 'coefficientOutOfRange'
  | 'dragNegative'
  | 'notAscending'
  | 'tooFewRows'
  | 'reynoldsNotPositive'
  | 'reynoldsMissing'
  | 'reynoldsRepeated'
  | 'notSymmetric';

export interface PolarFault {
  readonly kind: PolarFaultKind;
  /** Line of the file, counted from 1; of a table that is not from a file, the row counted through all blocks. */
  readonly line: number;
  /** The number that is wrong (NaN where it is a word). */
  readonly value: number;
  /** What it is held against. */
  readonly limit: number;
  /** The column or the text that is meant, or empty. */
  readonly text: string;
}

export function polarFault(
  kind: PolarFaultKind,
  line: number,
  value = Number.NaN,
  limit = Number.NaN,
  text = '',
): PolarFault {
  return { kind, line, value, limit, text: text.slice(0, 60) };
}

/** The fault of one row by itself, null when sound. */
function rowFault(row: PolarRow, line: number): PolarFault | null {
  for (const key of ['angleDeg', 'lift', 'drag', 'moment'] as const) {
    const value = row[key];
    if (!Number.isFinite(value)) return polarFault('notFinite', line, value, Number.NaN, key);
    const limit = key === 'angleDeg' ? MOST_DEG : MOST_COEFFICIENT;
    if (Math.abs(value) > limit) {
      const kind = key === 'angleDeg' ? 'angleOutOfRange' : 'coefficientOutOfRange';
      return polarFault(kind, line, value, limit, key);
    }
  }
  return row.drag < 0 ? polarFault('dragNegative', line, row.drag, 0, 'drag') : null;
}

/**
 * A table that a section can be made of: the blocks by ascending Reynolds number, or the first fault. `lines` gives
 * the line of each row, block by block. Negative drag is refused: the inflow's proof needs it (see StationInflow).
 */
export function checkPolar(
  table: PolarTable,
  lines?: readonly (readonly number[])[],
): Result<PolarTable, PolarFault> {
  let count = 0;
  const { blocks } = table;
  if (blocks.length > MOST_BLOCKS)
    return fail(polarFault('tooManyBlocks', 1, blocks.length, MOST_BLOCKS));
  if (blocks.length === 0) return fail(polarFault('tooFewRows', 1, 0, 2));
  for (const [b, block] of blocks.entries()) {
    const first = lines?.[b]?.[0] ?? count + 1;
    if (block.rows.length < 2) return fail(polarFault('tooFewRows', first, block.rows.length, 2));
    if (count + block.rows.length > MOST_ROWS)
      return fail(polarFault('tooManyRows', first, count + block.rows.length, MOST_ROWS));
    if (block.reynolds === null) {
      if (blocks.length > 1) return fail(polarFault('reynoldsMissing', first));
    } else if (!(block.reynolds > 0 && block.reynolds < Number.POSITIVE_INFINITY)) {
      return fail(polarFault('reynoldsNotPositive', first, block.reynolds, 0));
    }
    for (const [k, row] of block.rows.entries()) {
      const line = lines?.[b]?.[k] ?? count + 1;
      const fault = rowFault(row, line);
      if (fault) return fail(fault);
      const previous = k > 0 ? block.rows[k - 1].angleDeg : Number.NEGATIVE_INFINITY;
      if (row.angleDeg <= previous)
        return fail(polarFault('notAscending', line, row.angleDeg, previous));
      count++;
    }
  }
  const sorted = blocks.toSorted((p, q) => (p.reynolds ?? 0) - (q.reynolds ?? 0));
  for (let b = 1; b < sorted.length; b++) {
    const reynolds = sorted[b].reynolds ?? 0;
    if (reynolds === sorted[b - 1].reynolds) {
      const line = lines?.[blocks.indexOf(sorted[b])]?.[0] ?? 1;
      return fail(polarFault('reynoldsRepeated', line, reynolds));
    }
  }
  return succeed({ name: table.name, blocks: sorted });
}

/**
 * The table of a symmetric section of which only angles from zero up are given, completed by its mirror image (lift
 * and moment odd, drag even). A row at zero must have no lift and no moment; negative angles are a fault.
 */
export function mirrorPolar(table: PolarTable): Result<PolarTable, PolarFault> {
  const blocks: PolarBlock[] = [];
  let line = 0;
  for (const block of table.blocks) {
    const mirrored: PolarRow[] = [];
    for (const row of block.rows) {
      line++;
      if (row.angleDeg < 0)
        return fail(polarFault('notSymmetric', line, row.angleDeg, 0, 'angleDeg'));
      if (row.angleDeg > 0) {
        mirrored.push({
          angleDeg: -row.angleDeg,
          lift: -row.lift,
          drag: row.drag,
          moment: -row.moment,
        });
      } else if (row.lift !== 0 || row.moment !== 0) {
        const key = row.lift !== 0 ? 'lift' : 'moment';
        return fail(polarFault('notSymmetric', line, row[key], 0, key));
      }
    }
    blocks.push({ reynolds: block.reynolds, rows: [...mirrored.toReversed(), ...block.rows] });
  }
  return succeed({ name: table.name, blocks });
}
