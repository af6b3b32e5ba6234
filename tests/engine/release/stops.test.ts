import { describe, expect, test } from 'vitest';
import { releaseOutcome, runRelease } from '../../../src/engine/release/outcome';
import { createRelease } from '../../../src/engine/release/release';
import { constantInertia, type ReleaseSystem } from '../../../src/engine/release/releaseSystem';
import { radians } from '../../../src/engine/units';
import { gripOf, harmonicGrip, letGo } from './systems';

const INERTIA = 8e-6;
const PUSH = 0.4;
const HIGH = radians(0.35);

/** A constant moment toward the high stop: the ball that falls on the floor. */
function falling(restitution: number): ReleaseSystem {
  return {
    moment: () => PUSH,
    energy: (pitch) => -PUSH * pitch,
    friction: () => 0,
    inertia: constantInertia(INERTIA),
    damping: 0,
    low: radians(-0.5),
    high: HIGH,
    restitution,
  };
}

/** Heights of the rebounds (pitch below the stop) and times of the blows. */
function bounces(system: ReleaseSystem, duration: number) {
  const release = letGo(system, HIGH - 0.1);
  const heights: number[] = [];
  const blows: number[] = [];
  let [turns, hits] = [0, 0];
  release.advance(duration, (now) => {
    if (now.turns > turns) heights.push(HIGH - now.lastEnd);
    if (now.hits > hits) blows.push(now.time);
    [turns, hits] = [now.turns, now.hits];
  });
  return { heights, blows, release };
}

describe('a stop', () => {
  test.each([0.9, 0.5, 0.2])('with restitution %d lets rebounds rise by its square', (e) => {
    // The bouncing ball of any textbook: heights e^(2n) h, flights 2 e^n v / a.
    const { heights, blows } = bounces(falling(e), 1);
    const a = PUSH / INERTIA;
    const fall = Math.sqrt((2 * 0.1) / a);
    const known = heights.filter((height) => height > 1e-6);
    expect(known.length).toBeGreaterThanOrEqual(e > 0.3 ? 5 : 3);
    known.forEach((height, n) => {
      // Height and time are good to some 1e-15 rad against heights above 1e-6.
      expect(Math.abs(height / (0.1 * e ** (2 * n + 2)) - 1)).toBeLessThan(1e-8);
      const at = fall * (1 + 2 * Array.from({ length: n }, (_, k) => e ** (k + 1)).reduce(add, 0));
      expect(Math.abs(blows[n] / at - 1)).toBeLessThan(1e-9);
    });
  });

  test('a ball that bounces for ever less comes to rest in the time of the geometric series', () => {
    for (const e of [0.9, 0.5, 0]) {
      const { release } = bounces(falling(e), 1);
      const fall = Math.sqrt((2 * 0.1 * INERTIA) / PUSH);
      const all = (fall * (1 + e)) / (1 - e);
      expect(release.phase).toBe('atStop');
      expect(release.pitch).toBe(HIGH);
      expect(release.rate).toBe(0);
      const ended = release.ended?.time ?? Number.NaN;
      // Rebounds below 1e-9 rad of a fall of 0.1 rad are left out: what is left is less than 2 sqrt(1e-8) / (1 - e) falls.
      expect(ended).toBeLessThanOrEqual(all * (1 + 1e-12));
      expect(all - ended).toBeLessThan((2e-4 * fall) / (1 - e) + 1e-15);
      // All energy is accounted for: what the stop took is the whole fall.
      expect(Math.abs(release.energy.taken / (PUSH * 0.1) - 1)).toBeLessThan(1e-9);
    }
  });

  test('that gives all back lets it bounce for ever at the same height', () => {
    const { heights, release } = bounces(falling(1), 0.2);
    expect(heights.length).toBeGreaterThan(40);
    for (const height of heights) expect(Math.abs(height / 0.1 - 1)).toBeLessThan(1e-9);
    expect(release.phase).toBe('sliding');
    expect(releaseOutcome(release, falling(1)).kind).toBe('oscillates');
  });

  test('holds what pushes into it and lets go of what pulls away from it', () => {
    const system = falling(0.5);
    const release = letGo(system, HIGH);
    release.advance(1);
    expect(release.phase).toBe('atStop');
    expect(release.pitch).toBe(HIGH);
    release.push(-PUSH * (1 - 1e-12));
    expect(release.phase).toBe('atStop');
    release.push(-PUSH * 2);
    expect(release.phase).toBe('sliding');
    release.advance(0.001);
    // Half a t^2 back, as from any rest.
    expect(release.pitch).toBeCloseTo(HIGH - ((PUSH / INERTIA) * 1e-6) / 2, 12);
  });

  test('let go on a stop with a rate into it, it bounces at once', () => {
    const release = letGo(falling(0.5), HIGH, { rate: 10 });
    expect(release.hits).toBe(1);
    expect(release.rate).toBe(-5);
    expect(release.energy.taken).toBeCloseTo((INERTIA * 75) / 2, 15);
    release.advance(1);
    expect(release.phase).toBe('atStop');
  });

  test('with travel of no width nothing moves', () => {
    const release = letGo({ ...falling(0.5), low: HIGH }, HIGH, { rate: -3 });
    release.advance(1);
    expect(release.pitch).toBe(HIGH);
    expect(release.phase).toBe('atStop');
  });
});

describe('the outcome', () => {
  const blade = gripOf(6e-6, 2e-6);
  const bolt = { ...gripOf(2e-6, 6e-6), low: radians(-0.6), high: radians(0.6), restitution: 0.3 };
  const outcome = (system: ReleaseSystem, pitch: number, longest = 1) => {
    const made = runRelease(system, { pitch: radians(pitch), rate: 0 }, longest);
    if (!made.ok) throw new Error(JSON.stringify(made.error));
    return made.value.outcome;
  };

  test('it stays where friction holds it, and where there is no moment at all', () => {
    expect(outcome({ ...blade, friction: () => 10 }, 0.3)).toEqual({
      kind: 'stays',
      pitch: 0.3,
      at: null,
    });
    expect(outcome(harmonicGrip(new Float64Array(4), 8e-6), 0.3).kind).toBe('stays');
  });

  test('at an exact rest or flee angle it stays without any friction', () => {
    expect(outcome(blade, 0)).toEqual({ kind: 'stays', pitch: 0, at: null });
    expect(outcome(bolt, 0)).toEqual({ kind: 'stays', pitch: 0, at: null });
  });

  test('a bolt-like grip runs to the stop on its side, by friction or without', () => {
    for (const [pitch, stop, friction] of [
      [0.001, 'high', 0],
      [-0.001, 'low', 0],
      [0.2, 'high', 0.1],
    ] as const) {
      const found = outcome({ ...bolt, friction: () => friction }, pitch);
      expect(found.kind).toBe('runsToStop');
      if (found.kind !== 'runsToStop') return;
      expect(found.stop).toBe(stop);
      expect(Math.abs(found.pitch)).toBe(0.6);
      expect(found.reached).toBeGreaterThan(0);
      expect(found.time).toBeGreaterThan(found.reached);
    }
  });

  test('close to flat the way to the stop takes ln(distance) / w longer, as an unstable rest does', () => {
    // t = t0 cosh(w s): ten times nearer to the flee angle takes ln 10 / w longer.
    const w = Math.sqrt(4e-6 / 8e-6) * ((10_200 * Math.PI) / 30);
    const reached = [1e-4, 1e-5, 1e-6].map((pitch) => {
      const found = outcome(bolt, pitch);
      return found.kind === 'runsToStop' ? found.reached : Number.NaN;
    });
    expect((reached[1] - reached[0]) * w).toBeCloseTo(Math.LN10, 6);
    expect((reached[2] - reached[1]) * w).toBeCloseTo(Math.LN10, 6);
  });

  test('a blade-like grip settles by friction, and by damping alone once it stays within 1e-4 rad', () => {
    const rough = outcome({ ...blade, friction: () => 0.05 }, 0.5);
    expect(rough).toMatchObject({ kind: 'settles', by: 'friction' });
    const damped = { ...blade, damping: 1e-3 };
    const found = outcome(damped, 0.5);
    expect(found).toMatchObject({ kind: 'settles', by: 'damping' });
    if (found.kind !== 'settles') return;
    expect(Math.abs(found.pitch)).toBeLessThanOrEqual(1e-4);
    // And it does stay within it.
    const later = letGo(damped, 0.5);
    later.advance(found.time);
    let worst = 0;
    later.advance(0.1, ({ pitch }) => {
      worst = Math.max(worst, Math.abs(pitch));
    });
    expect(worst).toBeLessThanOrEqual(1e-4);
  });

  test('without friction and damping it still swings between the same two pitches', () => {
    const found = outcome(blade, 0.5, 0.5);
    expect(found.kind).toBe('oscillates');
    if (found.kind !== 'oscillates') return;
    expect(found.low).toBeCloseTo(-0.5, 7);
    expect(found.high).toBeCloseTo(0.5, 7);
  });

  test('before it has swung it moves, and says how fast', () => {
    expect(outcome(blade, 0.5, 1e-4)).toMatchObject({ kind: 'moves' });
  });

  test('where the moment ends it says so, at the pitch where it ends, and goes no farther', () => {
    const edge = -0.123456789;
    const gapped = {
      ...blade,
      moment: (pitch: number) => (pitch < edge ? Number.NaN : blade.moment(radians(pitch))),
    };
    const made = runRelease(gapped, { pitch: radians(0.5), rate: 0 }, 1);
    if (!made.ok) throw new Error(JSON.stringify(made.error));
    const { outcome: found, release } = made.value;
    expect(found.kind).toBe('noMoment');
    expect(release.pitch).toBeGreaterThanOrEqual(edge);
    expect(release.pitch - edge).toBeLessThan(1e-10);
    const { time } = found as { time: number };
    expect(time).toBeLessThan(0.01);
    release.push(3);
    release.advance(1);
    expect(release.pitch - edge).toBeLessThan(1e-10);
    expect(release.phase).toBe('gap');
  });

  test('heavy damping does not hang: it says that it was not followed to the end', () => {
    const made = runRelease({ ...blade, damping: 1e3 }, { pitch: radians(0.5), rate: 0 }, 1e3);
    expect(made.ok && made.value.complete).toBe(false);
    expect(made.ok && made.value.outcome.kind).toBe('moves');
  });

  test('damping a hundred times critical creeps as the first-order law says', () => {
    // c t' = M = -k t for small angles: t = t0 exp(-k s / c), the fast part gone after I / c.
    const k = 2;
    const c = 100 * 2 * Math.sqrt(k * 8e-6);
    const spring = {
      ...blade,
      damping: c,
      moment: (pitch: number) => -k * pitch,
      energy: (pitch: number) => (k * pitch * pitch) / 2,
    };
    const release = letGo(spring, 0.1);
    release.advance((2 * c) / k);
    // Corrections of the order k I / c^2 = 1 / 40,000.
    expect(release.pitch / (0.1 * Math.exp(-2))).toBeCloseTo(1, 3);
  });
});

describe('what cannot be let go', () => {
  const system = falling(0.5);
  const refuse = (change: Partial<ReleaseSystem>, pitch = 0.1, rate = 0) => {
    const made = createRelease({ ...system, ...change }, { pitch: radians(pitch), rate });
    return made.ok ? null : made.error;
  };

  test.each([
    ['damping', { damping: -1 }],
    ['damping', { damping: Number.NaN }],
    ['restitution', { restitution: 1.01 }],
    ['restitution', { restitution: -0.1 }],
    ['travel', { low: radians(1) }],
  ])('%s out of range is named with its limits', (field, change) => {
    const fault = refuse(change);
    expect(fault).toMatchObject({ kind: 'outOfRange', field });
  });

  test('a pitch beyond a stop names the stops', () => {
    expect(refuse({}, 0.4)).toEqual({
      kind: 'outsideTravel',
      pitch: 0.4,
      low: -0.5,
      high: 0.35,
    });
  });

  test('no moment, no friction, nothing that turns: said by name', () => {
    expect(refuse({ moment: () => Number.NaN })).toMatchObject({
      kind: 'noValue',
      field: 'moment',
    });
    expect(refuse({ friction: () => -1 })).toMatchObject({ kind: 'noValue', field: 'friction' });
    expect(refuse({ inertia: constantInertia(0) })).toMatchObject({
      kind: 'noValue',
      field: 'inertia',
    });
  });

  test('a pitch, rate or push that is no number is refused', () => {
    expect(refuse({}, Number.NaN)).toMatchObject({ kind: 'outOfRange', field: 'pitch' });
    expect(refuse({}, 0.1, Infinity)).toMatchObject({ kind: 'outOfRange', field: 'rate' });
    const release = letGo(system, 0.1);
    expect(() => release.push(Number.NaN)).toThrow('moment is not finite');
    expect(() => release.advance(-1)).toThrow('duration');
  });
});

function add(a: number, b: number): number {
  return a + b;
}
