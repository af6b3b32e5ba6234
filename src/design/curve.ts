import { featheringHarmonics, type Harmonics } from '../engine/feathering/harmonics';
import type { RotorConditions } from '../engine/feathering/rotor';
import { JXX, JYY, JZZ, M, type Moments } from '../engine/mass/moments';
import { radians } from '../engine/units';
import type { HeadForces } from './forces/headForces';
import { servoGeometry, servoTorquePerForce } from './forces/servo';
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
 * there is no such number: without an arm, over centre, out of the rod's reach. `pitches` in radians.
 */
export function fillCurve(forces: HeadForces, pitches: Float64Array, out: CurveColumns): void {
  const { rotor, control } = forces.model.sections;
  const { bladeCount } = rotor;
  const geometry = servoGeometry(control);
  for (let i = 0; i < pitches.length; i++) {
    const pitch = radians(pitches[i]);
    const moment = forces.moment(pitch);
    out.moment[i] = moment;
    out.energy[i] = forces.energy(pitch);
    const link = forces.linkAt(pitch);
    const perMoment = link === null ? Number.NaN : forces.forcePerMoment(link);
    out.forcePerMoment[i] = perMoment;
    out.force[i] = moment * perMoment;
    const slider = link === null ? Number.NaN : bladeCount * link.axis[2] * perMoment;
    out.sliderPerMoment[i] = slider;
    out.servoPerMoment[i] =
      slider * servoTorquePerForce(geometry, link === null ? Number.NaN : forces.travelOf(link));
    out.friction[i] = forces.frictionOf(pitch, link);
  }
}

/** A part's share of the head's moment as coefficients, N m; all zero for a hidden part, a rod and a keep-out. */
export function partHarmonics(part: PlacedPart, rotor: RotorConditions, out: Harmonics): Harmonics {
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
