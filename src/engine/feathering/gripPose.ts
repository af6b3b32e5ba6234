import { type Pose, rotationAboutX, rotationAboutY } from '../math/pose';
import { multiply } from '../math/vector';
import { type Radians, radians } from '../units';
import type { RotorConditions } from './rotor';

/**
 * Where the grip frame stands in the rotor frame at a pitch: X_RG. The feathering axis is u = (cos b, 0, sin b)
 * through p0 = (0, a, 0) (precone b, torque offset a); positive pitch turns the leading edge (+y) toward +Z.
 */
export function gripPose(rotor: RotorConditions, pitch: Radians): Pose {
  const tilt = rotationAboutY(radians(-rotor.precone));
  return {
    rotation: multiply(tilt, rotationAboutX(pitch)),
    translation: [0, rotor.torqueOffset, 0],
  };
}
