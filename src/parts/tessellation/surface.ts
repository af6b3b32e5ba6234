import type { TriangleMesh } from '../../engine/mass/solid';
import { type Pose, transformPoint } from '../../engine/math/pose';

/**
 * A closed triangle surface under construction: welded points, outward triangles, and for each triangle the number of
 * the smooth face that it belongs to. Where two faces meet there is a sharp edge.
 */
export interface Surface {
  readonly positions: number[];
  readonly triangles: number[];
  readonly faces: number[];
}

export function createSurface(): Surface {
  return { positions: [], triangles: [], faces: [] };
}

/** Adds a point and returns its index. */
export function addPoint(surface: Surface, x: number, y: number, z: number): number {
  return surface.positions.push(x, y, z) / 3 - 1;
}

export function addTriangle(surface: Surface, face: number, a: number, b: number, c: number): void {
  surface.triangles.push(a, b, c);
  surface.faces.push(face);
}

/** The quadrilateral a b c d, counter-clockwise seen from outside, cut from a to c. */
export function addQuad(
  surface: Surface,
  face: number,
  a: number,
  b: number,
  c: number,
  d: number,
): void {
  addTriangle(surface, face, a, b, c);
  addTriangle(surface, face, a, c, d);
}

/** Turns every triangle over: the surface of a hole faces into the hole. */
export function turnInsideOut(surface: Surface): void {
  const { triangles } = surface;
  for (let t = 0; t < triangles.length; t += 3) {
    const b = triangles[t + 1];
    triangles[t + 1] = triangles[t + 2];
    triangles[t + 2] = b;
  }
}

/** The points as they lie in the part's frame, with the same triangles: one vertex per point, fit for `inspectMesh`. */
export function weldedMesh(surface: Surface, pose?: Pose): TriangleMesh {
  const positions = new Float64Array(surface.positions);
  if (pose) placePoints(positions, pose);
  return { positions, triangles: new Uint32Array(surface.triangles) };
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
