import { gaussLegendre } from '../math/gaussLegendre';

/**
 * Moments of the region between an arc and its chord, in half chords: the chord runs along c from -1 to 1, the arc lies
 * over it at height w(c), and
 *
 *   J_pq = int int c^p w^q  =  int w(c)^(q+1) / (q+1) c^p dc.
 *
 * A negative bulge puts the arc on the other side, w < 0: the moments then are those of a region that is taken away.
 * Written in place by `segmentMoments`.
 */
export type SegmentMoments = Float64Array;

/** Places of J_00, J_01, J_20, J_02, J_21 and J_03; J_10, J_11, J_30 and J_12 vanish by symmetry. */
export const J00 = 0;
export const J01 = 1;
export const J20 = 2;
export const J02 = 3;
export const J21 = 4;
export const J03 = 5;

export function createSegmentMoments(): SegmentMoments {
  return new Float64Array(6);
}

/** Bulge from which the closed form loses at most three digits of the least of the moments (1.4e-13); a quarter turn has 0.414. */
const DEEP = 0.4;

/**
 * The moments of the segment whose arc has this bulge (tangent of a quarter of its sweep, 0 < |bulge| <= 1). Dimensionless,
 * exact to rounding: absolutely for a deep arc, which is worked out in closed form, relatively for a flat one, where the
 * closed form would take large numbers from each other and quadrature stands in.
 */
export function segmentMoments(bulge: number, out: SegmentMoments): void {
  const b = Math.abs(bulge);
  if (b < DEEP) flatSegment(b, out);
  else deepSegment(b, out);
  if (bulge > 0) return;
  // Odd powers of w change their sign.
  out[J00] = -out[J00];
  out[J20] = -out[J20];
  out[J02] = -out[J02];
}

/**
 * In closed form. With the half sweep a = 2 atan b the centre lies k = cot a = (1 - b^2) / (2 b) below the chord and the
 * radius squared is q = 1 + k^2. The area is q a - k. About the centre, w' = w + k, the powers of w that are odd integrate
 * as polynomials of c, since w'^2 = q - c^2:
 *   int w' = 2/3,  int c^2 w' = 2/15,  int w'^3 = 2/3 q - 2/5,
 * and those that are even go back to the area:
 *   int c^2 = (q A) / 4 - k / 6,  int w'^2 = (q A) / 4 + k / 2.
 * The rest is Steiner's shift from the centre to the chord.
 */
function deepSegment(b: number, out: SegmentMoments): void {
  const k = ((1 - b) * (1 + b)) / (2 * b);
  const q = 1 + k * k;
  const area = 2 * q * Math.atan(b) - k;
  const along = (q * area) / 4 - k / 6;
  const across = (q * area) / 4 + k / 2;
  out[J00] = area;
  out[J01] = 2 / 3 - k * area;
  out[J20] = along;
  out[J02] = across - k * (4 / 3 - k * area);
  out[J21] = 2 / 15 - k * along;
  out[J03] = (2 / 3) * q - 2 / 5 - k * (3 * across - k * (2 - k * area));
}

const POINTS = 16;
const RULE = gaussLegendre(POINTS);

/**
 * By Gauss-Legendre over the sweep angle p in [-a, a], in which every integrand is a trigonometric polynomial of degree
 * <= 5: sixteen points leave less than 1e-16 of it up to half a turn. c = sin p / sin a and w = (cos p - cos a) / sin a;
 * with s = sin(p/2) and S = sin(a/2) the latter is 2 (S - s)(S + s) / sin a, which keeps its digits however flat the arc
 * is. Points come in pairs of the same w.
 */
function flatSegment(b: number, out: SegmentMoments): void {
  const half = Math.atan(b);
  const S = Math.sin(half);
  const sine = 2 * S * Math.cos(half);
  // dc over a pair of points, without weight and cos p.
  const rate = (4 * half) / sine;
  let area = 0;
  let first = 0;
  let along = 0;
  let across = 0;
  let mixed = 0;
  let cube = 0;
  for (let i = 0; i < POINTS / 2; i++) {
    const s = Math.sin(half * RULE.nodes[i]);
    const squared = s * s;
    const c = (2 * s * Math.sqrt(1 - squared)) / sine;
    const w = (2 * (S - s) * (S + s)) / sine;
    const strip = RULE.weights[i] * rate * (1 - 2 * squared) * w;
    area += strip;
    first += (strip * w) / 2;
    along += strip * c * c;
    across += (strip * w * w) / 3;
    mixed += (strip * w * c * c) / 2;
    cube += (strip * w * w * w) / 4;
  }
  out[J00] = area;
  out[J01] = first;
  out[J20] = along;
  out[J02] = across;
  out[J21] = mixed;
  out[J03] = cube;
}
