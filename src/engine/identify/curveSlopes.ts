import { CENTRAL } from '../math/stencil';
import type { CurveProblem } from './curveFit';

/** Step of the differences as a share of the parameter: eighth order leaves about 1e-12 where a curve bends over a tenth of it. */
const STEP = 1e-3;
/** A parameter below this share of its typical size is stepped as if it were that large, or rounding would drown the slope. */
const NEAR_ZERO = 0.1;

/**
 * d model / d parameter for every observation (row-major, observations x parameters): the problem's own slopes where it gives
 * them, else differences of eighth order (math/stencil), on smaller steps where the model refuses a point. False where no
 * slope can be had.
 */
export function curveSlopes(problem: CurveProblem, at: Float64Array, out: Float64Array): boolean {
  if (problem.slopes) return problem.slopes(at, out) && out.every(Number.isFinite);
  const n = at.length;
  const count = problem.observed.length;
  const point = Float64Array.from(at);
  const values = new Float64Array(count);
  const column = new Float64Array(count);
  for (let j = 0; j < n; j++) {
    const typical = problem.typical?.[j] ?? Math.abs(problem.start[j]);
    let step = STEP * (Math.max(Math.abs(at[j]), NEAR_ZERO * typical) || 1);
    let had = false;
    for (let tries = 0; tries < 6 && !had; tries++, step /= 16) {
      had = column8(problem, point, j, step, values, column);
      point[j] = at[j];
    }
    if (!had) return false;
    for (let i = 0; i < count; i++) out[i * n + j] = column[i];
  }
  return true;
}

function column8(
  problem: CurveProblem,
  point: Float64Array,
  j: number,
  step: number,
  values: Float64Array,
  column: Float64Array,
): boolean {
  const centre = point[j];
  column.fill(0);
  for (let k = 0; k < CENTRAL.offsets.length; k++) {
    point[j] = centre + CENTRAL.offsets[k] * step;
    if (!problem.model(point, values)) return false;
    for (let i = 0; i < column.length; i++) column[i] += (CENTRAL.order8[k] / step) * values[i];
  }
  return column.every(Number.isFinite);
}
