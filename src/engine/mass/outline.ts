import { gaussLegendre } from '../math/gaussLegendre';
import type { Outline } from './solid';

/**
 * Moments of a plane region by Green's theorem: int int x^p y^q dA = closed int x^(p+1) / (p+1) y^q dy,
 * taken counter-clockwise; a clockwise outline gives the opposite sign.
 *
 * On a straight edge the integrand is a polynomial of degree <= 4 in the edge parameter for p + q <= 3, so three
 * Gauss-Legendre points are exact. On an arc (sweep <= half a turn) it is a trigonometric polynomial of degree
 * <= 5 in the sweep angle; sixteen points leave less than 1e-16 of it. Arc points are written from the chord's
 * midpoint with half-angle products, so a very flat arc loses no digits.
 */
const EDGE_RULE = gaussLegendre(3);
const ARC_POINTS = 16;
const ARC_RULE = gaussLegendre(ARC_POINTS);

/** Quadrature points on an outline: positions from (x0, y0), and dy times its weight. Grows, is never given back. */
let us = new Float64Array(256);
let vs = new Float64Array(256);
let dvs = new Float64Array(256);
let count = 0;

/** Lays the points of `outline` into the arrays above: one pass over plain numbers then does each integral. */
function layPoints(outline: Outline, x0: number, y0: number): void {
  const n = outline.length;
  if (us.length < ARC_POINTS * n) makeRoom(2 * ARC_POINTS * n);
  count = 0;
  for (let i = 0; i < n; i++) {
    const from = outline[i];
    const to = outline[i + 1 === n ? 0 : i + 1];
    const mx = (from[0] + to[0]) / 2 - x0;
    const my = (from[1] + to[1]) / 2 - y0;
    const hx = (to[0] - from[0]) / 2;
    const hy = (to[1] - from[1]) / 2;
    const bulge = from.length > 2 ? (from[2] as number) : 0;
    if (bulge !== 0) layArc(mx, my, hx, hy, bulge);
    // A level edge has dy = 0 and gives nothing.
    else if (hy !== 0) layEdge(mx, my, hx, hy);
  }
}

function makeRoom(size: number): void {
  us = new Float64Array(size);
  vs = new Float64Array(size);
  dvs = new Float64Array(size);
}

function layEdge(mx: number, my: number, hx: number, hy: number): void {
  for (let k = 0; k < 3; k++) {
    const t = EDGE_RULE.nodes[k];
    us[count] = mx + t * hx;
    vs[count] = my + t * hy;
    dvs[count++] = EDGE_RULE.weights[k] * hy;
  }
}

/**
 * Half sweep a, its tangent of half `bulge`; point at sweep psi in [-a, a]: along the chord sin(psi) / sin(a), away from
 * it on the right side (for a counter-clockwise arc) by (cos(psi) - cos(a)) / sin(a), both in half chords. With
 * s = sin(psi/2) and S = sin(a/2): cos(psi) - cos(a) = 2 (S - s)(S + s), and one sine serves a pair of points.
 */
function layArc(mx: number, my: number, hx: number, hy: number, bulge: number): void {
  const half = Math.atan(bulge);
  const S = Math.sin(half);
  const sine = 2 * S * Math.cos(half);
  const rate = (2 * half) / sine;
  for (let k = 0; k < ARC_POINTS / 2; k++) {
    const s = Math.sin(half * ARC_RULE.nodes[k]);
    const turned = 2 * s * Math.sqrt(1 - s * s);
    const along = turned / sine;
    const away = (2 * (S - s) * (S + s)) / sine;
    const rateAlong = rate * (1 - 2 * s * s);
    const rateAway = rate * turned;
    const weight = ARC_RULE.weights[k];
    us[count] = mx + along * hx + away * hy;
    vs[count] = my + along * hy - away * hx;
    dvs[count++] = weight * (rateAlong * hy + rateAway * hx);
    us[count] = mx - along * hx + away * hy;
    vs[count] = my - along * hy - away * hx;
    dvs[count++] = weight * (rateAlong * hy - rateAway * hx);
  }
}

/** Area, first and second moments of a region about the point (x0, y0). */
export interface AreaMoments {
  area: number;
  x: number;
  y: number;
  xx: number;
  yy: number;
  xy: number;
}

/** Adds `factor` times the outline's area moments about the outline frame's origin to `out`. */
export function addAreaMoments(outline: Outline, factor: number, out: AreaMoments): void {
  if (isCircle(outline)) {
    addCircleMoments(outline, factor, out);
    return;
  }
  // Integrated about the first vertex, then shifted: a small far outline keeps its digits.
  const x0 = outline[0][0];
  const y0 = outline[0][1];
  let area = 0;
  let x = 0;
  let y = 0;
  let xx = 0;
  let yy = 0;
  let xy = 0;
  layPoints(outline, x0, y0);
  for (let k = 0; k < count; k++) {
    const u = us[k];
    const v = vs[k];
    const dv = dvs[k];
    area += u * dv;
    x += (u * u * dv) / 2;
    y += u * v * dv;
    xx += (u * u * u * dv) / 3;
    yy += u * v * v * dv;
    xy += (u * u * v * dv) / 2;
  }
  out.area += factor * area;
  out.x += factor * (x + x0 * area);
  out.y += factor * (y + y0 * area);
  out.xx += factor * (xx + 2 * x0 * x + x0 * x0 * area);
  out.yy += factor * (yy + 2 * y0 * y + y0 * y0 * area);
  out.xy += factor * (xy + x0 * y + y0 * x + x0 * y0 * area);
}

function isCircle(outline: Outline): boolean {
  return (
    outline.length === 2 && Math.abs(outline[0][2] ?? 0) === 1 && outline[0][2] === outline[1][2]
  );
}

/** Two half circles, the commonest hole: pi r^2, and pi r^4 / 4 about its own middle. */
function addCircleMoments([from, to]: Outline, factor: number, out: AreaMoments): void {
  const x = (from[0] + to[0]) / 2;
  const y = (from[1] + to[1]) / 2;
  const dx = (to[0] - from[0]) / 2;
  const dy = (to[1] - from[1]) / 2;
  const square = dx * dx + dy * dy;
  const area = factor * Math.PI * square * (from[2] as number);
  out.area += area;
  out.x += area * x;
  out.y += area * y;
  out.xx += area * (x * x + square / 4);
  out.yy += area * (y * y + square / 4);
  out.xy += area * x * y;
}

/** int r dA, int r h dA, int r h^2 dA, int r^3 dA of a profile in (r, h). */
export interface ProfileMoments {
  r: number;
  rh: number;
  rhh: number;
  rrr: number;
}

/**
 * The integrals a solid of revolution needs, h taken from `h0`. Counter-clockwise (r to the right, h up) is positive.
 * Integrated about the first vertex in r too, then shifted: a thin ring far from its axis keeps its digits.
 */
export function profileMoments(profile: Outline, h0: number, out: ProfileMoments): void {
  const r0 = profile[0][0];
  let area = 0;
  let u1 = 0;
  let u2 = 0;
  let u3 = 0;
  let h1 = 0;
  let uh = 0;
  let hh = 0;
  let uhh = 0;
  layPoints(profile, r0, h0);
  for (let k = 0; k < count; k++) {
    const u = us[k];
    const h = vs[k];
    const dh = dvs[k];
    const half = (u * u * dh) / 2;
    area += u * dh;
    u1 += half;
    u2 += (half * u * 2) / 3;
    u3 += (half * u * u) / 2;
    h1 += u * h * dh;
    uh += half * h;
    hh += u * h * h * dh;
    uhh += half * h * h;
  }
  out.r = r0 * area + u1;
  out.rh = r0 * h1 + uh;
  out.rhh = r0 * hh + uhh;
  out.rrr = r0 * (r0 * (r0 * area + 3 * u1) + 3 * u2) + u3;
}
