import { createHoverSolution, solveHover } from '../../engine/air/hover';
import { featheringMoment } from '../../engine/feathering/harmonics';
import { degreesFromRadians, type Radians } from '../../engine/units';
import type { Rotor } from '../design';
import { ROTOR_SECTION } from '../sections/rotor';
import { sectionValues } from '../sections/section';
import { hoverConditions } from './headAir';
import type { HeadForces } from './headForces';
import type { TermId } from './momentTerm';
import { servoGeometry, servoTorquePerForce } from './servo';

/** Everything against speed at one pitch, columns over `speedRpm`; NaN marks a gap. SI; signs as against pitch. */
export interface SpeedSweep {
  readonly pitchDeg: number;
  readonly speedRpm: Float64Array;
  readonly moment: Float64Array;
  readonly friction: Float64Array;
  /** Push rod, one grip; slider and servo, all grips. */
  readonly force: Float64Array;
  readonly slider: Float64Array;
  readonly servo: Float64Array;
  /** The grip's own inertial moment and the counted terms: they add up to `moment`. */
  readonly shares: readonly { readonly id: 'grip' | TermId; readonly moment: Float64Array }[];
  readonly designRpm: number;
  readonly highestRpm: number;
  /** The highest speed with the overspeed asked for. */
  readonly overspeedRpm: number;
}

const STEPS = 60;

/** The speeds that a rotor is meant for: the highest is never below the design's own. */
export function speedRange(rotor: Rotor) {
  const values = sectionValues(ROTOR_SECTION, rotor);
  const highestRpm = Math.max(rotor.speedRpm, values.highestSpeedRpm ?? 0);
  return {
    lowestRpm: values.lowestSpeedRpm,
    highestRpm,
    overspeedRpm: highestRpm * (1 + values.overspeedPercent / 100),
  };
}

/**
 * Moment, forces and friction at one pitch from the lowest speed to overspeed. Inertial shares go exactly with the
 * square of the speed; so does the angle-dependent share of a blade that swings, as its drag does. The air is solved
 * at each speed, since a table of the section may depend on the Reynolds number.
 */
export function speedSweep(forces: HeadForces, pitch: Radians): SpeedSweep {
  const { rotor, air } = forces.model.sections;
  const { lowestRpm, highestRpm, overspeedRpm } = speedRange(rotor);
  const top = overspeedRpm > lowestRpm ? overspeedRpm : lowestRpm + 1;
  const column = () => new Float64Array(STEPS + 1);
  const speedRpm = column().map((_, i) => lowestRpm + ((top - lowestRpm) * i) / STEPS);
  const square = speedRpm.map((rpm) => (rotor.speedRpm > 0 ? (rpm / rotor.speedRpm) ** 2 : 0));
  const scaled = (moment: number) => square.map((factor) => factor * moment);
  const shares: { id: 'grip' | TermId; moment: Float64Array }[] = [
    { id: 'grip', moment: scaled(featheringMoment(forces.model.harmonics, pitch)) },
    ...forces.terms.map((term) => ({
      id: term.id,
      moment:
        term.id === 'air' ? airAgainstSpeed(forces, speedRpm, pitch) : scaled(term.moment(pitch)),
    })),
  ];
  const moment = column();
  for (const share of shares) for (let i = 0; i <= STEPS; i++) moment[i] += share.moment[i];
  const link = forces.linkAt(pitch);
  const perMoment = link === null ? Number.NaN : forces.forcePerMoment(link);
  const axial = link === null ? Number.NaN : link.axis[2];
  const geometry = servoGeometry(forces.model.sections.control);
  const perForce = servoTorquePerForce(geometry, forces.travelAt(pitch));
  const force = moment.map((one) => one * perMoment);
  const slider = force.map((one) => rotor.bladeCount * axial * one);

  function airAgainstSpeed(head: HeadForces, speeds: Float64Array, at: Radians): Float64Array {
    const found = head.air;
    if (found.kind !== 'estimated') return column();
    const solution = createHoverSolution(found.blade.stations.length);
    return speeds.map((rpm) => {
      const conditions = hoverConditions(rotor, air ?? {}, rpm);
      return solveHover(found.blade, found.section, conditions, at, solution).featheringMoment;
    });
  }

  return {
    pitchDeg: degreesFromRadians(pitch),
    speedRpm,
    moment,
    friction: square.map((factor) => forces.frictionAt(pitch, factor)),
    force,
    slider,
    servo: slider.map((one) => one * perForce),
    shares,
    designRpm: rotor.speedRpm,
    highestRpm,
    overspeedRpm,
  };
}
