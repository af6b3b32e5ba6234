import { describe, expect, it } from 'vitest';
import { featheringHarmonics, featheringMoment } from '../../../src/engine/feathering/harmonics';
import type { BenchSetup } from '../../../src/engine/identify/benchDesign';
import { benchFit } from '../../../src/engine/identify/benchFit';
import type { BenchFit } from '../../../src/engine/identify/benchFitTypes';
import type { BenchReading, Sense } from '../../../src/engine/identify/benchReading';
import {
  confidenceRegion,
  regionDistance,
  regionEllipse,
} from '../../../src/engine/identify/region';
import {
  createLinkState,
  type Linkage,
  linkState,
  pushRodForce,
  travelAtPitch,
} from '../../../src/engine/linkage/linkage';
import { createMoments, JYY, JYZ, JZZ } from '../../../src/engine/mass/moments';
import { radiansFromDegrees } from '../../../src/engine/units';

/** An invented linkage: arm ahead of the axis, rod of 22 mm down to the slider. */
const linkage: Linkage = {
  ball_G: [0.02, 0.018, 0.002],
  side: -1,
  length: 0.022,
  sliderX: 0.02,
  sliderY: 0.017,
  rod: null,
};
const SPREAD = 4.2e-7;
const PRODUCT = -1.3e-7;
const setup: BenchSetup = {
  friction: 'moment',
  zeros: 'free',
  extras: [],
  drag: [],
  precone: radiansFromDegrees(2),
};

/** Force that the engine's own moment and linkage give, without any formula of the fit. */
function reading(
  pitchDeg: number,
  sense: Sense,
  angularSpeed: number,
  friction: number,
): BenchReading {
  const pitch = radiansFromDegrees(pitchDeg);
  const rotor = { angularSpeed, torqueOffset: 0, precone: setup.precone };
  const moments = createMoments();
  moments[JYY] = 6e-7 + SPREAD;
  moments[JZZ] = 6e-7;
  moments[JYZ] = PRODUCT;
  const moment = featheringMoment(featheringHarmonics(moments, rotor, new Float64Array(4)), pitch);
  const link = linkState(linkage, rotor, pitch, createLinkState());
  // Friction opposes the way that the rod is pulled: pulling needs more tension.
  const held = pushRodForce(moment, link) ?? Number.NaN;
  const perMoment = pushRodForce(1, link) ?? Number.NaN;
  return {
    force: held + sense * friction * Math.abs(perMoment),
    sense,
    pitch,
    angularSpeed,
    forcePerMoment: perMoment,
    travel: travelAtPitch(linkage, rotor, pitch),
    zero: 0,
  };
}

const PITCHES = [-20, -12, -5, 0, 6, 13, 20];
const SPEEDS = [700, 1068];
const clean = (friction: number): BenchReading[] =>
  SPEEDS.flatMap((speed) =>
    PITCHES.flatMap((deg) => [reading(deg, 1, speed, friction), reading(deg, -1, speed, friction)]),
  );

function fitOf(readings: readonly BenchReading[], own: Partial<BenchSetup> = {}): BenchFit {
  const found = benchFit({ readings, gauge: { step: 0, noise: 0.05 } }, { ...setup, ...own });
  if (!found.ok) throw new Error(found.error.kind);
  return found.value;
}

describe('the bench fit', () => {
  it('finds the moments, friction and zero behind forces of the feathering moment through the linkage', () => {
    const fit = fitOf(clean(0.004).map((one) => ({ ...one, force: one.force + 0.21 })));
    const [spread, product, friction, zero] = fit.estimates;
    // Exact data: rounding of forces of some newtons, times a condition below 1e4.
    expect(spread.value / SPREAD).toBeCloseTo(1, 9);
    expect(product.value / PRODUCT).toBeCloseTo(1, 9);
    expect(friction.value).toBeCloseTo(0.004, 11);
    expect(zero.value).toBeCloseTo(0.21, 9);
    expect(fit.pValue).toBeCloseTo(1, 6);
    expect(Math.max(...fit.residual.map(Math.abs))).toBeLessThan(1e-9);
  });

  it('is turned round by exchanging push and pull: friction below zero is said', () => {
    const turned = clean(0.004).map((one) => ({ ...one, sense: -one.sense as Sense }));
    const fit = fitOf(turned);
    expect(fit.negativeFriction).toBe(true);
    expect(fit.estimates[2].value).toBeCloseTo(-0.004, 11);
    expect(fitOf(clean(0.004)).negativeFriction).toBe(false);
  });

  it('says that zero and J_yz hang together at one speed and come apart at two', () => {
    const one = fitOf(clean(0.004).filter(({ angularSpeed }) => angularSpeed === 1068));
    const two = fitOf(clean(0.004));
    expect(one.entangled.some(({ first, second }) => first === 1 && second === 3)).toBe(true);
    expect(one.estimates[1].inflation).toBeGreaterThan(1.5 * two.estimates[1].inflation);
    expect(two.estimates[1].sigma).toBeLessThan(one.estimates[1].sigma / 2);
  });

  it('says that friction and drag without an uncertainty of its own cannot be told from pushes alone', () => {
    // Pushes at one pitch: friction, zero and both moments do the same.
    const only = SPEEDS.slice(0, 1).flatMap((speed) =>
      [1, 2, 3].map(() => reading(5, -1, speed, 0.004)),
    );
    const fit = fitOf(only);
    expect(fit.blind.length).toBe(3);
    expect(fit.estimates.every(({ determined }) => !determined)).toBe(true);
    expect(fit.estimates.every(({ value }) => Number.isNaN(value))).toBe(true);
    expect(confidenceRegion(fit, [0, 1])).toBeNull();
  });

  it('takes a zero that is known to nothing as none, and one that is known badly as free', () => {
    const shifted = clean(0.004).map((one) => ({ ...one, force: one.force + 0.21 }));
    expect(fitOf(shifted, { zeros: { sigma: 1e-6 } }).estimates[3].value).toBeCloseTo(0, 6);
    expect(fitOf(shifted, { zeros: { sigma: 1e6 } }).estimates[3].value).toBeCloseTo(0.21, 6);
  });

  it('carries what the drag at rest leaves open into the uncertainty of friction', () => {
    const drag = [{ travel: 0, force: 0.4, sigma: 0.3 }];
    const readings = clean(0.004).map((one) => ({ ...one, force: one.force + one.sense * 0.4 }));
    const fit = fitOf(readings, { drag, friction: 'force' });
    const friction = fit.estimates[2];
    // A common error of 0.3 N of the only row of drag is one of friction, to which the readings add almost nothing.
    expect(friction.sigma).toBeGreaterThan(0.3);
    expect(friction.sigma).toBeLessThan(0.301);
    expect(fit.estimates[0].value / SPREAD).toBeCloseTo(1, 9);
  });

  it('fits a modelled air by its factor where it is asked to', () => {
    const air = (one: BenchReading) =>
      0.8 * Math.sin(3 * one.pitch) * (one.angularSpeed / 1068) ** 2;
    const readings = clean(0.004).map((one) => ({
      ...one,
      force: one.force + 1.3 * air(one),
      extras: [air(one)],
    }));
    const fit = fitOf(readings, { extras: ['air'] });
    const factor = fit.estimates.find(({ key }) => key.kind === 'extra');
    expect(factor?.value).toBeCloseTo(1.3, 7);
  });

  it('takes held readings with friction anywhere between its ends', () => {
    const held = clean(0.004).map((one, i) =>
      i % 3 === 0 ? { ...reading(one.pitch * 57, 0, 900, 0) } : one,
    );
    const fit = fitOf(held);
    const first = held.findIndex(({ sense }) => sense === 0);
    // (friction force)^2 / 3 beside the noise of 0.05 N.
    const force = 0.004 * Math.abs(held[first].forcePerMoment);
    expect(fit.sigma[first]).toBeCloseTo(Math.hypot(0.05, force / Math.sqrt(3)), 4);
  });

  it('finds no noise in what the step explains, and does not claim less than the step', () => {
    const step = 0.139;
    const readings = clean(0.004).map((one) => ({
      ...one,
      force: Math.round(one.force / step) * step,
    }));
    const found = benchFit({ readings, gauge: { step, noise: null } }, setup);
    if (!found.ok) throw new Error(found.error.kind);
    expect(found.value.noise).toBeLessThan(step / 3);
    for (const sigma of found.value.sigma)
      expect(sigma).toBeGreaterThanOrEqual(step / Math.sqrt(12));
    expect(found.value.pValue).toBeNull();
  });

  it('calls a gauge coarse whose readings lie within few of its steps', () => {
    const readings = clean(0).map((one) => ({ ...one, force: Math.round(one.force / 20) * 20 }));
    const found = benchFit({ readings, gauge: { step: 20, noise: 0.1 } }, setup);
    expect(found.ok && found.value.coarse !== null).toBe(true);
    expect(fitOf(clean(0.004)).coarse).toBeNull();
  });

  it('names the reading that has no number, and refuses none at all', () => {
    const readings = clean(0.004);
    readings[3] = { ...readings[3], forcePerMoment: Number.NaN };
    expect(benchFit({ readings, gauge: { step: 0, noise: 1 } }, setup)).toEqual({
      ok: false,
      error: { kind: 'badReading', index: 3 },
    });
    expect(benchFit({ readings: [], gauge: { step: 0, noise: 1 } }, setup).ok).toBe(false);
  });

  it('draws the ellipse of points that lie on the edge of the region', () => {
    const region = confidenceRegion(fitOf(clean(0.004)), [0, 1]);
    if (!region) throw new Error('no region');
    // Chi-square of 0.95 with two degrees of freedom, printed tables (from memory): 5.991.
    expect(region.limit).toBeCloseTo(5.991, 3);
    for (const point of regionEllipse(region, 16)) {
      expect(regionDistance(region, point) / region.limit).toBeCloseTo(1, 9);
    }
  });
});

describe('friction that grows with the pull', () => {
  it('is found at the reference speed from readings at two', () => {
    const readings = SPEEDS.flatMap((speed) =>
      PITCHES.flatMap((deg) => [
        reading(deg, 1, speed, 0.004 * (speed / 1068) ** 2),
        reading(deg, -1, speed, 0.004 * (speed / 1068) ** 2),
      ]),
    );
    const fit = fitOf(readings, { friction: 'pull', referenceSpeed: 1068 });
    expect(fit.estimates[2].value).toBeCloseTo(0.004, 11);
    expect(fit.chiSquare).toBeLessThan(1e-12);
  });
});
