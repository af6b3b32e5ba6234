import { POSITION_LIMITS } from '../../design/limits';
import { fail, type Result, succeed } from '../../engine/result';

/** Why typed text is no station. */
export type StationFault = 'notANumber' | 'ambiguousComma' | 'outside';

const NUMBER = /^[+-]?(?:\d+[.,]?\d*|[.,]\d+)(?:e[+-]?\d+)?$/i;
/** "1,000": one, or a thousand? */
const AMBIGUOUS = /^[+-]?[1-9]\d{0,2},\d{3}$/;

/** Reads a typed station in mm: one decimal number, with point or comma, within the limits of a position. */
export function readStation(typed: string): Result<number, StationFault> {
  const text = typed.trim().replace('\u2212', '-');
  if (!NUMBER.test(text)) return fail('notANumber');
  if (AMBIGUOUS.test(text)) return fail('ambiguousComma');
  const value = Number(text.replace(',', '.'));
  const { min, max } = POSITION_LIMITS;
  return value >= min && value <= max ? succeed(value) : fail('outside');
}
