import { fail, type Result, succeed } from '../../engine/result';
import { type ReadingsFault, readingsFault } from './fault';
import type { Delimiter } from './types';

/**
 * A row of cells as they stand, without quotes and blanks around; `row` counts every row of the text from 1, `start` is
 * where it begins in the text.
 */
export interface TextRecord {
  readonly row: number;
  readonly start: number;
  readonly cells: readonly string[];
}

export const MAX_CELL = 4000;
export const MAX_COLUMNS = 200;
export const MAX_ROWS = 1_000_000;
const PROGRESS_ROWS = 8192;
/** Marks that begin a comment; a hash alone in its cell is a heading for a number. */
export const COMMENT = /^\s*(?:#(?!n\/a)(?![\s]*(?:$|[,;|\t]))|%|!|\/\/)/i;

/** How far it is, from 0 to 1; false stops the reading. */
export type Progress = (done: number) => boolean | void;

interface Limits {
  /** Quotes are letters like any other. */
  readonly rough?: boolean;
  /** Stop after so many records. */
  readonly most?: number;
  readonly onProgress?: Progress | undefined;
}

/**
 * The records of a text: RFC 4180 with any of the delimiters, LF or CR alone as line end as well, and blanks round a
 * quoted cell passed over. A quote inside an unquoted cell is kept as it is (inches). Rows with nothing in them are
 * left out but counted. Faults name row and column; none throws.
 */
export function readRecords(
  text: string,
  delimiter: Delimiter,
  { rough = false, most = Number.POSITIVE_INFINITY, onProgress }: Limits = {},
): Result<TextRecord[], ReadingsFault> {
  const records: TextRecord[] = [];
  const at = { start: 0 };
  for (let row = 1; at.start < text.length && records.length < most; row++) {
    const { start } = at;
    const cells =
      delimiter === 'spaces'
        ? takeSpaced(text, at)
        : takeRow(text, at, delimiter, rough ? null : row);
    if (!Array.isArray(cells)) return fail(cells);
    const fault = shapeFault(cells, row, records.length);
    if (fault) return fail(fault);
    if (cells.some((cell) => cell !== '')) records.push({ row, start, cells });
    if (row % PROGRESS_ROWS === 0 && onProgress?.(at.start / text.length) === false)
      return fail(readingsFault({ code: 'cancelled' }));
  }
  return succeed(records);
}

function shapeFault(cells: readonly string[], row: number, count: number): ReadingsFault | null {
  if (cells.length > MAX_COLUMNS)
    return readingsFault(
      { code: 'tooManyColumns', count: cells.length, limit: MAX_COLUMNS },
      row,
      MAX_COLUMNS + 1,
    );
  for (let k = 0; k < cells.length; k++)
    if (cells[k].length > MAX_CELL)
      return readingsFault(
        { code: 'cellTooLong', length: cells[k].length, limit: MAX_CELL },
        row,
        k + 1,
      );
  return count >= MAX_ROWS ? readingsFault({ code: 'tooManyRows', limit: MAX_ROWS }, row) : null;
}

interface At {
  start: number;
}

/** The cells of one row; without regard to quotes where `row` is null. */
function takeRow(
  text: string,
  at: At,
  delimiter: string,
  row: number | null,
): string[] | ReadingsFault {
  const end = lineEnd(text, at.start);
  const line = text.slice(at.start, end);
  // What a comment quotes is its own affair.
  if (row === null || !line.includes('"') || COMMENT.test(line)) {
    at.start = nextLine(text, end);
    return piped(line.split(delimiter), delimiter);
  }
  return takeQuoted(text, at, delimiter, row);
}

/** Cells trimmed; a pipe at either end of a line is a frame, no delimiter. */
function piped(cells: string[], delimiter: string): string[] {
  for (let k = 0; k < cells.length; k++) cells[k] = cells[k].trim();
  if (delimiter !== '|') return cells;
  if (cells[0] === '') cells.shift();
  if (cells[cells.length - 1] === '') cells.pop();
  return cells;
}

function takeQuoted(
  text: string,
  at: At,
  delimiter: string,
  row: number,
): string[] | ReadingsFault {
  const cells: string[] = [];
  let k = at.start;
  for (;;) {
    const open = skipBlanks(text, k, delimiter);
    if (text[open] === '"') {
      const quoted = quotedCell(text, open);
      if (quoted === null) return readingsFault({ code: 'openQuote' }, row, cells.length + 1);
      const after = skipBlanks(text, quoted.end, delimiter);
      const next = text[after];
      if (next !== undefined && next !== delimiter && next !== '\n' && next !== '\r') {
        const found = text.slice(after, Math.min(after + 20, lineEnd(text, after)));
        return readingsFault({ code: 'textAfterQuote', found }, row, cells.length + 1);
      }
      cells.push(quoted.cell);
      k = after;
    } else {
      const stop = cellEnd(text, k, delimiter);
      cells.push(text.slice(k, stop));
      k = stop;
    }
    if (text[k] !== delimiter) break;
    k++;
  }
  at.start = nextLine(text, k);
  return piped(cells, delimiter);
}

function quotedCell(text: string, open: number): { cell: string; end: number } | null {
  let k = open + 1;
  for (;;) {
    const close = text.indexOf('"', k);
    if (close < 0) return null;
    if (text[close + 1] !== '"')
      return {
        cell: text.slice(open + 1, close).replaceAll('""', '"'),
        end: close + 1,
      };
    k = close + 2;
  }
}

function skipBlanks(text: string, from: number, delimiter: string): number {
  let k = from;
  const blanks = delimiter === '\t' ? ' ' : ' \t';
  while (k < text.length && blanks.includes(text[k])) k++;
  return k;
}

function cellEnd(text: string, from: number, delimiter: string): number {
  let k = from;
  while (k < text.length && text[k] !== delimiter && text[k] !== '\n' && text[k] !== '\r') k++;
  return k;
}

/** Columns parted by runs of blanks or tabs; a unit in brackets after its heading is no cell of its own. */
function takeSpaced(text: string, at: At): string[] {
  const end = lineEnd(text, at.start);
  const line = text.slice(at.start, end).trim();
  at.start = nextLine(text, end);
  const tight = line
    .replace(/^([#%!]+|\/\/)\s+/, '$1\u0001')
    // From the first blank of a run on: a long run is looked at once, not from each of its blanks.
    .replace(/(?<!\s)\s+([([][^()[\]]*[)\]])/g, (_, unit: string) => `\u0001${unit}`)
    .replace(/[([][^()[\]]*[)\]]/g, (unit) => unit.replace(/\s/g, '\u0001'));
  return tight.split(/\s+/).map((cell) => cell.replaceAll('\u0001', ' '));
}

/** The line of a text that begins at `start`. */
export function lineAt(text: string, start: number): string {
  return text.slice(start, lineEnd(text, start));
}

function lineEnd(text: string, from: number): number {
  let k = from;
  for (; k < text.length; k++) {
    const code = text.charCodeAt(k);
    if (code === 10 || code === 13) break;
  }
  return k;
}

function nextLine(text: string, end: number): number {
  return text[end] === '\r' && text[end + 1] === '\n' ? end + 2 : end + 1;
}
