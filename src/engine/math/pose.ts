import type { Radians } from '../units';
import {
  add,
  apply,
  IDENTITY,
  type Mat3,
  multiply,
  scale,
  transpose,
  type Vec3,
  ZERO,
} from './vector';

/**
 * Where frame B sits in frame A: `p_A = rotation * p_B + translation`. `rotation` is R_AB (its columns are
 * B's axes written in A), `translation` is the position of B's origin from A's origin, written in A, in metres.
 */
export interface Pose {
  readonly rotation: Mat3;
  readonly translation: Vec3;
}

export const POSE_IDENTITY: Pose = { rotation: IDENTITY, translation: ZERO };

/** X_AC = X_AB X_BC. */
export function compose(X_AB: Pose, X_BC: Pose): Pose {
  return {
    rotation: multiply(X_AB.rotation, X_BC.rotation),
    translation: transformPoint(X_AB, X_BC.translation),
  };
}

/** X_BA of X_AB. */
export function inverse(X_AB: Pose): Pose {
  const R_BA = transpose(X_AB.rotation);
  return { rotation: R_BA, translation: scale(apply(R_BA, X_AB.translation), -1) };
}

/** The point `p` of frame B, seen in frame A. */
export function transformPoint(X_AB: Pose, p_B: Vec3): Vec3 {
  return add(apply(X_AB.rotation, p_B), X_AB.translation);
}

export function translation(x: number, y: number, z: number): Pose {
  return { rotation: IDENTITY, translation: [x, y, z] };
}

/** Cosine and sine, exact at multiples of a quarter turn so that 90 degrees leaves no 6e-17 behind. */
function cosineSine(angle: Radians): readonly [number, number] {
  const quarters = (angle * 2) / Math.PI;
  const nearest = Math.round(quarters);
  if (Math.abs(quarters - nearest) < 1e-15 * Math.max(1, Math.abs(quarters))) {
    const turn = ((nearest % 4) + 4) % 4;
    return [turn === 0 ? 1 : turn === 2 ? -1 : 0, turn === 1 ? 1 : turn === 3 ? -1 : 0];
  }
  return [Math.cos(angle), Math.sin(angle)];
}

export function rotationAboutX(angle: Radians): Mat3 {
  const [c, s] = cosineSine(angle);
  return [1, 0, 0, 0, c, -s, 0, s, c];
}
export function rotationAboutY(angle: Radians): Mat3 {
  const [c, s] = cosineSine(angle);
  return [c, 0, s, 0, 1, 0, -s, 0, c];
}
export function rotationAboutZ(angle: Radians): Mat3 {
  const [c, s] = cosineSine(angle);
  return [c, -s, 0, s, c, 0, 0, 0, 1];
}

/**
 * Turned about the parent's fixed x, then fixed y, then fixed z: R = Rz Ry Rx. This is the order of
 * `rotationDeg` in a design file.
 */
export function rotationFixedXyz(x: Radians, y: Radians, z: Radians): Mat3 {
  return multiply(rotationAboutZ(z), multiply(rotationAboutY(y), rotationAboutX(x)));
}
