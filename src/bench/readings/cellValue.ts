import type { ReadingsReason } from './fault';
import { senseWord } from './headings';
import { type NumberStyle, readNumber } from './numbers';
import { type UnitName, unitFromText } from './unitNames';

/** A number with what stood beside it in its cell: "3.5 ozf", "12,5 N T", "C 4". */
export interface CellValue {
  readonly value: number;
  readonly unit: UnitName | null;
  readonly sense: 'tension' | 'compression' | null;
}

/** The digits of a cell and the words round them; the digits may be no number. */
export interface CellParts {
  readonly number: string;
  readonly before: string;
  readonly after: string;
}

const BARE = /^[-+.,\de]*$/i;
const PARTS =
  /^(\p{L}*)\s*([-+\u2212\u2010-\u2015]?[\s\u00a0\u202f]?[\d.,](?:[\d.,'\u2019]|[\s\u00a0\u2007\u2009\u202f]\d{3}(?!\d)|e[-+]?\d)*)\s*(.*)$/u;

/** Takes a cell apart; null for a bare number or a text without digits. */
export function cellParts(cell: string): CellParts | null {
  if (BARE.test(cell)) return null;
  const match = PARTS.exec(cell);
  return match ? { before: match[1], number: match[2], after: match[3].trim() } : null;
}

/** The part of a cell that is counted when the decimal sign is decided. */
export function numberText(cell: string): string {
  return cellParts(cell)?.number ?? cell;
}

/** The value of a cell in a column written in `style`, or why there is none. */
export function readCell(cell: string, style: NumberStyle): CellValue | ReadingsReason {
  const parts = cellParts(cell);
  if (parts === null) {
    const value = readNumber(cell, style);
    return typeof value === 'number' ? { value, unit: null, sense: null } : value;
  }
  const value = readNumber(parts.number, style);
  if (typeof value !== 'number') {
    return value.code === 'notANumber' ? { code: 'notANumber', found: cell } : value;
  }
  return beside(parts, value) ?? { code: 'notANumber', found: cell };
}

/** A unit, then perhaps a letter for tension or compression; a letter may stand in front instead. */
function beside({ before, after }: CellParts, value: number): CellValue | null {
  const front = senseWord(before);
  if (before !== '' && front === null) return null;
  if (after === '') return { value, unit: null, sense: front };
  const unit = unitFromText(after);
  if (unit !== null) return { value, unit, sense: front };
  if (front !== null) return null;
  const match = /^(.*?)\s*\(?(\p{L}+)\)?$/u.exec(after);
  const sense = match && senseWord(match[2]);
  if (!match || !sense) return null;
  if (match[1] === '') return { value, unit: null, sense };
  const named = unitFromText(match[1]);
  return named === null ? null : { value, unit: named, sense };
}
