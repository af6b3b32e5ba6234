import { axisDirection, halves, type LumpPull, lumpPull } from '../../engine/feathering/lumps';
import type { RotorConditions } from '../../engine/feathering/rotor';
import { centralSecondMoment, centreOfMass } from '../../engine/mass/inertia';
import { JYY, JZZ, M, type Moments } from '../../engine/mass/moments';
import type { Pose } from '../../engine/math/pose';
import { cross, dot, subtract } from '../../engine/math/vector';

/** Half-distances below this are one lump, metres. */
const ONE_LUMP = 0.001;

/**
 * The centrifugal pull on a part, split into the share that turns the grip and the share that does not.
 *
 * A part is drawn as the two halves of `partLumps`, hence with exactly its feathering moment (with precone the share of
 * J_xy and J_xz of the spread is left out: about the sine of the precone). A part that is nearly round about its own
 * centre is one lump: a single arrow.
 * `moments_G` about the grip origin in the grip frame, `X_RG` from `gripPose`.
 */
export function partPulls(
  moments_G: Moments,
  rotor: RotorConditions,
  X_RG: Pose,
): readonly LumpPull[] {
  const centre = centreOfMass(moments_G);
  const J = centralSecondMoment(moments_G);
  if (!centre || !J) return [];
  return halves(moments_G[M], centre, J, ONE_LUMP).map((lump) => lumpPull(lump, rotor, X_RG));
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
