import type { BenchSetup } from './benchDesign';
import type { BenchReading } from './benchReading';

/**
 * An error that all readings of a bench have alike, and all rungs of its ladder: it does not shrink with their number, and
 * in a difference of two rungs it counts once, with its sign (GUM, JCGM 100:2008, F.1.2.3). Runs share it by `id`.
 * `sigma` is its standard uncertainty, `freedom` what that rests on (left out: known, infinite).
 */
export type SharedError = {
  readonly id: string;
  readonly freedom?: number;
} & (
  | {
      /**
       * 'gain': the gauge's force, as a share of it. 'lever': force per moment (arm, linkage), as a share. 'speed': the
       * tachometer, as a share; moments go with its square. 'pitch': the zero of the pitch scale, rad.
       */
      readonly kind: 'gain' | 'lever' | 'speed' | 'pitch';
      readonly sigma: number;
    }
  /** A component of the calibration from scale to pitch: `BenchReading.scaleShifts` has what it does to each reading. */
  | { readonly kind: 'scale'; readonly component: 0 | 1 }
);

/** Fitted numbers at which the effect of a shared error is taken. */
export interface FittedAt {
  readonly spread: number;
  readonly product: number;
  readonly friction: number;
}

/**
 * What one standard deviation of a shared error does to a reading, N, to first order, from the fitted forces and not from
 * those read: else rounding and noise would lean the fit (R. Peelle's puzzle). The drag at rest is read by the same gauge,
 * so that its gain is in both alike.
 */
export function sharedEffect(
  error: SharedError,
  reading: BenchReading,
  setup: BenchSetup,
  at: FittedAt,
): number {
  if (error.kind === 'pitch') return error.sigma * forceSlope(reading, at, setup.precone);
  if (error.kind === 'scale') {
    const shift = reading.scaleShifts?.[error.component] ?? 0;
    return shift === 0 ? 0 : shift * forceSlope(reading, at, setup.precone);
  }
  const moved = momentForce(reading, at, setup.precone) + (reading.knownForce ?? 0);
  const rubbed = reading.sense * frictionPerUnit(reading, setup) * at.friction;
  const isLever = setup.friction === 'moment' || setup.friction === 'pull';
  if (error.kind === 'gain') return error.sigma * (moved + rubbed);
  if (error.kind === 'lever') return error.sigma * (moved + (isLever ? rubbed : 0));
  return 2 * error.sigma * (moved + (setup.friction === 'pull' ? rubbed : 0));
}

/** Force of J_yy - J_zz and J_yz at a reading, N. */
function momentForce(
  { pitch, angularSpeed, forcePerMoment }: BenchReading,
  { spread, product }: FittedAt,
  precone: number,
): number {
  const perSpread = -forcePerMoment * (angularSpeed * Math.cos(precone)) ** 2;
  return perSpread * ((spread / 2) * Math.sin(2 * pitch) + product * Math.cos(2 * pitch));
}

/** Its slope by pitch, N/rad: what a wrong pitch does. */
export function forceSlope(
  { pitch, angularSpeed, forcePerMoment, forcePerMomentSlope = 0 }: BenchReading,
  { spread, product }: Pick<FittedAt, 'spread' | 'product'>,
  precone: number,
): number {
  const [sin, cos] = [Math.sin(2 * pitch), Math.cos(2 * pitch)];
  return (
    -((angularSpeed * Math.cos(precone)) ** 2) *
    (forcePerMoment * (spread * cos - 2 * product * sin) +
      forcePerMomentSlope * ((spread / 2) * sin + product * cos))
  );
}

/** Force at the gauge of a friction of one unit of its law, N, unsigned. */
export function frictionPerUnit(
  { forcePerMoment, angularSpeed }: BenchReading,
  { friction, referenceSpeed }: BenchSetup,
): number {
  if (friction === 'none') return 0;
  if (friction === 'force') return 1;
  const lever = Math.abs(forcePerMoment);
  return friction === 'moment'
    ? lever
    : lever * (angularSpeed / (referenceSpeed ?? angularSpeed)) ** 2;
}
