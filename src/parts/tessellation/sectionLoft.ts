import type { SectionLoft } from '../../engine/mass/solid';
import { triangulate } from './prism';
import {
  addPoint,
  addQuad,
  addTriangle,
  createSurface,
  type GrowingSurface,
  type Surface,
} from './surface';

/** Where the outline turns by more than this, a sharp edge runs along the span. */
const CORNER = (60 * Math.PI) / 180;

type Corner = readonly [y: number, z: number];

/**
 * A ruled loft between two polygons, with every corner of theirs, cut along the span into an even number of pieces that
 * grows with the resolution (four at the standard 48). Panels whose edge turns on its way from root to tip are twisted:
 * the diagonals alternate along and round the blade, so that what one triangle pair gains its neighbour loses, and the
 * rest falls by four when the resolution doubles. Untwisted panels are exact.
 */
export function sectionLoftSurface(solid: SectionLoft, segmentsPerTurn: number): Surface {
  const surface = createSurface();
  const { low, high } = outward(solid);
  const count = low.corners.length;
  const pieces = 2 * Math.max(1, Math.round(segmentsPerTurn / 24));
  for (let k = 0; k <= pieces; k++) {
    const t = k / pieces;
    const x = low.x + t * (high.x - low.x);
    for (let i = 0; i < count; i++) {
      const [a, b] = [low.corners[i], high.corners[i]];
      addPoint(surface, x, a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1]));
    }
  }
  const faces = smoothFaces(low.corners);
  for (let k = 0; k < pieces; k++) {
    for (let i = 0; i < count; i++) {
      const next = (i + 1) % count;
      const [a, b] = [k * count + i, k * count + next];
      const [c, d] = [b + count, a + count];
      if ((i + k) % 2 === 0) addQuad(surface, faces[i], a, b, c, d);
      else addQuad(surface, faces[i], b, c, d, a);
    }
  }
  const rootFace = Math.max(...faces) + 1;
  addCap(surface, rootFace, low.corners, 0, true);
  addCap(surface, rootFace + 1, high.corners, pieces * count, false);
  return surface;
}

interface End {
  readonly x: number;
  readonly corners: readonly Corner[];
}

/** The ends in ascending x, their corners counter-clockwise seen from the high end. */
function outward(solid: SectionLoft): { low: End; high: End } {
  const turned = solid.tip.x < solid.root.x;
  const ends = turned ? [solid.tip, solid.root] : [solid.root, solid.tip];
  const corners = ends.map(({ corners: flat }) =>
    Array.from({ length: flat.length / 2 }, (_, i): Corner => [flat[2 * i], flat[2 * i + 1]]),
  );
  const clockwise = corners.map(twiceArea).reduce((sum, area) => sum + area, 0) < 0;
  const [low, high] = clockwise ? corners.map((list) => list.toReversed()) : corners;
  return { low: { x: ends[0].x, corners: low }, high: { x: ends[1].x, corners: high } };
}

function twiceArea(corners: readonly Corner[]): number {
  return corners.reduce((sum, [y, z], i) => {
    const [nextY, nextZ] = corners[(i + 1) % corners.length];
    return sum + y * nextZ - nextY * z;
  }, 0);
}

/** A face number for every edge: edges between two sharp corners share one. Edges without length go with the last. */
function smoothFaces(corners: readonly Corner[]): number[] {
  const count = corners.length;
  const angles = corners.map(([y, z], i) => {
    const [nextY, nextZ] = corners[(i + 1) % count];
    return nextY === y && nextZ === z ? null : Math.atan2(nextZ - z, nextY - y);
  });
  const firstEdge = angles.findIndex((angle) => angle !== null);
  const faces = new Array<number>(count).fill(0);
  let last = angles[firstEdge] ?? 0;
  let face = 0;
  for (let k = 1; k < count; k++) {
    const i = (firstEdge + k) % count;
    const angle = angles[i];
    if (angle !== null) {
      if (turn(last, angle) > CORNER) face++;
      last = angle;
    }
    faces[i] = face;
  }
  // Round the start: where it is smooth the last face goes on in the first.
  if (turn(last, angles[firstEdge] ?? 0) <= CORNER) {
    return faces.map((one) => (one === face ? 0 : one));
  }
  return faces;
}

function turn(from: number, to: number): number {
  const angle = Math.abs(to - from);
  return Math.min(angle, 2 * Math.PI - angle);
}

function addCap(
  surface: GrowingSurface,
  face: number,
  points: readonly Corner[],
  first: number,
  facesBack: boolean,
): void {
  const cap = capTriangles(points);
  for (let t = 0; t < cap.length; t += 3) {
    const [a, b, c] = [first + cap[t], first + cap[t + 1], first + cap[t + 2]];
    if (facesBack) addTriangle(surface, face, a, c, b);
    else addTriangle(surface, face, a, b, c);
  }
}

/**
 * Counter-clockwise triangles over a section. One that lists its two sides to and fro is cut into a strip between them,
 * which holds where the sides meet in a sliver too; where a triangle of the strip would lie outside it is cut as any
 * polygon. Should that leave gaps the strip stands: the cap then folds over itself, but the surface is closed.
 */
function capTriangles(points: readonly Corner[]): readonly number[] {
  const strip = stripTriangles(points.length);
  if (isUpright(strip, points)) return strip;
  const cut = triangulate([{ points }]);
  return cut.length === 3 * (points.length - 2) ? cut : strip;
}

function stripTriangles(count: number): number[] {
  const triangles: number[] = [];
  for (let i = 0; i < count - 2 - i; i++) {
    const [a, b] = [i, count - 1 - i];
    triangles.push(a, i + 1, b);
    if (i + 1 < b - 1) triangles.push(i + 1, b - 1, b);
  }
  return triangles;
}

/** No triangle of the list is turned over. */
function isUpright(triangles: readonly number[], points: readonly Corner[]): boolean {
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [points[triangles[t]], points[triangles[t + 1]], points[triangles[t + 2]]];
    if ((b[0] - a[0]) * (c[1] - a[1]) < (c[0] - a[0]) * (b[1] - a[1])) return false;
  }
  return true;
}
