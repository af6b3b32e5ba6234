import { describe, expect, it } from 'vitest';
import { benchFit } from '../../../src/engine/identify/benchFit';
import type { BenchReading } from '../../../src/engine/identify/benchReading';
import { lineCalibration, linkageCalibration } from '../../../src/engine/identify/calibration';
import { flagOutliers } from '../../../src/engine/identify/outliers';
import { findSteady } from '../../../src/engine/identify/pitchSteps';
import { sharedRounding, stepVariances } from '../../../src/engine/identify/quantisation';
import { forceAtSpeed, netForce, splitPasses } from '../../../src/engine/identify/reduce';
import { virtualReadings } from '../../../src/engine/identify/virtualBench';
import { normalQuantile } from '../../../src/engine/math/normal';
import { radians, radiansFromDegrees } from '../../../src/engine/units';
import { seeded } from '../../support/seeded';
import { gauge, plan, setup, truth } from './plainBench';

describe('outliers', () => {
  it('names a reading at the end of the gauge, and one unlike its repeats', () => {
    const many = { ...plan, repeats: 4, speeds: [1068] };
    const { readings } = virtualReadings(many, truth, gauge, 1);
    const changed = readings.map((one, i) => (i === 5 ? { ...one, force: one.force + 2 } : one));
    const limited = { ...gauge, limit: Math.max(...changed.map(({ force }) => Math.abs(force))) };
    const found = benchFit({ readings: changed, gauge }, setup);
    if (!found.ok) throw new Error(found.error.kind);
    const flags = flagOutliers(changed, setup, limited, found.value);
    const kinds = flags.flatMap(({ reasons }) => reasons.map(({ kind }) => kind));
    expect(kinds).toContain('overRange');
    expect(flags.find(({ index }) => index === 5)?.reasons.map(({ kind }) => kind)).toEqual(
      expect.arrayContaining(['farFromOthers', 'unlikeRepeats']),
    );
  });
});

describe('rounding shared by repeats', () => {
  it('is all without noise and nothing without a step', () => {
    expect(sharedRounding(1, 0)).toBe(1);
    expect(sharedRounding(0, 0.1)).toBe(0);
  });

  it('leaves the mean of repeats without noise as uncertain as one of them, and averages out where noise is wide', () => {
    const counts = Int32Array.from([1, 4, 4, 4, 4]);
    const [alone, ...still] = stepVariances(counts, 0.1, 0);
    expect(alone).toBeCloseTo(0.1 ** 2 / 12, 15);
    // By hand: four readings of variance v weigh as one of v/4.
    for (const one of still) expect(one / 4).toBeCloseTo(alone, 15);
    // Where every reading has its repeats too.
    expect(stepVariances(Int32Array.from([4, 4, 4, 4]), 0.1, 0)[3] / 4).toBeCloseTo(alone, 15);
    // Noise of ten steps: exp(-(2 pi 10)^2) is shared, which is nothing.
    expect(stepVariances(counts, 0.1, 1)[1]).toBeCloseTo(alone, 15);
  });
});

describe('push and pull', () => {
  const base = { angularSpeed: 1000, forcePerMoment: -50, zero: 0 } as const;
  const at = (deg: number, sense: 1 | -1, force: number): BenchReading => ({
    ...base,
    sense,
    force,
    pitch: radiansFromDegrees(deg),
    travel: 0.001 * deg,
  });
  const drag = [
    { travel: -0.01, force: 0.5, sigma: 0.1 },
    { travel: 0.01, force: 0.3, sigma: 0.1 },
  ];

  it('are split into moment and friction, the drag at rest and the zero taken off', () => {
    // By hand: moment force 4, zero 0.2, friction 0.7 beside a drag of 0.4 halfway between its rows.
    const readings = [at(0, 1, 4 + 0.2 + 0.7 + 0.4), at(0, -1, 4 + 0.2 - 0.7 - 0.4)];
    const { rows } = splitPasses(readings, { step: 0, noise: 0.06 }, [0.2], drag);
    expect(rows).toHaveLength(1);
    expect(rows[0].momentForce).toBeCloseTo(4, 12);
    expect(rows[0].friction).toBeCloseTo(0.7, 12);
    expect(rows[0].hysteresis).toBeCloseTo(2.2, 12);
    expect(rows[0].moment).toBeCloseTo(4 / -50, 12);
    expect(rows[0].reversed).toBe(false);
    // Mean of two readings; drag halfway between two rows of 0.1 each: 0.1/sqrt 2.
    expect(rows[0].momentSigma).toBeCloseTo(0.06 / Math.SQRT2, 12);
    expect(rows[0].frictionSigma).toBeCloseTo(Math.hypot(0.06 / Math.SQRT2, 0.1 / Math.SQRT2), 12);
    // Pulling reads the drag on top, pushing below: without zero and drag 4 + 0.7 and 4 - 0.7 are left.
    expect(netForce(readings[0], [0.2], drag)).toBeCloseTo(4.7, 12);
    expect(netForce(readings[1], [0.2], drag)).toBeCloseTo(3.3, 12);
  });

  it('are met between neighbours where one pass has other pitches, and left where it has none', () => {
    const readings = [at(-10, 1, 1), at(10, 1, 3), at(0, -1, 1), at(20, -1, 0)];
    const { rows, unpaired } = splitPasses(readings, { step: 0, noise: 0.1 }, [], []);
    expect(rows.map(({ interpolated }) => interpolated)).toEqual([true, true]);
    expect(rows[0].momentForce).toBeCloseTo(1.5, 12);
    expect(unpaired).toEqual([0, 3]);
  });

  it('enclose the work of the loop, and are called reversed when pull reads less', () => {
    const loop = [-10, 0, 10].flatMap((deg) => [at(deg, 1, 3), at(deg, -1, 1)]);
    // 2 N wide, 20 mm long.
    expect(splitPasses(loop, { step: 0, noise: 0.1 }, [], []).loops[0].work).toBeCloseTo(0.04, 12);
    const turned = loop.map((one) => ({ ...one, sense: -one.sense as 1 | -1 }));
    expect(
      splitPasses(turned, { step: 0, noise: 0.1 }, [], []).rows.every(({ reversed }) => reversed),
    ).toBe(true);
  });

  it('go with the square of the speed', () => {
    expect(forceAtSpeed(3, 1000, 2000)).toBe(12);
  });
});

describe('the pitch scale', () => {
  it('is a line with the textbook uncertainties', () => {
    // Draper and Smith, ch. 1: variance of the line at x is s^2 (1/n + (x - mean)^2 / Sxx).
    const scale = [0, 10, 20, 30, 40];
    const pitch = [-0.35, -0.17, 0.01, 0.17, 0.36];
    const found = lineCalibration(
      scale.map((one, i) => ({ scale: one, pitch: radians(pitch[i]) })),
    );
    if (!found.ok) throw new Error(found.error.kind);
    const { value } = found;
    expect(value.gain).toBeCloseTo((2 * (0.36 + 0.35) + (0.17 + 0.17)) / 100, 14);
    expect(value.sigmaAt(25)).toBeCloseTo(value.deviation * Math.sqrt(1 / 5 + 25 / 1000), 14);
    // t of 0.975 with 3 degrees of freedom, printed tables (from memory): 3.182.
    expect(value.half95At(25) / value.sigmaAt(25)).toBeCloseTo(3.182, 3);
    expect([value.beyond(-1), value.beyond(5)]).toEqual([true, false]);
    expect(value.residual.reduce((sum, one) => sum + one, 0)).toBeCloseTo(0, 14);
  });

  it('follows the linkage where pitch does not go straight with travel', () => {
    const curve = (travel: number) => Math.asin(travel / 0.018);
    const pairs = [-8, -4, 0, 3, 8].map((scale) => ({
      scale,
      pitch: radians(curve(0.0004 + 0.0011 * scale)),
    }));
    const found = linkageCalibration(pairs, curve, 0.001);
    if (!found.ok) throw new Error(found.error.kind);
    expect(found.value.offset).toBeCloseTo(0.0004, 12);
    expect(found.value.gain).toBeCloseTo(0.0011, 12);
    const line = lineCalibration(pairs);
    expect(line.ok && line.value.deviation).toBeGreaterThan(1e-3);
  });

  it('needs two different readings', () => {
    const one = { scale: 3, pitch: radians(0.1) };
    expect(lineCalibration([one])).toEqual({
      ok: false,
      error: { kind: 'tooFewPairs', pairs: 1, needed: 2 },
    });
    expect(lineCalibration([one, one])).toEqual({
      ok: false,
      error: { kind: 'oneScaleReading', scale: 3 },
    });
  });
});

describe('a logged series', () => {
  const levels = [-20, -10, 0, 10, 20, 10, 10.1, -20];
  const options = { shortest: 0.5, smallest: 3, settling: 0.2 };

  /** Two seconds at each level and a ramp of 0.3 s between, 50 samples a second, noise of 0.3. */
  function series(noise: number) {
    const random = seeded(3);
    const time: number[] = [];
    const value: number[] = [];
    levels.forEach((level, k) => {
      const before = k === 0 ? level : levels[k - 1];
      for (let i = 0; i < 115; i++) {
        time.push((115 * k + i) / 50);
        const share = Math.min(1, i / 15);
        value.push(
          before +
            share * (level - before) +
            noise * normalQuantile(Math.max(random.unit(), 1e-12)),
        );
      }
    });
    return { time, value };
  }

  it('gives the levels that were set, and takes two that are one as one', () => {
    const { time, value } = series(0.3);
    const found = findSteady(time, value, options);
    expect(found.map(({ level }) => Math.round(level))).toEqual([-20, -10, 0, 10, 20, 10, -20]);
    for (const { level, deviation } of found) {
      // A median of some 90 samples of noise 0.3: 1.25 x 0.3 / sqrt 90 = 0.04; four of those, and the 0.1 between the twins.
      expect(Math.abs(level - Math.round(level))).toBeLessThan(0.26);
      expect(deviation).toBeLessThan(0.45);
    }
  });

  it('needs no noise, and skips what is no number', () => {
    const { time, value } = series(0);
    value[20] = Number.NaN;
    const found = findSteady(time, value, options);
    expect([...new Set(found.map(({ level }) => Math.round(level)))]).toEqual([
      -20, -10, 0, 10, 20,
    ]);
    expect(found.every(({ from, to }) => from > 20 || to <= 20)).toBe(true);
  });

  it('calls a level that creeps by what it is', () => {
    const time = Array.from({ length: 500 }, (_, i) => i / 50);
    const random = seeded(5);
    const value = time.map((t) => 5 + 0.1 * t + 0.1 * normalQuantile(random.unit() || 0.5));
    const [only] = findSteady(time, value, options);
    expect(only.creeping).toBe(true);
    expect(only.drift).toBeCloseTo(0.1, 2);
  });
});
