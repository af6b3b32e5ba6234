import { POSE_IDENTITY, type Pose, transformPoint } from '../../engine/math/pose';
import { apply, scale, type Vec3 } from '../../engine/math/vector';
import { MM } from '../drawing/place';
import type { Line } from './dragMaths';
import type { HandleSpec, Motion } from './handleSpec';

/** Where a handle stands in the world, mm. */
export interface HandlePlace {
  readonly line: Line;
  readonly foot: Vec3;
  /** Unit vector along its motion. */
  readonly way: Vec3;
}

/**
 * A handle's motion taken from its own frame to the world. `X_RF` places that frame in the rotor frame (metres).
 */
export function poseHandle(motion: Motion, X_RF: Pose): HandlePlace {
  const foot = scale(transformPoint(X_RF, motion.position), MM);
  if (motion.kind === 'linear') {
    const way = apply(X_RF.rotation, motion.direction);
    return { line: { origin: foot, direction: way }, foot, way };
  }
  const centre = scale(transformPoint(X_RF, motion.centre), MM);
  const axis = apply(X_RF.rotation, motion.axis);
  const [x, y, z] = foot.map((value, i) => value - centre[i]);
  const round: Vec3 = [
    axis[1] * z - axis[2] * y,
    axis[2] * x - axis[0] * z,
    axis[0] * y - axis[1] * x,
  ];
  const size = Math.hypot(...round);
  const way: Vec3 = size > 0 ? scale(round, 1 / size) : [0, 0, 1];
  return { line: { origin: centre, direction: axis }, foot, way };
}

/** The frame in which a spec's motion is given. */
export function handleFrame(spec: HandleSpec, X_RP: Pose | null, X_RG: Pose, X_RG0: Pose): Pose {
  if (spec.frame === 'axis') return X_RG0;
  if (spec.frame === 'grip') return X_RG;
  if (spec.frame === 'rotor') return POSE_IDENTITY;
  return X_RP ?? X_RG;
}

/** Shifts a part-frame motion sideways by `by` (part frame, metres). */
export function shiftMotion(motion: Motion, by: Vec3): Motion {
  const [x, y, z] = motion.position;
  return { ...motion, position: [x + by[0], y + by[1], z + by[2]] };
}
