import { describe, expect, it } from 'vitest';
import type { BenchReading, Gauge } from '../../../src/engine/identify/benchReading';
import {
  distinctPitches,
  forceAtSpeed,
  netForce,
  splitPasses,
} from '../../../src/engine/identify/reduce';
import { radians } from '../../../src/engine/units';

const GAUGE: Gauge = { step: 0, noise: 0.1 };

/** A reading at a pitch in hundredths of a radian; its travel is a tenth of that in mm. */
const at = (
  hundredths: number,
  sense: BenchReading['sense'],
  force: number,
  more: Partial<BenchReading> = {},
): BenchReading => ({
  sense,
  force,
  pitch: radians(hundredths / 100),
  angularSpeed: 1000,
  forcePerMoment: 50,
  travel: hundredths * 1e-4,
  zero: 0,
  ...more,
});
const split = (readings: readonly BenchReading[], gauge = GAUGE) =>
  splitPasses(readings, gauge, [], []);

describe('repeats of a pitch', () => {
  it('are averaged, and their mean is surer by their number', () => {
    const { rows } = split([at(1, 1, 6), at(1, 1, 8), at(1, 1, 10), at(1, -1, 2), at(1, -1, 4)]);
    expect(rows).toHaveLength(1);
    expect(rows[0].momentForce).toBeCloseTo((8 + 3) / 2, 13);
    expect(rows[0].hysteresis).toBeCloseTo(5, 13);
    // Variances 1/3 and 1/2 of one reading's, and a half of the sum's root.
    expect(rows[0].momentSigma).toBeCloseTo((0.1 * Math.sqrt(1 / 3 + 1 / 2)) / 2, 13);
    expect(rows[0].frictionSigma).toBeCloseTo(rows[0].momentSigma, 13);
    expect(rows[0].moment).toBeCloseTo(5.5 / 50, 13);
    expect(rows[0].interpolated).toBe(false);
  });

  it('are one within a ten-thousandth of a radian, in whatever order they were read', () => {
    const { rows } = split([at(1.005, 1, 6), at(2, -1, 1), at(1, -1, 2), at(2, 1, 5), at(1, 1, 8)]);
    expect(rows.map(({ momentForce }) => momentForce)).toEqual([4.5, 3]);
    expect(split([at(1, 1, 6), at(1.02, 1, 8), at(1, -1, 2), at(1.02, -1, 2)]).rows).toHaveLength(
      2,
    );
    expect(distinctPitches([0.02, 0.01, 0.01005, 0.0102])).toEqual([0.01, 0.0102, 0.02]);
  });

  it('are two from a ten-thousandth on', () => {
    expect(distinctPitches([1e-4, 0])).toEqual([0, 1e-4]);
    const both = split([at(0, 1, 6), at(0.01, 1, 8), at(0, -1, 2), at(0.01, -1, 3)]);
    expect(both.rows.map(({ hysteresis }) => hysteresis)).toEqual([4, 5]);
    expect(split([at(0, 1, 6), at(0.01, 1, 8)]).unpaired).toEqual([0, 1]);
  });

  it('have the uncertainty of the step where the noise is not known', () => {
    const { rows } = split([at(1, 1, 6), at(1, -1, 2)], { step: 0.6, noise: null });
    expect(rows[0].momentSigma).toBeCloseTo((0.6 / Math.sqrt(12)) * Math.SQRT1_2, 13);
    const both = split([at(1, 1, 6), at(1, -1, 2)], { step: 0.6, noise: 0.1 }).rows[0];
    expect(both.momentSigma).toBeCloseTo(Math.hypot(0.6 / Math.sqrt(12), 0.1) * Math.SQRT1_2, 13);
  });
});

describe('a pass that has other pitches', () => {
  it('is met straight between its neighbours, with the share of each', () => {
    const { rows, unpaired } = split([
      at(0, 1, 10),
      at(4, 1, 18),
      at(1, -1, 2, { forcePerMoment: 20 }),
    ]);
    // A quarter of the way: 12; variances (3/4)^2 + (1/4)^2 = 10/16 and 1.
    expect(rows).toHaveLength(1);
    expect(rows[0].hysteresis).toBeCloseTo(10, 13);
    expect(rows[0].momentSigma).toBeCloseTo((0.1 * Math.sqrt(10 / 16 + 1)) / 2, 13);
    expect(rows[0].interpolated).toBe(true);
    // The lever is that of the pass that was read there.
    expect(rows[0].moment).toBeCloseTo(7 / 20, 13);
    expect(unpaired).toEqual([0, 1]);
  });

  it('counts repeats at both neighbours', () => {
    const { rows } = split([at(0, 1, 9), at(0, 1, 11), at(4, 1, 18), at(4, 1, 18), at(1, -1, 2)]);
    expect(rows[0].hysteresis).toBeCloseTo(10, 13);
    expect(rows[0].momentSigma).toBeCloseTo((0.1 * Math.sqrt(5 / 16 + 1)) / 2, 13);
  });

  it('names every repeat of a pitch that finds no partner', () => {
    expect(split([at(1, 1, 5), at(1, 1, 6), at(1, 1, 7), at(2, -1, 5)]).unpaired).toEqual([
      0, 1, 2, 3,
    ]);
  });

  it('has no partner beyond its ends, nor for held readings', () => {
    const { rows, unpaired } = split([
      at(1, 1, 5),
      at(2, 1, 5),
      at(0, -1, 1),
      at(1.5, -1, 1),
      at(3, -1, 1),
      at(1.5, 0, 3),
    ]);
    expect(rows.map(({ pitch }) => pitch)).toEqual([0.01, 0.015, 0.02]);
    expect(unpaired).toEqual([2, 4]);
  });
});

describe('runs', () => {
  const loop = (speed: number, zero: number, width: number, reach: number) =>
    [0, reach].flatMap((pitch) => [
      at(pitch, 1, 5 + width, { angularSpeed: speed, zero }),
      at(pitch, -1, 5, { angularSpeed: speed, zero }),
    ]);

  it('are one for each speed and zero, each with its own loop', () => {
    const readings = [...loop(1000, 0, 2, 10), ...loop(800, 0, 1, 10), ...loop(800, 1, 1, -20)];
    const { rows, loops } = splitPasses(readings, GAUGE, [0.5, 3], []);
    expect(loops.map(({ angularSpeed, zero }) => [angularSpeed, zero])).toEqual([
      [1000, 0],
      [800, 0],
      [800, 1],
    ]);
    // Widths of 2, 1 and 1 N over 1, 1 and 2 mm.
    const works = [2e-3, 1e-3, 2e-3];
    loops.forEach(({ work }, k) => expect(work).toBeCloseTo(works[k], 15));
    expect(rows.map(({ momentForce }) => momentForce)).toEqual([5.5, 5.5, 5, 5, 2.5, 2.5]);
    expect(rows[2]).toMatchObject({ angularSpeed: 800, zero: 0 });
  });

  it('of a travel that does not begin at nothing are as long as it is', () => {
    const readings = [at(20, 1, 4), at(20, -1, 1), at(50, 1, 4), at(50, -1, 1)];
    expect(split(readings).loops[0].work).toBeCloseTo(3 * 3e-3, 15);
  });

  it('enclose trapezes where the width changes', () => {
    const readings = [at(0, 1, 1), at(0, -1, 1), at(10, 1, 5), at(10, -1, 1)];
    expect(split(readings).loops[0].work).toBeCloseTo(2e-3, 15);
    expect(split(readings.slice(0, 2)).loops[0].work).toBe(0);
  });

  it('are reversed where pull reads less than push by more than twice its uncertainty', () => {
    // Two readings of 0.1: the width is uncertain by 0.1 sqrt 2, and twice that is 0.283.
    const reversed = (width: number) => split([at(0, 1, width), at(0, -1, 0)]).rows[0].reversed;
    expect([reversed(-0.29), reversed(-0.27), reversed(0.29)]).toEqual([true, false, false]);
    // Without any uncertainty, as much is not reversed.
    const exact = split([at(0, 1, 3), at(0, -1, 3)], { step: 0, noise: 0 });
    expect(exact.rows[0].reversed).toBe(false);
  });
});

describe('a single reading', () => {
  it('is taken to another speed by the square of both', () => {
    expect(forceAtSpeed(9, 900, 300)).toBe(1);
  });

  it('loses its own zero and, where it was moving, the drag there', () => {
    const drag = [{ travel: 0, force: 0.4, sigma: 0 }];
    expect(netForce(at(0, -1, 3, { zero: 1 }), [9, 0.5], drag)).toBeCloseTo(2.9, 14);
    expect(netForce(at(0, 0, 3), [], drag)).toBe(3);
  });
});
