import type { Radians } from '../units';
import { type BenchReading, dragShares, type RestDrag } from './benchReading';
import { type FittedAt, frictionPerUnit, type SharedError, sharedEffect } from './sharedErrors';

/** How friction beyond the drag at rest goes. */
export type FrictionLaw =
  /** None is fitted. */
  | 'none'
  /** The same force at the gauge everywhere: parameter in N. */
  | 'force'
  /** The same moment about the feathering axis: parameter in N m. */
  | 'moment'
  /** A moment that grows with the pull, so with W^2: parameter in N m at `BenchSetup.referenceSpeed`. */
  | 'pull';

/** What is fitted. */
export interface BenchSetup {
  readonly friction: FrictionLaw;
  /** Zero offsets of the gauge: 'none' (subtracted already), 'free', or known to a standard uncertainty in N about zero. */
  readonly zeros: 'none' | 'free' | { readonly sigma: number };
  /** Names of further terms, each a factor on the readings' `extras` (an air term: 1 is as modelled). */
  readonly extras: readonly string[];
  /** Drag at rest, ascending in travel; its rows are fitted along, held by their own uncertainties. */
  readonly drag: readonly RestDrag[];
  readonly precone: Radians;
  /** rad/s; only for the friction law 'pull'. */
  readonly referenceSpeed?: number;
  /** Errors that all readings share: each is fitted along, held at nothing by its own uncertainty. */
  readonly shared?: readonly SharedError[];
}

/** A fitted number. `spread` is J_yy - J_zz and `product` J_yz, both kg m^2; `zero` and `drag` N, `extra` a factor, `shared` in standard deviations. */
export type BenchKey =
  | { readonly kind: 'spread' }
  | { readonly kind: 'product' }
  | { readonly kind: 'friction' }
  | { readonly kind: 'zero'; readonly index: number }
  | { readonly kind: 'extra'; readonly index: number }
  | { readonly kind: 'drag'; readonly index: number }
  | { readonly kind: 'shared'; readonly index: number };

/** Something known beforehand about one parameter. */
export interface Prior {
  readonly parameter: number;
  readonly value: number;
  readonly sigma: number;
}

export interface BenchDesign {
  readonly keys: readonly BenchKey[];
  /** Readings x parameters, row-major. */
  readonly rows: Float64Array;
  /** Force less `knownForce`, N. */
  readonly observed: Float64Array;
  readonly priors: readonly Prior[];
}

/**
 * The bench as a linear model. A gauge reads
 *
 *   F = g M + sense (drag at rest + friction) + zero + known + sum factor x extra,
 *   M = -W^2 cos^2(precone) [ (J_yy - J_zz)/2 sin 2t + J_yz cos 2t ]
 *
 * with g the force per moment at the reading's pitch (engine/feathering/harmonics for M and its signs). Torque offset and
 * precone terms that are not of this form belong in `knownForce`. A held reading (sense 0) has no friction column: `benchFit`
 * widens its uncertainty instead. What shared errors do depends on what is fitted: their columns are those `at` a fit, and
 * empty without one.
 */
export function benchDesign(
  readings: readonly BenchReading[],
  setup: BenchSetup,
  at: FittedAt = NOTHING,
): BenchDesign {
  const keys = keysOf(readings, setup);
  const n = keys.length;
  const rows = new Float64Array(readings.length * n);
  const observed = new Float64Array(readings.length);
  readings.forEach((reading, i) => {
    const shares = dragShares(setup.drag, reading.travel);
    keys.forEach((key, j) => (rows[i * n + j] = entry(key, reading, setup, shares, at)));
    observed[i] = reading.force - (reading.knownForce ?? 0);
  });
  const priors: Prior[] = [];
  keys.forEach((key, parameter) => {
    if (key.kind === 'zero' && typeof setup.zeros === 'object') {
      priors.push({ parameter, value: 0, sigma: setup.zeros.sigma });
    }
    if (key.kind === 'drag') {
      const { force, sigma } = setup.drag[key.index];
      priors.push({ parameter, value: force, sigma });
    }
    if (key.kind === 'shared') priors.push({ parameter, value: 0, sigma: 1 });
  });
  return { keys, rows, observed, priors };
}

/** A design with what is known beforehand below it, an observation each: what is solved. */
export function withPriors({ keys, rows, observed, priors }: BenchDesign): {
  readonly table: Float64Array;
  readonly observed: Float64Array;
} {
  const n = keys.length;
  const count = observed.length;
  const table = new Float64Array((count + priors.length) * n);
  table.set(rows);
  const all = new Float64Array(count + priors.length);
  all.set(observed);
  priors.forEach(({ parameter, value }, k) => {
    table[(count + k) * n + parameter] = 1;
    all[count + k] = value;
  });
  return { table, observed: all };
}

const NOTHING: FittedAt = { spread: 0, product: 0, friction: 0 };

/** The same design with the columns of shared errors as they are at a fit, in place. */
export function putShared(
  { keys, rows }: BenchDesign,
  readings: readonly BenchReading[],
  setup: BenchSetup,
  at: FittedAt,
): void {
  const n = keys.length;
  keys.forEach((key, j) => {
    if (key.kind !== 'shared') return;
    const error = sharedOf(setup, key.index);
    readings.forEach((reading, i) => {
      (rows as Float64Array)[i * n + j] = sharedEffect(error, reading, setup, at);
    });
  });
}

/** Throws for an index beyond the setup's. */
export function sharedOf({ shared }: BenchSetup, index: number): SharedError {
  const error = shared?.[index];
  if (!error) throw new RangeError(`benchDesign(): there is no shared error ${index}`);
  return error;
}

function keysOf(readings: readonly BenchReading[], setup: BenchSetup): BenchKey[] {
  const keys: BenchKey[] = [{ kind: 'spread' }, { kind: 'product' }];
  if (setup.friction !== 'none') keys.push({ kind: 'friction' });
  if (setup.zeros !== 'none') {
    const zeros = [...new Set(readings.map(({ zero }) => zero))].toSorted((a, b) => a - b);
    for (const index of zeros) keys.push({ kind: 'zero', index });
  }
  setup.extras.forEach((_, index) => keys.push({ kind: 'extra', index }));
  setup.drag.forEach((_, index) => keys.push({ kind: 'drag', index }));
  setup.shared?.forEach((_, index) => keys.push({ kind: 'shared', index }));
  return keys;
}

function entry(
  key: BenchKey,
  reading: BenchReading,
  setup: BenchSetup,
  shares: Float64Array,
  at: FittedAt,
): number {
  const { pitch, angularSpeed, forcePerMoment, sense, zero, extras } = reading;
  const perSpread = -forcePerMoment * (angularSpeed * Math.cos(setup.precone)) ** 2;
  if (key.kind === 'spread') return (perSpread * Math.sin(2 * pitch)) / 2;
  if (key.kind === 'product') return perSpread * Math.cos(2 * pitch);
  if (key.kind === 'zero') return zero === key.index ? 1 : 0;
  if (key.kind === 'extra') return extras?.[key.index] ?? 0;
  if (key.kind === 'drag') return sense * shares[key.index];
  if (key.kind === 'shared') return sharedEffect(sharedOf(setup, key.index), reading, setup, at);
  return sense * frictionPerUnit(reading, setup);
}

/** Gauge force of friction and drag at a reading for a fitted friction, N, unsigned. */
export function frictionForce(
  reading: BenchReading,
  setup: BenchSetup,
  friction: number,
  drag: number,
): number {
  return Math.abs(frictionPerUnit(reading, setup) * friction + drag);
}
