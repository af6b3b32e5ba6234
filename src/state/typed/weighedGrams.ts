import { MEASURED_LIMITS } from '../../design/measured';
import { fail, type Result, succeed } from '../../engine/result';
import { t } from '../../messages';
import type { DisplayUnits } from '../settings';
import { shownUnit } from '../shownUnits';
import { outOfLimits, readTyped } from './readTyped';

/**
 * The mass in grams that was typed for a body, read as every other field reads it: a number without a unit counts in
 * the page's unit of mass. Undefined where nothing was typed; in words, why it was not taken.
 */
export function weighedGrams(
  typed: string,
  units: DisplayUnits,
): Result<number | undefined, string> {
  if (typed.trim() === '') return succeed(undefined);
  const limits = MEASURED_LIMITS.massGrams;
  const label = t('measured.mass');
  const unit = shownUnit(limits.unit, units);
  const read = readTyped(typed, { label, unit: limits.unit }, unit, null);
  if (!read.ok) return fail(read.reason);
  const outside = outOfLimits({ label, limits }, read.value, unit);
  return outside === null ? succeed(read.value) : fail(outside);
}
