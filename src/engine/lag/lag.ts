import { gripPose } from '../feathering/gripPose';
import { createHarmonics, featheringHarmonics, featheringMoment } from '../feathering/harmonics';
import type { RotorConditions } from '../feathering/rotor';
import {
  createMoments,
  JXX,
  JXY,
  JXZ,
  JYY,
  JYZ,
  type Moments,
  SX,
  SY,
  transformMoments,
} from '../mass/moments';
import { compose, inverse, type Pose, rotationAboutZ } from '../math/pose';
import { bracketedRoot } from '../math/rootBracket';
import { ZERO } from '../math/vector';
import { type Radians, radians } from '../units';

/**
 * A body hinged in the grip: a blade, with what it carries, on its bolt. `X_GH` places the hinge frame in the grip frame,
 * its z along the hinge; `moments_H` are the body's about the hinge frame's origin as it is drawn (lag zero). Positive
 * lag is the right-hand turn about z.
 */
export interface HingedBody {
  readonly X_GH: Pose;
  readonly moments_H: Moments;
}

/** The same from the body's moments about the grip origin as it is drawn. */
export function hingedBody(moments_G: Moments, X_GH: Pose): HingedBody {
  return { X_GH, moments_H: transformMoments(moments_G, inverse(X_GH), createMoments()) };
}

const turned = createMoments();
const rate = createMoments();

/** The body's moments about the grip origin at a lag. */
export function laggedMoments(
  { X_GH, moments_H }: HingedBody,
  lag: Radians,
  out: Moments,
): Moments {
  const turn: Pose = { rotation: rotationAboutZ(lag), translation: ZERO };
  return transformMoments(moments_H, compose(X_GH, turn), out);
}

/**
 * Torque of the spin's pull about the hinge, N m, positive toward positive lag: -dV/dd with V = -(W^2/2) int (X^2 + Y^2)
 * dm. The integral is linear in the ten moments, and a turn by d about z changes them at the rate S_x' = -S_y,
 * S_y' = S_x, J_xx' = -2 J_xy, J_yy' = 2 J_xy, J_xy' = J_xx - J_yy, J_xz' = -J_yz, J_yz' = J_xz (mass and J_zz stay), so
 * the torque is half W^2 times the integral of that rate: exact, no difference of large numbers.
 */
export function lagTorque(
  body: HingedBody,
  rotor: RotorConditions,
  pitch: Radians,
  lag: Radians,
): number {
  const X_RH = compose(gripPose(rotor, pitch), body.X_GH);
  return torqueIn(body, rotor, X_RH, lag);
}

function torqueIn(body: HingedBody, rotor: RotorConditions, X_RH: Pose, lag: number): number {
  const turn: Pose = { rotation: rotationAboutZ(radians(lag)), translation: ZERO };
  transformMoments(body.moments_H, turn, turned);
  rate.fill(0);
  rate[SX] = -turned[SY];
  rate[SY] = turned[SX];
  rate[JXX] = -2 * turned[JXY];
  rate[JYY] = 2 * turned[JXY];
  rate[JXY] = turned[JXX] - turned[JYY];
  rate[JXZ] = -turned[JYZ];
  rate[JYZ] = turned[JXZ];
  transformMoments(rate, X_RH, rate);
  return (rotor.angularSpeed ** 2 / 2) * (rate[JXX] + rate[JYY]);
}

const QUARTER = Math.PI / 2;
/** Width of the steps in which a root is looked for, outward from straight. */
const STEP = Math.PI / 180;

/**
 * The stable lag angle nearest to straight, within a quarter turn either way, under the spin's pull and a further torque
 * `drive` (N m about the hinge, the air's drag); null where there is none.
 */
export function freeLag(
  body: HingedBody,
  rotor: RotorConditions,
  pitch: Radians,
  drive = 0,
): Radians | null {
  const X_RH = compose(gripPose(rotor, pitch), body.X_GH);
  const torque = (lag: number) => torqueIn(body, rotor, X_RH, lag) + drive;
  const straight = torque(0);
  if (straight === 0 && torque(STEP) < 0 && torque(-STEP) > 0) return radians(0);
  // Downhill first: the torque points to the nearest stable angle.
  for (const way of straight < 0 ? [-1, 1] : [1, -1]) {
    let near = straight;
    for (let k = 1; k * STEP <= QUARTER + 1e-9; k++) {
      const far = torque(way * k * STEP);
      if (way * near > 0 && way * far <= 0) {
        const root = bracketedRoot(torque, way * (k - 1) * STEP, way * k * STEP);
        if (root) return radians(root.root);
      }
      near = far;
    }
  }
  return null;
}

/**
 * Lag angles about the free one at which friction (N m about the hinge) holds the body, within a quarter turn; an end that
 * friction holds even there is infinite.
 */
export function lagBand(
  body: HingedBody,
  rotor: RotorConditions,
  pitch: Radians,
  free: Radians,
  drive: number,
  friction: number,
): readonly [number, number] {
  const X_RH = compose(gripPose(rotor, pitch), body.X_GH);
  const end = (way: 1 | -1) => {
    // Pulled back with more than friction.
    const slack = (lag: number) => way * (torqueIn(body, rotor, X_RH, lag) + drive) + friction;
    const root = bracketedRoot(slack, free, way * QUARTER);
    return root ? root.root : way * Infinity;
  };
  return friction > 0 ? [end(-1), end(1)] : [free, free];
}

/** What a lag changes in the inertial feathering moment, N m: the body's share there less its share as drawn. */
export function featheringChange(
  body: HingedBody,
  rotor: RotorConditions,
  pitch: Radians,
  lag: Radians,
): number {
  featheringHarmonics(laggedMoments(body, lag, turned), rotor, harmonics);
  const there = featheringMoment(harmonics, pitch);
  featheringHarmonics(laggedMoments(body, radians(0), turned), rotor, harmonics);
  return there - featheringMoment(harmonics, pitch);
}

const harmonics = createHarmonics();

/**
 * Friction torque about the bolt, N m: the pull presses the blade's bore on the shank (radius d/2), the clamp force
 * presses both faces of the root on the cheeks (mean radius of the faces). mu (F d/2 + 2 N r).
 */
export function boltFrictionTorque(options: {
  readonly coefficient: number;
  readonly pull: number;
  readonly boltDiameter: number;
  readonly clampForce: number;
  readonly faceRadius: number;
}): number {
  const { coefficient, pull, boltDiameter, clampForce, faceRadius } = options;
  return coefficient * ((pull * boltDiameter) / 2 + 2 * clampForce * faceRadius);
}
