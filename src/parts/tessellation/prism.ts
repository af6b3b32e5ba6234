import earcut from 'earcut';
import type { Outline, Prism } from '../../engine/mass/solid';
import { sameData } from '../sameData';
import { flatten } from './flatten';
import { addQuad, addTriangle, createSurface, type Surface } from './surface';

const BOTTOM = 0;
const TOP = 1;
const FIRST_WALL = 2;

interface Polygon {
  readonly points: readonly (readonly [number, number])[];
}
interface Contour extends Polygon {
  readonly smooth: readonly number[];
}

/** What of a prism does not depend on how high it is. */
interface Ground {
  readonly outer: Outline;
  readonly holes: readonly Outline[];
  readonly segmentsPerTurn: number;
  /** Points of all contours, x and y in turn. */
  readonly xy: Float64Array;
  readonly triangles: Uint32Array;
  readonly faces: readonly number[];
}

/** Walls round the outline and its holes, and two caps cut into triangles between the outline's own points. */
export function prismSurface(solid: Prism, segmentsPerTurn: number): Surface {
  const { xy, triangles, faces } = groundOf(solid, segmentsPerTurn);
  const bottom = Math.min(solid.from, solid.to);
  const top = Math.max(solid.from, solid.to);
  const positions = new Float64Array(3 * xy.length);
  for (let i = 0; i < xy.length; i += 2) {
    positions[3 * i] = xy[i];
    positions[3 * i + 1] = xy[i + 1];
    positions[3 * i + 2] = bottom;
    positions[3 * i + 3] = xy[i];
    positions[3 * i + 4] = xy[i + 1];
    positions[3 * i + 5] = top;
  }
  return { positions, triangles, faces };
}

/** Of a prism that grows under the hand the outline stays: so many are remembered. */
const REMEMBERED = 8;
const grounds: Ground[] = [];

function groundOf({ outer, holes }: Prism, segmentsPerTurn: number): Ground {
  const known = grounds.find(
    (ground) =>
      ground.segmentsPerTurn === segmentsPerTurn &&
      sameData(ground.outer, outer) &&
      sameData(ground.holes, holes),
  );
  if (known) return known;
  const made = { outer, holes, segmentsPerTurn, ...laidOut(outer, holes, segmentsPerTurn) };
  grounds.unshift(made);
  if (grounds.length > REMEMBERED) grounds.pop();
  return made;
}

/** The point at place i of all contours is i * 2 at the bottom and the next at the top. */
function laidOut(
  outer: Outline,
  holes: readonly Outline[],
  segmentsPerTurn: number,
): Pick<Ground, 'xy' | 'triangles' | 'faces'> {
  const surface = createSurface();
  const contours: Contour[] = [
    flatten(outer, segmentsPerTurn),
    ...holes.map((hole) => clockwise(hole, segmentsPerTurn)),
  ];
  let wall = FIRST_WALL;
  let first = 0;
  for (const { points, smooth } of contours) {
    // Material lies to the left of every contour, so its right side is outside.
    for (let i = 0; i < points.length; i++) {
      const p = first + 2 * i;
      const q = first + 2 * ((i + 1) % points.length);
      addQuad(surface, wall + smooth[i], p, q, q + 1, p + 1);
    }
    first += 2 * points.length;
    wall += Math.max(...smooth) + 1;
  }
  const cap = triangulate(contours);
  for (let t = 0; t < cap.length; t += 3) {
    const [a, b, c] = [2 * cap[t], 2 * cap[t + 1], 2 * cap[t + 2]];
    addTriangle(surface, TOP, a + 1, b + 1, c + 1);
    addTriangle(surface, BOTTOM, a, c, b);
  }
  return {
    xy: Float64Array.from(contours.flatMap(({ points }) => points.flat())),
    triangles: Uint32Array.from(surface.triangles),
    faces: surface.faces,
  };
}

function clockwise(hole: Outline, segmentsPerTurn: number): Contour {
  const { points, smooth } = flatten(hole, segmentsPerTurn);
  const count = points.length;
  return {
    points: points.map((_, i) => points[count - 1 - i]),
    // Segment i of the reversed polygon is the one that led to its point.
    smooth: smooth.map((_, i) => smooth[(2 * count - 2 - i) % count]),
  };
}

/**
 * Counter-clockwise triangles over the points of all contours, numbered through. Earcut leaves out points that lie on a
 * line with their neighbours, which would open a crack between cap and wall; so it is shown points moved by about 1e-7
 * of the outline's size, and its choice of triangles is used on the true ones.
 */
export function triangulate(contours: readonly Polygon[]): readonly number[] {
  const flat: number[] = [];
  const holes: number[] = [];
  let size = 0;
  for (const [x, y] of contours[0].points) size = Math.max(size, Math.abs(x), Math.abs(y));
  for (const contour of contours) {
    if (flat.length > 0) holes.push(flat.length / 2);
    for (const [x, y] of contour.points) {
      const i = flat.length;
      flat.push(x + 1e-7 * size * scatter(i), y + 1e-7 * size * scatter(i + 1));
    }
  }
  const known = cuts.find((cut) => sameNumbers(cut.flat, flat) && sameNumbers(cut.holes, holes));
  if (known) return known.triangles;
  const triangles = cutUp(flat, holes);
  cuts.unshift({ flat, holes, triangles });
  if (cuts.length > REMEMBERED) cuts.pop();
  return triangles;
}

/** A blade's ends stay while it grows: so many cuts are remembered. */
const cuts: { flat: number[]; holes: number[]; triangles: readonly number[] }[] = [];

function sameNumbers(a: readonly number[], b: readonly number[]): boolean {
  if (a.length !== b.length) return false;
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) return false;
  return true;
}

function cutUp(flat: readonly number[], holes: readonly number[]): readonly number[] {
  const triangles = earcut(flat, holes);
  let area = 0;
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [2 * triangles[t], 2 * triangles[t + 1], 2 * triangles[t + 2]];
    area +=
      (flat[b] - flat[a]) * (flat[c + 1] - flat[a + 1]) -
      (flat[b + 1] - flat[a + 1]) * (flat[c] - flat[a]);
  }
  return area < 0 ? triangles.toReversed() : triangles;
}

/** A repeatable number in [-1/2, 1/2) that looks random: multiples of the golden ratio's fraction, squared. */
function scatter(i: number): number {
  const value = (i + 1) * (i + 1) * 0.6180339887498949;
  return value - Math.floor(value) - 0.5;
}
