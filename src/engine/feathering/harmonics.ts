import { JXY, JXZ, JYY, JYZ, JZZ, type Moments, SY, SZ } from '../mass/moments';
import type { Radians } from '../units';
import type { RotorConditions } from './rotor';

/**
 * The inertial feathering moment of any rigid grip is a trigonometric polynomial of the pitch angle t:
 *
 *   M(t) = sin1 sin t + cos1 cos t + sin2 sin 2t + cos2 cos 2t                                     [N m]
 *
 * Derivation. Spin W about rotor Z puts dF = W^2 (X, Y, 0) dm on an element. With precone b the feathering axis is
 * u = (cos b, 0, sin b) through p0 = (0, a, 0); w = (-sin b, 0, cos b) completes (u, Y, w). A grip point (x, y, z)
 * at pitch t lies at p0 + x u + h Y + k w with h = y cos t - z sin t, k = y sin t + z cos t, so X = x cos b -
 * k sin b and Y = a + h. The moment about u is h F.w - k F.Y:
 *
 *   dM = -W^2 dm [ a k + cos^2 b  h k + sin b cos b  x h ]
 *
 * and, integrated over the grip with S and J about the grip origin (feathering axis at the shaft),
 *
 *   M = -W^2 { a (S_y sin t + S_z cos t) + cos^2 b [ (J_yy - J_zz)/2 sin 2t + J_yz cos 2t ]
 *              + sin b cos b (J_xy cos t - J_xz sin t) }.
 *
 * It is the expansion of M = W^2 u . [axial(C J C^T P) + (C S) x (P p0)], P = diag(1, 1, 0), and is tested against
 * that form and against an independent multibody engine.
 * Positive M raises the leading edge. Exact for rigid bodies; linear in the moments, so parts' shares add.
 */
export type Harmonics = Float64Array;

export const SIN1 = 0;
export const COS1 = 1;
export const SIN2 = 2;
export const COS2 = 3;

export function createHarmonics(): Harmonics {
  return new Float64Array(4);
}

/** The four coefficients (N m) of a body's inertial feathering moment; `moments_G` about the grip origin. */
export function featheringHarmonics(
  moments_G: Moments,
  rotor: RotorConditions,
  out: Harmonics,
): Harmonics {
  const speedSquared = rotor.angularSpeed * rotor.angularSpeed;
  const a = rotor.torqueOffset;
  const c = Math.cos(rotor.precone);
  const s = Math.sin(rotor.precone);
  out[SIN1] = -speedSquared * (a * moments_G[SY] - s * c * moments_G[JXZ]);
  out[COS1] = -speedSquared * (a * moments_G[SZ] + s * c * moments_G[JXY]);
  out[SIN2] = (-speedSquared * c * c * (moments_G[JYY] - moments_G[JZZ])) / 2;
  out[COS2] = -speedSquared * c * c * moments_G[JYZ];
  return out;
}

/** M(t), N m, positive toward raising the leading edge. */
export function featheringMoment(h: Harmonics, pitch: Radians): number {
  return momentAtTurn(h, Math.sin(pitch), Math.cos(pitch));
}

/** The same for who has sine and cosine of the pitch at hand. */
export function momentAtTurn(h: Harmonics, s: number, c: number): number {
  // sin 2t = 2 s c, cos 2t = (c - s)(c + s).
  return h[SIN1] * s + h[COS1] * c + h[SIN2] * 2 * s * c + h[COS2] * (c - s) * (c + s);
}

/** dM/dt, N m/rad: negative where the moment drives the grip back (stiffness is its negative). */
export function featheringSlope(h: Harmonics, pitch: Radians): number {
  return slopeAtTurn(h, Math.sin(pitch), Math.cos(pitch));
}

export function slopeAtTurn(h: Harmonics, s: number, c: number): number {
  return h[SIN1] * c - h[COS1] * s + 2 * h[SIN2] * (c - s) * (c + s) - 4 * h[COS2] * s * c;
}

/**
 * Potential energy V(t) with M = -dV/dt, joules, zero at t = 0. It equals -(W^2/2) int (X^2 + Y^2) dm up to a
 * constant.
 */
export function featheringEnergy(h: Harmonics, pitch: Radians): number {
  return energyAtTurn(h, Math.sin(pitch), Math.cos(pitch), Math.sin(pitch / 2));
}

/** `half`: sine of half the pitch. */
export function energyAtTurn(h: Harmonics, s: number, c: number, half: number): number {
  // cos 2t - 1 = -2 s^2; cos t - 1 = -2 sin^2(t/2) by its own half angle, which keeps the digits of a small pitch.
  return -2 * h[SIN1] * half * half - h[COS1] * s - h[SIN2] * s * s - h[COS2] * s * c;
}

/** Upper bound of |M| over all pitches, N m. */
export function featheringBound(h: Harmonics): number {
  return Math.hypot(h[SIN1], h[COS1]) + Math.hypot(h[SIN2], h[COS2]);
}
