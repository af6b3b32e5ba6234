import type { RotorConditions } from '../../engine/feathering/rotor';
import {
  compose,
  type Pose,
  rotationAboutX,
  rotationAboutY,
  transformPoint,
} from '../../engine/math/pose';
import { multiply } from '../../engine/math/vector';
import { radians, radiansFromDegrees } from '../../engine/units';
import type { PartReading } from '../../state/reading';

/**
 * Where the grip frame stands in the rotor frame at a pitch: X_RG. The feathering axis is u = (cos b, 0, sin b)
 * through p0 = (0, a, 0) (precone b, torque offset a); positive pitch turns the leading edge (+y) toward +Z.
 * Metres. The stage's world is the rotor frame in millimetres: see `drawing/units`.
 */
export function gripPose(rotor: RotorConditions, pitchDeg: number): Pose {
  const tilt = rotationAboutY(radians(-rotor.precone));
  return {
    rotation: multiply(tilt, rotationAboutX(radiansFromDegrees(pitchDeg))),
    translation: [0, rotor.torqueOffset, 0],
  };
}

/**
 * Where a part stands in the rotor frame: X_RP. A rod hangs on its ball and stays parallel to the shaft, so only its
 * origin follows the grip; its own axes are turned as at flat pitch without precone.
 */
export function partPose(part: Pick<PartReading, 'pose_G' | 'carriedBy'>, X_RG: Pose): Pose {
  if (part.carriedBy === 'grip') return compose(X_RG, part.pose_G);
  return {
    rotation: part.pose_G.rotation,
    translation: transformPoint(X_RG, part.pose_G.translation),
  };
}
