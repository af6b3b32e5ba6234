import { describe, expect, it } from 'vitest';
import { excessBeyond } from '../../src/bench/excess';
import type { BenchSetup } from '../../src/engine/identify/benchDesign';
import type { BenchFit } from '../../src/engine/identify/benchFitTypes';
import type { BenchReading } from '../../src/engine/identify/benchReading';
import { radiansFromDegrees } from '../../src/engine/units';

const SETUP: BenchSetup = {
  friction: 'none',
  zeros: 'none',
  extras: [],
  drag: [],
  precone: radiansFromDegrees(0),
};
const W = 1000;
const PER_MOMENT = -50;

/** An inner fit that found no mass at all, as surely as `sigma` says (kg m^2, of the spread). */
function nothing(sigma: number): BenchFit {
  const estimates = (['spread', 'product'] as const).map((kind) => ({
    key: { kind },
    value: 0,
    sigma: 0,
    determined: true,
  }));
  const covariance = Float64Array.of(sigma ** 2, 0, 0, 0);
  return { estimates, covariance } as unknown as BenchFit;
}

function reading(deg: number, force: number): BenchReading {
  return {
    force,
    sense: 1,
    pitch: radiansFromDegrees(deg),
    angularSpeed: W,
    forcePerMoment: PER_MOMENT,
    travel: 0,
    zero: 0,
  };
}

function excess(readings: readonly BenchReading[], sigma = 0, step = 0) {
  const gauge = { step, noise: 0.1, pitchSigma: 0 };
  const found = excessBeyond(readings, radiansFromDegrees(20), gauge, SETUP, nothing(sigma));
  if (!found) throw new Error('nothing found');
  return found;
}

describe('what is left beyond the fit', () => {
  it('is the mean of the readings of a pitch over W^2 and the leverage, outside the limit only', () => {
    const found = excess([reading(30, 2), reading(10, 9), reading(30, 4), reading(-25, -1)]);
    expect(found.map(({ pitchDeg }) => pitchDeg)).toEqual([
      expect.closeTo(-25, 12),
      expect.closeTo(30, 12),
    ]);
    expect(found[1].perSpeedSquared).toBeCloseTo(3 / (PER_MOMENT * W ** 2), 18);
  });

  // The standard error of a mean: sigma over the root of n (any textbook of statistics); the step adds step^2 / 12.
  it.each([1, 2, 4, 9])('is as sure as a mean of %d readings is', (count) => {
    const readings = Array.from({ length: count }, () => reading(30, 2));
    const per = Math.abs(PER_MOMENT) * W ** 2;
    expect(excess(readings)[0].sigma * per).toBeCloseTo(0.1 / Math.sqrt(count), 12);
    const stepped = Math.hypot(0.1, 0.6 / Math.sqrt(12)) / Math.sqrt(count);
    expect(excess(readings, 0, 0.6)[0].sigma * per).toBeCloseTo(stepped, 12);
  });

  // What the fit says is the same for all readings of a pitch: more of them do not make it surer.
  it('shares the doubt about the fit among all readings of a pitch', () => {
    const sigma = 1e-8;
    const per = Math.abs(PER_MOMENT) * W ** 2;
    const ofFit = (per * sigma * Math.sin(radiansFromDegrees(60))) / 2;
    for (const count of [1, 4]) {
      const readings = Array.from({ length: count }, () => reading(30, 2));
      const wanted = Math.hypot(0.1 / Math.sqrt(count), ofFit);
      expect(excess(readings, sigma)[0].sigma * per).toBeCloseTo(wanted, 12);
    }
  });
});
