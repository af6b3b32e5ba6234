import type { TriangleMesh } from '../../engine/mass/solid';
import { addTriangle, createSurface, type Surface } from './surface';

/** Triangles that meet at less than this angle belong to one smooth face of a mesh. */
const CREASE = (30 * Math.PI) / 180;
const FLATTER = Math.cos(CREASE);

/** A given mesh as it is, its triangles gathered into smooth faces across every edge flatter than the crease angle. */
export function meshSurface(solid: TriangleMesh): Surface {
  const surface = createSurface();
  for (const value of solid.positions) surface.positions.push(value);
  const faces = smoothFaces(solid);
  for (let t = 0; t < faces.length; t++) {
    const [a, b, c] = solid.triangles.subarray(3 * t, 3 * t + 3);
    addTriangle(surface, faces[t], a, b, c);
  }
  return surface;
}

/** The number of every triangle's smooth face, counted from 0 in the order of the triangles. */
function smoothFaces(mesh: TriangleMesh): number[] {
  const count = mesh.triangles.length / 3;
  const normals = Array.from({ length: count }, (_, t) => unitNormal(mesh, t));
  const byEdge = new Map<number, number>();
  for (let t = 0; t < count; t++) {
    for (let k = 0; k < 3; k++) byEdge.set(edgeKey(mesh, t, k, false), t);
  }
  const faces = new Array<number>(count).fill(-1);
  let face = 0;
  for (let seed = 0; seed < count; seed++) {
    if (faces[seed] >= 0) continue;
    const open = [seed];
    faces[seed] = face;
    for (let t = open.pop(); t !== undefined; t = open.pop()) {
      for (let k = 0; k < 3; k++) {
        const other = byEdge.get(edgeKey(mesh, t, k, true));
        if (other === undefined || faces[other] >= 0) continue;
        const [a, b] = [normals[t], normals[other]];
        if (a[0] * b[0] + a[1] * b[1] + a[2] * b[2] < FLATTER) continue;
        faces[other] = face;
        open.push(other);
      }
    }
    face++;
  }
  return faces;
}

/** One whole number for an edge and its sense, exact below 9e7 points (their square is less than 2^53). */
function edgeKey(mesh: TriangleMesh, triangle: number, corner: number, reversed: boolean): number {
  const from = mesh.triangles[3 * triangle + corner];
  const to = mesh.triangles[3 * triangle + ((corner + 1) % 3)];
  const points = mesh.positions.length / 3;
  return reversed ? to * points + from : from * points + to;
}

function unitNormal(mesh: TriangleMesh, triangle: number): readonly [number, number, number] {
  const p = mesh.positions;
  const [i, j, k] = [0, 1, 2].map((corner) => 3 * mesh.triangles[3 * triangle + corner]);
  const [ux, uy, uz] = [p[j] - p[i], p[j + 1] - p[i + 1], p[j + 2] - p[i + 2]];
  const [vx, vy, vz] = [p[k] - p[i], p[k + 1] - p[i + 1], p[k + 2] - p[i + 2]];
  const n = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
  const size = Math.hypot(n[0], n[1], n[2]) || 1;
  return [n[0] / size, n[1] / size, n[2] / size];
}
