import { createDescent, type Descent, descend, POLICIES } from './curveDescent';
import { type LinearFit, linearFit } from './linearFit';

/** Observations that a curve with unknown parameters is to meet: observed = model(parameters) + error. */
export interface CurveProblem {
  /** Writes what the curve says for every observation; false where the parameters make no sense. */
  readonly model: (parameters: Float64Array, out: Float64Array) => boolean;
  /** Writes its derivatives, row-major observations x parameters; left out: by differences of eighth order. */
  readonly slopes?: (parameters: Float64Array, out: Float64Array) => boolean;
  readonly observed: ArrayLike<number>;
  /** Standard uncertainty of each observation; left out: alike for all, and learnt from the residuals. */
  readonly sigma?: ArrayLike<number>;
  readonly start: ArrayLike<number>;
  /** Sizes of the parameters, for those that start or end near zero. */
  readonly typical?: ArrayLike<number>;
}

export interface CurveFit {
  /**
   * 'converged': the last step was below 1e-9 of the parameters' uncertainties or of themselves. 'stalled': no step makes it
   * better, yet the last one asked for is larger than that. 'tired': stopped by the number of rounds. 'noStart': the curve
   * cannot be had at the start; all numbers are then those of the start, uncertainties NaN.
   */
  readonly status: 'converged' | 'stalled' | 'tired' | 'noStart';
  readonly estimate: Float64Array;
  /**
   * Covariance, uncertainties, rank, condition, leverage, residuals, chi-square and its p value of the curve's tangent at
   * the estimate: right where the curve is straight over the uncertainties. Null at 'noStart'.
   */
  readonly tangent: LinearFit | null;
  /** Sum of squares of residual / sigma. */
  readonly chiSquare: number;
  /** Of all ways together. */
  readonly rounds: number;
  readonly evaluations: number;
  /** Which way of damping found it. */
  readonly policy: string;
  /** Largest move that the last Gauss-Newton step asked for, as a share of the parameter. */
  readonly lastStep: number;
}

/**
 * Nonlinear least squares from one start. Levenberg-Marquardt, each step solved by QR, by several ways of damping
 * (`curveDescent`: column scaling with memory and geodesic acceleration, plain column scaling, equal damping); every way
 * runs from the start and the lowest chi-square is kept, since one way alone ends in a side valley for some starts. Then
 * Gauss-Newton steps with refined solutions until they no longer shrink: chi-square is flat to rounding long before the
 * parameters are settled. It finds a local minimum; a start far off can still miss the lowest.
 *
 * Tested on the nonlinear sets of NIST StRD from both starts.
 */
export function curveFit(problem: CurveProblem): CurveFit {
  const ways: { readonly state: Descent; readonly policy: string }[] = [];
  for (const policy of POLICIES) {
    const state = createDescent(problem);
    if (!state) return noStart(problem);
    descend(state, policy);
    ways.push({ state, policy: policy.name });
  }
  const { state, policy } = ways.reduce((best, way) =>
    way.state.cost < best.state.cost * (1 - 1e-9) ? way : best,
  );
  const { lastStep, settled } = polish(state);
  const sumOf = (count: 'rounds' | 'evaluations') =>
    ways.reduce((sum, way) => sum + way.state[count], 0);
  return {
    status: settled ? 'converged' : state.tired ? 'tired' : 'stalled',
    estimate: state.x,
    tangent: tangentAt(state),
    chiSquare: 2 * state.cost,
    rounds: sumOf('rounds'),
    evaluations: sumOf('evaluations'),
    policy,
    lastStep,
  };
}

function noStart(problem: CurveProblem): CurveFit {
  return {
    status: 'noStart',
    estimate: Float64Array.from(problem.start),
    tangent: null,
    chiSquare: Number.NaN,
    rounds: 0,
    evaluations: 1,
    policy: '',
    lastStep: Number.NaN,
  };
}

function tangentAt({ problem, jacobian, x, residual }: Descent): LinearFit {
  const { sigma } = problem;
  return linearFit({
    design: jacobian,
    parameters: x.length,
    observed: residual.map((value, i) => value * (sigma?.[i] ?? 1)),
    sigma,
    designError: problem.slopes ? 0 : SLOPE_ERROR,
  });
}

/** Of slopes by differences, at the rough end (`curveSlopes`). */
const SLOPE_ERROR = 1e-11;

const MOST_POLISH = 100;

/**
 * Gauss-Newton steps while each is shorter than the one before. Where residuals are large and the curve bends they shrink only
 * by a steady factor, hence the many rounds.
 */
function polish(state: Descent): { lastStep: number; settled: boolean } {
  let last = Infinity;
  let lastStep = Infinity;
  let settled = false;
  for (let round = 0; round < MOST_POLISH; round++) {
    state.linearise();
    const fit = tangentAt(state);
    if (fit.rank < state.x.length) break;
    const size = stepSize(fit, state.x);
    const share = Math.max(...fit.estimate.map((step, j) => Math.abs(step / (state.x[j] || 1))));
    lastStep = share;
    settled = share < 1e-9 || size < 1e-9;
    if (!(size < 0.98 * last) || !state.moveBy(fit.estimate, 1e-6)) break;
    last = size;
    if (share < 1e-14) break;
  }
  state.linearise();
  return { lastStep, settled };
}

/** Largest step against the parameter's uncertainty. */
function stepSize(fit: LinearFit, x: Float64Array): number {
  let largest = 0;
  for (let j = 0; j < x.length; j++) {
    const unit = fit.deviation[j] > 0 ? fit.deviation[j] : Math.abs(x[j]) || 1;
    largest = Math.max(largest, Math.abs(fit.estimate[j]) / unit);
  }
  return largest;
}
