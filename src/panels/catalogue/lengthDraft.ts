import { fail, type Result, succeed } from '../../engine/result';
import { t } from '../../messages';
import { parseQuantity } from '../../state/typed/parseQuantity';
import { lengthText, lengthUnitOf } from '../../state/words/catalogueText';
import { placeOfLength } from './lengths';

/**
 * The length that a text stands for, mm, in the size's own unit where none is typed: a listed one exactly where it is
 * one, any other within the catalogue's limits. The reason in words where it is none.
 */
export function readLength(
  text: string,
  size: string,
  lengths: readonly number[],
  [min, max]: readonly [number, number],
): Result<number, string> {
  if (text.trim() === '') return fail(t('catalogue.lengthEmpty'));
  const read = parseQuantity(text, 'mm', lengthUnitOf(size));
  if (!read.ok) return fail(t('catalogue.lengthUnread', { text: text.slice(0, 40) }));
  const lengthMm = placeOfLength(lengths, read.value).listed ?? Number(read.value.toPrecision(12));
  if (lengthMm >= min && lengthMm <= max) return succeed(lengthMm);
  const limits = { min: lengthText(size, min), max: lengthText(size, max) };
  return fail(t('catalogue.lengthLimits', limits));
}
