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

/** All ten to nothing. A loop: the array's own `fill` costs more than ten stores. */
export function clearMoments(out: Moments): void {
  for (let i = 0; i < MOMENT_COUNT; i++) out[i] = 0;
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
  // R by rows, read once.
  const R = X_AB.rotation;
  const r0 = R[0];
  const r1 = R[1];
  const r2 = R[2];
  const r3 = R[3];
  const r4 = R[4];
  const r5 = R[5];
  const r6 = R[6];
  const r7 = R[7];
  const r8 = R[8];
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
  const a0 = r0 * xx + r1 * xy + r2 * xz;
  const a1 = r0 * xy + r1 * yy + r2 * yz;
  const a2 = r0 * xz + r1 * yz + r2 * zz;
  const b0 = r3 * xx + r4 * xy + r5 * xz;
  const b1 = r3 * xy + r4 * yy + r5 * yz;
  const b2 = r3 * xz + r4 * yz + r5 * zz;
  const c0 = r6 * xx + r7 * xy + r8 * xz;
  const c1 = r6 * xy + r7 * yy + r8 * yz;
  const c2 = r6 * xz + r7 * yz + r8 * zz;
  const tx = r0 * sx + r1 * sy + r2 * sz;
  const ty = r3 * sx + r4 * sy + r5 * sz;
  const tz = r6 * sx + r7 * sy + r8 * sz;
  out[M] = m;
  out[SX] = tx + m * px;
  out[SY] = ty + m * py;
  out[SZ] = tz + m * pz;
  out[JXX] = a0 * r0 + a1 * r1 + a2 * r2 + (2 * tx + m * px) * px;
  out[JYY] = b0 * r3 + b1 * r4 + b2 * r5 + (2 * ty + m * py) * py;
  out[JZZ] = c0 * r6 + c1 * r7 + c2 * r8 + (2 * tz + m * pz) * pz;
  out[JXY] = a0 * r3 + a1 * r4 + a2 * r5 + tx * py + ty * px + m * px * py;
  out[JXZ] = a0 * r6 + a1 * r7 + a2 * r8 + tx * pz + tz * px + m * px * pz;
  out[JYZ] = b0 * r6 + b1 * r7 + b2 * r8 + ty * pz + tz * py + m * py * pz;
  return out;
}
