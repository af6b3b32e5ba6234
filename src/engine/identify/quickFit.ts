import { applyTransposed, factorise, solveUpper } from './householder';

/** A weighted least squares solution without its covariance. */
export interface QuickFit {
  readonly estimate: Float64Array;
  readonly chiSquare: number;
  readonly rank: number;
  /** False: columns depend on each other to 1e-9, and the estimate is one of many. */
  readonly isWhole: boolean;
}

const DEPENDENT = 1e-9;

/**
 * Weighted least squares by one pivoted QR, for the many solutions on the way to a fit: about 1e-12 of the estimate for the
 * conditions of a bench. `linearFit` makes the last one. `design` is row-major, observations x `n`.
 */
export function quickFit(
  design: ArrayLike<number>,
  n: number,
  observed: ArrayLike<number>,
  sigma: ArrayLike<number>,
): QuickFit {
  const count = observed.length;
  const rows = Math.max(count, n);
  const weight = new Float64Array(count);
  for (let i = 0; i < count; i++) weight[i] = 1 / sigma[i];
  const columns = new Float64Array(rows * n);
  const scale = new Float64Array(n);
  for (let j = 0; j < n; j++) {
    let square = 0;
    for (let i = 0; i < count; i++) {
      const value = design[i * n + j] * weight[i];
      columns[j * rows + i] = value;
      square += value * value;
    }
    scale[j] = square > 0 ? 1 / Math.sqrt(square) : 1;
    for (let i = 0; i < count; i++) columns[j * rows + i] *= scale[j];
  }
  const factors = factorise(columns, rows, n);
  const right = new Float64Array(rows);
  for (let i = 0; i < count; i++) right[i] = observed[i] * weight[i];
  applyTransposed(factors, right);
  let rank = 0;
  while (rank < n && Math.abs(factors.r[rank * n + rank]) > DEPENDENT) rank++;
  let chiSquare = 0;
  for (let i = rank; i < count; i++) chiSquare += right[i] * right[i];
  solveUpper(factors, rank, right);
  const estimate = new Float64Array(n);
  for (let k = 0; k < rank; k++) {
    const j = factors.order[k];
    estimate[j] = right[k] * scale[j];
  }
  return { estimate, chiSquare, rank, isWhole: rank === n };
}
