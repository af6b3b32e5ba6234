import { fail, type Result, succeed } from '../result';
import { type Radians, radians } from '../units';

/** A quantity that depends on the pitch, with its derivative. */
export interface PitchCurve {
  value(pitch: Radians): number;
  slope(pitch: Radians): number;
}

/**
 * What turns a grip that has been let go and what holds it. With pitch t and rate w = dt/ds the motion is
 *
 *   I(t) w' + I'(t) w^2 / 2 = M(t) + hand - c w - F(t) sign w,
 *
 * Lagrange's equation of the kinetic energy I w^2 / 2. The spin acts through M only: the Coriolis force 2 W x v of a
 * point that moves with one freedom does no work on it (v . (W x v) = 0), so no rate enters M, whatever the precone, as
 * long as the spin speed is held. NaN in any of the curves is a pitch at which nothing is known: a gap.
 */
export interface ReleaseSystem {
  /** Total feathering moment, N m, without friction and damping. */
  moment(pitch: Radians): number;
  /** Potential of it, J, M = -dV/dt. Only the check of energy reads it. */
  energy(pitch: Radians): number;
  /** Coulomb friction, N m, not negative: the same at rest and in motion. */
  friction(pitch: Radians): number;
  /** Inertia about the feathering axis, kg m^2: J_yy + J_zz, and the link's (`linkInertia`). */
  readonly inertia: PitchCurve;
  /** Viscous damping c, N m s/rad, not negative. */
  readonly damping: number;
  /** Ends of the travel; infinite where there is none. */
  readonly low: Radians;
  readonly high: Radians;
  /** Share of the rate that comes back from a stop, in [0, 1]. */
  readonly restitution: number;
}

export interface ReleaseStart {
  readonly pitch: Radians;
  /** rad/s. */
  readonly rate: number;
  /** Moment of a hand on the grip, N m; it may change between steps. */
  readonly hand?: number;
}

/** Why a grip cannot be let go as asked. */
export type ReleaseFault =
  | {
      readonly kind: 'outOfRange';
      readonly field: 'damping' | 'restitution' | 'travel' | 'rate' | 'hand' | 'pitch';
      readonly value: number;
      readonly low: number;
      readonly high: number;
    }
  /** The pitch of release lies beyond a stop. */
  | {
      readonly kind: 'outsideTravel';
      readonly pitch: Radians;
      readonly low: Radians;
      readonly high: Radians;
    }
  /** Moment, friction or inertia has no value where it is let go, or nothing turns there. */
  | {
      readonly kind: 'noValue';
      readonly field: 'moment' | 'friction' | 'inertia';
      readonly pitch: Radians;
    };

/** An inertia that does not change with pitch. */
export function constantInertia(inertia: number): PitchCurve {
  return { value: () => inertia, slope: () => 0 };
}

export function checkRelease(
  system: ReleaseSystem,
  start: ReleaseStart,
): Result<ReleaseSystem, ReleaseFault> {
  const { damping, restitution, low, high } = system;
  const { pitch, rate, hand = 0 } = start;
  const biggest = Number.MAX_VALUE;
  const ranges = [
    ['damping', damping, 0, biggest],
    ['restitution', restitution, 0, 1],
    ['travel', high - low, 0, Infinity],
    ['pitch', pitch, -biggest, biggest],
    ['rate', rate, -biggest, biggest],
    ['hand', hand, -biggest, biggest],
  ] as const;
  for (const [field, value, least, most] of ranges) {
    if (!(value >= least && value <= most)) {
      return fail({ kind: 'outOfRange', field, value, low: least, high: most });
    }
  }
  if (pitch < low || pitch > high) return fail({ kind: 'outsideTravel', pitch, low, high });
  const values = [
    ['moment', Number.isFinite(system.moment(pitch))],
    ['friction', system.friction(pitch) >= 0],
    ['inertia', system.inertia.value(pitch) > 0],
  ] as const;
  for (const [field, known] of values) {
    if (!known) return fail({ kind: 'noValue', field, pitch });
  }
  return succeed(system);
}

/** Looks along the travel for the greatest moment and slope. */
const LOOKS = 180;

/**
 * A rate, 1/s, that motion along this travel does not much exceed: sqrt of the greatest of |dM/dt|, |M|, friction per
 * inertia; damping per inertia; the rate at release. It only scales errors and the first step, so looks suffice.
 */
export function rateScale(system: ReleaseSystem, start: ReleaseStart): number {
  const inertia = system.inertia.value(start.pitch);
  const low = Math.max(system.low, start.pitch - Math.PI);
  const high = Math.min(system.high, start.pitch + Math.PI);
  const step = (high - low) / LOOKS;
  let greatest = Math.abs(start.hand ?? 0);
  let before = Number.NaN;
  for (let i = 0; i <= LOOKS; i++) {
    const pitch = radians(low + i * step);
    const moment = system.moment(pitch);
    // A gap leaves these NaN, which no comparison takes.
    const sizes = [Math.abs(moment), system.friction(pitch), Math.abs(moment - before) / step];
    for (const size of sizes) if (size > greatest && size < Infinity) greatest = size;
    before = moment;
  }
  const scale = Math.max(
    Math.sqrt(greatest / inertia),
    system.damping / inertia,
    Math.abs(start.rate),
  );
  return scale > 0 ? scale : 1;
}
