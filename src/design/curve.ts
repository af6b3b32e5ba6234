import { featheringHarmonics, type Harmonics } from '../engine/feathering/harmonics';
import type { PitchGrid } from '../engine/feathering/pitchGrid';
import type { RotorConditions } from '../engine/feathering/rotor';
import { JXX, JYY, JZZ, M, type Moments } from '../engine/mass/moments';
import type { HeadForces } from './forces/headForces';
import type { PlacedPart } from './headNode';

/** Columns over a list of pitches; NaN marks a gap. Units and signs as in `state/reading.ts`. */
export interface CurveColumns {
  readonly moment: Float64Array;
  readonly energy: Float64Array;
  readonly friction: Float64Array;
  readonly force: Float64Array;
  readonly forcePerMoment: Float64Array;
  readonly sliderPerMoment: Float64Array;
  readonly servoPerMoment: Float64Array;
}

/** Room for so many pitches. */
export function emptyColumns(count: number): CurveColumns {
  const column = () => new Float64Array(count);
  return {
    moment: column(),
    energy: column(),
    friction: column(),
    force: column(),
    forcePerMoment: column(),
    sliderPerMoment: column(),
    servoPerMoment: column(),
  };
}

/**
 * Everything against pitch: total moment of one grip (N m, positive toward raising the leading edge) with its energy
 * and friction, push-rod force (N, tension positive), and what slider and servo carry for one N m of moment. NaN where
 * there is no such number: without an arm, over centre, out of the rod's reach.
 */
export function fillCurve(forces: HeadForces, grid: PitchGrid, out: CurveColumns): void {
  const links = forces.linksOn(grid);
  out.moment.set(forces.momentsOn(grid));
  out.energy.set(forces.energiesOn(grid));
  for (const name of ['forcePerMoment', 'sliderPerMoment', 'servoPerMoment'] as const) {
    if (links) out[name].set(links[name]);
    else out[name].fill(Number.NaN);
  }
  for (let i = 0; i < out.force.length; i++) out.force[i] = out.moment[i] * out.forcePerMoment[i];
  out.friction.set(forces.frictionsOn(grid));
}

/** A part's share of the head's moment as coefficients, N m; all zero for a hidden part, a rod and a keep-out. */
export function partHarmonics(
  part: Pick<PlacedPart, 'part' | 'carriedBy' | 'moments_G'>,
  rotor: RotorConditions,
  out: Harmonics,
): Harmonics {
  if (part.part.hidden || part.carriedBy !== 'grip') return out.fill(0);
  return featheringHarmonics(part.moments_G, rotor, out);
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
