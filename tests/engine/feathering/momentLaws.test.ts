import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  featheringBound,
  featheringEnergy,
  featheringMoment,
  featheringSlope,
} from '../../../src/engine/feathering/harmonics';
import type { RotorConditions } from '../../../src/engine/feathering/rotor';
import {
  accumulate,
  createMoments,
  JXX,
  JXY,
  JXZ,
  JYY,
  JYZ,
  JZZ,
  type Moments,
  SX,
  SY,
  SZ,
} from '../../../src/engine/mass/moments';
import {
  apply,
  cross,
  dot,
  type Mat3,
  multiply,
  transpose,
  type Vec3,
} from '../../../src/engine/math/vector';
import { radians } from '../../../src/engine/units';
import { cloud, conditions, LAW, pitchAngle, real } from '../../support/arbitrary';
import { harmonicsOf, rotor } from '../../support/feathering';
import { forceMoment, forceScale, spinPotential } from '../../support/forces';
import { cloudMoments } from '../../support/shapes';

// Twelve points, some thirty operations each, and the moment's own dozen: below 500 roundings of 1.1e-16.
const ROUNDING = 500 * (Number.EPSILON / 2);

/**
 * The general form of the derivation: M = W^2 u . [ axial(C J C^T P) + (C S) x (P p0) ], axial(K)_i = e_ijk K_jk,
 * P = diag(1, 1, 0), C from grip to rotor frame.
 */
function vectorMoment(moments: Moments, at: RotorConditions, pitch: number): number {
  const b = at.precone;
  const tilt: Mat3 = [Math.cos(b), 0, -Math.sin(b), 0, 1, 0, Math.sin(b), 0, Math.cos(b)];
  const [c, s] = [Math.cos(pitch), Math.sin(pitch)];
  const C = multiply(tilt, [1, 0, 0, 0, c, -s, 0, s, c]);
  const [xx, yy, zz] = [moments[JXX], moments[JYY], moments[JZZ]];
  const [xy, xz, yz] = [moments[JXY], moments[JXZ], moments[JYZ]];
  const K = multiply(
    multiply(C, [xx, xy, xz, xy, yy, yz, xz, yz, zz]),
    multiply(transpose(C), [1, 0, 0, 0, 1, 0, 0, 0, 0]),
  );
  const axial: Vec3 = [K[5] - K[7], K[6] - K[2], K[1] - K[3]];
  const lever = cross(apply(C, [moments[SX], moments[SY], moments[SZ]]), [0, at.torqueOffset, 0]);
  const u: Vec3 = [Math.cos(b), 0, Math.sin(b)];
  return at.angularSpeed ** 2 * (dot(u, axial) + dot(u, lever));
}

describe('the inertial feathering moment', () => {
  test('equals the summed moment of the spin force on every point, offset and precone included', () => {
    fc.assert(
      fc.property(cloud, conditions, pitchAngle, (points, at, pitch) => {
        const h = harmonicsOf(cloudMoments(points), at);
        const error = Math.abs(
          featheringMoment(h, radians(pitch)) - forceMoment(points, at, pitch),
        );
        expect(error).toBeLessThanOrEqual(ROUNDING * forceScale(points, at));
      }),
      LAW,
    );
  });

  test('equals the general vector form in J and S', () => {
    fc.assert(
      fc.property(cloud, conditions, pitchAngle, (points, at, pitch) => {
        const moments = cloudMoments(points);
        const error = Math.abs(
          featheringMoment(harmonicsOf(moments, at), radians(pitch)) -
            vectorMoment(moments, at, pitch),
        );
        expect(error).toBeLessThanOrEqual(ROUNDING * forceScale(points, at));
      }),
      LAW,
    );
  });

  test('its energy is the potential of the spin field, up to its value at flat pitch', () => {
    fc.assert(
      fc.property(cloud, conditions, pitchAngle, (points, at, pitch) => {
        const energy = featheringEnergy(harmonicsOf(cloudMoments(points), at), radians(pitch));
        const rise = spinPotential(points, at, pitch) - spinPotential(points, at, 0);
        expect(Math.abs(energy - rise)).toBeLessThanOrEqual(ROUNDING * forceScale(points, at));
      }),
      LAW,
    );
  });

  test('is minus the slope of the energy, and its slope is that of the moment', () => {
    // Central differences of step d: truncation d^2/6 x the third derivative (<= 8 bounds), rounding eps / d.
    const d = 1e-5;
    const allowed = (8 * d * d) / 6 + (8 * Number.EPSILON) / d;
    fc.assert(
      fc.property(cloud, conditions, pitchAngle, (points, at, pitch) => {
        const h = harmonicsOf(cloudMoments(points), at);
        const [low, high] = [radians(pitch - d), radians(pitch + d)];
        const drop = (featheringEnergy(h, low) - featheringEnergy(h, high)) / (2 * d);
        const bound = featheringBound(h);
        expect(Math.abs(featheringMoment(h, radians(pitch)) - drop)).toBeLessThanOrEqual(
          allowed * bound,
        );
        const slope = (featheringMoment(h, high) - featheringMoment(h, low)) / (2 * d);
        expect(Math.abs(featheringSlope(h, radians(pitch)) - slope)).toBeLessThanOrEqual(
          2 * allowed * bound,
        );
      }),
      LAW,
    );
  });

  test('energy is zero at flat pitch', () => {
    const h = harmonicsOf(cloudMoments([[0.001, 0.02, 0.03, 0.01]]), rotor(900, 0.01, 0.1));
    expect(featheringEnergy(h, radians(0))).toBe(0);
  });

  test('doubling the speed makes exactly four times the moment, and its sign makes no difference', () => {
    fc.assert(
      fc.property(cloud, conditions, pitchAngle, (points, at, pitch) => {
        const moments = cloudMoments(points);
        const moment = (angularSpeed: number) =>
          featheringMoment(harmonicsOf(moments, { ...at, angularSpeed }), radians(pitch));
        expect(moment(2 * at.angularSpeed)).toBe(4 * moment(at.angularSpeed));
        expect(moment(-at.angularSpeed)).toBe(moment(at.angularSpeed));
      }),
      LAW,
    );
  });

  test('of two bodies together is the sum of their moments', () => {
    fc.assert(
      fc.property(cloud, cloud, conditions, pitchAngle, (one, two, at, pitch) => {
        const both = createMoments();
        accumulate(both, cloudMoments(one));
        accumulate(both, cloudMoments(two));
        const moment = (moments: Moments) =>
          featheringMoment(harmonicsOf(moments, at), radians(pitch));
        const error = moment(both) - moment(cloudMoments(one)) - moment(cloudMoments(two));
        expect(Math.abs(error)).toBeLessThanOrEqual(ROUNDING * forceScale([...one, ...two], at));
      }),
      LAW,
    );
  });

  test('without offset and precone, moving the body along the feathering axis changes nothing', () => {
    fc.assert(
      fc.property(cloud, real(-1, 1), pitchAngle, (points, shift, pitch) => {
        const moved = points.map(([m, x, y, z]) => [m, x + shift, y, z] as const);
        const moment = (body: typeof moved) =>
          featheringMoment(harmonicsOf(cloudMoments(body), rotor(800)), radians(pitch));
        expect(Math.abs(moment(moved) - moment(points))).toBe(0);
      }),
      LAW,
    );
  });

  test('never exceeds its bound, which one harmonic reaches, and two whose peaks meet', () => {
    fc.assert(
      fc.property(cloud, conditions, pitchAngle, (points, at, pitch) => {
        const h = harmonicsOf(cloudMoments(points), at);
        const bound = featheringBound(h);
        expect(Math.abs(featheringMoment(h, radians(pitch)))).toBeLessThanOrEqual(
          bound * (1 + 1e-15),
        );
      }),
      LAW,
    );
    const plate = harmonicsOf(cloudMoments([[0.001, 0, 0.01, 0]]), rotor(1000));
    expect(-featheringMoment(plate, radians(Math.PI / 4))).toBe(featheringBound(plate));
    const both = Float64Array.of(0, 0.3, 0, 0.4);
    expect(featheringMoment(both, radians(0))).toBe(featheringBound(both));
  });

  // Derived: with offset a point at (y, 0) is pulled back with -W^2 m (a + y cos t) y sin t.
  test('a forward torque offset stiffens flat pitch of mass ahead of the axis and softens mass behind it', () => {
    const stiffness = (y: number, offset: number) =>
      -featheringSlope(
        harmonicsOf(cloudMoments([[0.001, 0.05, y, 0]]), rotor(1000, offset)),
        radians(0),
      );
    expect(stiffness(0.01, 0.005)).toBeCloseTo(1e6 * 0.001 * (0.01 + 0.005) * 0.01, 12);
    expect(stiffness(-0.01, 0.005)).toBeCloseTo(1e6 * 0.001 * (0.01 - 0.005) * 0.01, 12);
  });

  // Derived: tilted up, mass ahead of the axis far out is below the plane of its pull: leading edge down.
  test('precone up drives the leading edge of mass ahead of the axis down, -W^2 m x y sin b cos b', () => {
    const h = harmonicsOf(cloudMoments([[0.001, 0.05, 0.01, 0]]), rotor(1000, 0, 0.1));
    const expected = -1e6 * 0.001 * 0.05 * 0.01 * Math.sin(0.1) * Math.cos(0.1);
    expect(featheringMoment(h, radians(0)) / expected).toBeCloseTo(1, 14);
  });
});
