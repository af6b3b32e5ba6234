import type { Radians } from '../units';

/**
 * The way the gauge was moving when it was read. +1: the way a positive force drives it (pulling, where tension is positive),
 * -1: against it (pushing), 0: held still. Friction opposes the movement, so the gauge reads friction with this sign: of the
 * two readings at one pitch the mean is the moment's force and half the difference the friction (common practice).
 */
export type Sense = -1 | 0 | 1;

/** One reading of the force gauge, SI; force positive in tension, as push-rod forces are. */
export interface BenchReading {
  /** As read, N. */
  readonly force: number;
  readonly sense: Sense;
  readonly pitch: Radians;
  /** Speed W of this reading, rad/s; readings at several speeds may be mixed. */
  readonly angularSpeed: number;
  /**
   * Gauge force for one N m of the grip's moment at this pitch, N/(N m): -1 / lever for a gauge in the push rod
   * (`pushRodForce(1, link)`), n e_z times that at the slider, times the gauge's own leverage.
   */
  readonly forcePerMoment: number;
  /** Its derivative by pitch, N/(N m rad): only for what an error of the pitch setting does; 0 where left out. */
  readonly forcePerMomentSlope?: number;
  /** Slider travel, m: where drag at rest is looked up. */
  readonly travel: number;
  /** Which zero of the gauge holds: 0, 1, ...; a new one each time the gauge was tared. */
  readonly zero: number;
  /** Force that is known and no part of the fit (offset terms, the rod's own mass, a modelled air), N at this speed. */
  readonly knownForce?: number;
  /**
   * How far one standard deviation of each component of the calibration moves the pitch of this reading, rad
   * (`Calibration.shiftsAt`); left out where the pitch was read and not calibrated.
   */
  readonly scaleShifts?: readonly [number, number];
  /** Force of each extra term at a factor of 1, N at this speed, in the order of `BenchSetup.extras`. */
  readonly extras?: readonly number[];
}

/** The gauge. */
export interface Gauge {
  /** Smallest step of its reading, N; 0 where it has none worth counting. */
  readonly step: number;
  /** Standard deviation of a reading besides the step, N; null: to be learnt from the residuals. */
  readonly noise: number | null;
  /** Largest force it can read, N. */
  readonly limit?: number;
}

/** Drag measured at rest: size of the force that just moves the control at a travel, N, with its standard uncertainty. */
export interface RestDrag {
  readonly travel: number;
  readonly force: number;
  readonly sigma: number;
}

/** Share of each row of drag in the drag at a travel: linear between rows, the end row held beyond. Rows ascend in travel. */
export function dragShares(rows: readonly RestDrag[], travel: number): Float64Array {
  const out = new Float64Array(rows.length);
  const last = rows.length - 1;
  if (last < 0) return out;
  for (let k = 1; k <= last; k++) {
    if (!(rows[k].travel > rows[k - 1].travel)) {
      throw new RangeError(`dragShares(): travel does not ascend: ${rows[k].travel}`);
    }
  }
  if (travel <= rows[0].travel) out[0] = 1;
  else if (travel >= rows[last].travel) out[last] = 1;
  else {
    let k = 1;
    while (rows[k].travel < travel) k++;
    const share = (travel - rows[k - 1].travel) / (rows[k].travel - rows[k - 1].travel);
    out[k - 1] = 1 - share;
    out[k] = share;
  }
  return out;
}

/** Drag at rest at a travel with its uncertainty, N; zero without rows. */
export function restDragAt(
  rows: readonly RestDrag[],
  travel: number,
): { readonly force: number; readonly sigma: number } {
  const shares = dragShares(rows, travel);
  let force = 0;
  let variance = 0;
  rows.forEach((row, k) => {
    force += shares[k] * row.force;
    variance += (shares[k] * row.sigma) ** 2;
  });
  return { force, sigma: Math.sqrt(variance) };
}
