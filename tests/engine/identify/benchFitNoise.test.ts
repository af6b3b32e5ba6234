import { describe, expect, it } from 'vitest';
import type { BenchSetup } from '../../../src/engine/identify/benchDesign';
import { benchFit } from '../../../src/engine/identify/benchFit';
import type { BenchData, BenchFit } from '../../../src/engine/identify/benchFitTypes';
import type { BenchReading } from '../../../src/engine/identify/benchReading';
import { studentQuantile } from '../../../src/engine/identify/distributions';
import { linearFit } from '../../../src/engine/identify/linearFit';
import { radians } from '../../../src/engine/units';
import { seeded } from '../../support/seeded';

const PITCHES = [-0.4, -0.3, -0.15, 0, 0.1, 0.25, 0.4];
const SETUP: BenchSetup = {
  friction: 'moment',
  zeros: 'free',
  extras: [],
  drag: [],
  precone: radians(0),
};
/** Gauge force for one N m. */
const G = 50;

/** Readings of A = 4e-7, P = -1e-7, 0.01 N m of friction and a zero of 0.3 N, by the model as written in `benchDesign`. */
function readings(off: (i: number) => number = () => 0): BenchReading[] {
  const rows = [800, 1000].flatMap((angularSpeed) =>
    PITCHES.flatMap((pitch) => ([1, -1] as const).map((sense) => ({ angularSpeed, pitch, sense }))),
  );
  return rows.map(({ angularSpeed, pitch, sense }, i) => ({
    sense,
    angularSpeed,
    pitch: radians(pitch),
    force:
      -G * angularSpeed ** 2 * (2e-7 * Math.sin(2 * pitch) - 1e-7 * Math.cos(2 * pitch)) +
      sense * G * 0.01 +
      0.3 +
      off(i),
    forcePerMoment: G,
    travel: 0,
    zero: 0,
  }));
}
function fitOf(data: BenchData, own: Partial<BenchSetup> = {}): BenchFit {
  const found = benchFit(data, { ...SETUP, ...own });
  if (!found.ok) throw new Error(found.error.kind);
  return found.value;
}
/** The columns by hand: moments, friction, zero. */
const columns = (all: readonly BenchReading[]) =>
  all.flatMap(({ angularSpeed, pitch, sense }) => [
    (-G * angularSpeed ** 2 * Math.sin(2 * pitch)) / 2,
    -G * angularSpeed ** 2 * Math.cos(2 * pitch),
    sense * G,
    1,
  ]);

describe('noise learnt from the readings', () => {
  const random = seeded(12);
  const scatter = Array.from({ length: 28 }, () => random.between(-0.2, 0.2));
  const noisy = readings((i) => scatter[i]);
  const plainFit = () =>
    linearFit({
      design: columns(noisy),
      parameters: 4,
      observed: noisy.map(({ force }) => force),
    });

  it('is the residual standard deviation of the plain fit, to a thousandth', () => {
    const plain = plainFit();
    const fit = fitOf({ readings: noisy, gauge: { step: 0, noise: null } });
    expect(fit.noise / plain.residualDeviation).toBeGreaterThan(1 - 1e-3);
    expect(fit.noise / plain.residualDeviation).toBeLessThan(1 + 1e-3);
    expect([fit.noiseFound, fit.pValue, fit.freedom, fit.quantileFreedom]).toEqual([
      true,
      null,
      24,
      24,
    ]);
    fit.estimates.forEach(({ value, sigma, half95 }, j) => {
      expect(value).toBeCloseTo(plain.estimate[j], 12);
      expect(Math.abs(sigma / plain.deviation[j] - 1)).toBeLessThan(1.1e-3);
      expect(half95 / sigma).toBeCloseTo(studentQuantile(0.975, 24), 9);
    });
    fit.sigma.forEach((sigma) => expect(sigma).toBeCloseTo(fit.noise, 14));
    expect(fit.coarse).toBeNull();
  });

  it('is what the step leaves of it: squares add', () => {
    const plain = plainFit();
    const step = 0.2;
    const fit = fitOf({ readings: noisy, gauge: { step, noise: null } });
    // No two readings are repeats, so each has step^2 / 12.
    const left = Math.sqrt(plain.residualDeviation ** 2 - step ** 2 / 12);
    expect(Math.abs(fit.noise / left - 1)).toBeLessThan(2e-3);
    fit.sigma.forEach((sigma) =>
      expect(sigma).toBeCloseTo(Math.hypot(fit.noise, step / Math.sqrt(12)), 12),
    );
  });

  it('is none where the step explains all, or nothing is left over, or there is none', () => {
    expect(fitOf({ readings: noisy, gauge: { step: 2, noise: null } }).noise).toBe(0);
    const four = [0, 1, 12, 20].map((i) => noisy[i]);
    const bare = fitOf({ readings: four, gauge: { step: 0, noise: null } });
    expect([bare.noise, bare.freedom]).toEqual([0, 0]);
    expect(bare.estimates.every(({ half95 }) => Number.isNaN(half95))).toBe(true);
    const none = readings().map((one) => ({ ...one, force: 0 }));
    expect(fitOf({ readings: none, gauge: { step: 0, noise: null } }).noise).toBe(0);
  });

  it('is found anew when the pitch setting explains a part of it', () => {
    const data = { readings: noisy, gauge: { step: 0, noise: null } } as const;
    const whole = fitOf(data).noise;
    const left = fitOf({ ...data, pitchSigma: 0.004 });
    expect(left.noise).toBeLessThan(0.97 * whole);
    expect(left.noise).toBeGreaterThan(0.5 * whole);
    expect(Math.abs(left.chiSquare / left.freedom - 1)).toBeLessThan(4e-3);
  });
});

describe('the uncertainty of a reading', () => {
  it('has noise, step and the slope of the force times that of the pitch, in squares', () => {
    const all = readings();
    const [step, noise, pitchSigma] = [0.1, 0.05, 0.003];
    const fit = fitOf({ readings: all, gauge: { step, noise }, pitchSigma });
    fit.sigma.forEach((sigma, i) => {
      const { angularSpeed, pitch } = all[i];
      // dF/dt of -G W^2 (2e-7 sin 2t - 1e-7 cos 2t).
      const slope =
        G * angularSpeed ** 2 * (4e-7 * Math.cos(2 * pitch) + 2e-7 * Math.sin(2 * pitch));
      expect(sigma).toBeCloseTo(Math.hypot(noise, step / Math.sqrt(12), slope * pitchSigma), 9);
    });
    expect(fit.quantileFreedom).toBe(Infinity);
    expect(fit.estimates[0].half95 / fit.estimates[0].sigma).toBeCloseTo(1.959964, 6);
    expect(fit.noise).toBe(noise);
    expect(fit.pValue).toBeCloseTo(1, 9);
  });

  it('has friction and drag at rest over root three where the control was held', () => {
    const drag = [{ travel: 0, force: 0.4, sigma: 0.01 }];
    const all = readings().map((one) => ({ ...one, force: one.force + 0.4 * one.sense }));
    const held: BenchReading = { ...all[4], sense: 0, force: all[4].force - 0.9 };
    const fit = fitOf({ readings: [...all, held], gauge: { step: 0, noise: 0.05 } }, { drag });
    expect(fit.sigma[28]).toBeCloseTo(Math.hypot(0.05, (0.5 + 0.4) / Math.sqrt(3)), 6);
    expect(fit.sigma[4]).toBeCloseTo(0.05, 12);
    expect(fit.negativeFriction).toBe(false);
  });

  it('is alike for all where nothing is uncertain', () => {
    const fit = fitOf({ readings: readings(), gauge: { step: 0, noise: 0 } });
    expect(new Set(fit.sigma).size).toBe(1);
    // A thousand-millionth of the largest force, or of one newton where there is none.
    const largest = Math.max(...readings().map(({ force }) => Math.abs(force)));
    expect(fit.sigma[0] / (1e-9 * largest)).toBeCloseTo(1, 12);
    expect(fit.estimates[0].value / 4e-7).toBeCloseTo(1, 9);
    const none = readings().map((one) => ({ ...one, force: 0 }));
    const empty = fitOf({ readings: none, gauge: { step: 0, noise: 0 } });
    expect(empty.sigma[0]).toBeCloseTo(1e-9, 20);
  });
});

describe('the interval of a number that hangs on errors of different freedom', () => {
  it('has the degrees of freedom of Welch and Satterthwaite, for factors too', () => {
    const gain = { id: 'gauge', kind: 'gain', sigma: 0.02, freedom: 3 } as const;
    // A known force that goes as the air does: what the gauge makes of it the factor of the air takes up.
    const air = readings((i) => (i % 3) * 0.02 - 0.02).map((one) => ({
      ...one,
      force: one.force + 5 * Math.sin(3 * one.pitch),
      knownForce: 5 * Math.sin(3 * one.pitch),
      extras: [Math.sin(3 * one.pitch)],
    }));
    const data = { readings: air, gauge: { step: 0, noise: null } } as const;
    const fit = fitOf(data, { extras: ['air'], shared: [gain] });
    const n = fit.estimates.length;
    const freedomOf = (j: number) => {
      const common = fit.shared[0].effect[j] ** 2;
      const own = fit.covariance[j * (n + 1)] - common;
      return (own + common) ** 2 / (own ** 2 / fit.freedom + common ** 2 / 3);
    };
    fit.estimates.forEach(({ key, sigma, half95 }, j) => {
      const freedom = key.kind === 'zero' || key.kind === 'shared' ? fit.freedom : freedomOf(j);
      expect(half95 / sigma).toBeCloseTo(studentQuantile(0.975, freedom), 6);
    });
    const factor = fit.estimates.findIndex(({ key }) => key.kind === 'extra');
    expect(freedomOf(factor)).toBeLessThan(fit.freedom / 2);
    expect(fit.entangled.every(({ second }) => fit.estimates[second].key.kind !== 'shared')).toBe(
      true,
    );
  });
});

describe('what a fit says of itself', () => {
  it('is the fitted force, known forces along, and what is left of each', () => {
    const all = readings((i) => (i === 3 ? 0.5 : 0)).map((one) => ({
      ...one,
      force: one.force + 2,
      knownForce: 2,
    }));
    const fit = fitOf({ readings: all, gauge: { step: 0, noise: 0.1 } });
    all.forEach(({ force }, i) => {
      expect(fit.fitted[i] + fit.residual[i]).toBeCloseTo(force, 12);
    });
    expect(fit.residual[3]).toBeCloseTo(0.5 * (1 - fit.leverage[3]), 9);
    expect(fit.standardised[3]).toBeCloseTo((0.5 / 0.1) * Math.sqrt(1 - fit.leverage[3]), 8);
    expect(fit.leverage.reduce((sum, one) => sum + one, 0)).toBeCloseTo(4, 9);
    const held = fitOf(
      { readings: all, gauge: { step: 0, noise: 0.1 } },
      { drag: [{ travel: 0, force: 0, sigma: 1 }], zeros: { sigma: 1 } },
    );
    // What is known beforehand is no reading.
    for (const column of [held.sigma, held.standardised, held.leverage, held.residual]) {
      expect(column).toHaveLength(28);
    }
    // Over these pitches cos 2t is nearly one: J_yz and the zero hang together, and nothing else does.
    const { covariance, estimates } = fit;
    const correlation = covariance[4 * 1 + 3] / (estimates[1].sigma * estimates[3].sigma);
    expect(correlation).toBeGreaterThan(0.95);
    expect(fit.entangled).toEqual([{ first: 1, second: 3, correlation }]);
    const zeroed = fitOf({ readings: all, gauge: { step: 0, noise: 0.1 } }, { zeros: 'none' });
    expect(zeroed.entangled).toEqual([]);
    expect(fit.blind).toEqual([]);
    expect(fit.condition).toBeLessThan(100);
  });

  it('is a friction below zero by more than twice its uncertainty, where no drag is told', () => {
    const turned = readings().map((one) => ({ ...one, sense: -one.sense as 1 | -1 }));
    // Friction of -0.01 N m is known to noise / (G sqrt 28).
    const limit = (0.01 / 2) * G * Math.sqrt(28);
    const negative = (noise: number, own: Partial<BenchSetup> = {}) =>
      fitOf({ readings: turned, gauge: { step: 0, noise } }, own).negativeFriction;
    expect(negative(0.98 * limit)).toBe(true);
    expect(negative(1.02 * limit)).toBe(false);
    const drag = [{ travel: 0, force: 0, sigma: 0.01 }];
    expect(negative(0.01, { drag })).toBe(false);
    expect(negative(0.01, { friction: 'none' })).toBe(false);
  });

  it('names each shared error with its freedom and what one standard deviation of it does', () => {
    const drag = [{ travel: 0.002, force: 0.4, sigma: 0.1 }];
    const shared = [
      { id: 'gauge', kind: 'gain', sigma: 0.01, freedom: 5 },
      { id: 'tacho', kind: 'speed', sigma: 0.002 },
    ] as const;
    const all = readings().map((one) => ({ ...one, force: one.force + 0.4 * one.sense }));
    const fit = fitOf({ readings: all, gauge: { step: 0, noise: 1e-3 } }, { drag, shared });
    expect(fit.shared.map(({ id, freedom }) => [id, freedom])).toEqual([
      ['drag 0.002', Infinity],
      ['gauge', 5],
      ['tacho', Infinity],
    ]);
    // A drag larger by 0.1 N is friction less by 0.1 N / G; a gauge that reads 1 % high found 1 % too much, and is held at nothing.
    expect(fit.shared[0].effect[2]).toBeCloseTo(-0.1 / G, 6);
    expect(Math.abs(fit.shared[1].effect[0] / 4e-9)).toBeCloseTo(1, 3);
    expect(Math.abs(fit.shared[2].effect[0] / (2 * 0.002 * 4e-7))).toBeCloseTo(1, 3);
  });

  it('names no zero among the shared errors, though it is known beforehand', () => {
    const gain = { id: 'gauge', kind: 'gain', sigma: 0.01 } as const;
    const own = { zeros: { sigma: 0.5 }, shared: [gain] } as const;
    const fit = fitOf({ readings: readings(), gauge: { step: 0, noise: 0.1 } }, own);
    expect(fit.shared.map(({ id }) => id)).toEqual(['gauge']);
    const alone = fitOf(
      { readings: readings(), gauge: { step: 0, noise: 0.1 } },
      { zeros: { sigma: 0.5 } },
    );
    expect(alone.shared).toEqual([]);
  });

  it('has no interval of four readings for four numbers, whatever is known of the gauge', () => {
    const four = [0, 1, 12, 20].map((i) => readings()[i]);
    for (const sigma of [0.02, 0.5, 2]) {
      const gain = { id: 'gauge', kind: 'gain', sigma, freedom: 3 } as const;
      const fit = fitOf({ readings: four, gauge: { step: 0, noise: null } }, { shared: [gain] });
      expect(fit.quantileFreedom).toBe(0);
      expect(fit.estimates.slice(0, 4).map(({ half95 }) => half95)).toEqual(Array(4).fill(NaN));
    }
  });

  it('refuses no readings, and one with a number that is none', () => {
    const bad = (change: Partial<BenchReading>) => {
      const all = readings();
      all[5] = { ...all[5], ...change };
      const found = benchFit({ readings: all, gauge: { step: 0, noise: 1 } }, SETUP);
      return found.ok ? null : found.error;
    };
    for (const change of [
      { force: Number.NaN },
      { pitch: radians(Infinity) },
      { angularSpeed: Number.NaN },
      { travel: Number.NaN },
      { knownForce: Infinity },
      { extras: [0, Number.NaN] },
      { forcePerMomentSlope: Number.NaN },
      { scaleShifts: [0, Number.NaN] as const },
    ]) {
      expect(bad(change)).toEqual({ kind: 'badReading', index: 5 });
    }
    expect(bad({ extras: [] })).toBeNull();
    const first = readings().map((one, i) => (i === 0 ? { ...one, force: Number.NaN } : one));
    expect(benchFit({ readings: first, gauge: { step: 0, noise: 1 } }, SETUP)).toEqual({
      ok: false,
      error: { kind: 'badReading', index: 0 },
    });
    expect(benchFit({ readings: [], gauge: { step: 0, noise: 1 } }, SETUP)).toEqual({
      ok: false,
      error: { kind: 'noReadings' },
    });
  });
});
