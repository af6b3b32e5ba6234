import { fail, type Result } from '../result';
import {
  checkPolar,
  MOST_BLOCKS,
  MOST_ROWS,
  type PolarFault,
  type PolarRow,
  type PolarTable,
  polarFault,
} from './polarTable';

const MOST_CHARACTERS = 4_000_000;
const MOST_LINE = 2_000;
const MOST_NAME = 80;

type Column = 'angleDeg' | 'lift' | 'drag' | 'moment' | 'reynolds';
type Separator = '\t' | ';' | ',' | ' ';

/** What is left of a heading after everything but letters is taken out, and the word "deg" at its end. */
const ALIASES: ReadonlyMap<string, Column> = new Map<string, Column>([
  ['alpha', 'angleDeg'],
  ['angle', 'angleDeg'],
  ['angleofattack', 'angleDeg'],
  ['aoa', 'angleDeg'],
  ['cl', 'lift'],
  ['lift', 'lift'],
  ['cd', 'drag'],
  ['drag', 'drag'],
  ['cm', 'moment'],
  ['moment', 'moment'],
  ['re', 'reynolds'],
  ['reynolds', 'reynolds'],
  ['reynoldsnumber', 'reynolds'],
]);
const NEEDED: readonly Column[] = ['angleDeg', 'lift', 'drag', 'moment'];
const NUMBER = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/i;

interface OpenBlock {
  readonly reynolds: number | null;
  readonly rows: PolarRow[];
}

interface Header {
  readonly separator: Separator;
  readonly columns: readonly (Column | null)[];
}

/**
 * A table of a section read from text: one header line with the columns alpha, cl, cd, cm in any order (also angle,
 * aoa, lift, drag, moment, each with a unit: degrees only; unknown columns are passed over), then rows. Columns are
 * parted by tab, semicolon, comma or spaces, whichever the header has first in this order; where it is not the comma,
 * a decimal comma is read. "Re = 160000" before or between rows, or a column Re, opens a block. "name = ..." names the
 * section. Lines that begin with #, !, % or //, empty lines and rules of dashes are passed over. Any text gives a table
 * or a fault with line and limit; none throws.
 */
export function parsePolarText(text: string): Result<PolarTable, PolarFault> {
  if (text.length > MOST_CHARACTERS)
    return fail(polarFault('tooLong', 1, text.length, MOST_CHARACTERS));
  const reader = new PolarReader();
  const lines = text.replace(/^\uFEFF/, '').split(/\r\n|\n|\r/);
  for (const [k, line] of lines.entries()) {
    const fault = reader.take(line, k + 1);
    if (fault) return fail(fault);
  }
  if (!reader.hasHeader) return fail(polarFault('noHeader', lines.length));
  const { blocks, lineNumbers } = reader;
  if (blocks.length === 0) return fail(polarFault('tooFewRows', lines.length, 0, 2));
  return checkPolar({ name: reader.name, blocks }, lineNumbers);
}

/** The text that `parsePolarText` reads back to the same numbers; blocks in their order. */
export function writePolarText(table: PolarTable): string {
  const name = table.name
    .replace(/[\p{Cc}\s]+/gu, ' ')
    .trim()
    .slice(0, MOST_NAME);
  const out = [`name = ${name}`, 'alpha_deg,cl,cd,cm'];
  for (const block of table.blocks) {
    if (block.reynolds !== null) out.push(`Re = ${block.reynolds}`);
    for (const { angleDeg, lift, drag, moment } of block.rows)
      out.push(`${angleDeg},${lift},${drag},${moment}`);
  }
  return `${out.join('\n')}\n`;
}

class PolarReader {
  name = '';
  readonly blocks: OpenBlock[] = [];
  readonly lineNumbers: number[][] = [];
  private header: Header | null = null;
  private reynolds: number | null = null;
  private rows = 0;
  /** A line "Re = ..." stands before the next row. */
  private opened = true;

  get hasHeader(): boolean {
    return this.header !== null;
  }

  take(raw: string, line: number): PolarFault | null {
    if (raw.length > MOST_LINE) return polarFault('lineTooLong', line, raw.length, MOST_LINE);
    const text = raw.trim();
    if (text === '' || /^(?:[#!%]|\/\/)/.test(text) || /^[-=_ \t]+$/.test(text)) return null;
    const named = /^name\s*[=:]\s*(.*)$/i.exec(text);
    if (named) {
      this.name = named[1].slice(0, MOST_NAME);
      return null;
    }
    const reynolds = /^re(?:ynolds(?: number)?)?\s*[=:]\s*(.*)$/i.exec(text);
    if (reynolds) return this.takeReynolds(reynolds[1], line);
    const header = headerOf(text, line);
    if (header !== null) {
      if ('kind' in header) return header;
      this.header = header;
      return null;
    }
    if (this.header === null) return polarFault('noHeader', line, Number.NaN, Number.NaN, text);
    return this.takeRow(text, this.header, line);
  }

  private takeReynolds(text: string, line: number): PolarFault | null {
    // "0.160 e 6" is printed by some programs.
    const value = numberOf(text.replace(/\s+/g, ''), this.header?.separator !== ',');
    if (value === null) return polarFault('notANumber', line, Number.NaN, Number.NaN, text);
    if (!(value > 0 && Number.isFinite(value)))
      return polarFault('reynoldsNotPositive', line, value, 0);
    this.reynolds = value;
    this.opened = true;
    return null;
  }

  private takeRow(text: string, header: Header, line: number): PolarFault | null {
    const { columns, separator } = header;
    if (this.rows >= MOST_ROWS) return polarFault('tooManyRows', line, this.rows + 1, MOST_ROWS);
    const cells = cellsOf(text, separator);
    while (cells.length > columns.length && cells[cells.length - 1] === '') cells.pop();
    if (cells.length !== columns.length)
      return polarFault('wrongColumns', line, cells.length, columns.length);
    const values = { angleDeg: 0, lift: 0, drag: 0, moment: 0, reynolds: 0 };
    for (const [k, column] of columns.entries()) {
      if (column === null) continue;
      const value = numberOf(cells[k], separator !== ',');
      if (value === null) return polarFault('notANumber', line, Number.NaN, Number.NaN, cells[k]);
      values[column] = value;
    }
    const { reynolds, ...row } = values;
    if (columns.includes('reynolds')) {
      if (!(reynolds > 0 && Number.isFinite(reynolds)))
        return polarFault('reynoldsNotPositive', line, reynolds, 0);
      if (reynolds !== this.reynolds) this.opened = true;
      this.reynolds = reynolds;
    }
    return this.addRow(row, line);
  }

  private addRow(row: PolarRow, line: number): PolarFault | null {
    if (this.opened) {
      if (this.blocks.length >= MOST_BLOCKS)
        return polarFault('tooManyBlocks', line, this.blocks.length + 1, MOST_BLOCKS);
      this.blocks.push({ reynolds: this.reynolds, rows: [] });
      this.lineNumbers.push([]);
      this.opened = false;
    }
    this.blocks[this.blocks.length - 1].rows.push(row);
    this.lineNumbers[this.lineNumbers.length - 1].push(line);
    this.rows++;
    return null;
  }
}

/** The header in this line, its fault, or null when the line names no column at all. */
function headerOf(text: string, line: number): Header | PolarFault | null {
  const separator = separatorOf(text);
  let cells = cellsOf(text, separator);
  // A unit after a blank, "alpha (deg)", is no column of its own.
  if (separator === ' ') cells = cells.filter((cell) => !/^[([].*[)\]]$/.test(cell));
  const columns = cells.map(
    (cell) =>
      ALIASES.get(
        cell
          .toLowerCase()
          .replace(/[^a-z]/g, '')
          .replace(/(?:deg|degrees)$/, ''),
      ) ?? null,
  );
  if (columns.every((column) => column === null)) return null;
  for (const column of NEEDED) {
    if (!columns.includes(column))
      return polarFault('columnMissing', line, Number.NaN, Number.NaN, column);
  }
  for (const [k, column] of columns.entries()) {
    if (column !== null && columns.indexOf(column) !== k)
      return polarFault('columnRepeated', line, k + 1, Number.NaN, column);
  }
  return { separator, columns };
}

function separatorOf(text: string): Separator {
  if (text.includes('\t')) return '\t';
  if (text.includes(';')) return ';';
  return text.includes(',') ? ',' : ' ';
}

function cellsOf(text: string, separator: Separator): string[] {
  if (separator === ' ') return text.split(/\s+/);
  return text.split(separator).map((cell) => cell.trim().replace(/^"(.*)"$/, '$1'));
}

function numberOf(text: string, decimalComma: boolean): number | null {
  const plain = decimalComma ? text.trim().replace(',', '.') : text.trim();
  return NUMBER.test(plain) ? Number(plain) : null;
}
