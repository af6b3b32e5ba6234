import type { TriangleMesh } from '../../engine/mass/solid';
import { type Pose, transformPoint } from '../../engine/math/pose';

/**
 * A closed triangle surface: welded points, outward triangles, and for each triangle the number of the smooth face that it
 * belongs to. Where two faces meet there is a sharp edge.
 */
export interface Surface {
  readonly positions: ArrayLike<number>;
  readonly triangles: ArrayLike<number>;
  readonly faces: readonly number[];
}

/** One under construction. */
export interface GrowingSurface extends Surface {
  readonly positions: number[];
  readonly triangles: number[];
  readonly faces: number[];
}

export function createSurface(): GrowingSurface {
  return { positions: [], triangles: [], faces: [] };
}

/** Adds a point and returns its index. */
export function addPoint(surface: GrowingSurface, x: number, y: number, z: number): number {
  return surface.positions.push(x, y, z) / 3 - 1;
}

export function addTriangle(
  surface: GrowingSurface,
  face: number,
  a: number,
  b: number,
  c: number,
): void {
  surface.triangles.push(a, b, c);
  surface.faces.push(face);
}

/** The quadrilateral a b c d, counter-clockwise seen from outside, cut from a to c. */
export function addQuad(
  surface: GrowingSurface,
  face: number,
  a: number,
  b: number,
  c: number,
  d: number,
): void {
  addTriangle(surface, face, a, b, c);
  addTriangle(surface, face, a, c, d);
}

/** With every triangle turned over: the surface of a hole faces into the hole. */
export function insideOut(surface: Surface): Surface {
  const triangles = Uint32Array.from(surface.triangles);
  for (let t = 0; t < triangles.length; t += 3) {
    const b = triangles[t + 1];
    triangles[t + 1] = triangles[t + 2];
    triangles[t + 2] = b;
  }
  return { ...surface, triangles };
}

/** The points as they lie in the part's frame, with the same triangles: one vertex per point, fit for `inspectMesh`. */
export function weldedMesh(surface: Surface, pose?: Pose): TriangleMesh {
  const positions = new Float64Array(surface.positions);
  if (pose) placePoints(positions, pose);
  return { positions, triangles: new Uint32Array(surface.triangles) };
}

/** The same for reading alone: arrays of the surface that are as they have to be are not copied. */
export function readMesh(surface: Surface, pose?: Pose): TriangleMesh {
  const { positions, triangles } = surface;
  const asTheyAre = !pose && positions instanceof Float64Array && triangles instanceof Uint32Array;
  return asTheyAre ? { positions, triangles } : weldedMesh(surface, pose);
}

/** Puts points where a pose says, in place. */
export function placePoints(positions: Float64Array, pose: Pose): void {
  for (let i = 0; i < positions.length; i += 3) {
    const [x, y, z] = transformPoint(pose, [positions[i], positions[i + 1], positions[i + 2]]);
    positions[i] = x;
    positions[i + 1] = y;
    positions[i + 2] = z;
  }
}
