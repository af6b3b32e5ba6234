import type { Solid } from '../engine/mass/solid';
import type { Pose } from '../engine/math/pose';
import { type Resolution, weldedMeshes } from './tessellate';
import { givenMesh } from './tessellation/givenMesh';
import { prismPoints, revolutionPoints } from './tessellation/outlinePoints';
import { placePoints } from './tessellation/surface';

/** The outline of one solid seen along x: points (y, z), counter-clockwise with y to the right and z up, metres. */
export interface Silhouette {
  readonly name: string;
  readonly symbolic: boolean;
  readonly outline: readonly (readonly [y: number, z: number])[];
}

const DIAL_SEGMENTS = 32;

/**
 * The shadow of each solid on the y-z plane of the frame that `pose` places the part in.
 *
 * Approximation: it is the convex hull of the tessellated solid's projected points. Hollows and through-holes of one
 * solid are filled (a ring seen along its axis shows as a disc), and a round edge lies inside the true one by at most
 * radius (1 - cos(pi / n)), 0.5 % of the radius at the standard n = 32. A convex solid's hull is its true shadow
 * otherwise; all shapes but cups, barrel and pierced pieces are convex or nearly so.
 */
export function silhouettes(
  solids: readonly Solid[],
  pose: Pose,
  resolution: Resolution = { segmentsPerTurn: DIAL_SEGMENTS },
): Silhouette[] {
  return solids.map((solid) => ({
    name: solid.name,
    symbolic: solid.shape.shape === 'point',
    outline: seenAlongX(shadowPoints(solid, resolution), pose),
  }));
}

/**
 * Points in the part's frame that cast the shadow of a solid wherever it is seen from: those that `seenAlongX` wants. Not to be
 * written into; a mesh that is given is taken as it is, its faces and normals do not matter here.
 */
export function shadowPoints(
  solid: Solid,
  resolution: Resolution = { segmentsPerTurn: DIAL_SEGMENTS },
): Float64Array {
  const { shape, pose } = solid;
  const given = givenMesh(shape);
  if (given && !pose) return given.positions;
  const points = given?.positions.slice() ?? unplaced(shape, resolution);
  // A surface of other shapes is not had without its place.
  if (!points) return weldedMeshes([solid], resolution)[0].positions;
  if (pose) placePoints(points, pose);
  return points;
}

/** Of a shape that is turned or has one outline, without making its triangles. */
function unplaced(shape: Solid['shape'], resolution: Resolution): Float64Array | null {
  const segments = resolution.segmentsPerTurn ?? DIAL_SEGMENTS;
  if (shape.shape === 'prism') return prismPoints(shape, segments);
  if (shape.shape === 'revolution') return revolutionPoints(shape, segments, outermost);
  return null;
}

/** The outline of points that `pose` places, seen along x. */
export function seenAlongX(points: Float64Array, pose: Pose): Silhouette['outline'] {
  return convexHull(projected(points, pose));
}

/** Of a profile (r, z): the corners on the hull of it and its mirror image. What lies inside them casts no shadow. */
function outermost(profile: readonly Point[]): readonly Point[] {
  const mirrored = profile.map(([radius, z]): Point => [-radius, z]);
  return convexHull([...profile, ...mirrored]).filter(([radius]) => radius >= 0);
}

/** The points placed by `pose`, seen along x. */
function projected(positions: Float64Array, { rotation: r, translation: t }: Pose): Point[] {
  const points: Point[] = [];
  for (let i = 0; i < positions.length; i += 3) {
    const [x, y, z] = [positions[i], positions[i + 1], positions[i + 2]];
    points.push([r[3] * x + r[4] * y + r[5] * z + t[1], r[6] * x + r[7] * y + r[8] * z + t[2]]);
  }
  return points;
}

type Point = readonly [number, number];

/** Andrew's monotone chain: the hull's corners counter-clockwise, points on its sides left out. */
export function convexHull(points: readonly Point[]): Point[] {
  const sorted = points.toSorted((a, b) => a[0] - b[0] || a[1] - b[1]);
  if (sorted.length < 3) return sorted;
  const lower = chain(sorted);
  const upper = chain(sorted.toReversed());
  return [...lower.slice(0, -1), ...upper.slice(0, -1)];
}

function chain(sorted: readonly Point[]): Point[] {
  const hull: Point[] = [];
  for (const point of sorted) {
    while (hull.length >= 2 && turn(hull[hull.length - 2], hull[hull.length - 1], point) <= 0) {
      hull.pop();
    }
    hull.push(point);
  }
  return hull;
}

function turn(a: Point, b: Point, c: Point): number {
  return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
}
