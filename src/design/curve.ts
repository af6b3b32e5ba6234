import { type Equilibria, inertialEquilibria } from '../engine/feathering/equilibria';
import {
  featheringHarmonics,
  featheringMoment,
  type Harmonics,
} from '../engine/feathering/harmonics';
import type { RotorConditions } from '../engine/feathering/rotor';
import { pushRodForce } from '../engine/linkage/parallelRod';
import { createMoments, JXX, JYY, JZZ, M, type Moments } from '../engine/mass/moments';
import { type Radians, radians } from '../engine/units';
import type { HeadModel } from './headModel';
import type { PlacedPart } from './headNode';

/**
 * Moment (N m, positive toward raising the leading edge, rods included) and push-rod force (N, tension positive)
 * at each pitch in `pitches` (radians), written into the arrays given. NaN where there is
 * no force: without an arm, and where the arm is over centre. Allocates nothing per point.
 */
export function fillCurve(
  model: HeadModel,
  pitches: Float64Array,
  outMoment: Float64Array,
  outForce: Float64Array,
): void {
  const { harmonics, rod } = model;
  const { precone } = model.rotor;
  for (let i = 0; i < pitches.length; i++) {
    const pitch = radians(pitches[i]);
    const moment = featheringMoment(harmonics, pitch);
    outMoment[i] = moment;
    outForce[i] = (rod && pushRodForce(moment, rod, pitch, precone)) ?? Number.NaN;
  }
}

/** A part's share of the head's moment as coefficients, N m; all zero for a hidden part. Shares add up to the total. */
export function partHarmonics(part: PlacedPart, rotor: RotorConditions, out: Harmonics): Harmonics {
  if (part.part.hidden) return out.fill(0);
  return featheringHarmonics(part.moments_G, rotor, out);
}

/** Rest and flee angles of the head in [from, to], or that it is neutral at every pitch. */
export function headEquilibria(model: HeadModel, from: Radians, to: Radians): Equilibria {
  const scale = momentScale(model.totals(createMoments()), model.rotor);
  return inertialEquilibria(model.harmonics, from, to, scale);
}

/**
 * The greatest moment that mass of this spread could make if all of it pulled the same way, N m: the Cauchy-Schwarz
 * bound of every term of the moment. Rounding is judged against it; a head that makes 1e-12 of it is neutral.
 */
export function momentScale(moments_G: Moments, rotor: RotorConditions): number {
  const across = moments_G[JYY] + moments_G[JZZ];
  const c = Math.cos(rotor.precone);
  const s = Math.abs(Math.sin(rotor.precone));
  const offset = Math.abs(rotor.torqueOffset) * Math.sqrt(Math.max(0, moments_G[M] * across));
  const tilt = s * c * Math.sqrt(Math.max(0, moments_G[JXX] * across));
  return rotor.angularSpeed * rotor.angularSpeed * ((c * c * across) / 2 + offset + tilt);
}
