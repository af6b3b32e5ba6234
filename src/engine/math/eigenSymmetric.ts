import type { Mat3, Vec3 } from './vector';

/** A symmetric 3x3 matrix by its six numbers. */
export interface Symmetric3 {
  readonly xx: number;
  readonly yy: number;
  readonly zz: number;
  readonly xy: number;
  readonly xz: number;
  readonly yz: number;
}

export interface EigenSystem {
  /** Ascending. */
  readonly values: Vec3;
  /** Columns are unit eigenvectors in the order of `values`, a right-handed set. */
  readonly vectors: Mat3;
  /**
   * How many values coincide within `1e-12` of the largest (or within `rounding`): 'none', the 'lower' two, the
   * 'upper' two, or 'all'.
   * Where values coincide, the vectors among them are one choice of many.
   */
  readonly repeated: 'none' | 'lower' | 'upper' | 'all';
}

/**
 * Eigenvalues and vectors of a symmetric 3x3 matrix by cyclic Jacobi rotations (Golub and Van Loan, Matrix
 * Computations, 8.5): slower than a closed cubic and accurate to rounding for clustered values too.
 * `rounding` is the size of error already in the matrix: values nearer than that count as one.
 */
export function eigenSymmetric(matrix: Symmetric3, rounding = 0): EigenSystem {
  const a = [
    [matrix.xx, matrix.xy, matrix.xz],
    [matrix.xy, matrix.yy, matrix.yz],
    [matrix.xz, matrix.yz, matrix.zz],
  ];
  const v = [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ];
  for (let sweep = 0; sweep < 60; sweep++) {
    const off = a[0][1] ** 2 + a[0][2] ** 2 + a[1][2] ** 2;
    const diagonal = a[0][0] ** 2 + a[1][1] ** 2 + a[2][2] ** 2;
    if (off <= 1e-34 * diagonal || off === 0) break;
    for (let p = 0; p < 2; p++) {
      for (let q = p + 1; q < 3; q++) {
        if (a[p][q] === 0) continue;
        const theta = (a[q][q] - a[p][p]) / (2 * a[p][q]);
        const t = (theta < 0 ? -1 : 1) / (Math.abs(theta) + Math.hypot(1, theta));
        const c = 1 / Math.hypot(1, t);
        rotate(a, v, p, q, c, t * c);
      }
    }
  }
  const order = [0, 1, 2].toSorted((i, j) => a[i][i] - a[j][j]);
  const values: Vec3 = [a[order[0]][order[0]], a[order[1]][order[1]], a[order[2]][order[2]]];
  const column = (k: number): Vec3 => [v[0][order[k]], v[1][order[k]], v[2][order[k]]];
  const e0 = column(0);
  const e1 = column(1);
  const e2 = column(2);
  const determinant =
    e0[0] * (e1[1] * e2[2] - e1[2] * e2[1]) -
    e0[1] * (e1[0] * e2[2] - e1[2] * e2[0]) +
    e0[2] * (e1[0] * e2[1] - e1[1] * e2[0]);
  const flip = determinant < 0 ? -1 : 1;
  const near = Math.max(rounding, 1e-12 * Math.max(Math.abs(values[0]), Math.abs(values[2])));
  const lower = values[1] - values[0] <= near;
  const upper = values[2] - values[1] <= near;
  return {
    values,
    vectors: [e0[0], e1[0], flip * e2[0], e0[1], e1[1], flip * e2[1], e0[2], e1[2], flip * e2[2]],
    repeated: lower && upper ? 'all' : lower ? 'lower' : upper ? 'upper' : 'none',
  };
}

/** a <- G^T a G and v <- v G for the rotation by (c, s) in the plane (p, q). */
function rotate(a: number[][], v: number[][], p: number, q: number, c: number, s: number): void {
  for (let k = 0; k < 3; k++) {
    const kp = a[k][p];
    const kq = a[k][q];
    a[k][p] = c * kp - s * kq;
    a[k][q] = s * kp + c * kq;
  }
  for (let k = 0; k < 3; k++) {
    const pk = a[p][k];
    const qk = a[q][k];
    a[p][k] = c * pk - s * qk;
    a[q][k] = s * pk + c * qk;
    const vp = v[k][p];
    const vq = v[k][q];
    v[k][p] = c * vp - s * vq;
    v[k][q] = s * vp + c * vq;
  }
  a[p][q] = 0;
  a[q][p] = 0;
}
