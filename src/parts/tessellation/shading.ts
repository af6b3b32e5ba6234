import type { TriangleMesh } from '../../engine/mass/solid';

/** One solid ready to draw: a point on a sharp edge is there once for every face that meets in it. */
export interface ShadedMesh {
  readonly positions: number[];
  readonly normals: number[];
  readonly triangles: number[];
  /** Ends of the sharp edges, six numbers to an edge. */
  readonly edges: number[];
}

/**
 * Normals that are smooth over each face and break between faces: at every point of a face the mean of the normals of
 * its triangles there, weighted by their angle. `faces` gives each triangle's face.
 */
export function shade(mesh: TriangleMesh, faces: readonly number[]): ShadedMesh {
  const { positions, normals, triangles, faceOf } = splitByFace(mesh, faces);
  const faceNormals = new Float64Array(3 * (Math.max(0, ...new Set(faces)) + 1));
  const corner = [0, 0, 0];
  for (let t = 0; t < faces.length; t++) {
    const [i, j, k] = [3 * triangles[3 * t], 3 * triangles[3 * t + 1], 3 * triangles[3 * t + 2]];
    const ux = positions[j] - positions[i];
    const uy = positions[j + 1] - positions[i + 1];
    const uz = positions[j + 2] - positions[i + 2];
    const vx = positions[k] - positions[i];
    const vy = positions[k + 1] - positions[i + 1];
    const vz = positions[k + 2] - positions[i + 2];
    const nx = uy * vz - uz * vy;
    const ny = uz * vx - ux * vz;
    const nz = ux * vy - uy * vx;
    const area = Math.hypot(nx, ny, nz);
    const f = 3 * faces[t];
    faceNormals[f] += nx;
    faceNormals[f + 1] += ny;
    faceNormals[f + 2] += nz;
    if (area === 0) continue;
    // Angles at the corners: twice the area is |u||v| sin; the three add up to half a turn.
    const along = ux * vx + uy * vy + uz * vz;
    const base = ux * ux + uy * uy + uz * uz;
    corner[0] = Math.atan2(area, along);
    corner[1] = Math.atan2(area, base - along);
    corner[2] = Math.PI - corner[0] - corner[1];
    for (let c = 0; c < 3; c++) {
      const v = 3 * triangles[3 * t + c];
      const weight = corner[c] / area;
      normals[v] += weight * nx;
      normals[v + 1] += weight * ny;
      normals[v + 2] += weight * nz;
    }
  }
  for (let v = 0; v < faceOf.length; v++) normalise(normals, 3 * v, faceNormals, 3 * faceOf[v]);
  return { positions, normals, triangles, edges: sharpEdges(mesh, faces) };
}

/** A vertex of its own for every face that a point belongs to. */
function splitByFace(mesh: TriangleMesh, faces: readonly number[]) {
  const pointCount = mesh.positions.length / 3;
  const vertexOf = new Map<number, number>();
  const positions: number[] = [];
  const normals: number[] = [];
  const triangles: number[] = [];
  const faceOf: number[] = [];
  for (let i = 0; i < mesh.triangles.length; i++) {
    const point = mesh.triangles[i];
    const face = faces[Math.floor(i / 3)];
    const key = face * pointCount + point;
    let vertex = vertexOf.get(key);
    if (vertex === undefined) {
      vertex = faceOf.push(face) - 1;
      vertexOf.set(key, vertex);
      const p = 3 * point;
      positions.push(mesh.positions[p], mesh.positions[p + 1], mesh.positions[p + 2]);
      normals.push(0, 0, 0);
    }
    triangles.push(vertex);
  }
  return { positions, normals, triangles, faceOf };
}

/** Edges between triangles of different faces, each once. */
function sharpEdges(mesh: TriangleMesh, faces: readonly number[]): number[] {
  const { positions: p, triangles } = mesh;
  const pointCount = p.length / 3;
  const faceAt = new Map<number, number>();
  const edges: number[] = [];
  for (let i = 0; i < triangles.length; i++) {
    const face = faces[Math.floor(i / 3)];
    const from = triangles[i];
    const to = triangles[i % 3 === 2 ? i - 2 : i + 1];
    const other = faceAt.get(to * pointCount + from);
    if (other === undefined) {
      faceAt.set(from * pointCount + to, face);
    } else if (other !== face) {
      const [a, b] = [3 * from, 3 * to];
      edges.push(p[a], p[a + 1], p[a + 2], p[b], p[b + 1], p[b + 2]);
    }
  }
  return edges;
}

/** To unit length; where all of a face's triangles at a point are slivers, the face's own mean normal stands in. */
function normalise(normals: number[], v: number, faceNormals: Float64Array, f: number): void {
  let size = Math.hypot(normals[v], normals[v + 1], normals[v + 2]);
  if (size === 0) {
    for (let axis = 0; axis < 3; axis++) normals[v + axis] = faceNormals[f + axis];
    size = Math.hypot(normals[v], normals[v + 1], normals[v + 2]) || 1;
  }
  for (let axis = 0; axis < 3; axis++) normals[v + axis] /= size;
}
