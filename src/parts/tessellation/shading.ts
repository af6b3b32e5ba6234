import type { TriangleMesh } from '../../engine/mass/solid';

/** One solid ready to draw: a point on a sharp edge is there once for every face that meets in it. */
export interface ShadedMesh {
  readonly positions: ArrayLike<number>;
  readonly normals: ArrayLike<number>;
  readonly triangles: ArrayLike<number>;
  /** Ends of the sharp edges, six numbers to an edge. */
  readonly edges: ArrayLike<number>;
}

/** One that `shade` has made, in arrays of its own. */
export interface MadeShading extends ShadedMesh {
  readonly positions: Float64Array;
  readonly normals: Float64Array;
  readonly triangles: Uint32Array;
  readonly edges: Float64Array;
}

/** What of a shaded mesh does not depend on where its points lie. */
export interface Topology {
  readonly triangles: Uint32Array;
  readonly faces: readonly number[];
  readonly faceCount: number;
  /** The same triangles over vertices, of which each face has its own. */
  readonly split: Uint32Array;
  /** Point and face of each vertex. */
  readonly pointOf: Uint32Array;
  readonly faceOf: Uint32Array;
  /** Points at the ends of the sharp edges, two to an edge. */
  readonly edgeEnds: Uint32Array;
}

/** The topology of a mesh whose triangle t belongs to `faces[t]`; `before` where it is of the same triangles and faces. */
export function topologyOf(
  { triangles, positions }: TriangleMesh,
  faces: readonly number[],
  before: Topology | null = null,
): Topology {
  if (before && equal(before.triangles, triangles) && equal(before.faces, faces)) return before;
  const pointCount = positions.length / 3;
  return {
    triangles,
    faces,
    faceCount: faces.reduce((count, face) => Math.max(count, face + 1), 1),
    ...splitByFace(triangles, faces, pointCount),
    edgeEnds: sharpEdges(triangles, faces, pointCount),
  };
}

function equal(a: ArrayLike<number>, b: ArrayLike<number>): boolean {
  if (a === b) return true;
  if (a.length !== b.length) return false;
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) return false;
  return true;
}

/**
 * Normals that are smooth over each face and break between faces: at every point of a face the mean of the normals of
 * its triangles there, weighted by their angle. `faces` gives each triangle's face. A shading that was made of the same topology
 * before is written over, if it is given.
 */
export function shade(
  mesh: TriangleMesh,
  faces: readonly number[],
  topology = topologyOf(mesh, faces),
  before: MadeShading | null = null,
): MadeShading {
  const { split: triangles, pointOf, faceOf, faceCount, edgeEnds } = topology;
  const into = before?.triangles === triangles ? before : emptyShading(topology);
  const { positions, normals } = into;
  takePoints(mesh.positions, pointOf, positions);
  takePoints(mesh.positions, edgeEnds, into.edges);
  normals.fill(0);
  const faceNormals = new Float64Array(3 * faceCount);
  for (let t = 0; t < faces.length; t++) {
    const i = 3 * triangles[3 * t];
    const j = 3 * triangles[3 * t + 1];
    const k = 3 * triangles[3 * t + 2];
    const ux = positions[j] - positions[i];
    const uy = positions[j + 1] - positions[i + 1];
    const uz = positions[j + 2] - positions[i + 2];
    const vx = positions[k] - positions[i];
    const vy = positions[k + 1] - positions[i + 1];
    const vz = positions[k + 2] - positions[i + 2];
    const nx = uy * vz - uz * vy;
    const ny = uz * vx - ux * vz;
    const nz = ux * vy - uy * vx;
    const area = Math.sqrt(nx * nx + ny * ny + nz * nz);
    const f = 3 * faces[t];
    faceNormals[f] += nx;
    faceNormals[f + 1] += ny;
    faceNormals[f + 2] += nz;
    if (area === 0) continue;
    // Angles at the corners: twice the area is |u||v| sin; the three add up to half a turn.
    const along = ux * vx + uy * vy + uz * vz;
    const base = ux * ux + uy * uy + uz * uz;
    const atFirst = Math.atan2(area, along);
    const atSecond = Math.atan2(area, base - along);
    addTo(normals, i, atFirst / area, nx, ny, nz);
    addTo(normals, j, atSecond / area, nx, ny, nz);
    addTo(normals, k, (Math.PI - atFirst - atSecond) / area, nx, ny, nz);
  }
  for (let v = 0; v < faceOf.length; v++) normalise(normals, 3 * v, faceNormals, 3 * faceOf[v]);
  return into;
}

function emptyShading({ split, pointOf, edgeEnds }: Topology): MadeShading {
  return {
    positions: new Float64Array(3 * pointOf.length),
    normals: new Float64Array(3 * pointOf.length),
    triangles: split,
    edges: new Float64Array(3 * edgeEnds.length),
  };
}

function takePoints(points: Float64Array, which: Uint32Array, out: Float64Array): void {
  for (let i = 0; i < which.length; i++) {
    const p = 3 * which[i];
    out[3 * i] = points[p];
    out[3 * i + 1] = points[p + 1];
    out[3 * i + 2] = points[p + 2];
  }
}

function addTo(
  vectors: Float64Array,
  at: number,
  weight: number,
  x: number,
  y: number,
  z: number,
): void {
  vectors[at] += weight * x;
  vectors[at + 1] += weight * y;
  vectors[at + 2] += weight * z;
}

/** A vertex of its own for every face that a point belongs to. */
function splitByFace(triangles: Uint32Array, faces: readonly number[], pointCount: number) {
  const vertexOf = new Map<number, number>();
  const pointOf: number[] = [];
  const faceOf: number[] = [];
  const split = new Uint32Array(triangles.length);
  for (let i = 0; i < triangles.length; i++) {
    const point = triangles[i];
    const face = faces[Math.floor(i / 3)];
    const key = face * pointCount + point;
    let vertex = vertexOf.get(key);
    if (vertex === undefined) {
      vertex = faceOf.push(face) - 1;
      vertexOf.set(key, vertex);
      pointOf.push(point);
    }
    split[i] = vertex;
  }
  return { split, pointOf: Uint32Array.from(pointOf), faceOf: Uint32Array.from(faceOf) };
}

/** Edges between triangles of different faces, each once. */
function sharpEdges(
  triangles: Uint32Array,
  faces: readonly number[],
  pointCount: number,
): Uint32Array {
  const faceAt = new Map<number, number>();
  const ends: number[] = [];
  for (let i = 0; i < triangles.length; i++) {
    const face = faces[Math.floor(i / 3)];
    const from = triangles[i];
    const to = triangles[i % 3 === 2 ? i - 2 : i + 1];
    const other = faceAt.get(to * pointCount + from);
    if (other === undefined) faceAt.set(from * pointCount + to, face);
    else if (other !== face) ends.push(from, to);
  }
  return Uint32Array.from(ends);
}

/** To unit length; where all of a face's triangles at a point are slivers, the face's own mean normal stands in. */
function normalise(normals: Float64Array, v: number, faceNormals: Float64Array, f: number): void {
  if (sizeAt(normals, v) === 0) {
    for (let axis = 0; axis < 3; axis++) normals[v + axis] = faceNormals[f + axis];
  }
  const size = sizeAt(normals, v) || 1;
  for (let axis = 0; axis < 3; axis++) normals[v + axis] /= size;
}

/** Metres and their squares are far from what a double cannot hold: no need for Math.hypot, which makes garbage. */
function sizeAt(vectors: Float64Array, at: number): number {
  const x = vectors[at];
  const y = vectors[at + 1];
  const z = vectors[at + 2];
  return Math.sqrt(x * x + y * y + z * z);
}
