import { fail, type Result, succeed } from '../../engine/result';
import { type ReadingsFault, readingsFault } from './fault';
import { companion, mappingFaults } from './mapping';
import { readReading, type Slot } from './readRow';
import type { ReadingsTable } from './readTable';
import type { Progress } from './records';
import { cellCount } from './sniff';
import type { Reading, ReadingsMapping } from './types';

/** Faults that are kept with their place; more are counted. */
export const MAX_LISTED_FAULTS = 500;
const PROGRESS_ROWS = 8192;

/** What a table gives under a mapping. A row with a fault gives nothing. */
export interface DerivedReadings {
  readonly readings: readonly Reading[];
  /** Rows that gave at least one reading. */
  readonly takenRows: number;
  readonly refusedRows: number;
  /** The first faults, each with row and column. */
  readonly refused: readonly ReadingsFault[];
  /** Rows, from 1, at which the time steps back. */
  readonly backwards: readonly number[];
  /** Cells with a unit of their own other than their column's. */
  readonly otherUnits: number;
}

/**
 * The readings of a table under a mapping: SI units, tension and leading-edge-up positive. Nothing of the table is
 * changed, and the same table and mapping always give the same readings. A row is taken as a whole or not at all; every
 * refusal names row and column. Fails with everything that is wrong with the mapping.
 */
export function deriveReadings(
  table: ReadingsTable,
  mapping: ReadingsMapping,
  unknownUnits: Readonly<Record<number, string>> = {},
  onProgress?: Progress,
): Result<DerivedReadings, readonly ReadingsFault[]> {
  const faults = mappingFaults(mapping, table.headings, unknownUnits);
  if (faults.length > 0) return fail(faults);
  const desk = new RowDesk(table, mapping);
  for (const [k, record] of table.rows.entries()) {
    desk.take(record.row, record.cells);
    if (k % PROGRESS_ROWS === 0 && onProgress?.(k / table.rows.length) === false)
      return fail([readingsFault({ code: 'cancelled' })]);
  }
  return succeed(desk.done());
}

class RowDesk {
  private readonly readings: Reading[] = [];
  private readonly refused: ReadingsFault[] = [];
  private readonly backwards: number[] = [];
  private readonly slots: readonly Slot[];
  private readonly signed: ReadonlySet<number>;
  private takenRows = 0;
  private refusedRows = 0;
  private otherUnits = 0;
  private lastTime = Number.NEGATIVE_INFINITY;

  constructor(
    private readonly table: ReadingsTable,
    private readonly mapping: ReadingsMapping,
  ) {
    this.slots = slotsOf(mapping);
    this.signed = signedColumns(table, mapping);
  }

  take(row: number, cells: readonly string[]): void {
    const { table, mapping } = this;
    const width = table.headings.length;
    const found: Reading[] = [];
    const faults: ReadingsFault[] = [];
    const count = cellCount(cells);
    if (count > width) {
      const reason = { code: 'tooManyCells', cells: count, columns: width } as const;
      faults.push(readingsFault(reason, row, width + 1));
    } else {
      for (const slot of this.slots) {
        const read = readReading(
          { row, cells, mapping, styles: table.styles, signed: this.signed },
          slot,
        );
        if (read === null) continue;
        if ('reason' in read) {
          faults.push({ ...read, heading: table.headings[(read.column ?? 1) - 1] });
        } else {
          found.push(read.reading);
          this.otherUnits += read.otherUnits;
        }
      }
      if (faults.length === 0 && found.length === 0) faults.push(this.nothing(row));
    }
    this.record(row, found, faults);
  }

  private record(row: number, found: readonly Reading[], faults: readonly ReadingsFault[]): void {
    if (faults.length > 0) {
      this.refusedRows++;
      for (const fault of faults) {
        if (this.refused.length >= MAX_LISTED_FAULTS) break;
        const known = this.refused.some(
          (old) => old.row === fault.row && old.column === fault.column,
        );
        if (!known) this.refused.push(fault);
      }
      return;
    }
    this.takenRows++;
    this.readings.push(...found);
    const time = found[0].time;
    if (time === null) return;
    if (time < this.lastTime) this.backwards.push(row);
    this.lastTime = time;
  }

  private nothing(row: number): ReadingsFault {
    const { column } = this.slots[0];
    return readingsFault(
      { code: 'noValue', found: '' },
      row,
      column + 1,
      this.table.headings[column],
    );
  }

  done(): DerivedReadings {
    const { readings, takenRows, refusedRows, refused, backwards, otherUnits } = this;
    return { readings, takenRows, refusedRows, refused, backwards, otherUnits };
  }
}

/** Columns for a sense or a way of travel in which some cell is a plus sign alone. */
function signedColumns(table: ReadingsTable, mapping: ReadingsMapping): Set<number> {
  const columns = [...mapping.keys()].filter((k) => {
    const { role } = mapping[k];
    return role === 'sense' || role === 'travel';
  });
  return new Set(columns.filter((k) => table.rows.some(({ cells }) => cells[k] === '+')));
}

/** Force and moment columns with the columns that belong to them; tension beside compression is one slot. */
function slotsOf(mapping: ReadingsMapping): Slot[] {
  const slots: Slot[] = [];
  for (const [column, { role, travel }] of mapping.entries()) {
    if (role !== 'force' && role !== 'moment') continue;
    const pitch = companion(mapping, column, 'pitch');
    // Two of one sense, or three, `mappingFaults` has refused.
    const pair = slots.find(
      (slot) =>
        role === 'force' &&
        mapping[slot.column].role === 'force' &&
        mapping[slot.column].travel === travel &&
        slot.pitch === pitch,
    );
    if (pair) pair.other = column;
    else
      slots.push({
        column,
        other: -1,
        pitch,
        scale: companion(mapping, column, 'scale'),
        sense: companion(mapping, column, 'sense'),
        travel: companion(mapping, column, 'travel'),
        speed: companion(mapping, column, 'speed'),
        time: companion(mapping, column, 'time'),
        unit: companion(mapping, column, 'unit'),
        run: companion(mapping, column, 'run'),
        notes: [...mapping.keys()].filter((k) => mapping[k].role === 'note'),
      });
  }
  return slots;
}
