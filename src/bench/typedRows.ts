import { fail, type Result, succeed } from '../engine/result';
import { OUNCE_FORCE_N } from '../engine/units';
import { BENCH_LIMITS, type BenchRow } from './readings/benchSection';
import { travelWord } from './readings/headings';
import type { Travel } from './readings/types';

/** A row of the grid as it stands in its cells. */
export interface GridRow {
  readonly pitch: string;
  readonly force: string;
  readonly travel: Travel | '';
  readonly note: string;
}

export const EMPTY_ROW: GridRow = { pitch: '', force: '', travel: '', note: '' };

/** What is wrong with a cell of the grid. */
export interface GridFault {
  /** From 1, as the grid counts. */
  readonly row: number;
  readonly field: 'pitch' | 'force';
  readonly why: 'missing' | 'notANumber' | 'outOfRange';
  readonly min: number;
  readonly max: number;
  readonly unit: string;
}

/**
 * Rows of a grid in degrees and newtons (or ounces-force); empty rows are passed over. All faults, or all rows: nothing is
 * taken in part. A decimal comma counts as a point.
 */
export function rowsOfGrid(
  grid: readonly GridRow[],
  forceUnit: 'N' | 'ozf',
): Result<readonly BenchRow[], readonly GridFault[]> {
  const faults: GridFault[] = [];
  const perUnit = forceUnit === 'N' ? 1 : OUNCE_FORCE_N;
  const rows: BenchRow[] = [];
  for (const [k, { pitch, force, travel, note }] of grid.entries()) {
    if (`${pitch}${force}${note}`.trim() === '') continue;
    const pitchDeg = cell(pitch, k + 1, 'pitch', BENCH_LIMITS.pitchDeg, faults);
    const { min, max } = BENCH_LIMITS.forceN;
    const limits = { min: min / perUnit, max: max / perUnit, unit: forceUnit };
    const value = cell(force, k + 1, 'force', limits, faults);
    rows.push({
      pitchDeg,
      forceN: value * perUnit,
      ...(travel !== '' && { travel }),
      ...(note.trim() !== '' && { note: note.trim() }),
    });
  }
  return faults.length > 0 ? fail(faults) : succeed(rows);
}

function cell(
  text: string,
  row: number,
  field: GridFault['field'],
  { min, max, unit }: { readonly min: number; readonly max: number; readonly unit: string },
  faults: GridFault[],
): number {
  const plain = text.trim().replace('\u2212', '-').replace(',', '.');
  const value = plain === '' ? Number.NaN : Number(plain);
  const put = (why: GridFault['why']) => faults.push({ row, field, why, min, max, unit });
  if (plain === '') put('missing');
  else if (!/^[-+]?(\d+\.?\d*|\.\d+)(e[-+]?\d+)?$/i.test(plain)) put('notANumber');
  else if (value < min || value > max) put('outOfRange');
  return value;
}

/** Cells pasted from a spreadsheet: pitch, force, way of travel, note; tabs or semicolons between them. */
export function gridFromPaste(text: string): GridRow[] {
  return text
    .split(/\r\n|\r|\n/)
    .filter((line) => line.trim() !== '')
    .map((line) => {
      const [pitch = '', force = '', travel = '', note = ''] = line
        .split(/[\t;]/)
        .map((part) => part.trim());
      return { pitch, force, travel: travelWord(travel) ?? '', note };
    });
}
