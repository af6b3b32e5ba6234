import { compose, type Pose, rotationAboutZ, rotationFixedXyz } from '../engine/math/pose';
import { multiply, type Vec3 } from '../engine/math/vector';
import {
  degreesFromRadians,
  metresFromMm,
  mmFromMetres,
  radians,
  radiansFromDegrees,
} from '../engine/units';
import type { Socket } from '../parts/contract';
import type { FreePose, Mount } from './design';

/**
 * X_GP of a freely placed part: turned about the grip's fixed x, then y, then z, then moved. Degrees and mm in,
 * metres out.
 */
export function freePose(pose: FreePose): Pose {
  const [x, y, z] = pose.rotationDeg;
  const [px, py, pz] = pose.positionMm;
  return {
    rotation: rotationFixedXyz(radiansFromDegrees(x), radiansFromDegrees(y), radiansFromDegrees(z)),
    translation: [metresFromMm(px), metresFromMm(py), metresFromMm(pz)],
  };
}

/**
 * The free placement that puts a part where `pose` has it; the inverse of `freePose`, rounded to 1e-9 mm and degrees
 * so that the file stays readable. Where y is turned by a quarter, x and z turn about one line: z is then 0.
 */
export function freePoseOf(pose: Pose): FreePose {
  const R = pose.rotation;
  const y = Math.asin(Math.min(1, Math.max(-1, -R[6])));
  const upright = Math.hypot(R[0], R[3]) < 1e-12;
  const x = upright ? Math.atan2(-R[5], R[4]) : Math.atan2(R[7], R[8]);
  const z = upright ? 0 : Math.atan2(R[3], R[0]);
  const [px, py, pz] = pose.translation;
  const degrees = (angle: number) => tidy(degreesFromRadians(radians(angle)));
  return {
    positionMm: [tidy(mmFromMetres(px)), tidy(mmFromMetres(py)), tidy(mmFromMetres(pz))],
    rotationDeg: [degrees(x), degrees(y), degrees(z)],
  };
}

function tidy(value: number): number {
  return Math.round(value * 1e9) / 1e9 + 0;
}

/**
 * X_GP of a part on a socket of its parent Q: X_GQ, then the socket's own pose, then `offsetMm` (the socket's
 * default where the part names none) and `raise` (metres) along the socket's z, then `turnDeg` about it.
 *
 * `raise` is what the part stands on: the heights of the parts before it on a stacking socket, and of those that it
 * carries itself between it and its seat (washers under a head).
 */
export function seatPose(X_GQ: Pose, socket: Socket, mount: Mount, raise: number): Pose {
  const seat = compose(X_GQ, socket.pose);
  const R = seat.rotation;
  const along = metresFromMm(mount.offsetMm ?? socket.defaultOffsetMm) + raise;
  const turn = mount.turnDeg ?? 0;
  const [x, y, z] = seat.translation;
  const translation: Vec3 = [x + R[2] * along, y + R[5] * along, z + R[8] * along];
  return {
    rotation: turn === 0 ? R : multiply(R, rotationAboutZ(radiansFromDegrees(turn))),
    translation,
  };
}

/** Whether two poses have the same twelve numbers. */
export function samePose(a: Pose, b: Pose): boolean {
  for (let i = 0; i < 3; i++) if (a.translation[i] !== b.translation[i]) return false;
  for (let i = 0; i < 9; i++) if (a.rotation[i] !== b.rotation[i]) return false;
  return true;
}
