import { gripPose as gripPoseAt } from '../../engine/feathering/gripPose';
import type { RotorConditions } from '../../engine/feathering/rotor';
import { rodRotation } from '../../engine/linkage/rodPose';
import { compose, type Pose, transformPoint } from '../../engine/math/pose';
import type { Vec3 } from '../../engine/math/vector';
import { radiansFromDegrees } from '../../engine/units';
import type { PartReading } from '../../state/reading';

/** Where the grip frame stands in the rotor frame at a pitch: X_RG. Metres; the stage's world is the rotor frame in mm. */
export function gripPose(rotor: RotorConditions, pitchDeg: number): Pose {
  return gripPoseAt(rotor, radiansFromDegrees(pitchDeg));
}

/**
 * Where a part stands in the rotor frame: X_RP. A rod hangs on its ball, which follows the grip, and points along
 * `rodAxis` to the slider's; out of reach (null) it is turned as at flat pitch without precone. A keep-out stays.
 */
export function partPose(
  part: Pick<PartReading, 'pose_G' | 'carriedBy'>,
  X_RG: Pose,
  rodAxis: Vec3 | null,
): Pose {
  if (part.carriedBy === 'grip') return compose(X_RG, part.pose_G);
  if (part.carriedBy !== 'rod') return part.pose_G;
  const { rotation, translation } = part.pose_G;
  return {
    rotation: rodAxis ? rodRotation(rotation, rodAxis) : rotation,
    translation: transformPoint(X_RG, translation),
  };
}
