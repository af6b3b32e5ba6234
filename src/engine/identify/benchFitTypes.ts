import type { BenchKey } from './benchDesign';
import type { BenchReading, Gauge } from './benchReading';
import type { BlindDirection } from './linearFit';
import type { Coarseness } from './quantisation';
import type { FittedAt } from './sharedErrors';

export interface BenchEstimate {
  readonly key: BenchKey;
  /** NaN where the data do not determine it. */
  readonly value: number;
  readonly sigma: number;
  /** Half width of its own 95 % interval. */
  readonly half95: number;
  readonly determined: boolean;
  /** How many times more uncertain it is than if all the others were known. */
  readonly inflation: number;
}

/** What one standard deviation of an error that other fits share does to every estimate of this one. */
export interface SharedEffect {
  /** Of a `SharedError`, or of a row of drag at rest. */
  readonly id: string;
  readonly freedom: number;
  readonly effect: Float64Array;
}

/** Two parameters that the data hardly tell apart: their correlation is beyond 0.95. */
export interface Entangled {
  readonly first: number;
  readonly second: number;
  readonly correlation: number;
}

export interface BenchFit {
  readonly estimates: readonly BenchEstimate[];
  /** Row-major, in the order of `estimates`. */
  readonly covariance: Float64Array;
  /** What of the covariance other fits share: it is their own part and the sum of effect x effect^T over these. */
  readonly shared: readonly SharedEffect[];
  /** By reading: fitted force, observed less fitted (both N, known forces included), its uncertainty, and the rest. */
  readonly fitted: Float64Array;
  readonly residual: Float64Array;
  readonly sigma: Float64Array;
  readonly standardised: Float64Array;
  readonly leverage: Float64Array;
  /** Readings and what was known beforehand together. */
  readonly chiSquare: number;
  readonly freedom: number;
  /** Null where the noise was learnt from the same residuals: the fit cannot then be judged by them. */
  readonly pValue: number | null;
  /** N; as given, or found so that chi-square is its degrees of freedom, zero where the step alone explains them. */
  readonly noise: number;
  readonly noiseFound: boolean;
  /** Degrees of freedom for quantiles: infinite where the uncertainties were given. */
  readonly quantileFreedom: number;
  readonly entangled: readonly Entangled[];
  /** Parameters that cannot be told apart at all. */
  readonly blind: readonly BlindDirection[];
  readonly condition: number;
  /** The gauge's step is too coarse for these readings. */
  readonly coarse: Coarseness | null;
  /** Friction came out below zero by more than two standard uncertainties: push and pull may be exchanged. */
  readonly negativeFriction: boolean;
}

/** The numbers of a fit that shared errors are taken at; zero where it has none. */
export function fittedOf({ estimates }: Pick<BenchFit, 'estimates'>): FittedAt {
  const at = (kind: keyof FittedAt) => {
    const found = estimates.find(({ key }) => key.kind === kind);
    return found?.determined ? found.value : 0;
  };
  return { spread: at('spread'), product: at('product'), friction: at('friction') };
}

export interface BenchData {
  readonly readings: readonly BenchReading[];
  readonly gauge: Gauge;
  /** Standard uncertainty of each pitch setting, rad, independent from reading to reading; 0 where left out. */
  readonly pitchSigma?: number;
}

export type BenchFault =
  | { readonly kind: 'noReadings' }
  /** A reading that has no force per moment (over centre, out of reach) or a number that is none. */
  | { readonly kind: 'badReading'; readonly index: number };
