import type { Design } from '../design/design';
import type { HeadForces } from '../design/forces/headForces';
import { servoGeometry, servoTorquePerForce } from '../design/forces/servo';
import {
  COS1,
  COS2,
  createHarmonics,
  featheringHarmonics,
  featheringMoment,
  SIN1,
  SIN2,
} from '../engine/feathering/harmonics';
import { createMoments } from '../engine/mass/moments';
import { radiansFromDegrees } from '../engine/units';

/** What the head is to become. Angles in degrees, forces at the push rod of one grip in newtons. */
export type Goal =
  /** The moment of the mass vanishes at every pitch and speed, as far as it can: J_yy = J_zz and J_yz = 0. */
  | { readonly kind: 'neutral' }
  /** As little force as can be over a range of pitch: to hold it and to overcome friction, everything counted. */
  | { readonly kind: 'leastForce'; readonly fromDeg: number; readonly toDeg: number }
  /**
   * Without its push rod it rests at `restDeg` and pulls back with `forceN` (the mean of both sides) over what bearing
   * friction takes, when it is `awayDeg` from there either way; at the lowest speed asked for.
   */
  | {
      readonly kind: 'centring';
      readonly restDeg: number;
      readonly awayDeg: number;
      readonly forceN: number;
    }
  /** As little servo torque as can be over a range of pitch. */
  | { readonly kind: 'leastServo'; readonly fromDeg: number; readonly toDeg: number };

export type GoalKind = Goal['kind'];

/** Pitches at which a range is looked at. */
const LOOKS = 21;

/** How many numbers `fillResiduals` writes for one speed. */
export function residualCount(goal: Goal): number {
  switch (goal.kind) {
    case 'neutral':
      return 4;
    case 'centring':
      return 3;
    default:
      return 2 * LOOKS;
  }
}

/** Torque offset or precone: the moment of the mass then has parts that J_yy, J_zz and J_yz know nothing of. */
export function isSkewed({ rotor }: Pick<Design, 'rotor'>): boolean {
  return rotor.torqueOffsetMm !== 0 || rotor.preconeDeg !== 0;
}

/** Whether one number brings the goal's leading residual to zero (a root); else it is a least value. */
export function isExact({ kind }: Goal, design: Pick<Design, 'rotor'>): boolean {
  return kind === 'centring' || (kind === 'neutral' && !isSkewed(design));
}

const totals = createMoments();
const harmonics = createHarmonics();

/**
 * What is left to do for the goal at the speed of `forces`, all zero where it is met; false where a number cannot be had
 * (no linkage, over centre, out of reach). `out` from `at` on:
 *
 * neutral: twice the four coefficients of the moment of the mass over the square of the speed, kg m^2 (see
 * `featheringHarmonics`): of sin 2t (J_yy - J_zz), cos 2t (2 J_yz), sin t and cos t, the last two zero without torque offset
 * and precone. centring: the push-rod force at the rest pitch and the shortfall of the pull on both sides of it, N, without
 * the rod's own mass, bearing friction taken off. leastForce, leastServo: at each pitch of the range the force or torque
 * that the moment makes and the one that friction adds, N or N m; without a linkage the moments themselves.
 */
export function fillResiduals(
  goal: Goal,
  forces: HeadForces,
  out: Float64Array,
  at: number,
): boolean {
  switch (goal.kind) {
    case 'neutral': {
      const { torqueOffset, precone } = forces.model.rotor;
      const still = { angularSpeed: 1, torqueOffset, precone };
      featheringHarmonics(forces.model.totals(totals), still, harmonics);
      out[at] = -2 * harmonics[SIN2];
      out[at + 1] = -2 * harmonics[COS2];
      out[at + 2] = -2 * harmonics[SIN1];
      out[at + 3] = -2 * harmonics[COS1];
      return true;
    }
    case 'centring': {
      const { restDeg, awayDeg, forceN } = goal;
      for (const [k, side] of [0, 1, -1].entries()) {
        const deg = restDeg + side * awayDeg;
        const pull =
          (looseMoment(forces, deg) + side * bearingFriction(forces, deg)) / leverAt(forces, deg);
        if (!Number.isFinite(pull)) return false;
        out[at + k] = pull + side * forceN;
      }
      return true;
    }
    default:
      return fillRange(goal, forces, out, at);
  }
}

/** The moment of the grip with its push rod broken: without the rod's own mass, N m. */
function looseMoment(forces: HeadForces, pitchDeg: number): number {
  const pitch = radiansFromDegrees(pitchDeg);
  let moment = featheringMoment(forces.model.harmonics, pitch);
  for (const term of forces.terms) if (term.id !== 'rod') moment += term.moment(pitch);
  return moment;
}

/** Friction without the linkage's drag at rest, N m. */
function bearingFriction(forces: HeadForces, pitchDeg: number): number {
  return forces.frictionOf(radiansFromDegrees(pitchDeg), null);
}

/** Moment for one newton at the push rod, m; one N m counts as one newton without a linkage. NaN where there is none. */
function leverAt(forces: HeadForces, pitchDeg: number): number {
  const link = forces.linkAt(radiansFromDegrees(pitchDeg));
  return link === null ? 1 : Math.abs(1 / forces.forcePerMoment(link));
}

function fillRange(
  goal: Extract<Goal, { readonly fromDeg: number }>,
  forces: HeadForces,
  out: Float64Array,
  at: number,
): boolean {
  const { bladeCount } = forces.model.sections.rotor;
  const geometry = servoGeometry(forces.model.sections.control);
  for (let k = 0; k < LOOKS; k++) {
    const pitch = radiansFromDegrees(
      goal.fromDeg + ((goal.toDeg - goal.fromDeg) * k) / (LOOKS - 1),
    );
    const moment = forces.moment(pitch);
    const link = forces.linkAt(pitch);
    const friction = forces.frictionOf(pitch, link);
    let per = link === null ? 1 : forces.forcePerMoment(link);
    if (goal.kind === 'leastServo') {
      if (link === null) return false;
      per *= bladeCount * link.axis[2] * servoTorquePerForce(geometry, forces.travelOf(link));
    }
    if (!Number.isFinite(moment * per)) return false;
    out[at + 2 * k] = moment * per;
    out[at + 2 * k + 1] = friction * per;
  }
  return true;
}

/**
 * The one number that a single knob brings to zero, from the residuals of all speeds: for 'neutral' J_yy - J_zz; for
 * 'centring' the sum of the shortfalls on both sides (its stiffness). Only for exact goals.
 */
export function leadingResidual(goal: Goal, residuals: Float64Array): number {
  if (goal.kind === 'neutral') return residuals[0];
  return residuals[1] - residuals[2];
}
