import { addTexts, t } from '../../messages';
import { BENCH } from '../../messages/en/bench';
import type { ReadingsFault, ReadingsReason } from './fault';

/** Members whose text comes from the table: shown in quotation marks. */
const QUOTED = new Set(['found', 'decimal']);
const LONGEST = 40;

addTexts('bench', BENCH);

/** "Row 7, column 2 (Force [ozf]): "3.x" is no number." */
export function faultText({ row, column, heading, reason }: ReadingsFault): string {
  const words = reasonText(reason);
  const number = String(column);
  const shown =
    heading === ''
      ? number
      : t('bench.fault.columnNamed', { column: number, heading: short(heading) });
  if (row !== null && column !== null)
    return t('bench.fault.at', { row, column: shown, reason: words });
  if (row !== null) return t('bench.fault.atRow', { row, reason: words });
  if (column !== null) return t('bench.fault.atColumn', { column: shown, reason: words });
  return words.charAt(0).toUpperCase() + words.slice(1);
}

function reasonText(reason: ReadingsReason): string {
  const values = Object.fromEntries(
    Object.entries(reason).map(([name, value]) => [name, shownValue(name, value)]),
  );
  return t(`bench.fault.${reason.code}`, values);
}

function shownValue(name: string, value: string | number): string | number {
  if (typeof value === 'number') return Number(value.toPrecision(6));
  if (QUOTED.has(name)) return `\u201c${short(value)}\u201d`;
  const named: string = `bench.${name}.${value}`;
  return isKey(named) ? t(named) : short(value);
}

/** A text from the table fit to be shown: short, on one line. */
function short(text: string): string {
  const line = text.replace(/[\s\p{Cc}]+/gu, ' ').trim();
  return line.length > LONGEST ? `${line.slice(0, LONGEST)}\u2026` : line;
}

type Key = keyof typeof BENCH;

function isKey(text: string): text is Key {
  return Object.hasOwn(BENCH, text);
}
