import { describe, expect, it } from 'vitest';
import type { BenchSetup } from '../../../src/engine/identify/benchDesign';
import { benchFit } from '../../../src/engine/identify/benchFit';
import type { BenchData, BenchFit } from '../../../src/engine/identify/benchFitTypes';
import type { BenchReading, Sense } from '../../../src/engine/identify/benchReading';
import { radians } from '../../../src/engine/units';
import { seeded } from '../../support/seeded';

// What the weights of readings and the columns of shared errors hang on is itself fitted: at the end both must agree.

const SETUP: BenchSetup = {
  friction: 'none',
  zeros: 'none',
  extras: [],
  drag: [],
  precone: radians(0),
};
/** Gauge force for one N m. */
const G = 50;
const [SPREAD, PRODUCT] = [4e-7, -1e-7];

/** The model by hand, -g W^2 (A/2 sin 2t + P cos 2t), and its slope by pitch. */
const modelAt = (pitch: number, spread: number, product: number) =>
  -G * 1e6 * ((spread / 2) * Math.sin(2 * pitch) + product * Math.cos(2 * pitch));
const slopeAt = (pitch: number, spread: number, product: number) =>
  -G * 1e6 * (spread * Math.cos(2 * pitch) - 2 * product * Math.sin(2 * pitch));

const reading = (pitch: number, off: number, more: Partial<BenchReading> = {}): BenchReading => ({
  sense: 1,
  angularSpeed: 1000,
  pitch: radians(pitch),
  force: modelAt(pitch, SPREAD, PRODUCT) + off,
  forcePerMoment: G,
  travel: 0,
  zero: 0,
  ...more,
});
function fitOf(data: BenchData, own: Partial<BenchSetup> = {}): BenchFit {
  const found = benchFit(data, { ...SETUP, ...own });
  if (!found.ok) throw new Error(found.error.kind);
  return found.value;
}

describe('the weight that an error of the pitch gives a reading', () => {
  // Far off where the curve is steep, right where it is flat: with like weights the fit is far from the one with its own.
  const readings = [-0.78, -0.7, -0.1, 0, 0.1, 0.2, 0.7, 0.78, 0.85].map((pitch) =>
    reading(pitch, Math.abs(pitch) < 0.3 ? (pitch > 0 ? 5 : -1) : 0),
  );
  const pitchSigma = 0.1;

  it('is that of the curve that is fitted with these weights', () => {
    const fit = fitOf({ readings, gauge: { step: 0, noise: 0.3 }, pitchSigma });
    const [spread, product] = fit.estimates.map(({ value }) => value);
    readings.forEach(({ pitch }, i) => {
      const wanted = Math.hypot(0.3, slopeAt(pitch, spread, product) * pitchSigma);
      expect(Math.abs(fit.sigma[i] / wanted - 1)).toBeLessThan(0.003);
    });
    // That of the fit with like weights is another.
    const alike = fitOf({ readings, gauge: { step: 0, noise: 0.3 } });
    const [a, p] = alike.estimates.map(({ value }) => value);
    const parts = readings.map(
      ({ pitch }, i) => Math.hypot(0.3, slopeAt(pitch, a, p) * pitchSigma) / fit.sigma[i],
    );
    expect(Math.max(...parts.map((part) => Math.abs(part - 1)))).toBeGreaterThan(0.05);
  });

  it('goes with the noise that is found beside it', () => {
    const random = seeded(5);
    const wide = readings.map((one) => ({ ...one, force: one.force + random.between(-8, 8) }));
    const fit = fitOf({ readings: wide, gauge: { step: 0, noise: null }, pitchSigma: 0.02 });
    expect(fit.noise).toBeGreaterThan(0);
    expect(Math.abs(fit.chiSquare / fit.freedom - 1)).toBeLessThan(0.01);
  });
});

describe('the weight of a held reading', () => {
  it('is that of the friction that is fitted with it', () => {
    // Pushed at some pitches and pulled at others, so that a held reading far off leans the friction as well.
    const friction = 0.2;
    const moving = [-0.4, -0.3, 0.1, 0.2, 0.5].map((pitch, i) => {
      const sense: Sense = i < 3 ? 1 : -1;
      return reading(pitch, sense * G * friction, { sense });
    });
    const readings = [...moving, reading(0, 15, { sense: 0 })];
    const data = { readings, gauge: { step: 0, noise: 0.5 } };
    const fit = fitOf(data, { friction: 'moment' });
    const found = fit.estimates[2].value;
    expect(fit.sigma[5] / Math.hypot(0.5, (G * found) / Math.sqrt(3))).toBeCloseTo(1, 4);
    expect(fit.sigma[0]).toBeCloseTo(0.5, 12);
    // As sure as the moving ones it would lean it by a quarter.
    expect(found / friction).toBeCloseTo(1, 2);
  });
});

describe('an error of the gauge beside a force that is known', () => {
  it('is found at what is fitted, so that what is left agrees', () => {
    // A gauge that reads 5 % high everything, 30 N that are known among it: the known force tells it.
    const knownForce = 30;
    const readings = [-0.6, -0.4, -0.2, 0, 0.2, 0.4, 0.6].map((pitch) => {
      const one = reading(pitch, 0);
      return { ...one, force: 1.05 * (one.force + knownForce), knownForce };
    });
    const gain = { id: 'gauge', kind: 'gain', sigma: 0.05 } as const;
    const fit = fitOf({ readings, gauge: { step: 0, noise: 1e-4 } }, { shared: [gain] });
    const [spread, product, shared] = fit.estimates.map(({ value }) => value);
    // The column is taken at fits one after the other, each closer by 5 %: a third of a hundredth of the first error is left.
    expect(shared).toBeCloseTo(1, 3);
    expect(spread / SPREAD).toBeCloseTo(1, 3);
    expect(product / PRODUCT).toBeCloseTo(1, 2);
    readings.forEach(({ force }, i) => expect(fit.fitted[i]).toBeCloseTo(force, 3));
  });
});

describe('the noise', () => {
  const random = seeded(8);
  const scatter = Array.from({ length: 21 }, () => random.between(-0.2, 0.2));
  const at = (zero: number, by: number) =>
    scatter.map((off, i) => reading((i - 10) / 20, zero + by * off));

  it('is found as well where all forces lie far from nothing', () => {
    const near = fitOf({ readings: at(0, 1), gauge: { step: 0, noise: null } }, { zeros: 'free' });
    expect(near.noise).toBeGreaterThan(0.05);
    for (const zero of [300, -300]) {
      const far = fitOf(
        { readings: at(zero, 1), gauge: { step: 0, noise: null } },
        { zeros: 'free' },
      );
      expect(Math.abs(far.noise / near.noise - 1)).toBeLessThan(2e-3);
    }
  });

  it('below a millionth of the forces is none', () => {
    const found = (by: number) =>
      fitOf({ readings: at(0, by), gauge: { step: 0, noise: null } }).noise;
    expect(found(1e-3)).toBeGreaterThan(0);
    expect(found(1e-5)).toBe(0);
  });

  it('is none where only what was known beforehand disagrees', () => {
    const drag = [{ travel: 0, force: 0.4, sigma: 0.001 }];
    const readings = at(0, 0).map((one) => ({ ...one, force: 0 }));
    const fit = fitOf({ readings, gauge: { step: 0, noise: null } }, { drag });
    expect(fit.noise).toBe(0);
    expect(fit.chiSquare).toBeGreaterThan(1e4);
  });
});
