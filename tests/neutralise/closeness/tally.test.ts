import { describe, expect, it } from 'vitest';
import { createMoments, M, SX, SY, SZ } from '../../../src/engine/mass/moments';
import { MatchingTally } from '../../../src/neutralise/closeness/matching';
import { Tally } from '../../../src/neutralise/closeness/tally';
import { designOf, ROTOR } from '../../design/designs';

function tallyOf(values: readonly number[], middle: number, spread: number): Tally {
  const tally = new Tally(middle, spread);
  for (const value of values) tally.add(value);
  return tally;
}

describe('a tally', () => {
  it('has the mean and the standard deviation of the numbers, by n - 1', () => {
    // 2, 4, 4, 4, 5, 5, 7, 9: mean 5, sum of squares 32 (a textbook example; memory).
    const tally = tallyOf([2, 4, 4, 4, 5, 5, 7, 9], 5, 2);
    expect(tally.average).toBeCloseTo(5, 14);
    expect(tally.deviation).toBeCloseTo(Math.sqrt(32 / 7), 14);
  });

  it('has quantiles within 0.004 of a foretold standard deviation', () => {
    const even = Array.from({ length: 100_000 }, (_, i) => (i + 0.5) / 100_000);
    const spread = 1 / Math.sqrt(12);
    const tally = tallyOf(even, 0.5, spread);
    for (const share of [0.025, 0.5, 0.975]) {
      expect(Math.abs(tally.quantile(share) - share)).toBeLessThan(0.004 * spread);
    }
  });

  it('says of a quantile beyond its reach that it is not known, never its own end', () => {
    const tally = tallyOf([-100, -100, 0, 100], 0, 1);
    expect(tally.quantile(0.025)).toBeNaN();
    expect(tally.quantile(0.975)).toBeNaN();
    expect(new Tally(0, 1).quantile(0.5)).toBeNaN();
    expect(new Tally(0, 1).average).toBeNaN();
  });

  it('takes a number that does not vary', () => {
    const tally = tallyOf([3, 3, 3], 3, 0);
    expect(tally.deviation).toBe(0);
    expect(tally.quantile(0.5)).toBeCloseTo(3, 8);
  });
});

/** Totals of a grip whose mass m (kg) has its centre at x, y, z (m). */
function gripOf(m: number, x: number, y: number, z = 0) {
  const totals = createMoments();
  totals[M] = m;
  totals[SX] = m * x;
  totals[SY] = m * y;
  totals[SZ] = m * z;
  return totals;
}

/** The one unbalance of rotors that are all alike. */
function unbalanceOf(rotor: typeof ROTOR, grips: readonly Float64Array[]): number {
  const tally = new MatchingTally(designOf([], rotor), null);
  for (let k = 0; k < 3; k++) for (const grip of grips) tally.add(grip, 0);
  return tally.result()?.unbalanceMedian ?? Number.NaN;
}

describe('matching', () => {
  it('adds m r of two opposite grips, out along the axis and ahead of it, by hand', () => {
    const grips = [gripOf(0.02, 0.05, 0.003), gripOf(0.018, 0.052, -0.001)];
    const along = 0.02 * 0.05 - 0.018 * 0.052;
    const ahead = 0.02 * 0.003 + 0.018 * 0.001;
    expect(unbalanceOf(ROTOR, grips) / Math.hypot(along, ahead)).toBeCloseTo(1, 12);
  });

  it('counts a torque offset and a precone', () => {
    const grips = [gripOf(0.02, 0.05, 0, 0.004), gripOf(0.018, 0.05, 0, 0.004)];
    const rotor = { ...ROTOR, torqueOffsetMm: 6, preconeDeg: 10 };
    const tilt = (10 * Math.PI) / 180;
    const along = 0.002 * (0.05 * Math.cos(tilt) - 0.004 * Math.sin(tilt));
    expect(unbalanceOf(rotor, grips) / Math.hypot(along, 0.002 * 0.006)).toBeCloseTo(1, 12);
  });

  it('is none for three grips that are alike, and one grip\u2019s share where one is missing weight', () => {
    const rotor = { ...ROTOR, bladeCount: 3 };
    const grip = gripOf(0.02, 0.05, 0.001);
    expect(unbalanceOf(rotor, [grip, grip, grip])).toBeLessThan(1e-17);
    const light = gripOf(0.018, 0.05, 0.001);
    const size = 0.002 * Math.hypot(0.05, 0.001);
    expect(unbalanceOf(rotor, [grip, light, grip]) / size).toBeCloseTo(1, 12);
  });

  it('has nothing to say of a rotor of one blade', () => {
    const tally = new MatchingTally(designOf([], { ...ROTOR, bladeCount: 1 }), null);
    for (let k = 0; k < 9; k++) tally.add(gripOf(1, 1, 1), 0);
    expect(tally.result()).toBeNull();
  });
});
