import { describe, expect, it } from 'vitest';
import { type BenchSetup, benchDesign } from '../../../src/engine/identify/benchDesign';
import { benchFit } from '../../../src/engine/identify/benchFit';
import type { BenchFit } from '../../../src/engine/identify/benchFitTypes';
import type { BenchReading } from '../../../src/engine/identify/benchReading';
import {
  ANGLE_GAUGE_SIGMA,
  lineCalibration,
  linkageCalibration,
} from '../../../src/engine/identify/calibration';
import { linearFit } from '../../../src/engine/identify/linearFit';
import { quickFit } from '../../../src/engine/identify/quickFit';
import type { SharedError } from '../../../src/engine/identify/sharedErrors';
import { radians, radiansFromDegrees } from '../../../src/engine/units';
import { seeded } from '../../support/seeded';

const SPREAD = 4e-7;
const PRODUCT = 0.5e-7;
const FRICTION = 0.004;
const ARM = 0.018;
const SETUP: BenchSetup = {
  friction: 'moment',
  zeros: 'free',
  extras: [],
  drag: [],
  precone: radians(0),
};

/** Forces by the textbook formula at an arm of constant length: -W^2 (A/2 sin 2t + P cos 2t) over the arm, and friction. */
function readings(change: { pitchOff?: number; gain?: number; speed?: number } = {}) {
  const { pitchOff = 0, gain = 1, speed = 1 } = change;
  return [700, 1068].flatMap((w) =>
    [-20, -10, -4, 0, 4, 10, 20].flatMap((deg) =>
      ([1, -1] as const).map((sense): BenchReading => {
        const pitch = radiansFromDegrees(deg);
        const t = pitch + pitchOff;
        const moment =
          -((w * speed) ** 2) * ((SPREAD / 2) * Math.sin(2 * t) + PRODUCT * Math.cos(2 * t));
        return {
          force: (gain * (moment + sense * FRICTION)) / ARM,
          sense,
          pitch,
          angularSpeed: w,
          forcePerMoment: 1 / ARM,
          travel: 0,
          zero: 0,
        };
      }),
    ),
  );
}

function fitOf(rows: readonly BenchReading[], shared: readonly SharedError[], noise = 1e-4) {
  const found = benchFit({ readings: rows, gauge: { step: 0, noise } }, { ...SETUP, shared });
  if (!found.ok) throw new Error(found.error.kind);
  return found.value;
}

const sigmas = ({ estimates }: BenchFit) => estimates.slice(0, 3).map(({ sigma }) => sigma);

describe('an error that all readings share', () => {
  it('makes the numbers as uncertain as a hand calculation says, however small the noise', () => {
    // A gain or arm out by 1 % is J and friction out by 1 %, a tachometer by 0.5 % is J out by 1 %; noise is a thousandth of
    // that, and enters in squares.
    const one = (kind: 'gain' | 'lever' | 'speed', sigma: number) =>
      sigmas(fitOf(readings(), [{ id: kind, kind, sigma }]));
    for (const kind of ['gain', 'lever'] as const) {
      const [spread, product, friction] = one(kind, 0.01);
      expect(spread / (0.01 * SPREAD)).toBeCloseTo(1, 3);
      expect(product / (0.01 * PRODUCT)).toBeCloseTo(1, 3);
      expect(friction / (0.01 * FRICTION)).toBeCloseTo(1, 3);
    }
    const [spread, , friction] = one('speed', 0.005);
    expect(spread / (0.01 * SPREAD)).toBeCloseTo(1, 3);
    expect(friction).toBeLessThan(1e-3 * FRICTION);
    // A pitch zero out by d turns the ellipse: dP = A d, dA = -4 P d (sin 2(t + d), cos 2(t + d) to first order).
    const off = radiansFromDegrees(0.1);
    const turned = sigmas(fitOf(readings(), [{ id: 'pitch', kind: 'pitch', sigma: off }]));
    expect(turned[1] / (SPREAD * off)).toBeCloseTo(1, 3);
    expect(turned[0] / (4 * PRODUCT * off)).toBeCloseTo(1, 2);
  });

  it('does not move what is found, and moves it by as much as it is when it happens', () => {
    const shared = [
      { id: 'gain', kind: 'gain', sigma: 0.01 },
      { id: 'speed', kind: 'speed', sigma: 0.005 },
      { id: 'pitch', kind: 'pitch', sigma: radiansFromDegrees(0.1) },
    ] as const;
    const still = fitOf(readings(), shared);
    expect(still.estimates[0].value / SPREAD).toBeCloseTo(1, 9);
    const changes = [
      readings({ gain: 1.01 }),
      readings({ speed: 1.005 }),
      readings({ pitchOff: shared[2].sigma }),
    ];
    changes.forEach((rows, k) => {
      const moved = fitOf(rows, shared);
      for (const j of [0, 1]) {
        const by = moved.estimates[j].value - still.estimates[j].value;
        const told = still.shared[k].effect[j];
        // First order: the squares of 1 % and of 0.1 degrees are left out. The effect is that of the error known beforehand,
        // whose sign is the other one: it is held at nothing while it is there.
        expect(Math.abs(by + told)).toBeLessThan(0.02 * Math.abs(told) + 2e-4 * SPREAD);
      }
    });
  });

  it('is the covariance, together with what is not shared: effects squared and the rest', () => {
    const gain = { id: 'gain', kind: 'gain', sigma: 0.01 } as const;
    const [alone, shared] = [fitOf(readings(), [], 0.05), fitOf(readings(), [gain], 0.05)];
    const n = alone.estimates.length;
    const m = shared.estimates.length;
    for (const [i, j] of [
      [0, 0],
      [0, 1],
      [1, 1],
      [2, 2],
    ]) {
      const { effect } = shared.shared[0];
      const own = shared.covariance[i * m + j] - effect[i] * effect[j];
      // The gain has the very shape of moments and friction: their own part is as without it.
      const size = Math.sqrt(alone.covariance[i * n + i] * alone.covariance[j * n + j]);
      expect(Math.abs(own - alone.covariance[i * n + j]) / size).toBeLessThan(1e-6);
    }
  });

  it('rests on its own degrees of freedom: one pair to spare makes a wide interval', () => {
    const wide = fitOf(readings(), [{ id: 'gain', kind: 'gain', sigma: 0.01, freedom: 1 }]);
    // All of the uncertainty rests on one degree of freedom: t of 0.975 is 12.706 (printed tables, from memory).
    expect(wide.estimates[0].half95 / wide.estimates[0].sigma).toBeCloseTo(12.706, 2);
  });
});

describe('the calibration of pitch as a shared error', () => {
  it('has two parts whose squares sum to its own uncertainty at every mark', () => {
    const curve = (travel: number) => Math.asin(travel / ARM);
    const pairs = [-8, -4, 0, 3, 8].map((scale, k) => ({
      scale,
      pitch: radians(curve(0.0004 + 0.0011 * scale) + [1, -2, 1.5, 0.5, -1][k] * 1e-3),
    }));
    for (const made of [lineCalibration(pairs), linkageCalibration(pairs, curve, 0.001)]) {
      if (!made.ok) throw new Error(made.error.kind);
      for (const scale of [-8, -1, 5]) {
        const [first, second] = made.value.shiftsAt(scale);
        expect(Math.hypot(first, second) / made.value.sigmaAt(scale)).toBeCloseTo(1, 9);
      }
      expect(made.value.shiftFreedom).toBe(3);
    }
  });

  it('is assumed where two pairs show nothing of it: halfway between them 1/sqrt 2 of an angle gauge', () => {
    const made = lineCalibration([
      { scale: 0, pitch: radians(0) },
      { scale: 10, pitch: radians(0.3) },
    ]);
    if (!made.ok) throw new Error(made.error.kind);
    expect(made.value.sigmaAt(5)).toBeNaN();
    expect(Math.hypot(...made.value.shiftsAt(5))).toBeCloseTo(ANGLE_GAUGE_SIGMA / Math.SQRT2, 12);
    expect(made.value.shiftFreedom).toBe(Infinity);
  });
});

describe('the quick solution on the way to a fit', () => {
  it('is that of the careful one, chi-square too', () => {
    const random = seeded(9);
    const rows = readings().map((one) => ({ ...one, force: one.force + random.between(-1, 1) }));
    const { keys, rows: design, observed } = benchDesign(rows, SETUP);
    const sigma = observed.map(() => random.between(0.1, 0.3));
    const quick = quickFit(design, keys.length, observed, sigma);
    const careful = linearFit({ design, parameters: keys.length, observed, sigma });
    expect(quick.isWhole).toBe(true);
    expect(quick.chiSquare / careful.chiSquare).toBeCloseTo(1, 11);
    quick.estimate.forEach((value, j) => expect(value / careful.estimate[j]).toBeCloseTo(1, 9));
  });

  it('says when columns depend on each other', () => {
    const quick = quickFit([1, 2, 2, 4, 3, 6], 2, [1, 2, 3], [1, 1, 1]);
    expect(quick).toMatchObject({ isWhole: false, rank: 1 });
    expect(quick.chiSquare).toBeCloseTo(0, 12);
  });
});
