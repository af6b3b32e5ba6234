/**
 * Elliptic integrals of the first kind and Jacobi's functions, of the parameter m = k^2 in [0, 1].
 *
 * Every function takes m and, beside it, its complement 1 - m: close to m = 1 (a body that tumbles about its middle axis)
 * the complement carries all the digits, and 1 - m taken there would lose them. Relative error some 1e-15 (K) and
 * absolute 1e-14 (the functions, more by the rounding of u in a u of many periods).
 * Sources: M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions, 16.4 and 17.6 (arithmetic-geometric
 * mean); B. C. Carlson, Numerical Algorithms 10 (1995) 13-26 (R_F by duplication).
 */
export interface Jacobi {
  sn: number;
  cn: number;
  dn: number;
}

export function createJacobi(): Jacobi {
  return { sn: 0, cn: 1, dn: 1 };
}

/** The mean converges quadratically: from a complement of 1e-300 it needs no more than this. */
const MOST_MEANS = 16;
const scales = new Float64Array(MOST_MEANS + 1);
const differences = new Float64Array(MOST_MEANS + 1);

/** Complete integral K: a quarter period of sn; Infinity at m = 1. */
export function completeElliptic(complement: number): number {
  checkComplement(complement, 'completeElliptic()');
  if (complement === 0) return Infinity;
  let a = 1;
  let b = Math.sqrt(complement);
  for (let i = 0; i < MOST_MEANS && Math.abs(a - b) > 1e-16 * a; i++) {
    const mean = (a + b) / 2;
    b = Math.sqrt(a * b);
    a = mean;
  }
  return Math.PI / (a + b);
}

/** sn, cn and dn at u. At m = 1 they are tanh, sech, sech; at m = 0 sin, cos, 1. */
export function jacobi(u: number, complement: number, out: Jacobi): Jacobi {
  checkComplement(complement, 'jacobi()');
  const quarter = completeElliptic(complement);
  if (quarter === Infinity) return hyperbolic(u, out);
  // Within half a period of zero, where the phase is small.
  const within = u - 4 * quarter * Math.round(u / (4 * quarter));
  const phase = amplitude(within, complement);
  out.sn = Math.sin(phase);
  out.cn = Math.cos(phase);
  // 1 - m sn^2, written without the difference.
  out.dn = Math.sqrt(complement * out.sn * out.sn + out.cn * out.cn);
  return out;
}

function hyperbolic(u: number, out: Jacobi): Jacobi {
  out.sn = Math.tanh(u);
  out.cn = 1 / Math.cosh(u);
  out.dn = out.cn;
  return out;
}

/** am u by the scale of means, down again by phases (16.4.1 to 16.4.4). */
function amplitude(u: number, complement: number): number {
  let b = Math.sqrt(complement);
  scales[0] = 1;
  differences[0] = Math.sqrt(1 - complement);
  let n = 0;
  while (n < MOST_MEANS && Math.abs(differences[n]) > 1e-16 * scales[n]) {
    const a = scales[n];
    scales[n + 1] = (a + b) / 2;
    differences[n + 1] = (a - b) / 2;
    b = Math.sqrt(a * b);
    n++;
  }
  let phase = 2 ** n * scales[n] * u;
  for (; n > 0; n--) {
    const sine = (differences[n] / scales[n]) * Math.sin(phase);
    phase = (phase + Math.asin(Math.min(1, Math.max(-1, sine)))) / 2;
  }
  return phase;
}

/**
 * Incomplete integral F(phase | m), by (cosine, sine) of the phase so that nothing is lost at a quarter turn: in
 * [-2K, 2K] for phases in [-pi, pi]. The pair need not be of unit length. Infinite at the quarter turn of m = 1.
 */
export function incompleteElliptic(cosine: number, sine: number, complement: number): number {
  checkComplement(complement, 'incompleteElliptic()');
  const size = Math.hypot(cosine, sine);
  if (size === 0) return Number.NaN;
  const c = cosine / size;
  const s = sine / size;
  if (s === 0 && c > 0) return 0;
  const square = c * c;
  // 1 - m s^2.
  const delta = complement * s * s + square;
  const first = delta === 0 ? s * Infinity : s * carlsonRf(square, delta, 1);
  if (c >= 0) return first;
  const half = 2 * completeElliptic(complement);
  return (s < 0 ? -half : half) - first;
}

/** R_F(x, y, z), at most one of them zero: the mean goes on until a fifth-order series is exact to rounding. */
function carlsonRf(x: number, y: number, z: number): number {
  let [a, b, c] = [x, y, z];
  for (let i = 0; i < 100; i++) {
    const mean = (a + b + c) / 3;
    const [p, q, r] = [1 - a / mean, 1 - b / mean, 1 - c / mean];
    if (Math.max(Math.abs(p), Math.abs(q), Math.abs(r)) < 1e-3) {
      const e2 = p * q - r * r;
      const e3 = p * q * r;
      const series =
        1 - e2 / 10 + e3 / 14 + (e2 * e2) / 24 - (3 * e2 * e3) / 44 - (5 * e2 ** 3) / 208;
      return series / Math.sqrt(mean);
    }
    const [u, v, w] = [Math.sqrt(a), Math.sqrt(b), Math.sqrt(c)];
    const shift = u * v + v * w + w * u;
    a = (a + shift) / 4;
    b = (b + shift) / 4;
    c = (c + shift) / 4;
  }
  return Number.NaN;
}

function checkComplement(complement: number, where: string): void {
  if (!(complement >= 0 && complement <= 1)) {
    throw new RangeError(`${where}: complement 1 - m is not in [0, 1]: ${complement}`);
  }
}
