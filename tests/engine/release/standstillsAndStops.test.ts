import { describe, expect, test } from 'vitest';
import { createStepper } from '../../../src/engine/release/dormandPrince';
import { releaseOutcome, runRelease } from '../../../src/engine/release/outcome';
import {
  constantInertia,
  type ReleaseSystem,
  rateScale,
} from '../../../src/engine/release/releaseSystem';
import { settlesByDamping } from '../../../src/engine/release/settling';
import { createSlide, RATE } from '../../../src/engine/release/sliding';
import { radians } from '../../../src/engine/units';
import { letGo, SPRING } from './systems';

const START = { pitch: radians(0.5), rate: 0 };

/** The ball that falls on the floor: 0.4 N m toward one of the stops. */
function falling(restitution: number, friction = 0, side = 1): ReleaseSystem {
  return {
    ...SPRING,
    moment: () => 0.4 * side,
    energy: (pitch) => -0.4 * side * pitch,
    friction: () => friction,
    inertia: constantInertia(8e-6),
    restitution,
  };
}

describe('blows', () => {
  test('end on the stop to the last bit, and there it rests', () => {
    for (const side of [-1, 1]) {
      for (let k = 0; k < 25; k++) {
        const release = letGo(falling(0, 0, side), 0.03 * k - 0.4);
        release.advance(1);
        expect([release.pitch, release.hits, release.phase]).toEqual([side, 1, 'atStop']);
      }
    }
  });

  test.each([
    // Rebounds of a ball rise by e^2 (P - F) / (P + F) of the fall: as many as are higher than 1e-9 rad, and the last.
    ['0.1 / 4^n', 0.5, 0, 0.1, 14],
    ['0.025 / 6^n: friction takes part of it both ways', Math.SQRT1_2, 0.2, 0.025, 10],
  ])('are as many as rise above 1e-9 rad: %s', (_, e, friction, fall, hits) => {
    const release = letGo(falling(e, friction), 1 - fall);
    release.advance(1);
    expect([release.phase, release.hits]).toEqual(['atStop', hits]);
  });

  test('count the hand among what pushes into the stop', () => {
    const pushed = { ...falling(0.5), moment: () => 0, energy: () => 0 };
    const release = letGo(pushed, 0.9, { hand: 0.4 });
    release.advance(1);
    expect([release.phase, release.hits]).toEqual(['atStop', 14]);
  });

  test('rebound however little where friction would hold it anyway', () => {
    for (const moment of [0.1, 0.2]) {
      const held = { ...falling(0.5, 0.2), moment: () => moment };
      expect(letGo(held, 1, { rate: 0.01 }).rate).toBe(-0.005);
    }
  });

  test('that give nothing back end at rest, pushed or pulled', () => {
    expect(letGo(falling(0), 1, { rate: 10 }).phase).toBe('atStop');
    const pulled = { ...falling(0, 0.2), moment: () => -0.1 };
    expect(letGo(pulled, 1, { rate: 10 }).phase).toBe('stuck');
  });

  test('send it away from either stop, against its friction', () => {
    const rough = { ...SPRING, friction: () => 0.1 };
    for (const side of [-1, 1]) {
      const release = letGo(rough, side, { rate: 2 * side });
      expect(release.firstHit?.stop).toBe(side > 0 ? 'high' : 'low');
      release.advance(0.1);
      // About 0.05 on this side of zero, from 0.95 beyond it with 1 rad/s: a swing of w = 2.
      const swing = 0.05 * side + 0.95 * side * Math.cos(0.2) - 0.5 * side * Math.sin(0.2);
      expect(release.pitch).toBeCloseTo(swing, 9);
      expect(release.turns).toBe(0);
    }
  });
});

describe('times', () => {
  /** w = 2e6 rad/s: a step takes some nanoseconds. */
  const fast = { ...SPRING, inertia: constantInertia(5e-13) };

  test('of a standstill and a blow are those of the closed form in nanoseconds too', () => {
    let time = Number.NaN;
    letGo(fast, 0.5).advance(2e-6, (now) => {
      if (now.turns === 1 && Number.isNaN(time)) time = now.time;
    });
    expect(time / (Math.PI / 2e6)).toBeCloseTo(1, 9);
    const blow = letGo(fast, 0.8, { rate: 3e6 });
    blow.advance(1e-7);
    // v^2 = 9 + 4 (0.64 - 1), in 1e6 rad/s.
    expect((blow.firstHit?.rate ?? 0) / 1e6).toBeCloseTo(Math.sqrt(7.56), 9);
    // x = 0.8 cos 2t + 1.5 sin 2t = 1.7 cos(2t - d).
    const at = (Math.atan2(1.5, 0.8) - Math.acos(1 / 1.7)) / 2e6;
    expect((blow.firstHit?.time ?? 0) / at).toBeCloseTo(1, 9);
  });

  test('are the sum of what was asked for, to the last bit', () => {
    const release = letGo(SPRING, 0.5);
    let sum = 0;
    for (let i = 1; i <= 60; i++) {
      release.advance(i / 300);
      sum += i / 300;
      expect(release.time).toBe(sum);
    }
  });

  test('a motion that takes too many steps says so', () => {
    expect(letGo({ ...SPRING, damping: 1e6 }, 0.5).advance(1e6)).toBe(false);
  });
});

describe('a standstill', () => {
  test('is one of rate zero to the last bit', () => {
    for (let k = 1; k < 20; k++) {
      const release = letGo({ ...SPRING, friction: () => 0.3 }, 0.2 + 0.04 * k);
      release.advance(20);
      expect([release.phase, release.rate]).toEqual(['stuck', 0]);
    }
  });

  test.each([
    [1e6, 0.0099],
    [1e8, 0.0024],
  ])('within the very step that began at rest, %d N m/rad, is found', (steepness, most) => {
    // 1e-15 N m against a friction that grows from nothing to ten times that on the way: far below what a step can err.
    const moment = 1e-15;
    const friction = (pitch: number) => Math.min(1e-14, steepness * Math.max(0, pitch));
    const system = { ...SPRING, moment: () => moment, friction, inertia: constantInertia(1) };
    const slide = createSlide(system, [0, 0, 0], 1);
    slide.stepper.restart();
    expect(slide.step(1)).toBe('turned');
    const { taken } = slide;
    expect(taken).toBeGreaterThan(0);
    expect(taken).toBeLessThan(most);
    const again = createStepper([0, 0], (y, out) => {
      out[0] = y[1];
      out[1] = moment - friction(y[0]);
    });
    again.restart();
    again.trial(taken);
    expect(Math.abs(again.end[RATE])).toBeLessThan(1e-9 * moment * taken);
  });

  test('the first step is a hundredth of the time of the rate', () => {
    const slide = createSlide(SPRING, [-0.5, 0, 0], 2);
    slide.stepper.restart();
    expect([slide.step(1), slide.taken]).toEqual(['slid', 0.005]);
  });
});

describe('a gap', () => {
  const past = (inside: number, beyond: number) => (pitch: number) =>
    pitch > 0.2 ? inside : beyond;

  test.each<[string, Partial<ReleaseSystem>]>([
    ['inertia', { inertia: { value: past(0.5, -0.5), slope: () => 0 } }],
    ['inertia, or at nothing,', { inertia: { value: past(0.5, 0), slope: () => 0 } }],
    ['friction', { friction: past(0, -0.1) }],
  ])('is where %s comes out below zero', (_, change) => {
    const release = letGo({ ...SPRING, ...change }, 0.5);
    release.advance(3);
    expect([release.phase, release.ended?.by]).toEqual(['gap', 'gap']);
    expect(release.pitch).toBeCloseTo(0.2, 9);
    release.push(3);
    expect([release.phase, release.hand, release.ended?.by]).toEqual(['gap', 0, 'gap']);
  });

  test('at the very pitch of release is no motion', () => {
    const moment = (pitch: number) => (pitch > 0.5 ? Number.NaN : 0);
    const release = letGo({ ...SPRING, moment }, 0.5, { rate: 1 });
    release.advance(1);
    expect([release.phase, release.moved, release.pitch]).toEqual(['gap', false, 0.5]);
  });
});

describe('a run', () => {
  const run = (system: ReleaseSystem, longest: number) => {
    let steps = 0;
    const made = runRelease(system, START, longest, () => steps++);
    if (!made.ok) throw new Error(made.error.kind);
    return { ...made.value, steps };
  };

  test('takes its time and no more, and stops looking at the end', () => {
    const free = run(SPRING, 10);
    expect(free.release.time).toBeCloseTo(10, 9);
    expect(free.steps).toBeGreaterThan(100);
    expect(run({ ...SPRING, friction: () => 0.3 }, 100).release.time).toBeLessThan(50);
    expect(run({ ...SPRING, damping: 2 }, 100).release.time).toBeLessThan(50);
  });

  test('of what cannot be let go is refused with the reason', () => {
    const made = runRelease({ ...SPRING, damping: -1 }, START, 1);
    expect(made).toMatchObject({ ok: false, error: { field: 'damping' } });
  });

  test('before the first step moves, and on a stop that was never struck was reached when it ended', () => {
    expect(releaseOutcome(letGo(SPRING, 0.5), SPRING)).toMatchObject({ kind: 'moves', pitch: 0.5 });
    const ended = { time: 2, by: 'friction' };
    const rested = { pitch: 1, phase: 'stuck', ended, moved: true, firstHit: null };
    expect(releaseOutcome(rested as never, SPRING)).toEqual({
      kind: 'runsToStop',
      stop: 'high',
      pitch: 1,
      reached: 2,
      time: 2,
    });
  });

  test('is followed for 100,000 steps, and to its end where that is the last look', () => {
    // Steps per second, counted over 20 looks of the length that 100,000 steps have.
    let steps = 0;
    const release = letGo(SPRING, 0.5);
    for (let i = 0; i < 20; i++) release.advance(6.3, () => steps++);
    const rate = steps / release.time;
    const last = run(SPRING, 100_250 / rate);
    expect(last.steps).toBeGreaterThan(100_000);
    expect(last.steps).toBeLessThan(100_500);
    expect(last.complete).toBe(true);
    const longer = run(SPRING, 110_000 / rate);
    expect([longer.complete, longer.steps < 101_000]).toEqual([false, true]);
  });
});

describe('the rate that steps are measured by', () => {
  const at = (moment: (pitch: number) => number) =>
    rateScale({ ...SPRING, moment }, { pitch: radians(0), rate: 0 });

  test('looks at the end of the travel too, and leaves out what is not finite', () => {
    // 8 N m within a look of 2 / 180 rad.
    expect(at((pitch) => (pitch > 0.995 ? 8 : 0))).toBeCloseTo(Math.sqrt((8 * 90) / 0.5), 6);
    expect(at((pitch) => (pitch < -0.9 ? Infinity : -2 * pitch))).toBeCloseTo(2, 9);
  });
});

test('a swing just as wide as what counts is settled, and so is one that coasts just as far', () => {
  const settles = (rate: number, change: Partial<ReleaseSystem>, within: number) =>
    settlesByDamping({ ...SPRING, damping: 1, ...change }, Float64Array.of(0, rate, 0), 0, within);
  // v / w = 1 / 2; I v / c = 0.5 x 1 / 1.
  expect(settles(1, {}, 0.5)).toBe(true);
  expect(settles(1, { moment: () => 0 }, 0.5)).toBe(true);
});
