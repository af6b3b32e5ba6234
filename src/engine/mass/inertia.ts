import { type EigenSystem, eigenSymmetric, type Symmetric3 } from '../math/eigenSymmetric';
import type { Vec3 } from '../math/vector';
import { JXX, JXY, JXZ, JYY, JYZ, JZZ, M, type Moments, SX, SY, SZ } from './moments';

/** Centre of mass from the moments' origin, metres; null when there is no mass. */
export function centreOfMass(moments: Moments): Vec3 | null {
  const m = moments[M];
  if (!(m > 0)) return null;
  return [moments[SX] / m, moments[SY] / m, moments[SZ] / m];
}

/** J about the centre of mass, same axes (Steiner's theorem): J - S S^T / m. Null when there is no mass. */
export function centralSecondMoment(moments: Moments): Symmetric3 | null {
  const m = moments[M];
  if (!(m > 0)) return null;
  const sx = moments[SX];
  const sy = moments[SY];
  const sz = moments[SZ];
  return {
    xx: moments[JXX] - (sx * sx) / m,
    yy: moments[JYY] - (sy * sy) / m,
    zz: moments[JZZ] - (sz * sz) / m,
    xy: moments[JXY] - (sx * sy) / m,
    xz: moments[JXZ] - (sx * sz) / m,
    yz: moments[JYZ] - (sy * sz) / m,
  };
}

/** Inertia tensor tr(J) 1 - J, kg m^2; off-diagonals are the negative products of inertia. */
export function inertiaTensor(J: Symmetric3): Symmetric3 {
  return {
    xx: J.yy + J.zz,
    yy: J.xx + J.zz,
    zz: J.xx + J.yy,
    xy: -J.xy,
    xz: -J.xz,
    yz: -J.yz,
  };
}

/**
 * Principal moments of inertia about the centre of mass (ascending) with their axes. The axes are those of J; the
 * moments are those of tr(J) 1 - J. Null when there is no mass. Steiner's subtraction leaves rounding of the size of J
 * about the moments' origin: principal moments that small are zero (a point, a rod), and values nearer than that
 * count as repeated.
 */
export function principalInertia(moments: Moments): EigenSystem | null {
  const J = centralSecondMoment(moments);
  if (J === null) return null;
  const rounding = 16 * Number.EPSILON * (moments[JXX] + moments[JYY] + moments[JZZ]);
  const system = eigenSymmetric(inertiaTensor(J), rounding);
  const [a, b, c] = system.values;
  const settled = (value: number) => (Math.abs(value) <= rounding ? 0 : value);
  return { ...system, values: [settled(a), settled(b), settled(c)] };
}

/**
 * The spread ellipse: J about the feathering axis in the y-z plane. `long` and `short` are the root-mean-square
 * distances sqrt(J / m) along its two axes (m); `angle` turns +y to the long axis (rad, in (-pi/2, pi/2]).
 * Round (`long` = `short`) is neutral; the long axis seeks the rotor plane. The angle of a round ellipse is 0.
 * `short` is the root of a difference: where it ought to vanish it is good to 1e-8 of `long`.
 */
export interface SpreadEllipse {
  readonly long: number;
  readonly short: number;
  readonly angle: number;
}

export function spreadEllipse(moments: Moments): SpreadEllipse | null {
  const m = moments[M];
  if (!(m > 0)) return null;
  const mean = (moments[JYY] + moments[JZZ]) / 2;
  const half = (moments[JYY] - moments[JZZ]) / 2;
  const radius = Math.hypot(half, moments[JYZ]);
  const round = radius <= 1e-12 * mean;
  return {
    long: Math.sqrt((mean + radius) / m),
    short: Math.sqrt(Math.max(0, mean - radius) / m),
    // Adding zero turns -0 into 0, whose angle is +pi/2 and not -pi/2.
    angle: round ? 0 : Math.atan2(moments[JYZ] + 0, half) / 2,
  };
}
