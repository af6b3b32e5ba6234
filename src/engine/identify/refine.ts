import { ExactSum } from './exactSum';
import { applyFactor, applyTransposed, solveLower, solveUpper } from './householder';
import type { ScaledSystem } from './scaledSystem';

const MOST_ROUNDS = 12;

/**
 * Solves the augmented system (r + A x = b, A^T r = 0, both weighted) by the factors at hand, again and again for what is
 * left, which is worked out in double-double from the design's own numbers; x and r are kept in two pieces each. Stops when
 * a correction is below rounding or no longer half of the one before. With less than full rank the pivoted columns beyond
 * the rank stay out.
 */
export function refinedSolution(
  system: ScaledSystem,
  mostRounds = MOST_ROUNDS,
): {
  estimate: Float64Array;
  residual: Float64Array;
  rounds: number;
} {
  const { count, n, weight } = system;
  const estimate = new Float64Array(n);
  const estimateLow = new Float64Array(n);
  const residual = new Float64Array(count);
  const residualLow = new Float64Array(count);
  const { rows } = system.factors;
  const above = new Float64Array(rows);
  const below = new Float64Array(n);
  const work = () => {
    leftAbove(system, estimate, estimateLow, residual, residualLow, above);
    leftBelow(system, residual, residualLow, below);
    correction(system, above, below);
  };
  const take = () => {
    for (let j = 0; j < n; j++) addTo(estimate, estimateLow, j, below[j] * system.scale[j]);
    for (let i = 0; i < count; i++) addTo(residual, residualLow, i, above[i]);
  };
  // The first round is the plain solution; later ones must be worth their while.
  work();
  take();
  let rounds = 1;
  for (let last = Infinity; rounds < mostRounds; rounds++) {
    work();
    const size = relativeSize(below, estimate, system);
    if (!(size < 0.5 * last)) break;
    take();
    if (size < 1e-19) break;
    last = size;
  }
  for (let i = 0; i < count; i++) residual[i] /= weight[i];
  return { estimate, residual, rounds };
}

function addTo(high: Float64Array, low: Float64Array, i: number, x: number): void {
  sum.set(high[i], low[i]);
  sum.add(x);
  high[i] = sum.high;
  low[i] = sum.low;
}

const sum = new ExactSum();

/** w (b - A x) - r for each observation. */
function leftAbove(
  { count, n, design, observed, weight }: ScaledSystem,
  x: Float64Array,
  xLow: Float64Array,
  r: Float64Array,
  rLow: Float64Array,
  out: Float64Array,
): void {
  out.fill(0);
  for (let i = 0; i < count; i++) {
    sum.set(observed[i]);
    for (let j = 0; j < n; j++) {
      sum.addProduct(-design[i * n + j], x[j]);
      sum.add(-design[i * n + j] * xLow[j]);
    }
    const [high, low] = [sum.high, sum.low];
    sum.set(0);
    sum.addProduct(high, weight[i]);
    sum.add(low * weight[i]);
    sum.add(-r[i]);
    sum.add(-rLow[i]);
    out[i] = sum.value;
  }
}

/** - scale A^T w r for each parameter. */
function leftBelow(
  { count, n, design, weight, scale }: ScaledSystem,
  r: Float64Array,
  rLow: Float64Array,
  out: Float64Array,
): void {
  for (let j = 0; j < n; j++) {
    sum.set(0);
    for (let i = 0; i < count; i++) {
      const a = design[i * n + j];
      // Powers of two aside, rounding of w r is like rounding of r: below what counts.
      const wr = r[i] * weight[i];
      sum.addProduct(-a, wr);
      sum.add(-a * rLow[i] * weight[i]);
    }
    out[j] = sum.value * scale[j];
  }
}

/** f, g become the corrections of r and of the scaled x, in place. */
function correction({ factors, rank }: ScaledSystem, f: Float64Array, g: Float64Array): void {
  const { order, columns } = factors;
  const h = new Float64Array(columns);
  for (let k = 0; k < columns; k++) h[k] = g[order[k]];
  solveLower(factors, rank, h);
  applyTransposed(factors, f);
  const x = new Float64Array(columns);
  for (let k = 0; k < rank; k++) {
    x[k] = f[k] - h[k];
    f[k] = h[k];
  }
  solveUpper(factors, rank, x);
  applyFactor(factors, f);
  g.fill(0);
  for (let k = 0; k < rank; k++) g[order[k]] = x[k];
}

/** Of a correction against the estimate, both as the scaled columns count them. */
function relativeSize(step: Float64Array, x: Float64Array, { scale }: ScaledSystem): number {
  let above = 0;
  let below = 0;
  for (let j = 0; j < step.length; j++) {
    above += step[j] * step[j];
    below += (x[j] / scale[j]) ** 2;
  }
  return below > 0 ? Math.sqrt(above / below) : Math.sqrt(above);
}
