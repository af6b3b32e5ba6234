import { fail, type Result, succeed } from '../../engine/result';
import { decimalSign } from '../../messages/numbers';
import type { FieldUnit } from '../shownUnits';
import { evaluate } from './evaluate';
import { knownUnit, unitFactor } from './typedUnits';

/** Why typed text is no quantity for its field. Nothing is guessed: what can be read in two ways is refused. */
export type QuantityFault =
  | { readonly code: 'empty' }
  | { readonly code: 'notANumber'; readonly text: string }
  /** "1,000" where the decimal sign is a point, "1.000" where it is a comma: one, or a thousand? */
  | { readonly code: 'ambiguousComma' | 'ambiguousPoint'; readonly text: string }
  | { readonly code: 'unknownUnit'; readonly text: string }
  /** A unit that measures something else than this field. */
  | { readonly code: 'wrongUnit'; readonly text: string }
  | { readonly code: 'divideByZero' };

/** Letters that a sum may have; what is pasted by mistake is not gone through. */
const LONGEST = 300;

/**
 * Reads a typed quantity: a number with point or comma, arithmetic (+ - * / and brackets), a mixed fraction
 * ("1 1/8"), and one unit at the very end that holds for the whole ("1/8 in" is an eighth of an inch). Without a
 * unit it counts in `shownName`'s, the one written beside the field.
 *
 * Gives the value in the field's own unit (mm, g, deg, kg/m3, rpm or a bare number), rounded to 12 significant
 * digits so that 0.1 + 0.2 is 0.3.
 */
export function parseQuantity(
  typed: string,
  field: FieldUnit,
  shownName: string,
): Result<number, QuantityFault> {
  if (typed.length > LONGEST) return fail({ code: 'notANumber', text: typed.slice(0, LONGEST) });
  const text = tidy(typed);
  if (text === '') return fail({ code: 'empty' });
  const { sum, unit } = splitUnit(text);
  const factor = unitFactor(field, unit === '' ? shownName : unit);
  if (unit !== '' && !knownUnit(unit)) return fail({ code: 'unknownUnit', text: unit });
  if (factor === undefined) return fail({ code: 'wrongUnit', text: unit });
  const points = decimalPoints(sum);
  if (!points.ok) return points;
  const value = evaluate(points.value);
  if (value === null) return fail({ code: 'notANumber', text: typed.trim() });
  if (!Number.isFinite(value)) return fail({ code: 'divideByZero' });
  const inField = Number((value * factor).toPrecision(12));
  // 1e308 is a number; so many inches are no number of millimetres.
  if (!Number.isFinite(inField)) return fail({ code: 'notANumber', text: typed.trim() });
  return succeed(inField);
}

/** One kind of minus, times, divide, quote and space; a fraction sign stands apart, so that 1½ is one and a half. */
function tidy(typed: string): string {
  return typed
    .replace(/[\u00bc-\u00be\u2150-\u215e]/g, (fraction) => ` ${fraction.normalize('NFKC')}`)
    .replace(/[\uff01-\uff5e]/g, (wide) => wide.normalize('NFKC'))
    .replace(/[\u2212\u2012\u2013\u2014]/g, '-')
    .replace(/[\u00d7\u00b7\u22c5]/g, '*')
    .replace(/[\u00f7\u2044\u2215]/g, '/')
    .replace(/[\u2033\u201d]|''/g, '"')
    .replace(/\s+/g, ' ')
    .trim();
}

/** The unit is what follows the last digit, point or closing bracket ("kg/m3" ends in a digit of its own). */
function splitUnit(text: string): { readonly sum: string; readonly unit: string } {
  const match = /^(.*[\d.,)])\s*((?:[a-z\u00b5\u03bc\u00b0"%][a-z/^0-9\u00b0]*)|1\/min)$/i.exec(
    text,
  );
  const whole =
    /^(.*?[\d.,)])\s*(k?g ?\/ ?c?m\^?[3\u00b3]|g\/cc|lb\/in\^?[3\u00b3]|1\/min|\/min)$/i.exec(text);
  // "N mm", "ozf in", "kg cm", "g mm2": two names with a blank or a dot between them.
  const two = /^(.*[\d.,)])\s*((?:n|kg|g|ozf?)[ *](?:c?m|mm|in)(?:\^?[2\u00b2])?)$/i.exec(text);
  const found = whole ?? two ?? (match && !/^e[+-]?\d/i.test(match[2]) ? match : null);
  if (!found) return { sum: text, unit: '' };
  const unit = found === two ? found[2].replace('*', ' ') : found[2].replaceAll(' ', '');
  return { sum: found[1], unit };
}

const COULD_BE_THOUSANDS = /^[1-9]\d{0,2}[.,]\d{3}$/;

/**
 * Comma and point are decimal signs alike. "1.234,5" and "1,234.5" mix both: refused; and so is three digits after the one
 * that is not the language's own ("1,000" in English, "1.000" in German), which could be a thousand. Digits in groups of
 * three after spaces ("10 000") are one number.
 */
function decimalPoints(sum: string): Result<string, QuantityFault> {
  let bad: string | null = null;
  const own = decimalSign();
  const joined = sum.replace(/\d{1,3}(?: \d{3})+(?![\d/])/g, (group) => group.replaceAll(' ', ''));
  const points = joined.replace(/[\d,][\d.,]*/g, (number) => {
    const commas = number.split(',').length - 1;
    if (commas > 1 || (commas === 1 && number.includes('.'))) bad ??= number;
    if (COULD_BE_THOUSANDS.test(number) && !number.includes(own)) bad ??= number;
    return number.replace(',', '.');
  });
  if (bad === null) return succeed(points);
  const code = (bad as string).includes(',') ? 'ambiguousComma' : 'ambiguousPoint';
  return fail({ code, text: bad });
}
