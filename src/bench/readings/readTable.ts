import { fail, type Result, succeed } from '../../engine/result';
import { numberText } from './cellValue';
import { type ReadingsFault, readingsFault } from './fault';
import { findLayout, type Layout } from './layout';
import {
  countCell,
  type NumberCount,
  type NumberStyle,
  newCount,
  ownDecimal,
  styleOf,
} from './numbers';
import { type Progress, readRecords, type TextRecord } from './records';
import { cellCount, sniffDelimiter } from './sniff';
import type { DecimalSign, Delimiter, ReadOptions } from './types';

/** Characters of a text, UTF-16 units: a million rows of a logging gauge. */
export const MAX_READINGS_TEXT = 64_000_000;

/** A text taken apart into cells; nothing of it is understood as readings yet. */
export interface ReadingsTable extends Layout {
  readonly delimiter: Delimiter;
  readonly styles: readonly NumberStyle[];
  /** How the decimal sign was found: told by the person, proven by numbers, assumed, or there is none in the table. */
  readonly decimalFrom: 'told' | 'proven' | 'assumed' | 'none';
  /** Columns, from 0, that prove another decimal sign than most. */
  readonly otherDecimals: readonly number[];
}

/**
 * Takes a table apart: delimiter, headings, rows, decimal sign. The decimal sign is decided over whole columns; one that
 * proves nothing takes the table's. Where every number of the table that has a mark could have a thousands comma as well
 * as three decimals, the table is refused until `options.decimal` says which; for a point the decimal is assumed, and
 * `decimalFrom` says so. Pure: works the same in a worker.
 */
export function readTable(
  text: string,
  options: ReadOptions = {},
  onProgress?: Progress,
): Result<ReadingsTable, ReadingsFault> {
  if (text.length > MAX_READINGS_TEXT)
    return fail(readingsFault({ code: 'tooLong', length: text.length, limit: MAX_READINGS_TEXT }));
  const plain = text.charCodeAt(0) === 0xfeff ? text.slice(1) : text;
  if (plain.trim() === '') return fail(readingsFault({ code: 'empty' }));
  const delimiter = options.delimiter ?? sniffDelimiter(plain);
  const read = readRecords(plain, delimiter, {
    onProgress: onProgress && ((done) => onProgress(done / 2)),
  });
  if (!read.ok) return read;
  const layout = findLayout(plain, read.value, delimiter);
  if (layout.rows.length === 0)
    return fail(readingsFault({ code: layout.headingRows.length > 0 ? 'noRows' : 'noTable' }));
  const both = commaIsBoth(layout, delimiter);
  if (both) return fail(both);
  const decimals = decideDecimals(layout, options.decimal);
  return decimals.ok ? succeed({ ...layout, delimiter, ...decimals.value }) : decimals;
}

type Decimals = Pick<ReadingsTable, 'styles' | 'decimalFrom' | 'otherDecimals'>;

function decideDecimals(
  { rows, headings }: Layout,
  told: DecimalSign | undefined,
): Result<Decimals, ReadingsFault> {
  const counts = countColumns(rows, headings.length);
  const own = counts.map(ownDecimal);
  const points = own.filter((sign) => sign === '.').length;
  const commas = own.filter((sign) => sign === ',').length;
  if (told === undefined && points + commas === 0) {
    const column = counts.findIndex(({ eitherComma }) => eitherComma > 0);
    const first = counts[column]?.firstEither;
    if (first)
      return fail(
        readingsFault(
          { code: 'decimalUnclear', found: first.found },
          first.row,
          column + 1,
          headings[column],
        ),
      );
  }
  const table = told ?? (commas > points ? ',' : '.');
  const marked = counts.some(({ eitherPoint }) => eitherPoint > 0);
  const unproven = marked ? 'assumed' : 'none';
  return succeed({
    styles: counts.map((count, k) => styleOf(count, told ?? own[k] ?? table)),
    decimalFrom: told ? 'told' : points + commas > 0 ? 'proven' : unproven,
    otherDecimals: told
      ? []
      : own.flatMap((sign, k) => (sign !== null && sign !== table ? [k] : [])),
  });
}

function countColumns(rows: readonly TextRecord[], width: number): NumberCount[] {
  const counts = Array.from({ length: width }, newCount);
  for (const { row, cells } of rows) {
    const last = Math.min(width, cells.length);
    for (let k = 0; k < last; k++) countCell(counts[k], numberText(cells[k]), row);
  }
  return counts;
}

/** Commas part the columns, and most rows have more cells than headings, all of them whole numbers. */
function commaIsBoth({ rows, headings }: Layout, delimiter: Delimiter): ReadingsFault | null {
  if (delimiter !== ',') return null;
  const long = rows.filter(({ cells }) => cellCount(cells) > headings.length && isWhole(cells));
  if (2 * long.length <= rows.length) return null;
  const [{ row, cells }] = long;
  return readingsFault(
    { code: 'commaIsBoth', cells: cellCount(cells), columns: headings.length },
    row,
    headings.length + 1,
  );
}

function isWhole(cells: readonly string[]): boolean {
  const digits = cells.filter((cell) => /^[+-]?\d+$/.test(cell)).length;
  return digits >= 3 && !cells.some((cell) => /\.\d/.test(cell));
}
