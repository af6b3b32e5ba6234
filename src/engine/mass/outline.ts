import { createSegmentMoments, J00, J01, J02, J20, segmentMoments } from './circularSegment';
import type { Outline } from './solid';

/**
 * Moments of a plane region by Green's theorem: int int x^p y^q dA = closed int x^(p+1) / (p+1) y^q dy,
 * taken counter-clockwise; a clockwise outline gives the opposite sign.
 *
 * On a straight edge, from its middle (mx, my) by t (hx, hy) either way, t in [-1, 1], the integrand is a polynomial of
 * degree <= 4 in t, of which the even powers stay: 2, 2/3 and 2/5. An arc is its chord and the segment over it, whose
 * moments about the chord's middle are those of `segmentMoments` in half chords, c along (hx, hy) and w along
 * (hy, -hx), to its right. Everything is taken about the first vertex and shifted at the end, so that a small far outline
 * keeps its digits.
 */
const segment = createSegmentMoments();

/** Area, first and second moments of a region about its frame's origin. */
export interface AreaMoments {
  area: number;
  x: number;
  y: number;
  xx: number;
  yy: number;
  xy: number;
}

/** Adds `factor` times the outline's area moments to `out`; counter-clockwise is positive. */
export function addAreaMoments(outline: Outline, factor: number, out: AreaMoments): void {
  outlineMoments(outline, scratch);
  addScaled(scratch, factor, out);
}

/** The same of the region inside, whichever way round its outline is written. */
export function addRegionMoments(outline: Outline, factor: number, out: AreaMoments): void {
  outlineMoments(outline, scratch);
  addScaled(scratch, scratch.area < 0 ? -factor : factor, out);
}

const scratch = createAreaMoments();

export function createAreaMoments(): AreaMoments {
  return { area: 0, x: 0, y: 0, xx: 0, yy: 0, xy: 0 };
}

export function clearArea(area: AreaMoments): void {
  area.area = 0;
  area.x = 0;
  area.y = 0;
  area.xx = 0;
  area.yy = 0;
  area.xy = 0;
}

function addScaled(one: AreaMoments, factor: number, out: AreaMoments): void {
  out.area += factor * one.area;
  out.x += factor * one.x;
  out.y += factor * one.y;
  out.xx += factor * one.xx;
  out.yy += factor * one.yy;
  out.xy += factor * one.xy;
}

/** What the segments over the arcs of an outline add to its sums; cleared before the first of them. */
const overArcs = createAreaMoments();

/** About the outline frame's origin, written over `out`. */
function outlineMoments(outline: Outline, out: AreaMoments): void {
  if (isCircle(outline)) {
    circleMoments(outline, out);
    return;
  }
  const x0 = outline[0][0];
  const y0 = outline[0][1];
  const n = outline.length;
  let area = 0;
  let x = 0;
  let y = 0;
  let xx = 0;
  let yy = 0;
  let xy = 0;
  let arcs = 0;
  let fromX = 0;
  let fromY = 0;
  let bulge = bulgeOf(outline[0]);
  for (let i = 1; i <= n; i++) {
    const to = outline[i < n ? i : 0];
    const toX = to[0] - x0;
    const toY = to[1] - y0;
    const mx = (fromX + toX) / 2;
    const my = (fromY + toY) / 2;
    const hx = (toX - fromX) / 2;
    const hy = (toY - fromY) / 2;
    const mixed = (hx * hy) / 3;
    const square = mx * mx + (hx * hx) / 3;
    area += 2 * mx * hy;
    x += square * hy;
    y += 2 * (mx * my + mixed) * hy;
    xx += (2 / 3) * mx * (mx * mx + hx * hx) * hy;
    yy += 2 * (mx * (my * my + (hy * hy) / 3) + 2 * my * mixed) * hy;
    xy += (square * my + 2 * mx * mixed) * hy;
    if (bulge !== 0) {
      if (arcs++ === 0) clearArea(overArcs);
      addSegment(mx, my, hx, hy, bulge, overArcs);
    }
    fromX = toX;
    fromY = toY;
    bulge = bulgeOf(to);
  }
  if (arcs > 0) {
    area += overArcs.area;
    x += overArcs.x;
    y += overArcs.y;
    xx += overArcs.xx;
    yy += overArcs.yy;
    xy += overArcs.xy;
  }
  out.area = area;
  out.x = x + x0 * area;
  out.y = y + y0 * area;
  out.xx = xx + x0 * (2 * x + x0 * area);
  out.yy = yy + y0 * (2 * y + y0 * area);
  out.xy = xy + x0 * y + y0 * (x + x0 * area);
}

/** The segment over the chord through (mx, my), about the origin of these. */
function addSegment(
  mx: number,
  my: number,
  hx: number,
  hy: number,
  bulge: number,
  out: AreaMoments,
): void {
  segmentMoments(bulge, segment);
  const scale = hx * hx + hy * hy;
  const area = scale * segment[J00];
  const first = scale * segment[J01];
  const along = scale * segment[J20];
  const across = scale * segment[J02];
  const x = first * hy;
  const y = -first * hx;
  out.area += area;
  out.x += x + mx * area;
  out.y += y + my * area;
  out.xx += along * hx * hx + across * hy * hy + mx * (2 * x + mx * area);
  out.yy += along * hy * hy + across * hx * hx + my * (2 * y + my * area);
  out.xy += (along - across) * hx * hy + mx * y + my * (x + mx * area);
}

/** Of the edge that leaves a vertex; 0 where it is straight. */
export function bulgeOf(vertex: Outline[number]): number {
  return vertex.length > 2 ? (vertex[2] as number) : 0;
}

function isCircle(outline: Outline): boolean {
  return (
    outline.length === 2 && Math.abs(outline[0][2] ?? 0) === 1 && outline[0][2] === outline[1][2]
  );
}

/** Two half circles, the commonest hole: pi r^2, and pi r^4 / 4 about its own middle. */
function circleMoments(outline: Outline, out: AreaMoments): void {
  const from = outline[0];
  const to = outline[1];
  const x = (from[0] + to[0]) / 2;
  const y = (from[1] + to[1]) / 2;
  const dx = (to[0] - from[0]) / 2;
  const dy = (to[1] - from[1]) / 2;
  const square = dx * dx + dy * dy;
  const area = Math.PI * square * (from[2] as number);
  out.area = area;
  out.x = area * x;
  out.y = area * y;
  out.xx = area * (x * x + square / 4);
  out.yy = area * (y * y + square / 4);
  out.xy = area * x * y;
}
