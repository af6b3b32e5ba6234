import type { CurveProblem } from './curveFit';
import { curveSlopes } from './curveSlopes';
import { applyTransposed, factorise, solveUpper } from './householder';

/** A way of damping the steps. */
export interface Policy {
  readonly name: string;
  /** What each parameter's step is measured in: its column's largest or present length, or 1 / its starting size. */
  readonly scaling: 'remembered' | 'present' | 'start';
  /** Bends steps along the curve (Transtrum and Sethna, Phys. Rev. E 83, 2011, "geodesic acceleration"). */
  readonly bent: boolean;
  /** First damping as a share of the squares of the scaled columns. */
  readonly damping: number;
}

export const POLICIES: readonly Policy[] = [
  { name: 'remembered, bent', scaling: 'remembered', bent: true, damping: 1e-3 },
  { name: 'present', scaling: 'present', bent: false, damping: 1e-3 },
  { name: 'start', scaling: 'start', bent: false, damping: 1e-2 },
  { name: 'remembered', scaling: 'remembered', bent: false, damping: 10 },
  { name: 'present, bent', scaling: 'present', bent: true, damping: 1 },
];

export type Descent = NonNullable<ReturnType<typeof createDescent>>;

/** A place on the way down; null where the curve cannot be had at the start. Residuals are over sigma. */
export function createDescent(problem: CurveProblem) {
  const n = problem.start.length;
  const count = problem.observed.length;
  const x = Float64Array.from(problem.start);
  const residual = new Float64Array(count);
  const trial = new Float64Array(n);
  const trialResidual = new Float64Array(count);
  const jacobian = new Float64Array(count * n);
  const state = {
    problem,
    x,
    residual,
    /** d model / d parameter, not weighted. */
    jacobian,
    cost: Infinity,
    rounds: 0,
    evaluations: 0,
    tired: false,

    /** (observed - model) / sigma at a place; false where the curve has none. */
    residualAt(at: Float64Array, out: Float64Array): boolean {
      state.evaluations++;
      if (!problem.model(at, out)) return false;
      for (let i = 0; i < count; i++) {
        out[i] = (problem.observed[i] - out[i]) / (problem.sigma?.[i] ?? 1);
        if (!Number.isFinite(out[i])) return false;
      }
      return true;
    },

    /** Slopes at the present place; false, and all of them zero, where they cannot be had. */
    linearise(): boolean {
      const had = curveSlopes(problem, x, jacobian);
      if (!had) jacobian.fill(0);
      return had;
    },

    /** Goes there unless the cost rises by more than the share allowed; true where it went. */
    moveBy(step: Float64Array, rise = 0): boolean {
      for (let j = 0; j < n; j++) trial[j] = x[j] + step[j];
      if (!state.residualAt(trial, trialResidual)) return false;
      const next = halfSquare(trialResidual);
      if (!(next < state.cost * (1 + rise) || (rise > 0 && next === 0))) return false;
      x.set(trial);
      residual.set(trialResidual);
      state.cost = next;
      return true;
    },
  };
  if (!state.residualAt(x, residual)) return null;
  state.cost = halfSquare(residual);
  return state;
}

function halfSquare(r: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < r.length; i++) sum += r[i] * r[i];
  return sum / 2;
}

const MOST_ROUNDS = 1500;
const MOST_TRIES = 40;
/** A bend larger than this share of the step is not trusted. */
const MOST_BEND = 0.75;

/** Goes down by one policy until no step makes it better; damping after H. B. Nielsen (IMM-REP-1999-05, 1999). */
export function descend(state: Descent, policy: Policy): void {
  const n = state.x.length;
  const scaling = new Float64Array(n);
  let damping = policy.damping;
  let growth = 2;
  let still = 0;
  for (; state.rounds < MOST_ROUNDS; state.rounds++) {
    if (!state.linearise()) return;
    setScaling(state, policy, scaling);
    let moved = false;
    for (let tries = 0; tries < MOST_TRIES && !moved; tries++) {
      const before = state.cost;
      const { step, gain } = dampedStep(state, scaling, damping, policy.bent);
      moved = step !== null && state.moveBy(step);
      if (moved) {
        const ratio = gain > 0 ? (before - state.cost) / gain : 0;
        damping *= Math.max(1 / 3, 1 - (2 * ratio - 1) ** 3);
        damping = Math.max(damping, 1e-18);
        growth = 2;
        still = before - state.cost > 1e-13 * before ? 0 : still + 1;
      } else {
        damping *= growth;
        growth = Math.min(growth * 2, 1024);
      }
    }
    if (!moved || still > 3 || state.cost === 0) return;
  }
  state.tired = true;
}

function setScaling(state: Descent, policy: Policy, out: Float64Array): void {
  if (policy.scaling === 'start' && out[0] > 0) return;
  const present = columnLengths(state);
  if (policy.scaling === 'start') {
    // Equal damping of the parameters as shares of where they start, as strong as the heaviest column.
    const sizes = present.map((length, j) => {
      const { typical, start } = state.problem;
      return (typical?.[j] ?? Math.abs(start[j])) || 1 / length || 1;
    });
    const heaviest = Math.max(...present.map((length, j) => length * sizes[j])) || 1;
    sizes.forEach((size, j) => (out[j] = heaviest / size));
    return;
  }
  present.forEach((length, j) => {
    out[j] = policy.scaling === 'present' ? length : Math.max(length, out[j]);
    if (!(out[j] > 0)) out[j] = 1;
  });
}

function columnLengths({ jacobian, x, problem }: Descent): Float64Array {
  const n = x.length;
  return x.map((_, j) => {
    let square = 0;
    for (let i = 0; i < problem.observed.length; i++) {
      square += (jacobian[i * n + j] / (problem.sigma?.[i] ?? 1)) ** 2;
    }
    return Math.sqrt(square);
  });
}

/**
 * The step that makes |r - J s|^2 + damping |D s|^2 least, with what the straight model says it gains; null where the bend
 * is too large.
 */
function dampedStep(
  state: Descent,
  scaling: Float64Array,
  damping: number,
  bent: boolean,
): { step: Float64Array | null; gain: number } {
  const { jacobian, residual, problem, x } = state;
  const n = x.length;
  const count = residual.length;
  const rows = count + n;
  const a = new Float64Array(rows * n);
  const root = Math.sqrt(damping);
  for (let j = 0; j < n; j++) {
    for (let i = 0; i < count; i++) {
      a[j * rows + i] = jacobian[i * n + j] / (problem.sigma?.[i] ?? 1) / scaling[j];
    }
    a[j * rows + count + j] = root;
  }
  const factors = factorise(a, rows, n);
  const solve = (right: Float64Array): Float64Array => {
    const work = new Float64Array(rows);
    work.set(right);
    applyTransposed(factors, work);
    solveUpper(factors, n, work);
    const out = new Float64Array(n);
    for (let k = 0; k < n; k++) out[factors.order[k]] = work[k] / scaling[factors.order[k]];
    return out;
  };
  const step = solve(residual);
  let gain = 0;
  const along = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    for (let j = 0; j < n; j++) along[i] += jacobian[i * n + j] * step[j];
    along[i] /= problem.sigma?.[i] ?? 1;
    gain += along[i] * (residual[i] - along[i] / 2);
  }
  return { step: bent ? bend(state, step, along, scaling, solve) : step, gain };
}

/** Share of a step at which the curve's second derivative along it is felt. */
const FEELER = 0.1;

/** Adds half the acceleration along the step; null where it is more than the step can bear. */
function bend(
  state: Descent,
  step: Float64Array,
  along: Float64Array,
  scaling: Float64Array,
  solve: (right: Float64Array) => Float64Array,
): Float64Array | null {
  const second = new Float64Array(along.length);
  const there = state.x.map((value, j) => value + FEELER * step[j]);
  if (!state.residualAt(there, second)) return null;
  for (let i = 0; i < second.length; i++) {
    // Residuals fall as the model rises, so the model's second derivative is minus theirs.
    second[i] = (2 / FEELER) * ((second[i] - state.residual[i]) / FEELER + along[i]);
  }
  const acceleration = solve(second);
  const size = (v: Float64Array) => Math.hypot(...v.map((value, j) => value * scaling[j]));
  if (!(size(acceleration) <= MOST_BEND * size(step))) return null;
  return step.map((value, j) => value + acceleration[j] / 2);
}
