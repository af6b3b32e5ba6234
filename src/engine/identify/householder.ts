/**
 * A = Q R P^T of a matrix with `rows` >= `columns`, Householder reflections with column pivoting (Businger and Golub, Numer.
 * Math. 7, 1965): the diagonal of R falls in size. Backward stable: R is exact for a matrix within a few rounding errors of
 * each column of A.
 */
export interface Factors {
  readonly rows: number;
  readonly columns: number;
  /** Upper triangle, row-major columns x columns. */
  readonly r: Float64Array;
  /** order[k] is the column of A that stands k-th in R. */
  readonly order: Int32Array;
  /** The reflections' vectors, one after the other, each of `rows` numbers; their lengths are sqrt 2, or 0. */
  readonly reflections: Float64Array;
}

/** `a` column-major, rows x columns; it is destroyed. */
export function factorise(a: Float64Array, rows: number, columns: number): Factors {
  if (rows < columns) throw new RangeError(`factorise(): fewer rows than columns: ${rows}`);
  const order = Int32Array.from({ length: columns }, (_, j) => j);
  const reflections = new Float64Array(rows * columns);
  for (let k = 0; k < columns; k++) {
    bringForward(a, rows, columns, k, order);
    const column = a.subarray(k * rows, (k + 1) * rows);
    const v = reflections.subarray(k * rows, (k + 1) * rows);
    if (!reflector(column, k, v)) continue;
    for (let j = k; j < columns; j++) reflect(v, k, a.subarray(j * rows, (j + 1) * rows));
  }
  const r = new Float64Array(columns * columns);
  for (let i = 0; i < columns; i++) {
    for (let j = i; j < columns; j++) r[i * columns + j] = a[j * rows + i];
  }
  return { rows, columns, r, order, reflections };
}

/** Puts the column with the longest remainder k-th. Remainders are summed anew: columns are few. */
function bringForward(
  a: Float64Array,
  rows: number,
  columns: number,
  k: number,
  order: Int32Array,
): void {
  let best = k;
  let longest = -1;
  for (let j = k; j < columns; j++) {
    let sum = 0;
    for (let i = k; i < rows; i++) sum += a[j * rows + i] * a[j * rows + i];
    if (sum > longest) {
      longest = sum;
      best = j;
    }
  }
  if (best === k) return;
  for (let i = 0; i < rows; i++) {
    const held = a[k * rows + i];
    a[k * rows + i] = a[best * rows + i];
    a[best * rows + i] = held;
  }
  const held = order[k];
  order[k] = order[best];
  order[best] = held;
}

/** Writes v with |v|^2 = 2 such that (1 - v v^T) turns `column` below k onto its k-th axis; false where nothing is there. */
function reflector(column: Float64Array, k: number, v: Float64Array): boolean {
  let square = 0;
  for (let i = k; i < column.length; i++) square += column[i] * column[i];
  const length = Math.sqrt(square);
  if (!(length > 0)) return false;
  const sign = column[k] < 0 ? -1 : 1;
  const head = column[k] + sign * length;
  const scale = Math.sqrt(2 / (square + 2 * sign * length * column[k] + length * length));
  v[k] = head * scale;
  for (let i = k + 1; i < column.length; i++) v[i] = column[i] * scale;
  return true;
}

function reflect(v: Float64Array, k: number, x: Float64Array): void {
  let dot = 0;
  for (let i = k; i < x.length; i++) dot += v[i] * x[i];
  for (let i = k; i < x.length; i++) x[i] -= dot * v[i];
}

/** x becomes Q^T x, in place. */
export function applyTransposed({ rows, columns, reflections }: Factors, x: Float64Array): void {
  for (let k = 0; k < columns; k++) reflect(reflections.subarray(k * rows, (k + 1) * rows), k, x);
}

/** x becomes Q x, in place. */
export function applyFactor({ rows, columns, reflections }: Factors, x: Float64Array): void {
  for (let k = columns - 1; k >= 0; k--) {
    reflect(reflections.subarray(k * rows, (k + 1) * rows), k, x);
  }
}

/** The first `rank` of x become R^-1 x (leading rank x rank triangle), in place. */
export function solveUpper({ r, columns }: Factors, rank: number, x: Float64Array): void {
  for (let i = rank - 1; i >= 0; i--) {
    for (let j = i + 1; j < rank; j++) x[i] -= r[i * columns + j] * x[j];
    x[i] /= r[i * columns + i];
  }
}

/** The first `rank` of x become R^-T x, in place. */
export function solveLower({ r, columns }: Factors, rank: number, x: Float64Array): void {
  for (let i = 0; i < rank; i++) {
    for (let j = 0; j < i; j++) x[i] -= r[j * columns + i] * x[j];
    x[i] /= r[i * columns + i];
  }
}
