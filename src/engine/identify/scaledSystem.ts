import { requireFinite } from '../result';
import { type Factors, factorise } from './householder';
import type { LinearProblem } from './linearFit';
import { type Singular, singular } from './singular';

/** A least squares problem, checked, weighted, scaled and factorised. */
export interface ScaledSystem {
  /** Observations and parameters. */
  readonly count: number;
  readonly n: number;
  readonly design: ArrayLike<number>;
  readonly observed: ArrayLike<number>;
  readonly sigma: ArrayLike<number> | null;
  /** 1 / sigma. */
  readonly weight: Float64Array;
  /** Powers of two by which the columns were multiplied, so that each is about 1 long. */
  readonly scale: Float64Array;
  /** Lengths of the weighted and scaled columns. */
  readonly lengths: Float64Array;
  readonly factors: Factors;
  /** Of the scaled design; the right vectors' rows are the parameters in their own order. */
  readonly singular: Singular;
  readonly rank: number;
  readonly determined: readonly boolean[];
}

/** Singular values below this share of the largest are none, for a side of 10. */
const RANK_SHARE = 1e-13;
/** A parameter with a larger part in a blind direction is not determined. */
const BLIND_PART = 1e-7;

export function scaledSystem({
  design,
  parameters: n,
  observed,
  sigma,
  designError = 0,
}: LinearProblem): ScaledSystem {
  const count = observed.length;
  check(design, n, observed, sigma);
  const weight = new Float64Array(count).fill(1);
  if (sigma) for (let i = 0; i < count; i++) weight[i] = 1 / sigma[i];
  const rows = Math.max(count, n);
  const columns = new Float64Array(rows * n);
  const scale = new Float64Array(n);
  const lengths = new Float64Array(n);
  for (let j = 0; j < n; j++) {
    const column = columns.subarray(j * rows, (j + 1) * rows);
    for (let i = 0; i < count; i++) column[i] = design[i * n + j] * weight[i];
    const length = lengthOf(column);
    scale[j] = length > 0 ? 2 ** -Math.round(Math.log2(length)) : 1;
    lengths[j] = length * scale[j];
    for (let i = 0; i < count; i++) column[i] *= scale[j];
  }
  const factors = factorise(columns, rows, n);
  const pivoted = singular(factors.r, n);
  const right = new Float64Array(n * n);
  for (let k = 0; k < n; k++) {
    for (let c = 0; c < n; c++) right[factors.order[k] * n + c] = pivoted.right[k * n + c];
  }
  const least = Math.max((RANK_SHARE * rows) / 10, designError) * (pivoted.values[0] ?? 0);
  const rank = pivoted.values.filter((value) => value > Math.max(least, 0)).length;
  const determined = Array.from({ length: n }, (_, j) => {
    for (let k = rank; k < n; k++) if (Math.abs(right[j * n + k]) > BLIND_PART) return false;
    return true;
  });
  return {
    count,
    n,
    design,
    observed,
    sigma: sigma ?? null,
    weight,
    scale,
    lengths,
    factors,
    singular: { values: pivoted.values, right },
    rank,
    determined,
  };
}

/** Length of a column, by its largest number so that no square overflows or is lost. */
function lengthOf(column: Float64Array): number {
  let largest = 0;
  for (let i = 0; i < column.length; i++) largest = Math.max(largest, Math.abs(column[i]));
  if (!(largest > 0)) return 0;
  let sum = 0;
  for (let i = 0; i < column.length; i++) sum += (column[i] / largest) ** 2;
  return largest * Math.sqrt(sum);
}

function check(
  design: ArrayLike<number>,
  n: number,
  observed: ArrayLike<number>,
  sigma: ArrayLike<number> | undefined,
): void {
  const count = observed.length;
  if (n < 1 || design.length !== count * n) {
    throw new RangeError(`linearFit(): ${design.length} numbers for ${count} x ${n}`);
  }
  if (sigma && sigma.length !== count) {
    throw new RangeError(`linearFit(): ${sigma.length} sigmas for ${count} observations`);
  }
  for (let i = 0; i < design.length; i++) requireFinite(design[i], 'linearFit(): design');
  for (let i = 0; i < count; i++) {
    requireFinite(observed[i], 'linearFit(): observed');
    if (sigma && !(sigma[i] > 0 && sigma[i] < Infinity)) {
      throw new RangeError(`linearFit(): sigma is not positive and finite: ${sigma[i]}`);
    }
  }
}
