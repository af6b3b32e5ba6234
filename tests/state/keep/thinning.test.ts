import { describe, expect, it } from 'vitest';
import type { Card } from '../../../src/state/keep/records';
import { MOST_UNNAMED, statesToDrop } from '../../../src/state/keep/thinning';
import { seeded } from '../../support/seeded';

// The rule is the one that the docstring of statesToDrop states; the expected counts are worked out by hand here.

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
const DAY = 24 * HOUR;
/** A whole number of weeks since 1970, so that spans begin at it. */
const NOW = 2900 * 7 * DAY;

function past(savedAt: number, title?: string): Card {
  return {
    key: `past/a/${savedAt}`,
    format: 1,
    id: 'a',
    revision: 1,
    stamp: `s${savedAt}`,
    writer: 'w',
    name: 'a',
    savedAt,
    length: 1,
    edited: true,
    ...(title === undefined ? {} : { title }),
  };
}

function left(pasts: readonly Card[], now: number): Card[] {
  const gone = new Set(statesToDrop(pasts, now));
  return pasts.filter((card) => !gone.has(card));
}

describe('past states are thinned', () => {
  it('to one for each five minutes of the last hour and each hour of the day before', () => {
    const everyMinute = Array.from({ length: 24 * 60 }, (_, k) => past(NOW - (k + 1) * MINUTE));
    // Ages of 1 to 59 minutes lie in 12 spans of five minutes; those of 60 to 1439 in 24 hours, the last with that of 60
    // minutes alone; that of 1440 counts to the days.
    expect(left(everyMinute, NOW).length).toBe(12 + 24 + 1);
  });

  it('to one for each day of the month and each week before, as far as the limit lets', () => {
    const everyDay = Array.from({ length: 500 }, (_, k) => past(NOW - (k + 1) * DAY));
    const kept = left(everyDay, NOW);
    // Of ages 1 to 30 days one each; then the weeks that begin on days 35, 42, ... before, and the rest of the first.
    const days = kept.filter(({ savedAt }) => NOW - savedAt < 31 * DAY);
    expect(days.length).toBe(30);
    const weeks = kept.filter(({ savedAt }) => NOW - savedAt >= 31 * DAY);
    expect(weeks.length).toBe(MOST_UNNAMED - 30);
    for (const { savedAt } of weeks.slice(1)) expect((NOW - savedAt) % (7 * DAY)).toBe(0);
  });

  it('but never those with a name, nor more than once for the same span as time goes on', () => {
    const random = seeded(7);
    let pasts: Card[] = [];
    let now = NOW;
    for (let k = 0; k < 2000; k++) {
      now += random.whole(MINUTE, 40 * MINUTE);
      pasts = [...pasts, past(now, k % 50 === 0 ? `named ${k}` : undefined)];
      const before = pasts;
      pasts = left(pasts, now);
      // The newest stays unless its span has one: those before it stand closer than five minutes.
      const newest = before.at(-1) as Card;
      const span = (card: Card) => Math.floor(card.savedAt / (5 * MINUTE));
      const isLone = before.filter((card) => !card.title && span(card) === span(newest)).length < 2;
      if (isLone) expect(pasts).toContain(newest);
    }
    expect(pasts.filter(({ title }) => title !== undefined).length).toBe(40);
    expect(pasts.filter(({ title }) => title === undefined).length).toBeLessThanOrEqual(
      MOST_UNNAMED,
    );
    // 2000 states of 20 minutes in the mean are four weeks: some of each of the last days is left.
    const oldest = Math.min(...pasts.filter(({ title }) => !title).map(({ savedAt }) => savedAt));
    expect(now - oldest).toBeGreaterThan(20 * DAY);
    expect(left(pasts, now)).toEqual(pasts);
  });
});
