import { describe, expect, test } from 'vitest';
import { createFreeBody } from '../../../src/engine/release/freeBody';
import {
  landscape,
  rateAtEnergy,
  reachWithoutFriction,
} from '../../../src/engine/release/potential';
import { createRelease } from '../../../src/engine/release/release';
import {
  checkRelease,
  type ReleaseStart,
  type ReleaseSystem,
  rateScale,
} from '../../../src/engine/release/releaseSystem';
import { settlesByDamping } from '../../../src/engine/release/settling';
import { createSlowClock, roundSlowness } from '../../../src/engine/release/slowMotion';
import { createTrace } from '../../../src/engine/release/trace';
import { createTumbling } from '../../../src/engine/release/tumbling';
import { radians } from '../../../src/engine/units';
import { gripOf, letGo, SPRING } from './systems';

describe('what is asked of a release', () => {
  const faultOf = (system: Partial<ReleaseSystem>, start: Partial<ReleaseStart> = {}) => {
    const made = checkRelease({ ...SPRING, ...system }, { pitch: radians(0), rate: 0, ...start });
    return made.ok ? null : made.error;
  };
  const most = Number.MAX_VALUE;

  test.each([
    [{ damping: -1e-9 }, {}, { field: 'damping', value: -1e-9, low: 0, high: most }],
    [{ damping: Infinity }, {}, { field: 'damping', value: Infinity, low: 0, high: most }],
    [{ restitution: 1.0001 }, {}, { field: 'restitution', value: 1.0001, low: 0, high: 1 }],
    [{ restitution: -0.0001 }, {}, { field: 'restitution', value: -0.0001, low: 0, high: 1 }],
    [{ low: radians(1.5) }, {}, { field: 'travel', value: -0.5, low: 0, high: Infinity }],
    [
      {},
      { pitch: radians(-Infinity) },
      { field: 'pitch', value: -Infinity, low: -most, high: most },
    ],
    [{}, { rate: -Infinity }, { field: 'rate', value: -Infinity, low: -most, high: most }],
    [{}, { hand: Number.NaN }, { field: 'hand', value: Number.NaN, low: -most, high: most }],
  ])('is refused with its limits: %#', (system, start, fault) => {
    expect(faultOf(system, start)).toEqual({ kind: 'outOfRange', ...fault });
  });

  test('is taken at the limits themselves', () => {
    for (const change of [{ damping: 0 }, { restitution: 0 }, { restitution: 1 }]) {
      expect(faultOf(change)).toBeNull();
    }
    const same = radians(0.5);
    expect(faultOf({ low: same, high: same }, { pitch: same })).toBeNull();
    expect(faultOf({}, { pitch: radians(-1) })).toBeNull();
    expect(faultOf({}, { pitch: radians(1) })).toBeNull();
    expect(faultOf({ friction: () => 0 })).toBeNull();
    expect(faultOf({}, { pitch: radians(-1.001) })).toMatchObject({ kind: 'outsideTravel' });
    expect(faultOf({}, { pitch: radians(1.001) })).toMatchObject({ kind: 'outsideTravel' });
  });
});

describe('the rate that steps are measured by', () => {
  const at = (change: Partial<ReleaseSystem>, start: Partial<ReleaseStart> = {}) =>
    rateScale({ ...SPRING, ...change }, { pitch: radians(0), rate: 0, ...start });

  test('is that of the stiffest spring along the travel: root of 2 over 0.5', () => {
    expect(at({})).toBeCloseTo(2, 12);
    // Stiff at the far end only: 0.02 at 0.9, and 8 N m/rad from there on.
    const bent = (pitch: number) => (pitch < 0.9 ? 0 : -8 * (pitch - 0.9));
    expect(at({ moment: bent })).toBeCloseTo(4, 12);
  });

  test.each<[string, Partial<ReleaseSystem>, Partial<ReleaseStart>, number]>([
    ['a moment', { moment: () => 8 }, {}, 4],
    ['friction', { moment: () => 0, friction: () => 18 }, {}, 6],
    ['damping', { damping: 7 }, {}, 14],
    ['a hand', { moment: () => 0 }, { hand: -8 }, 4],
    ['the rate at release', {}, { rate: -30 }, 30],
    ['nothing', { moment: () => 0 }, {}, 1],
  ])('is that of %s where it is the greatest', (_, system, start, wanted) => {
    expect(at(system, start)).toBeCloseTo(wanted, 12);
  });

  test('looks half a turn to either side where there are no stops, and over gaps', () => {
    const free = { low: radians(-Infinity), high: radians(Infinity) };
    // A moment of 50 beyond 3.2 rad is not seen, one of 8 at 3 rad is.
    const far = (pitch: number) => (Math.abs(pitch) > 3.2 ? 50 : -8);
    expect(at({ ...free, moment: far })).toBeCloseTo(4, 12);
    const holed = (pitch: number) => (Math.abs(pitch) < 0.2 ? Number.NaN : -2 * pitch);
    expect(at({ moment: holed })).toBeCloseTo(2, 12);
  });
});

describe('settled by damping', () => {
  const settles = (
    pitch: number,
    rate: number,
    change: Partial<ReleaseSystem> = {},
    hand = 0,
    within = 0.01,
  ) =>
    settlesByDamping(
      { ...SPRING, damping: 1, ...change },
      Float64Array.of(pitch, rate, 0),
      hand,
      within,
    );

  test('is a swing no wider than what counts: (x / within)^2 + (v / (w within))^2 <= 1, w = 2', () => {
    expect([settles(0.0099, 0), settles(0.0101, 0), settles(-0.0101, 0)]).toEqual([
      true,
      false,
      false,
    ]);
    expect([settles(0, 0.0199), settles(0, 0.0201), settles(0, -0.0201)]).toEqual([
      true,
      false,
      false,
    ]);
    // 0.6 and 0.8 of it together are all of it.
    expect(settles(0.00599, 0.01599)).toBe(true);
    expect(settles(0.00601, 0.01601)).toBe(false);
  });

  test('counts from the rest angle under the hand', () => {
    // A hand of 1 N m holds the spring at 0.5 rad.
    expect(settles(0.505, 0, {}, 1)).toBe(true);
    expect(settles(0.005, 0, {}, 1)).toBe(false);
  });

  test('is never without damping, under friction, or at an angle that flees', () => {
    expect(settles(0, 0, { damping: 0 })).toBe(false);
    expect(settles(0, 0, { friction: () => 1e-12 })).toBe(false);
    expect(settles(0, 0, { moment: (pitch) => 2 * pitch })).toBe(false);
  });

  test('without any moment is to coast no farther: I v / c', () => {
    const none = { moment: () => 0, damping: 2 };
    expect([settles(0.7, 0.0399, none), settles(0.7, -0.0401, none)]).toEqual([true, false]);
    expect(settles(0.7, 0, none, 0.1)).toBe(false);
  });
});

describe('a motion by itself', () => {
  test('swings as cos 2 t, its ledger to rounding, its ends where it turns', () => {
    const release = letGo(SPRING, 0.5);
    expect([release.phase, release.moved, release.hits, release.turns]).toEqual([
      'sliding',
      false,
      0,
      0,
    ]);
    expect([release.energy.kinetic, release.energy.potential]).toEqual([0, 0.25]);
    release.advance(1);
    expect(release.pitch).toBeCloseTo(0.5 * Math.cos(2), 9);
    expect(release.rate).toBeCloseTo(-Math.sin(2), 9);
    expect(release.moved).toBe(true);
    const { kinetic, potential, scale, given, taken } = release.energy;
    expect(kinetic).toBeCloseTo(0.25 * Math.sin(2) ** 2, 9);
    expect(potential).toBeCloseTo(0.25 * Math.cos(2) ** 2, 9);
    expect(scale).toBeGreaterThanOrEqual(kinetic);
    expect([given, taken]).toEqual([0, 0]);
    release.advance(1);
    expect([release.turns, release.endBefore]).toEqual([1, Number.NaN]);
    expect(release.lastEnd).toBeCloseTo(-0.5, 9);
    release.advance(2);
    expect([release.lastEnd, release.endBefore].map((end) => Math.round(2e6 * end))).toEqual([
      1e6, -1e6,
    ]);
  });

  test('a hand gives its moment times the way', () => {
    const release = letGo({ ...SPRING, high: radians(3) }, 0, { hand: 1 });
    // About the rest angle 0.5: 0.5 (1 - cos 2 t).
    release.advance(0.6);
    expect(release.hand).toBe(1);
    expect(release.pitch).toBeCloseTo(0.5 * (1 - Math.cos(1.2)), 9);
    expect(release.energy.given).toBeCloseTo(release.pitch, 12);
    expect(Math.abs(release.energy.error)).toBeLessThan(1e-11);
  });

  test('a blow takes what its stop does not give back', () => {
    // From 0.8 toward the stop at 1 with 3 rad/s: v^2 = 9 + 4 (0.64 - 1) = 7.56 on arrival, half of the rate comes back.
    const release = letGo(SPRING, 0.8, { rate: 3 });
    for (let i = 0; i < 100 && release.hits === 0; i++) release.advance(0.002);
    const { hits, firstHit, energy, lastEnd } = release;
    expect([hits, firstHit?.stop, lastEnd]).toEqual([1, 'high', 1]);
    expect(firstHit?.rate).toBeCloseTo(Math.sqrt(7.56), 9);
    expect(energy.taken).toBeCloseTo(0.25 * 7.56 * 0.75, 8);
    expect(Math.abs(energy.error)).toBeLessThan(1e-9);
    const low = letGo(SPRING, -0.8, { rate: -3 });
    for (let i = 0; i < 100 && low.hits === 0; i++) low.advance(0.002);
    expect(low.firstHit?.stop).toBe('low');
    expect(low.firstHit?.rate).toBeCloseTo(-Math.sqrt(7.56), 9);
  });

  test('let go on a stop, toward it or away from it', () => {
    const into = letGo(SPRING, -1, { rate: -2 });
    expect([into.hits, into.rate, into.firstHit?.stop]).toEqual([1, 1, 'low']);
    expect(into.energy.taken).toBeCloseTo(0.25 * (4 - 1), 14);
    expect(letGo(SPRING, -1, { rate: 2 }).hits).toBe(0);
    expect(letGo(SPRING, 1, { rate: -2 }).hits).toBe(0);
    expect(letGo(SPRING, 1, { rate: 2 }).rate).toBe(-1);
  });

  test('at rest on a stop is held by it, and by friction before it', () => {
    const pushed = { ...SPRING, moment: () => 2 };
    const release = letGo(pushed, 1);
    expect([release.phase, release.ended?.by]).toEqual(['atStop', 'stop']);
    expect(letGo({ ...pushed, friction: () => 2 }, 1).ended?.by).toBe('friction');
    expect(letGo({ ...pushed, moment: () => -2 }, 1).phase).toBe('sliding');
    expect(letGo({ ...pushed, moment: () => -2 }, -1).phase).toBe('atStop');
    expect(letGo({ ...pushed, moment: () => 2 }, -1).phase).toBe('sliding');
  });

  test('the same push again changes nothing, another one begins anew', () => {
    const release = letGo({ ...SPRING, friction: () => 1 }, 0.2, { hand: 0.5 });
    expect(release.phase).toBe('stuck');
    const { ended } = release;
    release.push(0.5);
    expect(release.ended).toBe(ended);
    release.push(3);
    expect([release.phase, release.ended]).toEqual(['sliding', null]);
  });

  test('for no time at all it is where it was', () => {
    const release = letGo(SPRING, 0.5);
    expect(release.advance(0)).toBe(true);
    expect([release.time, release.pitch]).toEqual([0, 0.5]);
    for (const duration of [-1, Infinity, Number.NaN]) {
      expect(() => release.advance(duration)).toThrow('duration');
    }
  });

  test('settles within what it is asked for', () => {
    const damped = { ...SPRING, damping: 0.2 };
    const times = [1e-2, 1e-4].map((within) => {
      const made = createRelease(damped, { pitch: radians(0.5), rate: 0 }, within);
      if (!made.ok) throw new Error(made.error.kind);
      made.value.advance(100);
      return made.value.ended?.time ?? Number.NaN;
    });
    // exp(-c t / (2 I)): ln 50 and ln 5000 over 0.2, within a quarter of a swing.
    expect(Math.abs(times[0] - Math.log(50) / 0.2)).toBeLessThan(1);
    expect(Math.abs(times[1] - Math.log(5000) / 0.2)).toBeLessThan(1);
  });
});

describe('the energy along the travel', () => {
  const equal = (kind: 'stable' | 'unstable' | 'tangent', pitch: number) => ({
    kind,
    pitch: radians(pitch),
    slope: 0,
  });
  const found = (energy: (pitch: number) => number, roots: ReturnType<typeof equal>[]) =>
    landscape(energy, { kind: 'roots', roots } as never, radians(-1), radians(1));

  test('a well is bounded by the lower of its two hills, a hill and a shoulder by nothing', () => {
    const energy = (pitch: number) => Math.round(10 * pitch);
    const all = found(energy, [
      equal('stable', -0.6),
      equal('unstable', 0.3),
      equal('stable', 0.5),
      equal('tangent', 0.7),
    ]);
    expect(all.map(({ kind, depth }) => [kind, depth])).toEqual([
      ['well', -4],
      ['hill', null],
      ['well', -2],
      ['shoulder', null],
    ]);
    expect(all.map((one) => one.energy)).toEqual([-6, 3, 5, 7]);
  });

  test('what lies outside the range is no landmark', () => {
    const all = found(
      () => 0,
      [equal('stable', -1.1), equal('stable', -1), equal('stable', 1), equal('unstable', 1.1)],
    );
    expect(all.map(({ pitch }) => pitch)).toEqual([-1, 1]);
  });

  test('a motion turns where its energy is used up, both ways, or comes to the end', () => {
    // V = t^2: with 0.25 J to -0.5 and 0.5.
    const reach = (total: number, from = 0.1) =>
      reachWithoutFriction((pitch) => pitch * pitch, total, radians(from), radians(-1), radians(2));
    const both = reach(0.25);
    expect(both.low.pitch).toBeCloseTo(-0.5, 12);
    expect(both.high.pitch).toBeCloseTo(0.5, 12);
    expect([both.low.why, both.high.why]).toEqual(['turns', 'turns']);
    const beyond = reach(2.25);
    expect([beyond.low.why, beyond.low.pitch]).toEqual(['stop', -1]);
    expect(beyond.high.pitch).toBeCloseTo(1.5, 12);
    // At the end it is used up to the last.
    expect(reach(1).low).toEqual({ pitch: -1, why: 'stop' });
    expect(reach(4, 2).high).toEqual({ pitch: 2, why: 'stop' });
  });

  test('the rate there is root of 2 (E - V) / I, zero where it turns', () => {
    expect(rateAtEnergy(SPRING, 0.25, radians(0))).toBe(1);
    expect(rateAtEnergy(SPRING, 0.25, radians(0.5))).toBe(0);
    expect(rateAtEnergy(SPRING, 0.25, radians(0.51))).toBeNaN();
  });
});

describe('what shows a motion', () => {
  test('a trace of sixteen holds every second step from the seventeenth on', () => {
    const trace = createTrace(16);
    const release = letGo(gripOf(6e-6, 2e-6), 0.4);
    const at = (time: number) => ({ ...release, time, energy: release.energy });
    const held = (steps: number) => {
      trace.clear();
      for (let i = 0; i < steps; i++) trace.add(at(i));
      return [...trace.time.subarray(0, trace.length)];
    };
    const upTo = (count: number, every: number) =>
      Array.from({ length: count }, (_, i) => i * every);
    expect(held(16)).toEqual(upTo(16, 1));
    expect(held(17)).toEqual(upTo(9, 2));
    expect(held(18)).toEqual([...upTo(9, 2), 17]);
    expect(held(19)).toEqual(upTo(10, 2));
    expect(held(33)).toEqual(upTo(9, 4));
    expect(held(35)).toEqual([...upTo(9, 4), 34]);
    for (const size of [15, 16.5, Number.NaN]) expect(() => createTrace(size)).toThrow('capacity');
  });

  test('a slow clock has its own longest frame, and refuses what is no slowness', () => {
    const clock = createSlowClock(2, 1);
    expect(clock.slowness).toBe(2);
    clock.tick(0);
    expect(clock.tick(1)).toBe(0.5);
    expect(clock.tick(4)).toBe(0.5);
    expect([clock.shown, clock.skipped]).toEqual([1, 2]);
    for (const slowness of [0, -1, Infinity, Number.NaN]) {
      expect(() => createSlowClock(slowness)).toThrow('slowness');
    }
  });

  test('a round slowness is the nearest by ratio: the limits are the geometric means', () => {
    // Between 10, 20, 50 and 100: root 200, root 1000, root 5000.
    for (const [wanted, round] of [
      [14.1, 10],
      [14.2, 20],
      [31.6, 20],
      [31.7, 50],
      [70.7, 50],
      [70.8, 100],
      [1, 1],
      [1.3, 1],
      [1.5, 2],
    ]) {
      expect(roundSlowness(1, wanted)).toBe(round);
    }
  });
});

describe('a body in space', () => {
  test('at rest stands still, whatever the time; round about an axis it turns by spin times time', () => {
    const ball = createTumbling([2, 2, 2], [0, 0, 1]);
    ball.advance(1);
    expect(ball.time).toBe(1);
    // Half angles: cos 1/2 and sin 1/2 about z.
    [Math.cos(0.5), 0, 0, Math.sin(0.5)].forEach((value, k) =>
      expect(ball.attitude[k]).toBeCloseTo(value, 10),
    );
    const turned = createTumbling([2, 2, 2], [0, 0, 0], [0, 1, 0, 0]);
    turned.advance(5);
    expect([turned.time, ...turned.attitude]).toEqual([5, 0, 1, 0, 0]);
    for (const duration of [-1, Infinity]) expect(() => ball.advance(duration)).toThrow('duration');
  });

  test('is refused where no mass can turn like that', () => {
    const faultOf = (inertia: readonly [number, number, number], spin = [1, 1, 1] as const) => {
      const made = createFreeBody(inertia, spin as never);
      return made.ok ? null : made.error;
    };
    expect(faultOf([0, 1, 1])).toEqual({ kind: 'outOfRange', field: 'inertia', axis: 0, value: 0 });
    expect(faultOf([1, Infinity, 1])).toMatchObject({ field: 'inertia', axis: 1 });
    expect(faultOf([1, 1, 1], [1, 1, Number.NaN] as never)).toMatchObject({
      field: 'spin',
      axis: 2,
    });
    expect(faultOf([1, 1, 2])).toBeNull();
    expect(faultOf([1, 2.001, 1])).toMatchObject({ kind: 'noSuchBody', axis: 1 });
    const made = faultOf([3, 1, 1]);
    expect(made).toEqual({ kind: 'noSuchBody', axis: 0, excess: 1 });
  });
});
