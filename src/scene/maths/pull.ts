import { axisDirection, type LumpPull, lumpPull } from '../../engine/feathering/lumps';
import type { RotorConditions } from '../../engine/feathering/rotor';
import { JYY, JYZ, JZZ, M, type Moments, SX, SY, SZ } from '../../engine/mass/moments';
import type { Pose } from '../../engine/math/pose';
import { add, cross, dot, subtract, type Vec3 } from '../../engine/math/vector';

/** Half-distances below this are one lump, metres. */
const ONE_LUMP = 0.001;

/**
 * The centrifugal pull on a part, split into the share that turns the grip and the share that does not.
 *
 * A part is drawn as two halves of its mass at c +- d e: c its centre of mass, e the direction in the grip's y-z
 * plane in which its mass is spread widest, m d^2 the difference of its two principal second moments there. Two such
 * lumps have the part's mass, its centre, and exactly its J_yy - J_zz and J_yz, hence exactly its feathering moment
 * (with precone the share of J_xy and J_xz of the spread is left out: about the sine of the precone). A part that is
 * nearly round about its own centre is one lump: a single arrow.
 * `moments_G` about the grip origin in the grip frame, `X_RG` from `gripPose`.
 */
export function partPulls(
  moments_G: Moments,
  rotor: RotorConditions,
  X_RG: Pose,
): readonly LumpPull[] {
  const m = moments_G[M];
  if (!(m > 0)) return [];
  const centre: Vec3 = [moments_G[SX] / m, moments_G[SY] / m, moments_G[SZ] / m];
  const yy = moments_G[JYY] - m * centre[1] * centre[1];
  const zz = moments_G[JZZ] - m * centre[2] * centre[2];
  const yz = moments_G[JYZ] - m * centre[1] * centre[2];
  const difference = 2 * Math.hypot((yy - zz) / 2, yz);
  const half = Math.sqrt(difference / m);
  if (half < ONE_LUMP) return [lumpPull({ mass: m, p_G: centre }, rotor, X_RG)];
  const angle = Math.atan2(yz, (yy - zz) / 2) / 2;
  const reach: Vec3 = [0, half * Math.cos(angle), half * Math.sin(angle)];
  return [
    lumpPull({ mass: m / 2, p_G: add(centre, reach) }, rotor, X_RG),
    lumpPull({ mass: m / 2, p_G: subtract(centre, reach) }, rotor, X_RG),
  ];
}

/** Moment of one pull about the feathering axis, N m: for tests and read-outs. */
export function pullMoment(pull: LumpPull, X_RG: Pose): number {
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
