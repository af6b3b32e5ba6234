import type { RotorConditions } from '../../engine/feathering/rotor';
import { JYY, JYZ, JZZ, M, type Moments, SX, SY, SZ } from '../../engine/mass/moments';
import { type Pose, transformPoint } from '../../engine/math/pose';
import { add, cross, dot, scale, subtract, type Vec3 } from '../../engine/math/vector';

/**
 * The centrifugal pull on a part, split into the share that turns the grip and the share that does not.
 *
 * A part is drawn as two halves of its mass at c +- d e: c its centre of mass, e the direction in the grip's y-z
 * plane in which its mass is spread widest, m d^2 the difference of its two principal second moments there. Two such
 * lumps have the part's mass, its centre, and exactly its J_yy - J_zz and J_yz, hence exactly its feathering moment
 * (with precone the share of J_xy and J_xz of the spread is left out: about the sine of the precone). A part that is
 * nearly round about its own centre is one lump: a single arrow.
 */
export interface Pull {
  /** Where the lump is, rotor frame, metres. */
  readonly at: Vec3;
  /** W^2 m (X, Y, 0): away from the shaft, in the plane of rotation, newtons. */
  readonly force: Vec3;
  /** Its component along the lump's way round the feathering axis: only this has a moment about it. */
  readonly turning: Vec3;
  /** The rest: along the axis and through it, borne by the bearings. */
  readonly still: Vec3;
}

/** Half-distances below this are one lump, metres. */
const ONE_LUMP = 0.001;

/** The lumps of a part. `moments_G` about the grip origin in the grip frame, `X_RG` from `gripPose`. */
export function partPulls(moments_G: Moments, rotor: RotorConditions, X_RG: Pose): readonly Pull[] {
  const m = moments_G[M];
  if (!(m > 0)) return [];
  const centre: Vec3 = [moments_G[SX] / m, moments_G[SY] / m, moments_G[SZ] / m];
  const yy = moments_G[JYY] - m * centre[1] * centre[1];
  const zz = moments_G[JZZ] - m * centre[2] * centre[2];
  const yz = moments_G[JYZ] - m * centre[1] * centre[2];
  const difference = 2 * Math.hypot((yy - zz) / 2, yz);
  const half = Math.sqrt(difference / m);
  if (half < ONE_LUMP) return [lumpPull(m, centre, rotor, X_RG)];
  const angle = Math.atan2(yz, (yy - zz) / 2) / 2;
  const reach: Vec3 = [0, half * Math.cos(angle), half * Math.sin(angle)];
  return [
    lumpPull(m / 2, add(centre, reach), rotor, X_RG),
    lumpPull(m / 2, subtract(centre, reach), rotor, X_RG),
  ];
}

function lumpPull(mass: number, p_G: Vec3, rotor: RotorConditions, X_RG: Pose): Pull {
  const at = transformPoint(X_RG, p_G);
  const factor = rotor.angularSpeed * rotor.angularSpeed * mass;
  const force: Vec3 = [factor * at[0], factor * at[1], 0];
  const axis = axisDirection(X_RG);
  const onAxis = transformPoint(X_RG, [p_G[0], 0, 0]);
  const lever = subtract(at, onAxis);
  const square = dot(lever, lever);
  // Way round the axis, times the lever's length; the moment is its product with the force.
  const round = cross(axis, lever);
  const turning: Vec3 = square > 0 ? scale(round, dot(force, round) / square) : [0, 0, 0];
  return { at, force, turning, still: subtract(force, turning) };
}

/** u, the feathering axis outboard, in the rotor frame. */
export function axisDirection(X_RG: Pose): Vec3 {
  return [X_RG.rotation[0], X_RG.rotation[3], X_RG.rotation[6]];
}

/** Moment of one pull about the feathering axis, N m: for tests and read-outs. */
export function pullMoment(pull: Pull, X_RG: Pose): number {
  const lever = subtract(pull.at, X_RG.translation);
  return dot(axisDirection(X_RG), cross(lever, pull.turning));
}

/**
 * The largest turning share that a part's lumps can have at any pitch, newtons: W^2 m r / 2 at 45 degrees. The scale
 * of the arrows is set by it, so that they do not change their scale while pitch is dragged.
 */
export function turningBound(moments_G: Moments, rotor: RotorConditions): number {
  const m = moments_G[M];
  if (!(m > 0)) return 0;
  const spread = Math.sqrt(Math.max(0, (moments_G[JYY] + moments_G[JZZ]) / m));
  return (rotor.angularSpeed * rotor.angularSpeed * m * spread) / 4;
}
