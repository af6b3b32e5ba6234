import { type Radians, radians } from '../../engine/units';
import { type CellValue, readCell } from './cellValue';
import { clockSeconds } from './clock';
import { type ReadingsFault, type ReadingsReason, readingsFault } from './fault';
import { dimensionsOf, isSign, senseWord, travelSign, travelWord } from './headings';
import { isNoValue, type NumberStyle } from './numbers';
import type { ColumnRole, Reading, ReadingsMapping, Travel } from './types';
import { dimensionOf, siFrom, type UnitName, unitFromText } from './unitNames';

/** The columns, from 0, that one reading of a row comes from; -1 where there is none. */
export interface Slot {
  readonly column: number;
  /** A second force column for the other sense. */
  other: number;
  readonly pitch: number;
  readonly scale: number;
  readonly sense: number;
  readonly travel: number;
  readonly speed: number;
  readonly time: number;
  readonly unit: number;
  readonly run: number;
  readonly notes: readonly number[];
}

export interface Row {
  readonly row: number;
  readonly cells: readonly string[];
  readonly mapping: ReadingsMapping;
  readonly styles: readonly NumberStyle[];
  /** Columns with a plus sign alone in some cell: there a minus alone is a sign and no empty cell. */
  readonly signed: ReadonlySet<number>;
}

/** Limits of what a bench can read, SI both; beyond them is a slip of unit or column. */
const LIMITS: Partial<Readonly<Record<ColumnRole, { max: number; shown: number; unit: string }>>> =
  {
    pitch: { max: Math.PI, shown: 180, unit: 'deg' },
    force: { max: 1e6, shown: 1e6, unit: 'N' },
    moment: { max: 1e6, shown: 1e6, unit: 'N m' },
    speed: { max: 1e5, shown: 1e5, unit: 'rad/s' },
  };

interface Found {
  readonly reading: Reading;
  readonly otherUnits: number;
}

/** A value, null where the cell is empty. */
type Read = { readonly value: number | null } | ReadingsFault;

/**
 * One reading of a row under a mapping without faults (`mappingFaults`); null where its force cell is empty though the row
 * has others; or why there is none.
 */
export function readReading(row: Row, slot: Slot): Found | ReadingsFault | null {
  const column = chosenColumn(row, slot);
  if (typeof column !== 'number') return column;
  const isMoment = row.mapping[column].role === 'moment';
  const load = readLoad(row, slot, column);
  if ('reason' in load) return load;
  const place = readPlace(row, slot);
  if ('reason' in place) return place;
  const travel = readTravel(row, slot, column);
  if (typeof travel === 'object' && travel !== null) return travel;
  return {
    reading: {
      row: row.row,
      column,
      pitch: place.pitch,
      scale: place.scale,
      force: isMoment ? null : load.value,
      moment: isMoment ? load.value : null,
      travel,
      speed: place.speed,
      time: place.time,
      run: cellAt(row, slot.run),
      note: slot.notes
        .map((k) => cellAt(row, k))
        .filter((note) => note !== '')
        .join('; '),
    },
    otherUnits: load.otherUnit ? 1 : 0,
  };
}

/** Empty where there is no such column or cell. */
function cellAt({ cells }: Row, column: number): string {
  return cells[column] ?? '';
}

/** The force column that is filled; of two for the two senses the one that is not zero. */
function chosenColumn(row: Row, { column, other }: Slot): number | ReadingsFault | null {
  const [mine, others] = [cellAt(row, column), cellAt(row, other)];
  if (other < 0) return mine === '' ? null : column;
  if (isNoValue(mine)) return isNoValue(others) ? null : other;
  if (isNoValue(others)) return column;
  const [a, b] = [readCell(mine, row.styles[column]), readCell(others, row.styles[other])];
  if ('code' in b) return readingsFault(b, row.row, other + 1);
  if ('value' in a && a.value === 0) return other;
  return b.value === 0
    ? column
    : readingsFault({ code: 'twoForces', first: column + 1 }, row.row, other + 1);
}

interface Load {
  readonly value: number;
  readonly otherUnit: boolean;
}

function readLoad(row: Row, slot: Slot, column: number): Load | ReadingsFault {
  const { unit: columnUnit, flipped, role } = row.mapping[column];
  const cell = readCell(cellAt(row, column), row.styles[column]);
  if ('code' in cell) return readingsFault(cell, row.row, column + 1);
  const rowUnit = role === 'force' ? unitInRow(row, slot.unit) : null;
  if (rowUnit !== null && typeof rowUnit === 'object') return rowUnit;
  const unit = cell.unit ?? rowUnit ?? columnUnit;
  if (unit === null) return readingsFault({ code: 'unitMissing' }, row.row, slot.unit + 1);
  if (!fits(role, unit))
    return readingsFault({ code: 'unitWrong', found: unit, role }, row.row, column + 1);
  const signed =
    role === 'force' ? signedValue(row, slot, cell, column) : flip(cell.value, flipped);
  if (typeof signed !== 'number') return signed;
  const value = siFrom(signed, unit);
  const limit = limitReason(role, value);
  if (limit) return readingsFault(limit, row.row, column + 1);
  return { value, otherUnit: unit !== columnUnit };
}

function fits(role: ColumnRole, unit: UnitName): boolean {
  return dimensionsOf(role)?.includes(dimensionOf(unit)) === true;
}

function unitInRow(row: Row, column: number): UnitName | ReadingsFault | null {
  const found = cellAt(row, column);
  if (found === '') return null;
  return unitFromText(found) ?? readingsFault({ code: 'unitUnknown', found }, row.row, column + 1);
}

/**
 * A force with its sign, tension positive. A letter decides where there is one, and a minus must then agree with it; the
 * column's own convention decides where there is none.
 */
function signedValue(
  row: Row,
  slot: Slot,
  cell: CellValue,
  column: number,
): number | ReadingsFault {
  const { flipped } = row.mapping[column];
  const letter = cellAt(row, slot.sense);
  if (slot.sense < 0 && cell.sense === null) return flip(cell.value, flipped);
  const sense = cell.sense ?? senseOf(letter, row.signed.has(slot.sense), flipped);
  if (sense === null) {
    if (cell.value === 0) return 0;
    const reason = isNoValue(letter)
      ? ({ code: 'senseMissing' } as const)
      : ({ code: 'badSense', found: letter } as const);
    return readingsFault(reason, row.row, slot.sense + 1);
  }
  const meant = flipped ? 'tension' : 'compression';
  const other = cell.sense !== null && !isNoValue(letter) && senseWord(letter) !== cell.sense;
  if (other || (cell.value < 0 && sense !== meant)) {
    const found = cellAt(row, column);
    return readingsFault({ code: 'signContradicts', found, sense }, row.row, column + 1);
  }
  return flip(Math.abs(cell.value), sense === 'compression');
}

/** A plus is the column's own positive sense. */
function senseOf(letter: string, signed: boolean, flipped: boolean) {
  if (!signed || !isSign(letter)) return senseWord(letter);
  return (letter === '+') === flipped ? 'compression' : 'tension';
}

function flip(value: number, flipped: boolean): number {
  return flipped && value !== 0 ? -value : value;
}

interface Place {
  readonly pitch: Radians | null;
  readonly scale: number | null;
  readonly speed: number | null;
  readonly time: number | null;
}

function readPlace(row: Row, slot: Slot): Place | ReadingsFault {
  const pitch = readQuantity(row, slot.pitch);
  if ('reason' in pitch) return pitch;
  const scale = readQuantity(row, slot.scale);
  if ('reason' in scale) return scale;
  const speed = readQuantity(row, slot.speed);
  if ('reason' in speed) return speed;
  const time = readTime(row, slot.time);
  if ('reason' in time) return time;
  if (pitch.value === null && scale.value === null && time.value === null) {
    const column = [slot.pitch, slot.scale, slot.time].find((k) => k >= 0) ?? 0;
    return readingsFault({ code: 'noValue', found: cellAt(row, column) }, row.row, column + 1);
  }
  return {
    pitch: pitch.value === null ? null : radians(pitch.value),
    scale: scale.value,
    speed: speed.value,
    time: time.value,
  };
}

function readQuantity(row: Row, column: number): Read {
  const text = cellAt(row, column);
  if (text === '') return { value: null };
  const { role, unit: columnUnit, flipped } = row.mapping[column];
  const cell = readCell(text, row.styles[column]);
  if ('code' in cell) return readingsFault(cell, row.row, column + 1);
  if (cell.sense !== null)
    return readingsFault({ code: 'notANumber', found: text }, row.row, column + 1);
  const unit = cell.unit ?? columnUnit;
  if (unit === null) throw new Error(`readQuantity(): no unit for column ${column}`);
  if (!fits(role, unit))
    return readingsFault({ code: 'unitWrong', found: unit, role }, row.row, column + 1);
  const value = siFrom(flip(cell.value, flipped), unit);
  const limit = limitReason(role, value);
  return limit ? readingsFault(limit, row.row, column + 1) : { value };
}

function readTime(row: Row, column: number): Read {
  const text = cellAt(row, column);
  const seconds = /[:T]/.test(text) ? clockSeconds(text) : undefined;
  if (seconds === undefined) return readQuantity(row, column);
  if (seconds === null) return readingsFault({ code: 'badTime', found: text }, row.row, column + 1);
  return { value: seconds };
}

function readTravel(row: Row, slot: Slot, column: number): Travel | ReadingsFault | null {
  const fixed = row.mapping[column].travel;
  if (fixed !== null) return fixed;
  const found = cellAt(row, slot.travel);
  const sign = row.signed.has(slot.travel) ? travelSign(found) : null;
  if (sign !== null || isNoValue(found)) return sign;
  return travelWord(found) ?? readingsFault({ code: 'badTravel', found }, row.row, slot.travel + 1);
}

function limitReason(role: ColumnRole, value: number): ReadingsReason | null {
  const limit = LIMITS[role];
  if (!limit || Math.abs(value) <= limit.max) return null;
  const { max, shown, unit } = limit;
  return { code: 'outOfRange', value: (value / max) * shown, min: -shown, max: shown, unit };
}
