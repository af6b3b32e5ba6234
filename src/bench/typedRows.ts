import { MAX_NOTE } from '../design/limits';
import { fail, type Result, succeed } from '../engine/result';
import { readingFromSi, siFromReading } from '../engine/units';
import { localNumber } from '../messages/numbers';
import { plainNumber } from '../state/typed/plainNumber';
import { digits } from './digits';
import type { BenchPlan } from './plan';
import { BENCH_LIMITS, type BenchRow, type BenchRun } from './readings/benchSection';
import { cellParts } from './readings/cellValue';
import { senseWord, travelWord } from './readings/headings';
import type { Travel } from './readings/types';
import { unitFromText } from './readings/unitNames';

/** A row of the grid as it stands in its cells. */
export interface GridRow {
  /** Pitch in degrees or scale reading in mm, as the grid says. */
  readonly pitch: string;
  readonly force: string;
  readonly travel: Travel | '';
  readonly note: string;
}

export const EMPTY_ROW: GridRow = { pitch: '', force: '', travel: '', note: '' };

/** What stands in the first column of the grid. */
export type GridPlace = 'pitch' | 'scale';
export type GridUnit = 'N' | 'ozf';

/** What is known of a run beside its readings. */
export type RunAbout = Pick<
  BenchRun,
  'name' | 'speedRpm' | 'fitted' | 'armMm' | 'gauge' | 'gaugeStepN' | 'date' | 'note'
>;

/** What of it is said otherwise; undefined: not known any more. */
export type AboutChange = {
  readonly [Key in keyof RunAbout]?: RunAbout[Key] | undefined;
};

/** Readings that are being typed, as they stand: whole or not. */
export interface GridDraft {
  /** Id of the run that they were; null: a new one. */
  readonly run: string | null;
  readonly place: GridPlace;
  readonly unit: GridUnit;
  readonly rows: readonly GridRow[];
  readonly about: RunAbout;
}

/** What is wrong with a cell of the grid. */
export interface GridFault {
  /** From 1, as the grid counts. */
  readonly row: number;
  readonly field: GridPlace | 'force' | 'note';
  readonly why: 'missing' | 'notANumber' | 'ambiguous' | 'outOfRange' | 'signTwice' | 'tooLong';
  readonly min: number;
  readonly max: number;
  readonly unit: string;
}

/** Letters of a cell with a number; a longer one is none and is not gone through. */
const LONGEST = 400;

const PLACE_LIMITS = { pitch: BENCH_LIMITS.pitchDeg, scale: BENCH_LIMITS.scaleMm } as const;

/**
 * Rows of a grid in degrees (or mm of a scale) and newtons (or ounces-force); empty rows are passed over. All faults, or all
 * rows: nothing is taken in part, and no note longer than a design keeps. A decimal comma counts as a point; "1,250" could be a thousand and is refused. A force may
 * have its own unit and a letter for tension or compression beside it ("3.5 ozf C"); a letter together with a minus sign is
 * refused.
 */
export function rowsOfGrid(
  grid: readonly GridRow[],
  forceUnit: GridUnit,
  place: GridPlace = 'pitch',
): Result<readonly BenchRow[], readonly GridFault[]> {
  const faults: GridFault[] = [];
  const rows: BenchRow[] = [];
  for (const [k, { pitch, force, travel, note }] of grid.entries()) {
    if (`${pitch}${force}${note}`.trim() === '') continue;
    const where = number(pitch, { row: k + 1, field: place, ...PLACE_LIMITS[place] }, faults);
    const said = note.trim();
    if (said.length > MAX_NOTE)
      faults.push({ row: k + 1, field: 'note', why: 'tooLong', min: 0, max: MAX_NOTE, unit: '' });
    rows.push({
      ...(place === 'pitch' ? { pitchDeg: where } : { scaleMm: where }),
      forceN: forceCell(force, k + 1, forceUnit, faults),
      ...(travel !== '' && { travel }),
      ...(said !== '' && { note: said }),
    });
  }
  return faults.length > 0 ? fail(faults) : succeed(rows);
}

/** Places, from 0, of the rows that name a place and have no force. */
export function rowsWithoutForce(grid: readonly GridRow[]): readonly number[] {
  return [...grid.keys()].filter((k) => grid[k].pitch.trim() !== '' && grid[k].force.trim() === '');
}

function forceCell(text: string, row: number, unit: GridUnit, faults: GridFault[]): number {
  const { min, max } = BENCH_LIMITS.forceN;
  const limits = {
    row,
    field: 'force' as const,
    min: readingFromSi(min, unit),
    max: readingFromSi(max, unit),
    unit,
  };
  const parts = text.length > LONGEST ? null : cellParts(text.trim());
  if (!parts) return siFromReading(number(text, limits, faults), unit);
  const words = [parts.before, ...parts.after.split(/\s+/)].filter((word) => word !== '');
  const senses = words.map(senseWord).filter((sense) => sense !== null);
  const named = words.filter((word) => senseWord(word) === null);
  const own = named.length === 0 ? unit : unitFromText(named.join(' '));
  if (own === null || !isForce(own) || senses.length > 1) {
    faults.push({ ...limits, why: 'notANumber' });
    return Number.NaN;
  }
  const force = siFromReading(number(parts.number, limits, faults), own);
  if (senses.length === 0) return force;
  if (force < 0) faults.push({ ...limits, why: 'signTwice' });
  return senses[0] === 'tension' ? force : -force || 0;
}

const FORCES = ['N', 'mN', 'cN', 'daN', 'kN', 'ozf', 'lbf', 'gf', 'kgf'] as const;

function isForce(unit: string): unit is (typeof FORCES)[number] {
  return (FORCES as readonly string[]).includes(unit);
}

function number(text: string, about: Omit<GridFault, 'why'>, faults: GridFault[]): number {
  const put = (why: GridFault['why']) => faults.push({ ...about, why });
  if (text.length > LONGEST) {
    put('notANumber');
    return Number.NaN;
  }
  const plain = text.trim().replace(/\s*\u00b0$/, '');
  const read = plainNumber(plain);
  if (!read.ok) {
    put(plain === '' ? 'missing' : read.error !== 'notANumber' ? 'ambiguous' : 'notANumber');
    return Number.NaN;
  }
  if (read.value < about.min || read.value > about.max) put('outOfRange');
  return read.value;
}

/** Rows of a run that was typed by hand, back in the grid: every digit that they have. */
export function gridOfRows(
  rows: readonly BenchRow[],
  unit: GridUnit,
): { readonly place: GridPlace; readonly rows: readonly GridRow[] } {
  const place =
    rows.length > 0 && rows.every(({ scaleMm }) => scaleMm !== undefined) ? 'scale' : 'pitch';
  return {
    place,
    rows: rows.map(({ pitchDeg, scaleMm, forceN, travel, note }) => ({
      pitch: localNumber(String((place === 'scale' ? scaleMm : pitchDeg) ?? '')),
      force: localNumber(String(digits(readingFromSi(forceN, unit)))),
      travel: travel ?? '',
      note: note ?? '',
    })),
  };
}

/** Rows to be filled: the plan's pitches in the order in which the control goes through them, for each way they are read. */
export function gridOfPlan({
  pitchesDeg,
  senses,
  pullRaises,
}: Pick<BenchPlan, 'pitchesDeg' | 'senses' | 'pullRaises'>): GridRow[] {
  return senses.flatMap((travel) =>
    (travel !== 'held' && (travel === 'pull') !== pullRaises
      ? pitchesDeg.toReversed()
      : pitchesDeg
    ).map((deg) => ({
      ...EMPTY_ROW,
      pitch: localNumber(String(deg)),
      travel,
    })),
  );
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
