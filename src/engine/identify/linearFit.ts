import { chiSquareAbove } from './distributions';
import { applyFactor, type Factors } from './householder';
import { refinedSolution } from './refine';
import { type ScaledSystem, scaledSystem } from './scaledSystem';

/** Observations that are linear in unknown parameters: observed = design x parameters + error. */
export interface LinearProblem {
  /** One row an observation, row-major, observations x parameters. */
  readonly design: ArrayLike<number>;
  readonly parameters: number;
  readonly observed: ArrayLike<number>;
  /** Standard uncertainty of each observation, positive. Left out: alike for all, and learnt from the residuals. */
  readonly sigma?: ArrayLike<number> | undefined;
  /** Relative error of the design's numbers, where it is more than rounding: columns that agree to it count as dependent. */
  readonly designError?: number;
  /** Most rounds of refinement; left out: until nothing is gained. One is the plain solution. */
  readonly mostRounds?: number;
}

/** A direction in which the parameters can move together without the data noticing: largest share 1. */
export interface BlindDirection {
  /** Which parameters take part, and by how much in units of each one's own scale, strongest first. */
  readonly parts: readonly { readonly parameter: number; readonly share: number }[];
}

export interface LinearFit {
  /** NaN for a parameter that the data do not determine. */
  readonly estimate: Float64Array;
  /** Of the estimates, row-major; from `sigma` where it was given, else from the residuals. NaN where undetermined. */
  readonly covariance: Float64Array;
  /** Standard uncertainties: roots of the covariance's diagonal. */
  readonly deviation: Float64Array;
  readonly determined: readonly boolean[];
  readonly rank: number;
  /** Exact: what the data cannot tell apart at all. Empty where the rank is full. */
  readonly blind: readonly BlindDirection[];
  /** Of the design with columns scaled to like length: largest over smallest singular value. */
  readonly condition: number;
  /**
   * How many times larger each parameter's uncertainty is than if all the others were known: 1 where it stands alone, above
   * about 10 it is told apart from the others only by a tenth of what the data say.
   */
  readonly inflation: Float64Array;
  /** Observed less fitted, in the unit of the observations. */
  readonly residual: Float64Array;
  /** Share of each observation that it fits itself, 0 to 1; they sum to the rank. */
  readonly leverage: Float64Array;
  /** Residual over its own standard uncertainty; NaN where the leverage is 1 (nothing is left to judge by). */
  readonly standardised: Float64Array;
  /** Sum of squares of residual / sigma (sigma 1 where none was given). */
  readonly chiSquare: number;
  readonly freedom: number;
  /** Share of fits with a larger chi-square if model and `sigma` are right; null without `sigma` or freedom. */
  readonly pValue: number | null;
  /** Residual standard deviation sqrt(chiSquare / freedom): 1 is as expected where `sigma` was given; NaN at freedom 0. */
  readonly residualDeviation: number;
  /** Rounds of iterative refinement that were made. */
  readonly rounds: number;
}

/**
 * Weighted linear least squares by Householder QR with column pivoting, columns scaled by powers of two, and iterative
 * refinement of the augmented system with residuals in double-double (Bjorck, BIT 7, 1967; Golub and Van Loan, Matrix
 * Computations, 5.3.8): what is left is about the error of the design's own numbers. Fewer observations than parameters, or
 * columns that depend on each other, are no fault: the rank falls and the parameters concerned are NaN, with the directions.
 * Rank counts singular values above 1e-13 of the largest (times the larger side over 10), or above `designError`.
 *
 * Throws for lengths that do not match, numbers that are not finite and a sigma that is not positive.
 * Tested on the linear sets of NIST StRD.
 */
export function linearFit(problem: LinearProblem): LinearFit {
  const system = scaledSystem(problem);
  const { count, n, rank, determined, sigma } = system;
  const { estimate, residual, rounds } = refinedSolution(system, problem.mostRounds);
  for (let j = 0; j < n; j++) if (!determined[j]) estimate[j] = Number.NaN;
  let chiSquare = 0;
  for (let i = 0; i < count; i++) chiSquare += (residual[i] / (sigma?.[i] ?? 1)) ** 2;
  const freedom = count - rank;
  const residualDeviation = freedom > 0 ? Math.sqrt(chiSquare / freedom) : Number.NaN;
  const unit = sigma ? 1 : residualDeviation;
  const leverage = leverages(system);
  const covariance = covarianceOf(system, unit * unit);
  return {
    estimate,
    covariance,
    deviation: Float64Array.from(estimate, (_, j) => Math.sqrt(covariance[j * n + j])),
    determined,
    rank,
    blind: blindDirections(system),
    condition: rank === n ? system.singular.values[0] / system.singular.values[n - 1] : Infinity,
    inflation: inflations(system),
    residual,
    leverage,
    standardised: residual.map((value, i) => {
      const own = 1 - leverage[i];
      return own > 1e-10 ? value / (unit * (sigma?.[i] ?? 1) * Math.sqrt(own)) : Number.NaN;
    }),
    chiSquare,
    freedom,
    pValue: sigma && freedom > 0 ? chiSquareAbove(chiSquare, freedom) : null,
    residualDeviation,
    rounds,
  };
}

/** V S^-2 V^T over the singular values that count, in the parameters' own units. */
function covarianceOf(system: ScaledSystem, variance: number): Float64Array {
  const { n, rank, scale, singular, determined } = system;
  const out = new Float64Array(n * n);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) {
      let sum = 0;
      for (let k = 0; k < rank; k++) {
        sum +=
          (singular.right[i * n + k] / singular.values[k]) *
          (singular.right[j * n + k] / singular.values[k]);
      }
      const known = determined[i] && determined[j];
      out[i * n + j] = known ? variance * sum * scale[i] * scale[j] : Number.NaN;
    }
  }
  return out;
}

function inflations(system: ScaledSystem): Float64Array {
  const { n, rank, singular, lengths, determined } = system;
  return Float64Array.from({ length: n }, (_, j) => {
    if (!determined[j]) return Infinity;
    let sum = 0;
    for (let k = 0; k < rank; k++) sum += (singular.right[j * n + k] / singular.values[k]) ** 2;
    return Math.max(1, Math.sqrt(sum) * lengths[j]);
  });
}

/** Squares of the rows of Q's first `rank` columns. */
function leverages({ factors, rank, count }: ScaledSystem): Float64Array {
  const out = new Float64Array(count);
  const column = new Float64Array(factors.rows);
  for (let k = 0; k < rank; k++) {
    column.fill(0);
    column[k] = 1;
    applyFactor(factors as Factors, column);
    for (let i = 0; i < count; i++) out[i] += column[i] * column[i];
  }
  return out;
}

/** A share of a direction below this is rounding. */
const NO_SHARE = 1e-7;

function blindDirections({ n, rank, singular, lengths }: ScaledSystem): BlindDirection[] {
  const out: BlindDirection[] = [];
  for (let k = rank; k < n; k++) {
    const shares = Array.from({ length: n }, (_, j) => ({
      parameter: j,
      share: singular.right[j * n + k] * (lengths[j] || 1),
    }));
    const largest = Math.max(...shares.map(({ share }) => Math.abs(share)));
    const parts = shares
      .map(({ parameter, share }) => ({ parameter, share: share / largest }))
      .filter(({ share }) => Math.abs(share) > NO_SHARE)
      .toSorted((a, b) => Math.abs(b.share) - Math.abs(a.share));
    out.push({ parts });
  }
  return out;
}
