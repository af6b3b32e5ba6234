import { siFromGramSquareMm } from '../../engine/units';
import { fixed, significant } from '../quantities';
import type { DisplayUnits } from '../settings';
import { type FieldUnit, grouped, secondMomentText, shownUnit } from '../shownUnits';

/** A quantity in a text that somebody wrote: `{10 mm}`, `{-0.28 N}`, `{+8 mm}`. */
const MARK = /\{([^{}]*)\}/g;
const QUANTITY = /^([+-]?)(\d+(?:\.(\d+))?) (mm|g|N|N mm|g mm2|rpm)$/;

/**
 * The text with its marked quantities in the chosen units and with the language's decimal sign. In the unit that was written
 * the number keeps the digits that it was written with; in another it has as many significant digits, and at least three. What
 * is no such mark stays as it stands (`wrongMark` finds it).
 */
export function markedText(text: string, units: DisplayUnits): string {
  return text.replace(MARK, (whole, inner: string) => {
    const read = QUANTITY.exec(inner);
    if (!read) return whole;
    const [, sign, number, decimals = '', unit] = read;
    const shown = quantityText(Number(number), number, decimals.length, unit as FieldUnit, units);
    return (sign === '-' ? '\u2212' : sign) + shown;
  });
}

/** The first piece of a text that looks like a mark and is none; null where all is well. */
export function wrongMark(text: string): string | null {
  const wrong = text.match(MARK)?.find((mark) => !QUANTITY.test(mark.slice(1, -1)));
  if (wrong !== undefined) return wrong;
  return /[{}]/.exec(text.replace(MARK, ''))?.[0] ?? null;
}

function quantityText(
  value: number,
  written: string,
  decimals: number,
  unit: FieldUnit,
  units: DisplayUnits,
): string {
  if (unit === 'g mm2') return secondMomentText(siFromGramSquareMm(value), units);
  const shown = shownUnit(unit, units);
  const digits = written.replace('.', '').replace(/^0+/, '').length;
  const number =
    shown.perShown === 1
      ? grouped(fixed(value, decimals))
      : significant(value / shown.perShown, Math.max(3, digits));
  return `${number}\u00a0${shown.name}`;
}
