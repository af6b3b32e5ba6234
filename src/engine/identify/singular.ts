/** Singular values, largest first, and the right singular vectors as columns (n x n, row-major). */
export interface Singular {
  readonly values: Float64Array;
  readonly right: Float64Array;
}

const MOST_SWEEPS = 60;

/**
 * Singular values and right vectors of an n x n matrix (row-major) by one-sided Jacobi rotations (Hestenes, J. SIAM 6, 1958):
 * pairs of columns are turned until all are square to each other. Small singular values keep their digits where the columns
 * differ only by scale (Demmel and Veselic, SIAM J. Matrix Anal. 13, 1992). For the few unknowns of a fit.
 */
export function singular(matrix: Float64Array, n: number): Singular {
  const a = Float64Array.from(matrix);
  const v = new Float64Array(n * n);
  for (let i = 0; i < n; i++) v[i * n + i] = 1;
  for (let sweep = 0; sweep < MOST_SWEEPS; sweep++) {
    let turned = false;
    for (let p = 0; p < n - 1; p++) {
      for (let q = p + 1; q < n; q++) turned = turnPair(a, v, n, p, q) || turned;
    }
    if (!turned) break;
  }
  const lengths = Array.from({ length: n }, (_, j) => columnLength(a, n, j));
  const order = lengths.map((_, j) => j).toSorted((x, y) => lengths[y] - lengths[x]);
  const right = new Float64Array(n * n);
  order.forEach((from, to) => {
    for (let i = 0; i < n; i++) right[i * n + to] = v[i * n + from];
  });
  return { values: Float64Array.from(order, (j) => lengths[j]), right };
}

function columnLength(a: Float64Array, n: number, j: number): number {
  let sum = 0;
  for (let i = 0; i < n; i++) sum += a[i * n + j] * a[i * n + j];
  return Math.sqrt(sum);
}

/** Turns columns p and q square to each other, in `v` too; false where they are. */
function turnPair(a: Float64Array, v: Float64Array, n: number, p: number, q: number): boolean {
  let pp = 0;
  let qq = 0;
  let pq = 0;
  for (let i = 0; i < n; i++) {
    pp += a[i * n + p] * a[i * n + p];
    qq += a[i * n + q] * a[i * n + q];
    pq += a[i * n + p] * a[i * n + q];
  }
  if (!(Math.abs(pq) > 1e-16 * Math.sqrt(pp * qq))) return false;
  const tau = (qq - pp) / (2 * pq);
  const t = (tau < 0 ? -1 : 1) / (Math.abs(tau) + Math.sqrt(1 + tau * tau));
  const c = 1 / Math.sqrt(1 + t * t);
  rotate(a, n, p, q, c, c * t);
  rotate(v, n, p, q, c, c * t);
  return true;
}

function rotate(m: Float64Array, n: number, p: number, q: number, c: number, s: number): void {
  for (let i = 0; i < n; i++) {
    const x = m[i * n + p];
    const y = m[i * n + q];
    m[i * n + p] = c * x - s * y;
    m[i * n + q] = s * x + c * y;
  }
}
