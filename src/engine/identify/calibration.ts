import { fail, type Result, succeed } from '../result';
import { type Radians, radians, radiansFromDegrees } from '../units';
import { curveFit } from './curveFit';
import { studentQuantile } from './distributions';
import { type LinearFit, linearFit } from './linearFit';

/** A scale reading (any unit: marks, mm of slider, servo counts) and the pitch that an angle gauge showed there. */
export interface CalibrationPair {
  readonly scale: number;
  readonly pitch: Radians;
}

export interface Calibration {
  readonly kind: 'line' | 'linkage';
  /**
   * Line: pitch = offset + gain x scale (rad, rad per unit). Linkage: pitch = curve(offset + gain x scale), the curve being
   * pitch against slider travel (m, m per unit).
   */
  readonly offset: number;
  readonly gain: number;
  readonly offsetSigma: number;
  readonly gainSigma: number;
  /** Pitch shown less pitch of the calibration, rad, in the order of the pairs. */
  readonly residual: Float64Array;
  /** Standard deviation of a pair about it, rad; NaN with no pairs to spare. */
  readonly deviation: number;
  readonly freedom: number;
  /** Lowest and highest scale reading that was calibrated. */
  readonly range: readonly [number, number];
  /** NaN where the linkage does not reach. */
  pitchAt(scale: number): Radians;
  /** Standard uncertainty of the calibration there, rad: common to all readings taken through it. NaN without freedom. */
  sigmaAt(scale: number): number;
  /** Half width of its 95 % band, rad. */
  half95At(scale: number): number;
  beyond(scale: number): boolean;
  /**
   * What its uncertainty does to the pitch there, rad: one standard deviation each of two errors that are independent of
   * each other and the same for all readings taken through it. Their squares sum to that of `sigmaAt`.
   */
  shiftsAt(scale: number): readonly [number, number];
  /** Degrees of freedom that the shifts rest on: infinite where `ANGLE_GAUGE_SIGMA` was assumed, no pair being to spare. */
  readonly shiftFreedom: number;
}

/** Standard uncertainty of a pair where nothing shows it: an angle gauge at a blade, 0.2 degrees (common practice), rad. */
export const ANGLE_GAUGE_SIGMA = radiansFromDegrees(0.2);

export type CalibrationFault =
  | { readonly kind: 'tooFewPairs'; readonly pairs: number; readonly needed: number }
  | { readonly kind: 'oneScaleReading'; readonly scale: number }
  /** The linkage's curve cannot be made to go through the pairs. */
  | { readonly kind: 'noFit' };

/** Straight line through the pairs, least squares. Two at least; three for an uncertainty. */
export function lineCalibration(
  pairs: readonly CalibrationPair[],
): Result<Calibration, CalibrationFault> {
  const fault = faultOf(pairs);
  if (fault) return fail(fault);
  const fit = linearFit({
    design: pairs.flatMap(({ scale }) => [1, scale]),
    parameters: 2,
    observed: pairs.map(({ pitch }) => pitch),
  });
  const line = (scale: number) => fit.estimate[0] + fit.estimate[1] * scale;
  return succeed(calibrationOf('line', pairs, fit.estimate, fit, line, (scale) => [1, scale]));
}

/**
 * The linkage's own curve (pitch against slider travel, NaN out of reach) with the scale's offset and gain fitted: straight
 * scales of a slider stay true where pitch does not go straight with travel. Starts from `gainGuess`, m per unit of the
 * scale, and zero offset.
 */
export function linkageCalibration(
  pairs: readonly CalibrationPair[],
  pitchAtTravel: (travel: number) => number,
  gainGuess: number,
): Result<Calibration, CalibrationFault> {
  const fault = faultOf(pairs);
  if (fault) return fail(fault);
  const fit = curveFit({
    model: (b, out) => {
      pairs.forEach(({ scale }, i) => (out[i] = pitchAtTravel(b[0] + b[1] * scale)));
      return true;
    },
    observed: pairs.map(({ pitch }) => pitch),
    start: [0, gainGuess],
    typical: [1e-3, Math.abs(gainGuess)],
  });
  if (!fit.tangent || fit.status === 'tired') return fail({ kind: 'noFit' });
  const [offset, gain] = fit.estimate;
  const curve = (scale: number) => pitchAtTravel(offset + gain * scale);
  const row = (scale: number) => {
    const travel = offset + gain * scale;
    const slope = (pitchAtTravel(travel + 1e-6) - pitchAtTravel(travel - 1e-6)) / 2e-6;
    return [slope, slope * scale];
  };
  return succeed(calibrationOf('linkage', pairs, fit.estimate, fit.tangent, curve, row));
}

function faultOf(pairs: readonly CalibrationPair[]): CalibrationFault | null {
  if (pairs.length < 2) return { kind: 'tooFewPairs', pairs: pairs.length, needed: 2 };
  const { scale } = pairs[0];
  return pairs.every((pair) => pair.scale === scale) ? { kind: 'oneScaleReading', scale } : null;
}

function calibrationOf(
  kind: Calibration['kind'],
  pairs: readonly CalibrationPair[],
  [offset, gain]: ArrayLike<number> & Iterable<number>,
  { covariance, deviation, freedom, residualDeviation }: LinearFit,
  curve: (scale: number) => number,
  row: (scale: number) => readonly number[],
): Calibration {
  const scales = pairs.map(({ scale }) => scale);
  const range: [number, number] = [Math.min(...scales), Math.max(...scales)];
  const common = shiftsOf(pairs, row, freedom > 0 ? covariance : null);
  const sigmaAt = (scale: number) => {
    const [a, b] = row(scale);
    return Math.sqrt(a * a * covariance[0] + 2 * a * b * covariance[1] + b * b * covariance[3]);
  };
  return {
    kind,
    offset,
    gain,
    offsetSigma: deviation[0],
    gainSigma: deviation[1],
    residual: Float64Array.from(pairs, ({ scale, pitch }) => pitch - curve(scale)),
    deviation: residualDeviation,
    freedom,
    range,
    pitchAt: (scale) => radians(curve(scale)),
    sigmaAt,
    half95At: (scale) =>
      freedom > 0 ? studentQuantile(0.975, freedom) * sigmaAt(scale) : Number.NaN,
    beyond: (scale) => scale < range[0] || scale > range[1],
    shiftsAt: common,
    shiftFreedom: freedom > 0 ? freedom : Infinity,
  };
}

/** The root of the covariance of offset and gain (Cholesky), carried to the pitch. */
function shiftsOf(
  pairs: readonly CalibrationPair[],
  row: (scale: number) => readonly number[],
  learnt: Float64Array | null,
): Calibration['shiftsAt'] {
  const [aa, , ba, bb] = learnt ?? assumedCovariance(pairs, row);
  const first = Math.sqrt(aa);
  const mixed = first > 0 ? ba / first : 0;
  const second = Math.sqrt(Math.max(0, bb - mixed * mixed));
  return (scale) => {
    const [offset, gain] = row(scale);
    return [offset * first + gain * mixed, gain * second];
  };
}

function assumedCovariance(
  pairs: readonly CalibrationPair[],
  row: (scale: number) => readonly number[],
): Float64Array {
  return linearFit({
    design: pairs.flatMap(({ scale }) => row(scale)),
    parameters: 2,
    observed: pairs.map(() => 0),
    sigma: pairs.map(() => ANGLE_GAUGE_SIGMA),
  }).covariance;
}
