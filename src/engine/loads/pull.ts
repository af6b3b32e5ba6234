import { gripPose } from '../feathering/gripPose';
import type { RotorConditions } from '../feathering/rotor';
import { createMoments, type Moments, SX, SY, transformMoments } from '../mass/moments';
import type { Radians } from '../units';

const moments_R = createMoments();

/**
 * Size of the spin's pull on a body with `moments_G` about the grip origin, N: W^2 |int (X, Y) dm| at a pitch. It lies in
 * the plane of rotation and points away from the shaft.
 */
export function pullOn(moments_G: Moments, rotor: RotorConditions, pitch: Radians): number {
  const J = transformMoments(moments_G, gripPose(rotor, pitch), moments_R);
  return rotor.angularSpeed ** 2 * Math.hypot(J[SX], J[SY]);
}
