import type { Card } from './records';

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
const DAY = 24 * HOUR;
/** Of an age up to `until`, one state for each `every`. */
const STEPS = [
  { until: HOUR, every: 5 * MINUTE },
  { until: DAY, every: HOUR },
  { until: 31 * DAY, every: DAY },
  { until: Number.POSITIVE_INFINITY, every: 7 * DAY },
];
/** Past states without a name that are kept of one design: the oldest go first. */
export const MOST_UNNAMED = 60;
/** A state is put by this often at most, ms. */
export const PAST_EVERY = 5 * MINUTE;

/**
 * Which past states to let go: of those without a name, all but the oldest of each span (five minutes for the last hour,
 * an hour for the last day, a day for the last month, then a week), and what is beyond the limit. Spans are counted from
 * the clock and not from now, so that the one kept stays the same as time goes on. Named states are never among them.
 */
export function statesToDrop(pasts: readonly Card[], now: number): readonly Card[] {
  const unnamed = pasts
    .filter((card) => card.title === undefined)
    .toSorted((a, b) => a.savedAt - b.savedAt);
  const spans = new Set<string>();
  const kept: Card[] = [];
  for (const card of unnamed) {
    const age = now - card.savedAt;
    const { every } = STEPS.find(({ until }) => age < until) ?? STEPS[STEPS.length - 1];
    const span = `${every} ${Math.floor(card.savedAt / every)}`;
    if (spans.has(span)) continue;
    spans.add(span);
    kept.push(card);
  }
  const stay = new Set(kept.slice(-MOST_UNNAMED));
  return unnamed.filter((card) => !stay.has(card));
}
