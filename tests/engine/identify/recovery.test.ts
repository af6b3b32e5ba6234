import { describe, expect, it } from 'vitest';
import type { BenchSetup } from '../../../src/engine/identify/benchDesign';
import { benchFit } from '../../../src/engine/identify/benchFit';
import type { BenchFit } from '../../../src/engine/identify/benchFitTypes';
import type { Gauge } from '../../../src/engine/identify/benchReading';
import { confidenceRegion, regionDistance } from '../../../src/engine/identify/region';
import {
  type HiddenTruth,
  type VirtualPlan,
  virtualReadings,
} from '../../../src/engine/identify/virtualBench';
import { OUNCE_FORCE_N, radians, radiansFromDegrees } from '../../../src/engine/units';
import { seeded } from '../../support/seeded';

/** An invented bench like the demo head's: an 18 mm arm with the rod along the shaft, two speeds, both senses. */
const ARM = 0.018;
const plan: VirtualPlan = {
  pitches: [-20, -15, -10, -5, 0, 5, 10, 15, 20].map(radiansFromDegrees),
  senses: [1, -1],
  speeds: [750, 1068],
  repeats: 1,
  dragTravels: [-0.007, 0, 0.007],
  dragRepeats: 4,
  precone: radians(0),
  forcePerMoment: (pitch) => 1 / (ARM * Math.cos(pitch)),
  travel: (pitch) => ARM * Math.sin(pitch),
};
/** Gauges step by half an ounce-force (common practice). */
const STEP = OUNCE_FORCE_N / 2;
const setupWith = (drag: BenchSetup['drag']): BenchSetup => ({
  friction: 'moment',
  zeros: 'free',
  extras: [],
  drag,
  precone: radians(0),
});

function truthOf(seed: number, noise: number): HiddenTruth {
  const random = seeded(seed);
  return {
    spread: random.between(-1e-6, 1e-6),
    product: random.between(-3e-7, 3e-7),
    frictionMoment: random.between(0.002, 0.01),
    zeros: [random.between(-0.3, 0.3)],
    // Straight between the travels at which it is measured, so that interpolation adds no error of its own.
    restDrag: (travel) => 0.35 + 20 * Math.abs(travel),
    noise,
    pitchSigma: radiansFromDegrees(0.2),
    wrongShare: 0,
    wrongBy: 0,
  };
}

interface Tally {
  /** Share of benches whose truth lies inside the 95 % region of J_yy - J_zz and J_yz together, and of friction. */
  readonly moments: number;
  readonly friction: number;
  /** Mean of (found - true) / sigma for J_yy - J_zz, J_yz, friction. */
  readonly bias: readonly number[];
}

function tally(benches: number, noise: number, gauge: Gauge, seed0: number): Tally {
  let [moments, friction] = [0, 0];
  const sums = [0, 0, 0];
  for (let k = 0; k < benches; k++) {
    const truth = truthOf(seed0 + k, noise);
    const { readings, drag } = virtualReadings(plan, truth, gauge, seed0 + k);
    const found = benchFit({ readings, gauge, pitchSigma: truth.pitchSigma }, setupWith(drag));
    if (!found.ok) throw new Error(found.error.kind);
    const fit: BenchFit = found.value;
    const real = [truth.spread, truth.product, truth.frictionMoment];
    const inside = (places: number[]) => {
      const region = confidenceRegion(fit, places);
      if (!region) throw new Error('no region');
      const point = places.map((j) => real[j]);
      return regionDistance(region, point) <= region.limit ? 1 : 0;
    };
    moments += inside([0, 1]);
    friction += inside([2]);
    real.forEach((value, j) => {
      const off = (fit.estimates[j].value - value) / fit.estimates[j].sigma;
      sums[j] += off;
    });
  }
  return {
    moments: moments / benches,
    friction: friction / benches,
    bias: sums.map((sum) => sum / benches),
  };
}

/**
 * Brute force against the invented truth. Of 1,000 benches with a true 95 % region 950 hold the truth, give or take 6.9 (one
 * standard deviation of the binomial): 930 to 970 are nearly three of them. The mean of deviations over sigma scatters by
 * 0.032, so that 0.1 is three of those.
 */
describe('a thousand virtual benches', () => {
  it.each([
    { name: 'whose noise is known', noise: 0.08, told: 0.08 },
    { name: 'whose noise is learnt from the residuals', noise: 0.08, told: null },
    { name: 'whose gauge steps by three times the noise', noise: STEP / 3, told: STEP / 3 },
    { name: 'whose gauge steps by ten times the noise', noise: STEP / 10, told: STEP / 10 },
  ])(
    '$name: the truth lies in the 95 % region in 93 to 97 %, and nothing leans',
    ({ noise, told }) => {
      const result = tally(1000, noise, { step: STEP, noise: told }, 1000);
      for (const share of [result.moments, result.friction]) {
        expect(share).toBeGreaterThanOrEqual(0.93);
        expect(share).toBeLessThanOrEqual(0.97);
      }
      for (const lean of result.bias) expect(Math.abs(lean)).toBeLessThan(0.1);
    },
    60_000,
  );

  it('is what it was for the same seed, and another for another', () => {
    const truth = truthOf(5, 0.08);
    const gauge = { step: STEP, noise: 0.08 };
    const forces = (seed: number) =>
      virtualReadings(plan, truth, gauge, seed).readings.map(({ force }) => force);
    expect(forces(5)).toEqual(forces(5));
    expect(forces(6)).not.toEqual(forces(5));
  });

  it('reads whole steps of the gauge only', () => {
    const { readings } = virtualReadings(plan, truthOf(5, 0.08), { step: STEP, noise: 0.08 }, 5);
    for (const { force } of readings) {
      // One rounding of the product at forces up to some 200 steps.
      expect(Math.abs(force / STEP - Math.round(force / STEP))).toBeLessThan(1e-12);
    }
  });
});
