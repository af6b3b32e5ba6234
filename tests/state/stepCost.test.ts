import { describe, expect, test } from 'vitest';
import { parseDesign } from '../../src/design/file';
import { createSession } from '../../src/state/createSession';
import type { Session } from '../../src/state/session';
import { readBudget, type StepCount } from '../timing/page/budget';
import { headOf } from '../timing/page/heads';

/** A session whose frames come when they are called for. */
function openedHead(parts: number) {
  const read = parseDesign(JSON.stringify(headOf(parts)));
  if (!read.ok) throw new Error(`openedHead(): ${read.error.path}`);
  let due: (() => void)[] = [];
  const session = createSession(read.value, (callback) => {
    due.push(callback);
  });
  return {
    session,
    draw() {
      const now = due;
      due = [];
      for (const callback of now) callback();
    },
  };
}

/** What one step of a drag of the bolt's head costs, the frame that follows included. */
function stepCost(parts: number): Record<StepCount, number> {
  const { session, draw } = openedHead(parts);
  const { live, store } = session;
  const counts = watch(session);
  const hold = session.actions.gesture.begin();
  // The first step pays for what is made once.
  for (const length of [0.1, 0.2]) {
    session.actions.setParameter('bolt', 'extensionLengthMm', length);
    draw();
  }
  const before = read();
  session.actions.setParameter('bolt', 'extensionLengthMm', 0.3);
  draw();
  const after = read();
  expect(store.getState().design.parts.find(({ id }) => id === 'bolt')).toMatchObject({
    extensionLengthMm: 0.3,
  });
  hold.end();
  const names = Object.keys(before) as StepCount[];
  return Object.fromEntries(names.map((name) => [name, after[name] - before[name]])) as Record<
    StepCount,
    number
  >;

  function read(): Record<StepCount, number> {
    return {
      weighed: live.model.counters.weighed,
      posed: live.model.counters.posed,
      entries: live.model.ledgerOperations,
      airSolves: live.forces.airSolved,
      termSamples: live.forces.termSamples,
      ...counts,
    };
  }
}

function watch({ live, store }: Session) {
  const counts = { moments: 0, storeWrites: 0, tellings: 0 };
  const { forces } = live;
  const moment = forces.moment.bind(forces);
  forces.moment = (pitch) => {
    counts.moments++;
    return moment(pitch);
  };
  store.subscribe(() => {
    counts.storeWrites++;
  });
  live.subscribe(() => {
    counts.tellings++;
    // All that is worked out when somebody asks, as chart, dial and verdict do together.
    const { curve, bandsDeg, equilibria } = live.reading;
    expect([curve, bandsDeg, equilibria]).not.toContain(undefined);
  });
  return counts;
}

describe('one step of a drag', () => {
  const small = stepCost(1);

  test('costs no more counted work than the budget says', () => {
    const { step } = readBudget();
    const over = Object.entries(small).filter(([name, count]) => count > step[name as StepCount]);
    expect(over).toEqual([]);
    // A budget that nothing comes near to would let work grow unseen.
    expect(small.moments).toBeGreaterThan(0.4 * step.moments);
  });

  test('costs the same in a head of 200 parts', () => {
    const large = stepCost(200);
    expect({ ...large, moments: 0 }).toEqual({ ...small, moments: 0 });
    // The roots of another head take some steps more or fewer to close in on.
    expect(Math.abs(large.moments - small.moments)).toBeLessThan(40);
  });
});
