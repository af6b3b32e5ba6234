import type { Outline, OutlineVertex } from '../../engine/mass/solid';

/** An outline as a counter-clockwise polygon. Segment i runs from point i to the next one (the last back to the first). */
export interface Polygon {
  readonly points: readonly (readonly [number, number])[];
  /** Of each segment: segments that meet without a corner share a number. */
  readonly smooth: readonly number[];
}

/** Edges that turn by less than this where they meet are drawn as one smooth wall. */
const CORNER = (20 * Math.PI) / 180;

/**
 * Replaces arcs by chords: vertices lie on the arcs, at least two chords each, `segmentsPerTurn` to a full turn (rounded
 * up for an arc). The polygon lies inside a convex arc; its area falls short by (2 pi / n)^2 / 6 of the circular part.
 */
export function flatten(outline: Outline, segmentsPerTurn: number): Polygon {
  const edges = withoutRepeats(counterClockwise(outline));
  const count = edges.length;
  const points: [number, number][] = [];
  const smooth: number[] = [];
  let group = 0;
  for (let i = 0; i < count; i++) {
    const from = edges[i];
    const to = edges[(i + 1) % count];
    if (i > 0 && isCorner(edges[i - 1], from, to)) group++;
    const bulge = from[2] ?? 0;
    points.push([from[0], from[1]]);
    smooth.push(group);
    if (bulge !== 0) addArc(from, to, bulge, segmentsPerTurn, group, points, smooth);
  }
  // The last edge may run smoothly into the first.
  if (count > 0 && !isCorner(edges[count - 1], edges[0], edges[1 % count])) {
    for (let i = 0; i < smooth.length; i++) if (smooth[i] === group) smooth[i] = 0;
  }
  return { points, smooth };
}

/** Pushes the points between the ends of an arc; the half sweep is twice the angle whose tangent is the bulge. */
function addArc(
  from: OutlineVertex,
  to: OutlineVertex,
  bulge: number,
  segmentsPerTurn: number,
  group: number,
  points: [number, number][],
  smooth: number[],
): void {
  const half = 2 * Math.atan(bulge);
  const chords = Math.max(2, Math.ceil((segmentsPerTurn * Math.abs(half)) / Math.PI - 1e-9));
  const mx = (from[0] + to[0]) / 2;
  const my = (from[1] + to[1]) / 2;
  const hx = (to[0] - from[0]) / 2;
  const hy = (to[1] - from[1]) / 2;
  for (let k = 1; k < chords; k++) {
    const psi = half * ((2 * k) / chords - 1);
    const along = Math.sin(psi) / Math.sin(half);
    const away = (2 * Math.sin((half + psi) / 2) * Math.sin((half - psi) / 2)) / Math.sin(half);
    points.push([mx + along * hx + away * hy, my + along * hy - away * hx]);
    smooth.push(group);
  }
}

/** Whether the edge from `a` to `b` and the one from `b` meet at a corner, arcs by their tangents. */
function isCorner(a: OutlineVertex, b: OutlineVertex, c: OutlineVertex): boolean {
  const arriving = Math.atan2(b[1] - a[1], b[0] - a[0]) + 2 * Math.atan(a[2] ?? 0);
  const leaving = Math.atan2(c[1] - b[1], c[0] - b[0]) - 2 * Math.atan(b[2] ?? 0);
  const turn = leaving - arriving;
  return Math.abs(Math.atan2(Math.sin(turn), Math.cos(turn))) > CORNER;
}

/** Sense by the area between chords and arcs: shoelace plus circular segments. */
function counterClockwise(outline: Outline): Outline {
  let area = 0;
  for (let i = 0; i < outline.length; i++) {
    const [x0, y0, bulge = 0] = outline[i];
    const [x1, y1] = outline[(i + 1) % outline.length];
    area += (x0 - outline[0][0]) * (y1 - y0) - (y0 - outline[0][1]) * (x1 - x0);
    if (bulge === 0) continue;
    const sweep = 4 * Math.atan(bulge);
    const radius = Math.hypot(x1 - x0, y1 - y0) / 2 / Math.sin(sweep / 2);
    area += radius * radius * (sweep - Math.sin(sweep));
  }
  if (area >= 0) return outline;
  const count = outline.length;
  return outline.map((_, i) => {
    const [x, y] = outline[count - 1 - i];
    const bulge = outline[(2 * count - 2 - i) % count][2] ?? 0;
    return [x, y, -bulge] as const;
  });
}

/** Drops vertices that lie on the one before them (an edge of no length). */
function withoutRepeats(outline: Outline): Outline {
  let size = 0;
  for (const [x, y] of outline) size = Math.max(size, Math.abs(x), Math.abs(y));
  const near = 1e-12 * size;
  return outline.filter(([x, y], i) => {
    const [nextX, nextY] = outline[(i + 1) % outline.length];
    return Math.hypot(nextX - x, nextY - y) > near;
  });
}
