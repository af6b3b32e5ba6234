import type { HeadForces } from '../design/forces/headForces';
import { servoGeometry, servoTorquePerForce } from '../design/forces/servo';
import { createMoments, JYY, JYZ, JZZ } from '../engine/mass/moments';
import { radiansFromDegrees } from '../engine/units';

/** What the head is to become. Angles in degrees, forces at the push rod of one grip in newtons. */
export type Goal =
  /** J_yy = J_zz and J_yz = 0: the inertial moment vanishes at every pitch and speed (without torque offset and precone). */
  | { readonly kind: 'neutral' }
  /** As little force as can be over a range of pitch: to hold it and to overcome friction, everything counted. */
  | { readonly kind: 'leastForce'; readonly fromDeg: number; readonly toDeg: number }
  /** Rests at `restDeg` and pulls back with `forceN` when it is `awayDeg` from there, either way. */
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
      return 2;
    case 'centring':
      return 3;
    default:
      return 2 * LOOKS;
  }
}

/** Whether the goal can be met to rounding (a root), or is a least value. */
export function isExact({ kind }: Goal): boolean {
  return kind === 'neutral' || kind === 'centring';
}

const totals = createMoments();

/**
 * What is left to do for the goal at the speed of `forces`, all zero where it is met; false where a number cannot be had
 * (no linkage, over centre, out of reach). `out` from `at` on:
 *
 * neutral: J_yy - J_zz and 2 J_yz, kg m^2. centring: moment at the rest pitch and the shortfall of the moment on both
 * sides of it, N m. leastForce, leastServo: at each pitch of the range the force or torque that the moment makes and the
 * one that friction adds, N or N m; without a linkage the moments themselves.
 */
export function fillResiduals(
  goal: Goal,
  forces: HeadForces,
  out: Float64Array,
  at: number,
): boolean {
  switch (goal.kind) {
    case 'neutral': {
      forces.model.totals(totals);
      out[at] = totals[JYY] - totals[JZZ];
      out[at + 1] = 2 * totals[JYZ];
      return true;
    }
    case 'centring': {
      const { restDeg, awayDeg, forceN } = goal;
      out[at] = forces.moment(radiansFromDegrees(restDeg));
      for (const [k, side] of [1, -1].entries()) {
        const pitch = radiansFromDegrees(restDeg + side * awayDeg);
        const lever = leverAt(forces, restDeg + side * awayDeg);
        if (Number.isNaN(lever)) return false;
        out[at + 1 + k] = forces.moment(pitch) + side * forceN * lever;
      }
      return true;
    }
    default:
      return fillRange(goal, forces, out, at);
  }
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
