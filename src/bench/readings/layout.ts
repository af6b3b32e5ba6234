import { guessHeading } from './headings';
import { lineAt, readRecords, type TextRecord } from './records';
import { cellCount, commonWidth, isComment, isNumeric } from './sniff';
import type { Delimiter } from './types';
import { unitFromText } from './unitNames';

/** A line above the headings: as it stands, and its cells. */
export interface LineAbove {
  readonly row: number;
  readonly cells: readonly string[];
  readonly line: string;
}

/** Where things are in a table: what stands above, the headings, the rows. */
export interface Layout {
  /** Lines above the headings, and comments. */
  readonly above: readonly LineAbove[];
  /** One heading for each column, rows of headings joined; empty texts where there are none. */
  readonly headings: readonly string[];
  /** Rows of the text that the headings came from, from 1; none for a table without. */
  readonly headingRows: readonly number[];
  readonly rows: readonly TextRecord[];
  /** Rows that repeat the headings further down. */
  readonly repeated: readonly number[];
  readonly comments: number;
}

/** How far down the headings may begin. */
const DEEPEST = 200;
const MOST_HEADING_ROWS = 3;

/**
 * Finds headings and rows. Headings are the rows without numbers directly above the first row of numbers, from the first
 * on in which two cells can be understood; a row of units under them and a row of groups above them ("Push", empty,
 * "Pull", empty) are joined to them. A heading behind a comment mark counts where there is no other.
 */
export function findLayout(
  text: string,
  records: readonly TextRecord[],
  delimiter: Delimiter,
): Layout {
  const comments = records.filter(isComment);
  const plain = records.filter((record) => !isComment(record) && !isRule(record));
  const found = findHeadings(plain);
  const above = plain.slice(0, found.from);
  const data = plain.slice(found.to);
  const first = data[0]?.row ?? Number.POSITIVE_INFINITY;
  const ahead = comments.filter(({ row }) => row < first);
  const headingRecords = plain.slice(found.from, found.to);
  const width = commonWidth(data.slice(0, DEEPEST));
  const commented = headingRecords.length === 0 ? commentedHeading(ahead, width, delimiter) : null;
  const used = commented ? [commented] : headingRecords;
  const headings = joinHeadings(used, width);
  const { rows, repeated } = dropRepeated(data, headingRecords);
  return {
    above: [...ahead.filter(({ row }) => row !== commented?.row), ...above].map(
      ({ row, start, cells }) => ({ row, cells, line: lineAt(text, start) }),
    ),
    headings,
    headingRows: used.map(({ row }) => row),
    rows,
    repeated,
    comments: comments.length,
  };
}

function findHeadings(records: readonly TextRecord[]): { from: number; to: number } {
  const looked = records.slice(0, DEEPEST);
  const named = looked.flatMap(({ cells }, from) =>
    isHeading(cells) ? [{ from, to: headingEnd(records, from) }] : [],
  );
  // One directly over numbers; a line "gauge;force gauge" further up is none.
  const over = named.find(({ to }) => records[to] !== undefined && isData(records[to].cells));
  return over ?? named[0] ?? findUnnamed(looked);
}

function headingEnd(records: readonly TextRecord[], from: number): number {
  let to = from + 1;
  const last = Math.min(records.length, from + MOST_HEADING_ROWS);
  while (to < last && goesOn(records[to - 1], records[to])) to++;
  return to;
}

/** Words over every number though none that is known, or no headings at all. */
function findUnnamed(looked: readonly TextRecord[]): { from: number; to: number } {
  const data = looked.findIndex(({ cells }) => isData(cells));
  if (data < 0) return { from: looked.length, to: looked.length };
  const isOver = data > 0 && isWords(looked[data - 1].cells);
  return { from: isOver ? data - 1 : data, to: data };
}

/** A row of words that may be headings though none of them is known. */
function isWords(cells: readonly string[]): boolean {
  return cellCount(cells) >= 2 && !cells.some(isNumeric) && !isPair(cells);
}

function isHeading(cells: readonly string[]): boolean {
  if (cells.some((cell) => isNumeric(cell) || /^[^:=()[\]]+[:=]\s*\S/.test(cell))) return false;
  const guesses = cells.filter((cell) => cell !== '').map(guessHeading);
  // "unit;ozf" is a line above the table.
  if (guesses.length === 2 && guesses[0].role === 'unit' && guesses[1].unit !== null) return false;
  return guesses.filter(({ role }) => role !== null).length >= 2;
}

/** Whether a row of headings is followed by another that belongs to it: units, or the names under groups. */
function goesOn(row: TextRecord, next: TextRecord): boolean {
  if (next.row !== row.row + 1) return false;
  return isUnits(next.cells) || (isHeading(next.cells) && isGroups(row.cells, next.cells));
}

/** Groups leave gaps between them, or stand over every name. */
function isGroups(cells: readonly string[], names: readonly string[]): boolean {
  const count = cellCount(cells);
  return cells.slice(0, count).includes('') || count === cellCount(names);
}

function isUnits(cells: readonly string[]): boolean {
  const filled = cells.filter((cell) => cell !== '' && cell !== '-');
  return filled.length > 0 && filled.every((cell) => unitFromText(bareUnit(cell)) !== null);
}

function bareUnit(cell: string): string {
  return cell.replace(/^[([]\s*|\s*[)\]]$/g, '');
}

function isData(cells: readonly string[]): boolean {
  const filled = cells.filter((cell) => cell !== '');
  const numeric = filled.filter(isNumeric).length;
  return filled.length >= 2 && 2 * numeric >= filled.length && !isPair(cells);
}

/** "speed;10200;rpm": a word and its value. */
function isPair(cells: readonly string[]): boolean {
  const filled = cells.filter((cell) => cell !== '');
  return (
    filled.length >= 2 &&
    filled.length <= 3 &&
    /^\p{L}[\p{L} -]*[:=]?$/u.test(filled[0]) &&
    !isNumeric(filled[0]) &&
    (filled.length === 2 || unitFromText(filled[2]) !== null)
  );
}

function isRule({ cells }: TextRecord): boolean {
  return cells.every((cell) => /^[-=_:+*]{2,}$|^$/.test(cell)) || /^"?sep=.?"?$/i.test(cells[0]);
}

/** "# pitch, force": the last comment above the rows with as many cells as these. */
function commentedHeading(
  comments: readonly TextRecord[],
  width: number,
  delimiter: Delimiter,
): TextRecord | null {
  const last = comments.at(-1);
  if (!last) return null;
  const joined = last.cells.join(delimiter === 'spaces' ? ' ' : delimiter);
  const named = joined.replace(/^(?:[#%!]+|\/\/)\s*/, '');
  const read = readRecords(named, delimiter);
  const [heading] = read.ok ? read.value : [];
  if (!heading || !isHeading(heading.cells)) return null;
  const { cells } = heading;
  if (cellCount(cells) === width) return { ...last, cells };
  // "# pitch force" over three columns: the first is headed by the mark itself, a number.
  const mark = joined.slice(0, joined.length - named.length).trim();
  return cellCount(cells) === width - 1 && delimiter === 'spaces'
    ? { ...last, cells: [mark, ...cells] }
    : null;
}

/** Group, name and unit of every column in one text each; a group holds until the next one. */
function joinHeadings(records: readonly TextRecord[], width: number): string[] {
  if (records.length === 0) return Array.from({ length: width }, () => '');
  const count = Math.max(...records.map(({ cells }) => cellCount(cells)));
  const last = records[records.length - 1];
  const hasUnits = records.length > 1 && isUnits(last.cells);
  const names = hasUnits ? records.slice(0, -1) : records;
  return Array.from({ length: count }, (_, column) => {
    const words = names.map(({ cells }, level) =>
      level < names.length - 1 ? groupAt(cells, column) : (cells[column] ?? ''),
    );
    const unit = hasUnits ? bareUnit(last.cells[column] ?? '') : '';
    const name = words
      .filter((word) => word !== '')
      .join(' ')
      .replace(/\s+/g, ' ');
    return unit === '' || unit === '-' ? name : `${name} [${unit}]`;
  });
}

function groupAt(cells: readonly string[], column: number): string {
  for (let k = Math.min(column, cells.length - 1); k >= 0; k--)
    if (cells[k] !== '') return cells[k];
  return '';
}

function dropRepeated(
  data: readonly TextRecord[],
  headings: readonly TextRecord[],
): { rows: readonly TextRecord[]; repeated: number[] } {
  const texts = new Set(headings.map(({ cells }) => cells.join('\u0001')));
  const first = headings.map(({ cells }) => cells[0]);
  const repeated: number[] = [];
  const rows = data.filter((record) => {
    const again = first.includes(record.cells[0]) && texts.has(record.cells.join('\u0001'));
    if (again) repeated.push(record.row);
    return !again;
  });
  return { rows, repeated };
}
