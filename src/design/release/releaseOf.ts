import { createMoments, JYY, JZZ } from '../../engine/mass/moments';
import { addInertia, linkInertia } from '../../engine/release/linkInertia';
import type { ReleaseSystem } from '../../engine/release/releaseSystem';
import { fail, type Result, succeed } from '../../engine/result';
import { kilogramsFromGrams, type Radians, radians, radiansFromDegrees } from '../../engine/units';
import type { HeadForces } from '../forces/headForces';
import { type TravelEnd, type TravelEnds, travelEnds } from '../forces/travel';
import { type ReleaseChoices, wrongChoice } from './releaseChoices';

/** A head as it moves when nobody holds it. */
export interface HeadRelease {
  readonly system: ReleaseSystem;
  /**
   * What ends its pitch each way. A stop of the slider is struck. Where the arm goes over centre it jams, or swings through to
   * where control acts the wrong way round; beyond the range looked at nothing is known either: there the system has no moment,
   * and a release ends. So it does half a degree before the rod reaches no further, where rod and slider would have to move
   * without bound.
   */
  readonly ends: TravelEnds;
  /** The pitches at which a moment is known. */
  readonly known: { readonly low: Radians; readonly high: Radians };
  /** J_yy + J_zz of what turns with the grip, kg m^2, without rod and slider. */
  readonly ownInertia: number;
}

export type HeadReleaseFault =
  | { readonly kind: 'choice'; readonly field: keyof ReleaseChoices; readonly value: number }
  /** Flat pitch itself is out of the rod's reach. */
  | { readonly kind: 'noReach' };

/** Range looked at: that of the page's curves. */
const RANGE_DEG = 90;
/** Of an angle at which the moment ends, so that the angle itself still has one. */
const EDGE = 1e-12;
/** Before the end of the rod's reach, where the slider's travel per radian has no bound. */
const SHORT_OF_REACH = radiansFromDegrees(0.5);

/**
 * The head let go: the total moment, energy and friction of `HeadForces`, the inertia of what turns with the grip and of rod
 * and slider, the travel ends of the linkage. It reads `forces` as they are: of no use after a change of the design.
 *
 * Approximations: friction in motion is the friction at rest, starting factor included, so that a motion ends a little early;
 * a blade that swings on its bolt is moved with the grip as it is drawn; all grips move alike.
 */
export function releaseOf(
  forces: HeadForces,
  choices: ReleaseChoices,
): Result<HeadRelease, HeadReleaseFault> {
  const wrong = wrongChoice(choices);
  if (wrong) return fail({ kind: 'choice', field: wrong, value: choices[wrong] });
  const { model } = forces;
  const ends = endsOf(forces);
  if (!ends) return fail({ kind: 'noReach' });
  const totals = model.totals(createMoments());
  const ownInertia = totals[JYY] + totals[JZZ];
  const range = { low: knownTo(ends.low, -1), high: knownTo(ends.high, 1) };
  const known = (pitch: Radians) => pitch >= range.low && pitch <= range.high;
  const share = choices.dampingPercent / 100;
  const system: ReleaseSystem = {
    moment: (pitch) => (known(pitch) ? forces.moment(pitch) : Number.NaN),
    energy: (pitch) => (known(pitch) ? forces.energy(pitch) : Number.NaN),
    friction: (pitch) => forces.frictionAt(pitch),
    inertia: inertiaOf(forces, ownInertia, choices.sliderMassGrams),
    damping: share * 2 * ownInertia * Math.abs(model.rotor.angularSpeed),
    low: stopAt(ends.low, -1),
    high: stopAt(ends.high, 1),
    restitution: choices.restitution,
  };
  return succeed({ system, ends, known: range, ownInertia });
}

/** Without an arm, or with one whose ball lies on the axis, nothing ends the pitch. */
function endsOf(forces: HeadForces): TravelEnds | null {
  const { linkage, model } = forces;
  const ball = linkage?.linkage.ball_G;
  if (!linkage || (ball && ball[1] === 0 && ball[2] === 0)) {
    const open = (deg: number): TravelEnd => ({ deg, why: 'open' });
    return { low: open(-RANGE_DEG), high: open(RANGE_DEG) };
  }
  const [from, to] = [radiansFromDegrees(-RANGE_DEG), radiansFromDegrees(RANGE_DEG)];
  return travelEnds(linkage, model, from, to);
}

function knownTo({ deg, why }: TravelEnd, side: -1 | 1): Radians {
  const beyond = why === 'unreachable' ? -SHORT_OF_REACH : EDGE;
  return radians(radiansFromDegrees(deg) + side * beyond);
}

function stopAt({ deg, why }: TravelEnd, side: -1 | 1): Radians {
  return why === 'stop' ? radiansFromDegrees(deg) : radians(side * Number.POSITIVE_INFINITY);
}

function inertiaOf(forces: HeadForces, own: number, sliderMassGrams: number) {
  const { linkage, model } = forces;
  if (!linkage) return addInertia(own, []);
  const perGrip = kilogramsFromGrams(sliderMassGrams) / model.sections.rotor.bladeCount;
  return addInertia(own, [linkInertia(linkage.linkage, model.rotor, perGrip)]);
}
