import { cellParts } from './cellValue';
import { senseWord, travelWord } from './headings';
import { shapeOf, tidyNumber } from './numbers';
import { COMMENT, readRecords, type TextRecord } from './records';
import type { Delimiter } from './types';
import { unitFromText } from './unitNames';

const LOOKED_AT = 300;
/** In the order that settles a draw: a comma may be a decimal sign, a blank may stand in a text. */
const CANDIDATES: readonly Delimiter[] = ['\t', ';', '|', ',', 'spaces'];

/**
 * The delimiter under which the text looks most like a table: rows of the same count of cells, more than one, most of
 * them numbers. A line "sep=;" at the top decides. Looks at the first 300 rows that are not empty.
 */
export function sniffDelimiter(text: string): Delimiter {
  const said = /^\s*"?sep=(.)"?[ \t]*[\r\n]/i.exec(text);
  const named = said && CANDIDATES.find((candidate) => candidate === said[1]);
  if (named) return named;
  const scores = CANDIDATES.map((delimiter) => ({ delimiter, score: scoreOf(text, delimiter) }));
  // Array.sort is stable: the first of equals stays first.
  return scores.toSorted((a, b) => b.score - a.score)[0].delimiter;
}

function scoreOf(text: string, delimiter: Delimiter): number {
  const strict = readRecords(text, delimiter, { most: LOOKED_AT });
  // A quote that is never closed is a fault to be told with its place; until then it is a letter.
  const read = strict.ok ? strict : readRecords(text, delimiter, { most: LOOKED_AT, rough: true });
  if (!read.ok) return 0;
  const rows = read.value.filter(
    (record) => !isComment(record) && hasDigit(record) && !isLineAbove(record),
  );
  if (rows.length === 0) return headingScore(read.value);
  // Lines of prose above a table have one cell.
  const width = commonWidth(rows.filter(({ cells }) => cellCount(cells) > 1));
  if (width < 2) return 0;
  const alike = rows.filter(({ cells }) => cellCount(cells) === width);
  const cells = alike.flatMap((record) => record.cells);
  const good = cells.filter(isTabular).length;
  return (alike.length / rows.length) * (good / cells.length) ** 2;
}

/** A table of headings alone: the more cells the likelier, but never above one with numbers. */
function headingScore(records: readonly TextRecord[]): number {
  const most = Math.max(1, ...records.map(({ cells }) => cells.length));
  return 0.01 * (1 - 1 / most);
}

/** Count of cells without empty ones at the end: a delimiter too many there says nothing. */
export function cellCount(cells: readonly string[]): number {
  let count = cells.length;
  while (cells[count - 1] === '') count--;
  return count;
}

/** The most frequent count of cells, the larger of equals. */
export function commonWidth(records: readonly TextRecord[]): number {
  const counts = new Map<number, number>();
  for (const { cells } of records) {
    const count = cellCount(cells);
    counts.set(count, (counts.get(count) ?? 0) + 1);
  }
  return [...counts].toSorted((a, b) => b[1] - a[1] || b[0] - a[0])[0]?.[0] ?? 0;
}

export function isComment({ cells }: TextRecord): boolean {
  return COMMENT.test(cells[0]);
}

/** "speed: 10200 rpm": no row of a table. */
function isLineAbove({ cells }: TextRecord): boolean {
  return /^\p{L}[^:=]*[:=]/u.test(cells[0]);
}

function hasDigit({ cells }: TextRecord): boolean {
  return cells.some((cell) => /\d/.test(cell));
}

/** Cells that a table of readings is made of: numbers, clock times, letters for a sense, nothing. */
function isTabular(cell: string): boolean {
  if (cell === '' || /^\d{1,4}([:.-])\d{1,2}\1\d/.test(cell)) return true;
  if (senseWord(cell) !== null || travelWord(cell) !== null) return true;
  return !/\d [\d]/.test(cell) && isNumeric(cell);
}

/** Whether a cell is a number in any of the ways to write one, with a unit or a letter beside it or not. */
export function isNumeric(cell: string): boolean {
  const parts = cellParts(cell);
  if (parts === null) return shapeOf(tidyNumber(cell)) !== 'none';
  const { before, number, after } = parts;
  if (before !== '' && senseWord(before) === null) return false;
  return (after === '' || isBeside(after)) && shapeOf(tidyNumber(number)) !== 'none';
}

/** A unit or a letter; words would make the cell a text. */
function isBeside(after: string): boolean {
  return (
    unitFromText(after) !== null ||
    senseWord(after) !== null ||
    /^[^\s\d;,|]{1,6}( [A-Z])?$/u.test(after)
  );
}
