import type { Pose } from '../math/pose';

/**
 * The mass description of a body about a stated origin, in a stated frame: ten numbers in one typed array,
 * so that thousands of parts can be summed without allocating.
 *
 *   m            mass, kg
 *   S = int r dm       first moment, kg m
 *   J = int r r^T dm   second moment, kg m^2 (symmetric; NOT the inertia tensor, which is tr(J) 1 - J)
 *
 * All ten add over parts. A hole is the same numbers with the opposite sign.
 */
export type Moments = Float64Array;

/** Places of the ten numbers. */
export const M = 0;
export const SX = 1;
export const SY = 2;
export const SZ = 3;
export const JXX = 4;
export const JYY = 5;
export const JZZ = 6;
export const JXY = 7;
export const JXZ = 8;
export const JYZ = 9;
export const MOMENT_COUNT = 10;

export function createMoments(): Moments {
  return new Float64Array(MOMENT_COUNT);
}

/** out += factor * moments. */
export function accumulate(out: Moments, moments: Moments, factor = 1): void {
  for (let i = 0; i < MOMENT_COUNT; i++) out[i] += factor * moments[i];
}

/**
 * The same body seen from frame A, where `X_AB` places its own frame B in A:
 * S' = R S + m p,  J' = R J R^T + (R S) p^T + p (R S)^T + m p p^T  (substitute r' = R r + p in the integrals).
 * `out` and `moments_B` may be the same array.
 */
export function transformMoments(moments_B: Moments, X_AB: Pose, out: Moments): Moments {
  const R = X_AB.rotation;
  const px = X_AB.translation[0];
  const py = X_AB.translation[1];
  const pz = X_AB.translation[2];
  const m = moments_B[M];
  const sx = moments_B[SX];
  const sy = moments_B[SY];
  const sz = moments_B[SZ];
  const xx = moments_B[JXX];
  const yy = moments_B[JYY];
  const zz = moments_B[JZZ];
  const xy = moments_B[JXY];
  const xz = moments_B[JXZ];
  const yz = moments_B[JYZ];
  // Rows of R J, then R J R^T.
  const a0 = R[0] * xx + R[1] * xy + R[2] * xz;
  const a1 = R[0] * xy + R[1] * yy + R[2] * yz;
  const a2 = R[0] * xz + R[1] * yz + R[2] * zz;
  const b0 = R[3] * xx + R[4] * xy + R[5] * xz;
  const b1 = R[3] * xy + R[4] * yy + R[5] * yz;
  const b2 = R[3] * xz + R[4] * yz + R[5] * zz;
  const c0 = R[6] * xx + R[7] * xy + R[8] * xz;
  const c1 = R[6] * xy + R[7] * yy + R[8] * yz;
  const c2 = R[6] * xz + R[7] * yz + R[8] * zz;
  const tx = R[0] * sx + R[1] * sy + R[2] * sz;
  const ty = R[3] * sx + R[4] * sy + R[5] * sz;
  const tz = R[6] * sx + R[7] * sy + R[8] * sz;
  out[M] = m;
  out[SX] = tx + m * px;
  out[SY] = ty + m * py;
  out[SZ] = tz + m * pz;
  out[JXX] = a0 * R[0] + a1 * R[1] + a2 * R[2] + (2 * tx + m * px) * px;
  out[JYY] = b0 * R[3] + b1 * R[4] + b2 * R[5] + (2 * ty + m * py) * py;
  out[JZZ] = c0 * R[6] + c1 * R[7] + c2 * R[8] + (2 * tz + m * pz) * pz;
  out[JXY] = a0 * R[3] + a1 * R[4] + a2 * R[5] + tx * py + ty * px + m * px * py;
  out[JXZ] = a0 * R[6] + a1 * R[7] + a2 * R[8] + tx * pz + tz * px + m * px * pz;
  out[JYZ] = b0 * R[6] + b1 * R[7] + b2 * R[8] + ty * pz + tz * py + m * py * pz;
  return out;
}
