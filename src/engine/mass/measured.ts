import { eigenSymmetric, type Symmetric3 } from '../math/eigenSymmetric';
import { fail, type Result, succeed } from '../result';
import { centralSecondMoment } from './inertia';
import { JXX, JXY, JXZ, JYY, JYZ, JZZ, M, type Moments, SX, SY, SZ } from './moments';

/** 0 span (x), 1 chord (y), 2 thickness (z) of the body frame. */
export type BodyAxis = 0 | 1 | 2;

/** Moment of inertia about the axis through the centre of mass along x, y or z of the body frame, kg m^2. */
export interface TimedInertia {
  readonly axis: BodyAxis;
  readonly moment: number;
  /** Standard uncertainty, kg m^2; weighs three timings against the drawn thickness. Absent: as good as exact. */
  readonly uncertainty?: number;
}

/** What was measured of a body, SI, in its body frame; what is absent or null stays as modelled. */
export interface MeasuredBody {
  readonly mass?: number | undefined;
  readonly centre?: readonly [number | null, number | null, number | null] | undefined;
  /** At most one for each axis. */
  readonly inertia?: readonly TimedInertia[] | undefined;
}

/** Why measured values cannot be taken on, with the numbers, SI. */
export type MeasuredFault =
  /** Nothing to scale: the model weighs nothing, or its holes weigh more than it does. */
  | { readonly kind: 'modelWithoutMass'; readonly mass: number }
  /**
   * Not a number that can be: a mass or a moment of inertia that is not positive and finite, a centre that is not
   * finite.
   */
  | { readonly kind: 'impossibleValue'; readonly what: MeasuredQuantity; readonly value: number }
  | {
      readonly kind: 'timedTwice';
      readonly axis: BodyAxis;
      readonly moments: readonly [number, number];
    }
  /** The model itself spreads its mass as no body can (a hole wider than its part), so that timings correct nothing. */
  | { readonly kind: 'impossibleModel'; readonly smallestEigenvalue: number }
  /**
   * The timings leave a negative spread J_ii along `axis`: they contradict each other, or the thickness or mass that
   * was kept. `inertias` are the three moments of inertia that would result; one exceeds the sum of the other two.
   */
  | {
      readonly kind: 'contradiction';
      readonly axis: BodyAxis;
      readonly spread: number;
      readonly inertias: readonly [number, number, number];
    };

export type MeasuredQuantity =
  | 'mass'
  | 'centreX'
  | 'centreY'
  | 'centreZ'
  | 'inertiaX'
  | 'inertiaY'
  | 'inertiaZ';

const CENTRES = ['centreX', 'centreY', 'centreZ'] as const;
const INERTIAS = ['inertiaX', 'inertiaY', 'inertiaZ'] as const;

/** Of tr J about the origin, as in `findValidity`. */
const ROUNDING = 1e-12;

/**
 * Corrects modelled moments by what was measured. Moments are about the body frame's origin (x span, y chord, z
 * thickness). In this order:
 *
 *  1. mass: all ten numbers times m / m_model. The shape is trusted, the density is not.
 *  2. centre: the whole body is shifted by the measured less the modelled component, so that J about its centre keeps.
 *  3. inertia, see `spreadFromTimings`: the diagonal of J about the centre is solved from I_x = J_yy + J_zz,
 *     I_y = J_xx + J_zz, I_z = J_xx + J_yy, and products keep their correlation J_ij / sqrt(J_ii J_jj).
 *
 * Values equal to the modelled ones change nothing, to rounding. A result of step 3 is a possible body: J becomes D J D
 * with a diagonal D >= 0, which keeps a positive semidefinite J so, and that is the triangle inequality of the principal
 * inertias (see `findValidity`). Whether the mass and reach are likely is for `findValidity` to say.
 *
 * `out` may be `moments_B`; on a fault it is left as it was.
 */
export function applyMeasured(
  moments_B: Moments,
  measured: MeasuredBody,
  out: Moments,
): Result<void, MeasuredFault> {
  const modelMass = moments_B[M];
  const modelled = centralSecondMoment(moments_B);
  if (modelled === null) return fail({ kind: 'modelWithoutMass', mass: modelMass });
  const impossible = impossibleValue(measured);
  if (impossible) return fail(impossible);

  const mass = measured.mass ?? modelMass;
  const factor = mass / modelMass;
  let J = scaled(modelled, factor);
  if (measured.inertia && measured.inertia.length > 0) {
    const rounding = ROUNDING * factor * (moments_B[JXX] + moments_B[JYY] + moments_B[JZZ]);
    const timed = timedJ(J, measured.inertia, rounding);
    if (!timed.ok) return timed;
    J = timed.value;
  }
  const centre = measured.centre ?? [null, null, null];
  const x = centre[0] ?? moments_B[SX] / modelMass;
  const y = centre[1] ?? moments_B[SY] / modelMass;
  const z = centre[2] ?? moments_B[SZ] / modelMass;
  out[M] = mass;
  out[SX] = mass * x;
  out[SY] = mass * y;
  out[SZ] = mass * z;
  out[JXX] = J.xx + mass * x * x;
  out[JYY] = J.yy + mass * y * y;
  out[JZZ] = J.zz + mass * z * z;
  out[JXY] = J.xy + mass * x * y;
  out[JXZ] = J.xz + mass * x * z;
  out[JYZ] = J.yz + mass * y * z;
  return succeed(undefined);
}

function impossibleValue(measured: MeasuredBody): MeasuredFault | undefined {
  const { mass, centre, inertia = [] } = measured;
  if (mass !== undefined && !isPositive(mass)) {
    return { kind: 'impossibleValue', what: 'mass', value: mass };
  }
  for (const [axis, value] of (centre ?? []).entries()) {
    if (value !== null && !Number.isFinite(value)) {
      return { kind: 'impossibleValue', what: CENTRES[axis], value };
    }
  }
  for (const { axis, moment } of inertia) {
    if (!isPositive(moment)) {
      return { kind: 'impossibleValue', what: INERTIAS[axis], value: moment };
    }
    const again = inertia.find((one) => one.axis === axis && one.moment !== moment);
    if (again) return { kind: 'timedTwice', axis, moments: [moment, again.moment] };
  }
  return undefined;
}

function isPositive(value: number): boolean {
  return value > 0 && Number.isFinite(value);
}

function scaled(J: Symmetric3, factor: number): Symmetric3 {
  return {
    xx: J.xx * factor,
    yy: J.yy * factor,
    zz: J.zz * factor,
    xy: J.xy * factor,
    xz: J.xz * factor,
    yz: J.yz * factor,
  };
}

type Spread = readonly [xx: number, yy: number, zz: number];

/**
 * J about the centre with its diagonal solved from the timings and its correlations kept. `rounding` is what Steiner's
 * subtraction may have left in J: spreads below it count as none.
 */
function timedJ(
  J: Symmetric3,
  inertia: readonly TimedInertia[],
  rounding: number,
): Result<Symmetric3, MeasuredFault> {
  const smallestEigenvalue = eigenSymmetric(J).values[0];
  if (smallestEigenvalue < -rounding) return fail({ kind: 'impossibleModel', smallestEigenvalue });

  const [xx, yy, zz] = spreadFromTimings([J.xx, J.yy, J.zz], inertia);
  const least = Math.min(xx, yy, zz);
  // A flat plate timed exactly comes out at nothing, give or take its rounding.
  if (least < -Math.max(rounding, 1e-12 * Math.max(xx, yy, zz))) {
    return fail({
      kind: 'contradiction',
      axis: least === xx ? 0 : least === yy ? 1 : 2,
      spread: least,
      inertias: [yy + zz, xx + zz, xx + yy],
    });
  }
  const x = stretch(xx, J.xx, rounding);
  const y = stretch(yy, J.yy, rounding);
  const z = stretch(zz, J.zz, rounding);
  return succeed({ xx, yy, zz, xy: J.xy * x * y, xz: J.xz * x * z, yz: J.yz * y * z });
}

/**
 * sqrt(J_ii / modelled J_ii), by which the products with axis i grow. Where nothing but rounding was modelled there is no
 * correlation to keep, and its products stay as they are: next to nothing.
 */
function stretch(spread: number, modelled: number, rounding: number): number {
  return modelled > rounding ? Math.sqrt(Math.max(0, spread) / modelled) : 1;
}

/**
 * The diagonal of J about the centre from timed moments of inertia. J_zz, the spread through the thickness, is the
 * smallest of a blade and the best known, so:
 *
 *  - all three timed: J_ii = (I_j + I_k - I_i) / 2, and the least spread as drawn comes in as a fourth value, see
 *    `withDrawnThickness`;
 *  - two timed: J_zz stays as modelled and the other two follow. Span and chord: J_yy = I_x - J_zz, J_xx = I_y - J_zz;
 *    span and thickness: J_yy = I_x - J_zz, J_xx = I_z - J_yy; chord and thickness: J_xx = I_y - J_zz, J_yy = I_z - J_xx;
 *  - one timed: of its two contributors the one modelled greater is set and the lesser stays, with the third: for a blade
 *    span sets J_yy, chord J_xx, thickness J_xx. Contributors that are equal to 1e-9 share the difference (a round
 *    body stays round).
 */
function spreadFromTimings(modelled: Spread, inertia: readonly TimedInertia[]): Spread {
  const timed: (number | undefined)[] = [undefined, undefined, undefined];
  for (const { axis, moment } of inertia) timed[axis] = moment;
  const [Ix, Iy, Iz] = timed;
  const zz = modelled[2];
  if (Ix !== undefined && Iy !== undefined && Iz !== undefined) {
    const timedSpread = [(Iy + Iz - Ix) / 2, (Ix + Iz - Iy) / 2, (Ix + Iy - Iz) / 2] as const;
    return withDrawnThickness(timedSpread, modelled, inertia);
  }
  if (Ix !== undefined && Iy !== undefined) return [Iy - zz, Ix - zz, zz];
  if (Ix !== undefined && Iz !== undefined) return [Iz - (Ix - zz), Ix - zz, zz];
  if (Iy !== undefined && Iz !== undefined) return [Iy - zz, Iz - (Iy - zz), zz];
  return spreadFromOne(modelled, inertia[0]);
}

/** Standard deviations by which timings and drawn thickness may be apart before they are not adjusted to each other. */
const FARTHEST = 6;

/** Relative standard uncertainty of the least drawn spread: a thickness measured with a calliper (an assumption). */
const THICKNESS_UNCERTAINTY = 0.05;

/**
 * Three timings of a blade say little of its thickness: J_zz is the small difference of two large moments, and
 * J_yy - J_zz = I_z - I_y would forget the span timing, which is the good one. The least spread as drawn is therefore
 * taken as one more observation, and all four are adjusted by least squares: with s0 from the timings and its
 * covariance C = A^-1 diag(u^2) A^-T (A^-1 has -1/2 on the diagonal and 1/2 off it), the drawn value d of spread k with
 * variance v moves it to s0 + C_k (d - s0_k) / (C_kk + v). Without uncertainties, and where they are farther apart than six standard
 * deviations and half the drawn value, the timings stand as they are: one of them is wrong, and the comparison with the
 * drawing says which.
 */
function withDrawnThickness(
  timed: Spread,
  modelled: Spread,
  inertia: readonly TimedInertia[],
): Spread {
  const variance = [0, 0, 0];
  for (const { axis, uncertainty = 0 } of inertia) variance[axis] = uncertainty ** 2;
  const k = modelled.indexOf(Math.min(...modelled));
  const sign = (i: number, m: number) => (i === m ? -1 : 1);
  const covariance = (i: number) =>
    variance.reduce((sum, u2, m) => sum + sign(i, m) * sign(k, m) * u2, 0) / 4;
  const drawn = (THICKNESS_UNCERTAINTY * modelled[k]) ** 2;
  if (!(covariance(k) > 0)) return timed;
  const total = covariance(k) + drawn;
  const off = modelled[k] - timed[k];
  if (Math.abs(off) > FARTHEST * Math.sqrt(total) && Math.abs(off) > modelled[k] / 2) return timed;
  const step = off / total;
  return [
    timed[0] + covariance(0) * step,
    timed[1] + covariance(1) * step,
    timed[2] + covariance(2) * step,
  ];
}

function spreadFromOne(modelled: Spread, { axis, moment }: TimedInertia): Spread {
  const first = axis === 0 ? 1 : 0;
  const second = axis === 2 ? 1 : 2;
  const difference = moment - (modelled[first] + modelled[second]);
  const spread: [number, number, number] = [...modelled];
  const lead = modelled[first] - modelled[second];
  if (Math.abs(lead) <= 1e-9 * Math.max(modelled[first], modelled[second])) {
    spread[first] += difference / 2;
    spread[second] += difference / 2;
  } else {
    spread[lead > 0 ? first : second] += difference;
  }
  return spread;
}
