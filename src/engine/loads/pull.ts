import { gripPose } from '../feathering/gripPose';
import type { RotorConditions } from '../feathering/rotor';
import { createMoments, JXZ, type Moments, SX, SY, transformMoments } from '../mass/moments';
import type { Radians } from '../units';

/**
 * What the spin does to bodies that turn with the grip, rotor frame, SI. The pull is W^2 int (X, Y, 0) dm; it has no part
 * along the shaft.
 */
export interface SpinLoad {
  pullX: number;
  pullY: number;
  /** W^2 int X Z dm: the moment of the pull about +Y through the shaft's foot, which bends the tip down. */
  downMoment: number;
  /** Moment of the pull about +Z through (station 0 of the axis), which turns the tip forward: a W^2 int X dm. */
  offsetMoment: number;
}

export function createSpinLoad(): SpinLoad {
  return { pullX: 0, pullY: 0, downMoment: 0, offsetMoment: 0 };
}

const moments_R = createMoments();

/** The spin's load of bodies with `moments_G` about the grip origin, at a pitch. Allocates the pose only. */
export function spinLoad(
  moments_G: Moments,
  rotor: RotorConditions,
  pitch: Radians,
  out: SpinLoad,
): SpinLoad {
  const J = transformMoments(moments_G, gripPose(rotor, pitch), moments_R);
  const square = rotor.angularSpeed ** 2;
  out.pullX = square * J[SX];
  out.pullY = square * J[SY];
  out.downMoment = square * J[JXZ];
  // About p0 = (0, a): int [X Y - (Y - a) X] dm = a int X dm.
  out.offsetMoment = rotor.torqueOffset * out.pullX;
  return out;
}

/** Size of the pull, N. */
export function pullSize({ pullX, pullY }: SpinLoad): number {
  return Math.hypot(pullX, pullY);
}

/** Pull along the feathering axis, outward, N: what a thrust bearing carries. */
export function axialPull({ pullX }: SpinLoad, { precone }: RotorConditions): number {
  return pullX * Math.cos(precone);
}

/**
 * Moment of the pull about the point of the feathering axis at `station` (m from the shaft), N m, positive where it bends
 * the tip up: W^2 (Z_b int X dm - int X Z dm), Z_b the height of that point. What lies above the plane of rotation is
 * pulled back into it and bends the tip down, against thrust.
 */
export function flapMomentOfPull(
  { pullX, downMoment }: SpinLoad,
  { precone }: RotorConditions,
  station: number,
): number {
  return pullX * station * Math.sin(precone) - downMoment;
}

/** Moment of one blade's thrust about the same point, N m, tip up; `flapMoment` is int r dT about the shaft. */
export function flapMomentOfThrust(
  thrust: number,
  flapMoment: number,
  { precone }: RotorConditions,
  station: number,
): number {
  return flapMoment - thrust * station * Math.cos(precone);
}
