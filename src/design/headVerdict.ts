import type { Equilibria } from '../engine/feathering/equilibria';
import { COS1, SIN1 } from '../engine/feathering/harmonics';
import { createMoments, type Moments } from '../engine/mass/moments';
import { degreesFromRadians, type Radians, radiansFromDegrees } from '../engine/units';
import { isKeepOut } from '../parts/contract';
import { partType } from '../parts/registry';
import type { HeadForces } from './forces/headForces';
import { ROTOR_SECTION } from './sections/rotor';
import { judgeHead, type Verdict } from './verdict';

/** What has been found of a head already, in [from, to]. */
export interface FoundHead {
  readonly totals?: Moments;
  readonly equilibria: Equilibria;
  readonly from: Radians;
  readonly to: Radians;
}

/** The verdict on a head from its forces. */
export function headVerdict(forces: HeadForces, found: FoundHead): Verdict {
  const { model, linkage } = forces;
  const { from, to, equilibria } = found;
  const travel = forces.travel(from, to);
  const { rotor } = model.sections;
  const ball = linkage?.linkage.ball_G;
  const parts = model.parts.filter(({ part }) => !isKeepOut(partType(part.kind)));
  return judgeHead({
    partCount: parts.length,
    hiddenCount: parts.reduce((sum, { part }) => sum + (part.hidden ? 1 : 0), 0),
    spins: model.rotor.angularSpeed !== 0,
    hasArm: linkage !== null,
    noLever: ball !== undefined && ball[1] === 0 && ball[2] === 0,
    totals: found.totals ?? model.totals(createMoments()),
    angularSpeed: model.rotor.angularSpeed,
    equilibria,
    overCentreDeg: travel?.overCentre.map(degreesFromRadians) ?? [],
    ends: travel?.ends ?? null,
    usedPitchDeg: rotor.usedPitchDeg ?? ROTOR_SECTION.usedPitchDeg.default,
    offAxisMoment: Math.hypot(model.harmonics[SIN1], model.harmonics[COS1]),
    frictionKnown: forces.friction?.known === true,
    frictionAt: (pitchDeg) => forces.frictionAt(radiansFromDegrees(pitchDeg)),
    momentAt: (pitchDeg) => forces.moment(radiansFromDegrees(pitchDeg)),
    forceOf: (moment, pitchDeg) => forces.forceOf(moment, radiansFromDegrees(pitchDeg)),
  });
}
