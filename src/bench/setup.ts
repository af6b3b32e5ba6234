import type { BenchSetup, FrictionLaw } from '../engine/identify/benchDesign';
import type { BenchReading, RestDrag, Sense } from '../engine/identify/benchReading';
import { metresFromMm, type Radians, radiansFromDegrees } from '../engine/units';
import type { GaugeHead } from './gaugeHead';
import type { Travel } from './readings/types';

/** What is done with the modelled air: taken off as it is, fitted by a factor (1: as modelled), or left in the readings. */
export type AirUse = 'known' | 'fitted' | 'left';

export interface SetupChoices {
  readonly friction?: FrictionLaw;
  readonly zeros?: BenchSetup['zeros'];
  readonly air?: AirUse;
  /** Drag measured at rest at this gauge; left out: the rows of the design (`designDrag`). */
  readonly drag?: readonly RestDrag[];
  /** Errors that all readings share; left out: none. */
  readonly shared?: BenchSetup['shared'];
}

/** How a head's bench is fitted: friction beyond the drag at rest goes with the bearings' pull, zeros are free. */
export function benchSetup(head: GaugeHead, choices: SetupChoices = {}): BenchSetup {
  const { friction = 'pull', zeros = 'free', air = 'known' } = choices;
  return {
    friction,
    zeros,
    extras: air === 'fitted' && head.hasAir ? ['air'] : [],
    drag: choices.drag ?? designDrag(head),
    precone: head.forces.model.rotor.precone,
    referenceSpeed: head.designSpeed,
    shared: choices.shared ?? [],
  };
}

/** Standard uncertainty of a row of drag at rest that the design has: a tenth, what such a reading repeats to (common practice). */
const DRAG_SHARE = 0.1;

/**
 * The design's drag at rest at the gauge: at the slider as written, at the rod of one grip its share along the rod. None
 * where the design does not count friction, and for a gauge at an arm, which has no linkage on it.
 */
export function designDrag(head: GaugeHead): RestDrag[] {
  const { friction, counted, rotor } = head.forces.model.sections;
  if (head.place.kind === 'arm' || !counted?.friction) return [];
  return (friction?.drag ?? []).flatMap(({ travelMm, forceN }) => {
    const travel = metresFromMm(travelMm);
    const along = head.place.kind === 'rod' ? axialShare(head, travel) * rotor.bladeCount : 1;
    const force = forceN / along;
    return Number.isFinite(force) ? [{ travel, force, sigma: DRAG_SHARE * force || 1e-3 }] : [];
  });
}

/** |e_z| of the rod at a travel; of a travel that the rod does not reach, at flat pitch. */
function axialShare(head: GaugeHead, travel: number): number {
  const pitch = head.pitchAtTravel(travel);
  const link = head.forces.linkAt(Number.isNaN(pitch) ? radiansFromDegrees(0) : pitch);
  return Math.abs(link?.axis[2] ?? Number.NaN);
}

/**
 * The engine's sense of a movement: +1 pulling, -1 pushing. Pitch going up is a pull where a pull raises the leading edge,
 * which is where a moment that raises it reads compression (force per moment below zero). Null: nothing says.
 */
export function senseOf(travel: Travel | null, forcePerMoment: number): Sense | null {
  if (travel === null) return null;
  if (travel === 'held') return 0;
  if (travel === 'pull') return 1;
  if (travel === 'push') return -1;
  const up = forcePerMoment < 0 ? 1 : -1;
  return travel === 'up' ? up : up === 1 ? -1 : 1;
}

/** What the engine needs to know of a reading at a pitch beside the force itself. */
export function readingAt(
  head: GaugeHead,
  pitch: Radians,
  angularSpeed: number,
  air: AirUse = 'known',
): Omit<BenchReading, 'force' | 'sense' | 'zero'> {
  const known = head.knownForce(pitch, angularSpeed);
  const airForce = head.airForce(pitch, angularSpeed);
  return {
    pitch,
    angularSpeed,
    forcePerMoment: head.forcePerMoment(pitch),
    forcePerMomentSlope: head.forcePerMomentSlope(pitch),
    travel: head.travel(pitch),
    knownForce: air === 'known' ? known + airForce : known,
    ...(air === 'fitted' && head.hasAir ? { extras: [airForce] } : {}),
  };
}
