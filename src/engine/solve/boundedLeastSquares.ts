/**
 * Fills `out` with the residuals at `x`; false where they cannot be had (a part that breaks a rule): the solver then
 * treats the point as worse than any other.
 */
export type Residuals = (x: Float64Array, out: Float64Array) => boolean;

export interface LeastSquaresProblem {
  readonly residuals: Residuals;
  /** How many residuals there are. */
  readonly count: number;
  readonly start: ArrayLike<number>;
  /** Limits, both allowed; low < high in every unknown. */
  readonly low: ArrayLike<number>;
  readonly high: ArrayLike<number>;
  /** Half the sum of squares at which nothing better is wanted; 0 goes on to rounding. */
  readonly enough?: number;
}

export interface LeastSquaresSolution {
  readonly x: Float64Array;
  readonly residuals: Float64Array;
  /** Half the sum of squares. */
  readonly cost: number;
  /** d cost / dx there. */
  readonly gradient: Float64Array;
  /** -1 held at its low limit, +1 at its high one (the cost falls beyond it), 0 free. */
  readonly held: Int8Array;
  /** 'noStart': the residuals cannot be had at the start. 'tired': stopped by the number of rounds. */
  readonly status: 'converged' | 'noStart' | 'tired';
  readonly rounds: number;
}

const MOST_ROUNDS = 120;
/** Step of the differences as a share of the range: cube root of rounding, for central ones. */
const DIFFERENCE = 6e-6;
/** Where two unknowns do the same, less than this beside the greatest diagonal term would be lost in rounding. */
const LEAST_DAMPING = 1e-15;

/**
 * Nonlinear least squares within limits on each unknown: Levenberg-Marquardt (D. Marquardt, SIAM J. Appl. Math. 11,
 * 1963) with steps cut back to the box and unknowns held at a limit while the cost falls beyond it (the projected
 * gradient of C. T. Kelley, Iterative Methods for Optimization, SIAM 1999, ch. 5). Unknowns are scaled by their ranges,
 * so that millimetres and degrees weigh alike. With more unknowns than residuals it ends near its start: the damping
 * keeps each step as short as it can be.
 *
 * Finds a local minimum; start it from several places for others. Never throws for a residual that is refused or NaN.
 */
export function boundedLeastSquares(problem: LeastSquaresProblem): LeastSquaresSolution {
  const state = createState(problem);
  const { x, r } = state;
  if (!state.evaluate(x, r)) return solution(state, 'noStart', 0);
  state.cost = half(r);
  let damping = 1e-3;
  for (let round = 1; round <= MOST_ROUNDS; round++) {
    state.linearise();
    if (state.cost <= (problem.enough ?? 0) || state.steepness() <= 1e-30 * state.cost) {
      return solution(state, 'converged', round);
    }
    let moved = false;
    for (let tries = 0; tries < 30 && !moved; tries++) {
      moved = state.propose(damping) && state.take();
      damping = moved ? Math.max(damping / 6, LEAST_DAMPING) : damping * 4;
    }
    if (!moved) return solution(state, 'converged', round);
  }
  return solution(state, 'tired', MOST_ROUNDS);
}

function half(r: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < r.length; i++) sum += r[i] * r[i];
  return sum / 2;
}

type State = ReturnType<typeof createState>;

function createState(problem: LeastSquaresProblem) {
  const n = problem.start.length;
  const m = problem.count;
  const low = Float64Array.from(problem.low);
  const high = Float64Array.from(problem.high);
  const span = high.map((value, i) => value - low[i]);
  if (!span.every((value) => value > 0)) {
    throw new RangeError(`boundedLeastSquares(): low is not below high: ${low} ${high}`);
  }
  const x = Float64Array.from(problem.start, (value, i) =>
    Math.min(high[i], Math.max(low[i], value)),
  );
  const r = new Float64Array(m);
  const jacobian = new Float64Array(m * n);
  const gradient = new Float64Array(n);
  const held = new Int8Array(n);
  const trial = new Float64Array(n);
  const trialR = new Float64Array(m);
  const up = new Float64Array(m);
  const down = new Float64Array(m);
  const normal = new Float64Array(n * n);
  const step = new Float64Array(n);

  function evaluate(at: Float64Array, out: Float64Array): boolean {
    return problem.residuals(at, out) && out.every(Number.isFinite);
  }

  const state = {
    x,
    r,
    gradient,
    held,
    cost: Infinity,
    evaluate,

    /** Jacobian by central differences, one-sided where a limit or a refusal is near; gradient; held unknowns. */
    linearise(): void {
      for (let j = 0; j < n; j++) {
        trial.set(x);
        const h = DIFFERENCE * span[j];
        trial[j] = Math.min(high[j], x[j] + h);
        const right = trial[j] - x[j];
        const hasUp = right > 0 && evaluate(trial, up);
        trial[j] = Math.max(low[j], x[j] - h);
        const left = x[j] - trial[j];
        const hasDown = left > 0 && evaluate(trial, down);
        const width = (hasUp ? right : 0) + (hasDown ? left : 0);
        let slope = 0;
        for (let i = 0; i < m; i++) {
          const rise = (hasUp ? up[i] : r[i]) - (hasDown ? down[i] : r[i]);
          const value = width > 0 ? (rise / width) * span[j] : 0;
          jacobian[i * n + j] = value;
          slope += value * r[i];
        }
        gradient[j] = slope;
        held[j] = x[j] <= low[j] && slope > 0 ? -1 : x[j] >= high[j] && slope < 0 ? 1 : 0;
      }
    },

    /** Square of the gradient over the free unknowns, scaled. */
    steepness(): number {
      let sum = 0;
      for (let j = 0; j < n; j++) if (held[j] === 0) sum += gradient[j] * gradient[j];
      return sum;
    },

    /** Solves for the damped step into `step`; false where the equations are singular. */
    propose(damping: number): boolean {
      let largest = 0;
      for (let a = 0; a < n; a++) {
        for (let b = 0; b <= a; b++) {
          let sum = 0;
          for (let i = 0; i < m; i++) sum += jacobian[i * n + a] * jacobian[i * n + b];
          normal[a * n + b] = sum;
        }
        // One that is held says nothing of how far the others may go.
        if (held[a] === 0) largest = Math.max(largest, normal[a * n + a]);
      }
      for (let a = 0; a < n; a++) {
        step[a] = held[a] === 0 ? -gradient[a] : 0;
        if (held[a] !== 0) {
          for (let b = 0; b < n; b++) {
            normal[a * n + b] = 0;
            normal[b * n + a] = 0;
          }
          normal[a * n + a] = 1;
        } else normal[a * n + a] += damping * largest;
      }
      return solveSymmetric(normal, step, n);
    },

    /** Goes to the proposed point, cut to the box, where the cost falls; true where it does. */
    take(): boolean {
      let moved = false;
      for (let j = 0; j < n; j++) {
        trial[j] = Math.min(high[j], Math.max(low[j], x[j] + step[j] * span[j]));
        moved ||= trial[j] !== x[j];
      }
      if (!moved || !evaluate(trial, trialR)) return false;
      const next = half(trialR);
      if (!(next < state.cost)) return false;
      x.set(trial);
      r.set(trialR);
      state.cost = next;
      return true;
    },
    span,
  };
  return state;
}

function solution(
  state: State,
  status: LeastSquaresSolution['status'],
  rounds: number,
): LeastSquaresSolution {
  return {
    x: state.x,
    residuals: state.r,
    cost: state.cost,
    gradient: state.gradient.map((value, j) => value / state.span[j]),
    held: state.held,
    status,
    rounds,
  };
}

/** Cholesky in place on the n x n symmetric `a`, whose lower half is read; `b` becomes the solution. False where it is not positive definite. */
function solveSymmetric(a: Float64Array, b: Float64Array, n: number): boolean {
  for (let j = 0; j < n; j++) {
    let d = a[j * n + j];
    for (let k = 0; k < j; k++) d -= a[j * n + k] * a[j * n + k];
    if (!(d > 0)) return false;
    const root = Math.sqrt(d);
    a[j * n + j] = root;
    for (let i = j + 1; i < n; i++) {
      let sum = a[i * n + j];
      for (let k = 0; k < j; k++) sum -= a[i * n + k] * a[j * n + k];
      a[i * n + j] = sum / root;
    }
  }
  for (let i = 0; i < n; i++) {
    for (let k = 0; k < i; k++) b[i] -= a[i * n + k] * b[k];
    b[i] /= a[i * n + i];
  }
  for (let i = n - 1; i >= 0; i--) {
    for (let k = i + 1; k < n; k++) b[i] -= a[k * n + i] * b[k];
    b[i] /= a[i * n + i];
  }
  return true;
}
