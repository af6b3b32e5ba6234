import { unreachable } from '../../engine/result';
import type { Happening } from '../../state/happenings';
import { type LessonHead, type QuantityRef, quantityValue } from './quantity';

/** What must be so of the head. Limits are in the quantity's unit; a head without that number never meets it. */
interface NumberCondition extends QuantityRef {
  readonly atLeast?: number;
  readonly atMost?: number;
  /** The size counts, not the sign. */
  readonly size?: boolean;
  /** The limits are times the value of the head that the lesson began with. */
  readonly timesStart?: boolean;
}

interface VerdictCondition {
  readonly verdict: readonly string[];
}

/** What a person must have made happen since the step began. */
type HappeningCondition =
  | {
      readonly happened: 'letGo';
      readonly outcome?: readonly string[];
      /** It was let go at least so far from flat, either way. */
      readonly fromAtLeastDeg?: number;
      readonly endAtLeastDeg?: number;
      readonly endAtMostDeg?: number;
    }
  | { readonly happened: 'pulls'; readonly added?: number }
  | { readonly happened: 'racket'; readonly axis?: string; readonly flips?: number };

export type HeadCondition = NumberCondition | VerdictCondition;
export type Condition = HeadCondition | HappeningCondition;

/** Whether all conditions hold of a head, of the head that the lesson began with, and of what happened since. */
export function allMet(
  conditions: readonly Condition[],
  now: LessonHead,
  start: LessonHead,
  happened: readonly Happening[],
): boolean {
  return conditions.every((condition) => {
    if ('happened' in condition) return happened.some((one) => hasHappened(condition, one));
    return isMet(condition, now, start);
  });
}

export function isMet(condition: HeadCondition, now: LessonHead, start: LessonHead): boolean {
  if ('verdict' in condition) return condition.verdict.includes(now.reading.verdict().kind);
  const value = comparedValue(condition, now, start);
  if (value === null) return false;
  const { atLeast, atMost } = condition;
  return (atLeast === undefined || value >= atLeast) && (atMost === undefined || value <= atMost);
}

/** What is held against the limits; null where there is no such number. */
function comparedValue(
  condition: NumberCondition,
  now: LessonHead,
  start: LessonHead,
): number | null {
  let value = quantityValue(now, condition);
  if (value === null) return null;
  if (condition.timesStart) {
    const before = quantityValue(start, condition);
    if (before === null || before === 0) return null;
    value /= before;
  }
  return condition.size ? Math.abs(value) : value;
}

function hasHappened(condition: HappeningCondition, one: Happening): boolean {
  switch (condition.happened) {
    case 'letGo':
      return (
        one.kind === 'letGo' &&
        (condition.outcome?.includes(one.outcome) ?? true) &&
        Math.abs(one.fromDeg) >= (condition.fromAtLeastDeg ?? 0) &&
        one.endDeg >= (condition.endAtLeastDeg ?? Number.NEGATIVE_INFINITY) &&
        one.endDeg <= (condition.endAtMostDeg ?? Number.POSITIVE_INFINITY)
      );
    case 'pulls':
      return one.kind === 'pulls' && one.added > 0 && one.added >= (condition.added ?? one.of);
    case 'racket':
      return (
        one.kind === 'racket' &&
        (condition.axis ?? one.axis) === one.axis &&
        one.flips >= (condition.flips ?? 1)
      );
    default:
      return unreachable(condition);
  }
}
