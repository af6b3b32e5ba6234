import { fail, type Result, succeed } from '../../engine/result';
import { decimalSign } from '../../messages/numbers';

/** Why typed text is no number. */
export type PlainNumberFault = 'notANumber' | 'ambiguousComma' | 'ambiguousPoint';

const NUMBER = /^[+-]?(?:\d+[.,]?\d*|[.,]\d+)(?:e[+-]?\d+)?$/i;
/** "1,000": one, or a thousand? Not where the sign is the language's own decimal sign. */
const COULD_BE_THOUSANDS = /^[+-]?[1-9]\d{0,2}([.,])\d{3}$/;

/** Reads one decimal number with point or comma and any kind of minus; no unit and no sum (`parseQuantity` reads those). */
export function plainNumber(typed: string): Result<number, PlainNumberFault> {
  const text = typed.trim().replace(/[\u2212\u2010-\u2015]/g, '-');
  if (!NUMBER.test(text)) return fail('notANumber');
  const sign = COULD_BE_THOUSANDS.exec(text)?.[1];
  if (sign && sign !== decimalSign()) {
    return fail(sign === ',' ? 'ambiguousComma' : 'ambiguousPoint');
  }
  // No negative zero.
  return succeed(Number(text.replace(',', '.')) + 0);
}
