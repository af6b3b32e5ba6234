import type { ReadingsReason } from './fault';
import type { DecimalSign } from './types';

/**
 * How a cell looks as a number, without deciding what it is. `either` is one mark with three digits after it and at most
 * three before ("1,234"): a decimal sign or a thousands mark.
 */
type Shape =
  | 'plain'
  | 'decimalPoint'
  | 'decimalComma'
  | 'eitherPoint'
  | 'eitherComma'
  | 'groupedPoint'
  | 'groupedComma'
  | 'none';

const PLAIN = /^[+-]?\d+(?:e[+-]?\d+)?$/i;
const ONE_MARK = /^[+-]?(\d*)([.,])(\d*)(?:e[+-]?\d+)?$/i;
/** Marks in groups of three, then perhaps the other mark: "1.234.567", "1,234.5", "12.345,60". */
const GROUPED = /^[+-]?[1-9]\d{0,2}(?:([.,])\d{3})(?:\1\d{3})*(?:(?!\1)([.,])\d+)?$/;
/** Thousands parted by a blank or an apostrophe mean nothing else. */
const CLEAR_GROUPS = /^([+-]?[1-9]\d{0,2})((?:[ '\u2019]\d{3})+)(?=[.,]|$)/;

/** One kind of minus and blank; groups parted by blanks or apostrophes joined. */
export function tidyNumber(cell: string): string {
  // Nearly every cell of a long log is plain ASCII digits: nothing to do.
  if (/^[-+.,\de]*$/i.test(cell)) return cell;
  return cell
    .replace(/[\u2212\u2010-\u2015\ufe63\uff0d]/g, '-')
    .replace(/[\u00a0\u2007\u2009\u202f]/g, ' ')
    .trim()
    .replace(/^([+-]) (?=[\d.,])/, '$1')
    .replace(CLEAR_GROUPS, (groups) => groups.replace(/[ '\u2019]/g, ''));
}

/** Shape of a cell that `tidyNumber` went over. */
export function shapeOf(cell: string): Shape {
  if (PLAIN.test(cell)) return 'plain';
  const one = ONE_MARK.exec(cell);
  if (one) return oneMarkShape(cell, one);
  const grouped = GROUPED.exec(cell);
  if (!grouped) return 'none';
  const [, mark, decimal] = grouped;
  if (decimal) return decimal === '.' ? 'decimalPoint' : 'decimalComma';
  return mark === '.' ? 'groupedPoint' : 'groupedComma';
}

function oneMarkShape(cell: string, [, before, mark, after]: RegExpExecArray): Shape {
  if (before === '' && after === '') return 'none';
  const either = after.length === 3 && /^[1-9]\d{0,2}$/.test(before) && !/e/i.test(cell);
  if (mark === '.') return either ? 'eitherPoint' : 'decimalPoint';
  return either ? 'eitherComma' : 'decimalComma';
}

/** What the numbers of a column say about its decimal sign. */
export interface NumberCount {
  numbers: number;
  point: number;
  comma: number;
  eitherPoint: number;
  eitherComma: number;
  /** Thousands points and commas that can be nothing else. */
  groupedPoint: number;
  groupedComma: number;
  /** A cell that could be read either way, and its row. */
  firstEither: { readonly row: number; readonly found: string } | null;
}

export function newCount(): NumberCount {
  return {
    numbers: 0,
    point: 0,
    comma: 0,
    eitherPoint: 0,
    eitherComma: 0,
    groupedPoint: 0,
    groupedComma: 0,
    firstEither: null,
  };
}

export function countCell(count: NumberCount, cell: string, row: number): void {
  const tidy = tidyNumber(cell);
  const shape = shapeOf(tidy);
  if (shape === 'none') return;
  count.numbers++;
  if (shape === 'decimalPoint') {
    count.point++;
    if (tidy.includes(',')) count.groupedComma++;
  } else if (shape === 'decimalComma') {
    count.comma++;
    if (tidy.includes('.')) count.groupedPoint++;
  } else if (shape !== 'plain') {
    count[shape]++;
    if (shape.startsWith('either')) count.firstEither ??= { row, found: cell };
  }
}

/** The decimal sign that a column's own numbers prove; null where they prove none. The more frequent where they quarrel. */
export function ownDecimal(count: NumberCount): DecimalSign | null {
  const point = count.point + count.groupedComma;
  const comma = count.comma + count.groupedPoint;
  if (point === 0 && comma === 0) return null;
  return point >= comma ? '.' : ',';
}

/** How the numbers of one column are written. */
export interface NumberStyle {
  readonly decimal: DecimalSign;
  /**
   * What "1.234" with the other mark is: `thousands` where the column proves that it groups, or has no decimals of its
   * own; `unclear` where it has decimals but never groups.
   */
  readonly otherMark: 'thousands' | 'unclear';
}

export function styleOf(count: NumberCount, decimal: DecimalSign): NumberStyle {
  const grouped = decimal === '.' ? count.groupedComma : count.groupedPoint;
  const decimals = decimal === '.' ? count.point : count.comma;
  return { decimal, otherMark: grouped > 0 || decimals === 0 ? 'thousands' : 'unclear' };
}

const NO_VALUE = /^(?:|nan|n\/?a|#n\/a|null|none|nil|-+|\u2013|\u2014|\?|\.{2,3})$/i;
const NOT_FINITE = /^[+-]?(?:inf|infinity|\u221e)$/i;
const OVER = /^(?:ol|o\.l\.?|ovl|over|overload|over ?range|>+)$/i;

/** Whether a cell says that there is no value. */
export function isNoValue(cell: string): boolean {
  return NO_VALUE.test(cell);
}

const WITH_POINT = /^[+-]?\d+(?:\.\d+)?$/;
const WITH_COMMA = /^[+-]?\d+(?:,\d+)?$/;

/** The number in a cell of a column written so, or why it is none. */
export function readNumber(cell: string, style: NumberStyle): number | ReadingsReason {
  const { decimal } = style;
  // Nearly every cell of a long log.
  if ((decimal === '.' ? WITH_POINT : WITH_COMMA).test(cell)) return ungrouped(cell, decimal);
  const tidy = tidyNumber(cell);
  const shape = shapeOf(tidy);
  if (shape === 'plain') return Number(tidy);
  if (shape === 'none') return notANumber(cell);
  const isPoint = shape.endsWith('Point');
  const fits = isPoint === (decimal === '.');
  // "1.234" with this column's sign is a decimal; "1.234.567" never is.
  if (shape.startsWith('grouped')) return fits ? other(cell, decimal) : ungrouped(tidy, decimal);
  if (fits) return ungrouped(tidy, decimal);
  if (shape.startsWith('decimal')) return other(cell, decimal);
  return style.otherMark === 'thousands'
    ? ungrouped(tidy, decimal)
    : { code: 'ambiguousNumber', found: cell };
}

function ungrouped(tidy: string, decimal: DecimalSign): number {
  if (decimal === '.') return Number(tidy.includes(',') ? tidy.replaceAll(',', '') : tidy);
  const digits = tidy.includes('.') ? tidy.replaceAll('.', '') : tidy;
  return Number(digits.replace(',', '.'));
}

function other(found: string, decimal: DecimalSign): ReadingsReason {
  return { code: 'otherDecimal', found, decimal };
}

function notANumber(cell: string): ReadingsReason {
  if (NOT_FINITE.test(cell)) return { code: 'notFinite', found: cell };
  if (OVER.test(cell)) return { code: 'overRange', found: cell };
  return isNoValue(cell) ? { code: 'noValue', found: cell } : { code: 'notANumber', found: cell };
}
