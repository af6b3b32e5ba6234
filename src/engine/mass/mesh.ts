import { JXX, JXY, JXZ, JYY, JYZ, JZZ, M, type Moments, SX, SY, SZ } from './moments';
import type { TriangleMesh } from './solid';

/** What is wrong with a surface that does not close; all zero when it is watertight and consistently turned. */
export interface MeshFaults {
  /** Directed edges whose partner in the other direction is missing. */
  readonly openEdges: number;
  /** Directed edges used more than once: neighbours turned against each other, or more than two faces. */
  readonly repeatedEdges: number;
  readonly degenerateTriangles: number;
  /** Triangles that name a vertex that is not there; a last, incomplete triple of indices or of xyz counts as one. */
  readonly indicesOutOfRange: number;
  readonly nonFinitePositions: number;
}

/**
 * Checks that every directed edge is used once and its reverse once: then the surface is closed and oriented.
 * Vertices are compared by index: weld coincident vertices first. A surface that is turned inside out passes too: its
 * volume comes out negative. Time grows as the number of triangles times the logarithm of the most edges at one
 * vertex; memory 4 bytes per edge and vertex, so millions of triangles are no trouble. Below 2^31 vertices.
 */
export function inspectMesh(mesh: TriangleMesh): MeshFaults {
  const vertexCount = Math.floor(mesh.positions.length / 3);
  let degenerateTriangles = 0;
  let indicesOutOfRange = (mesh.triangles.length % 3 ? 1 : 0) + (mesh.positions.length % 3 ? 1 : 0);
  let nonFinitePositions = 0;
  for (const value of mesh.positions) if (!Number.isFinite(value)) nonFinitePositions++;
  for (let t = 0; t + 2 < mesh.triangles.length; t += 3) {
    const a = mesh.triangles[t];
    const b = mesh.triangles[t + 1];
    const c = mesh.triangles[t + 2];
    if (a >= vertexCount || b >= vertexCount || c >= vertexCount) indicesOutOfRange++;
    else if (a === b || b === c || c === a) degenerateTriangles++;
  }
  const { openEdges, repeatedEdges } = countEdgeFaults(mesh.triangles, vertexCount);
  return { openEdges, repeatedEdges, degenerateTriangles, indicesOutOfRange, nonFinitePositions };
}

/** Calls `visit(from, to)` for the three edges of every triangle that is in range and not degenerate. */
function visitEdges(
  triangles: Uint32Array,
  vertexCount: number,
  visit: (from: number, to: number) => void,
): void {
  for (let t = 0; t + 2 < triangles.length; t += 3) {
    const a = triangles[t];
    const b = triangles[t + 1];
    const c = triangles[t + 2];
    if (a >= vertexCount || b >= vertexCount || c >= vertexCount) continue;
    if (a === b || b === c || c === a) continue;
    visit(a, b);
    visit(b, c);
    visit(c, a);
  }
}

/**
 * Edges are gathered under their lower vertex (a counting sort); each is kept as 2 x the higher vertex, + 1 when it
 * runs downward. Sorted, the two senses of an edge stand side by side.
 */
function countEdgeFaults(triangles: Uint32Array, vertexCount: number) {
  const first = new Uint32Array(vertexCount + 1);
  visitEdges(triangles, vertexCount, (from, to) => {
    first[Math.min(from, to) + 1]++;
  });
  for (let v = 0; v < vertexCount; v++) first[v + 1] += first[v];
  const edges = new Uint32Array(first[vertexCount]);
  const next = first.slice();
  visitEdges(triangles, vertexCount, (from, to) => {
    edges[next[Math.min(from, to)]++] = 2 * Math.max(from, to) + (from < to ? 0 : 1);
  });
  let openEdges = 0;
  let repeatedEdges = 0;
  for (let v = 0; v < vertexCount; v++) {
    const here = edges.subarray(first[v], first[v + 1]);
    here.sort();
    for (let i = 0; i < here.length; ) {
      const other = here[i] >>> 1;
      let up = 0;
      let down = 0;
      for (; i < here.length && here[i] >>> 1 === other; i++) {
        if (here[i] & 1) down++;
        else up++;
      }
      if (up === 0 || down === 0) openEdges++;
      repeatedEdges += Math.max(0, up - 1) + Math.max(0, down - 1);
    }
  }
  return { openEdges, repeatedEdges };
}

export function isWatertight(faults: MeshFaults): boolean {
  return (
    faults.openEdges +
      faults.repeatedEdges +
      faults.indicesOutOfRange +
      faults.nonFinitePositions ===
    0
  );
}

/**
 * Volume moments (density 1) of the region enclosed by a closed, outward-facing triangle surface: the sum over
 * tetrahedra from a base point to every triangle. For a tetrahedron (0, a, b, c) of signed volume
 * V = a . (b x c) / 6: S = V (a + b + c) / 4 and J = V / 20 (s s^T + a a^T + b b^T + c c^T), s = a + b + c
 * (F. Tonon, J. Math. Stat. 1(1), 2004, rewritten for J about the common vertex). The base point is the first
 * vertex, so a mesh far from the origin keeps its digits; the result is about the mesh frame's origin.
 * The caller checks that the mesh is watertight (`inspectMesh`): an open surface has no volume to speak of.
 */
export function meshVolumeMoments(mesh: TriangleMesh, out: Moments): Moments {
  const p = mesh.positions;
  out.fill(0);
  if (p.length < 3) return out;
  const ox = p[0];
  const oy = p[1];
  const oz = p[2];
  for (let t = 0; t + 2 < mesh.triangles.length; t += 3) {
    const i = 3 * mesh.triangles[t];
    const j = 3 * mesh.triangles[t + 1];
    const k = 3 * mesh.triangles[t + 2];
    const ax = p[i] - ox;
    const ay = p[i + 1] - oy;
    const az = p[i + 2] - oz;
    const bx = p[j] - ox;
    const by = p[j + 1] - oy;
    const bz = p[j + 2] - oz;
    const cx = p[k] - ox;
    const cy = p[k + 1] - oy;
    const cz = p[k + 2] - oz;
    const v = (ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx)) / 6;
    const sx = ax + bx + cx;
    const sy = ay + by + cy;
    const sz = az + bz + cz;
    const w = v / 20;
    out[M] += v;
    out[SX] += (v * sx) / 4;
    out[SY] += (v * sy) / 4;
    out[SZ] += (v * sz) / 4;
    out[JXX] += w * (sx * sx + ax * ax + bx * bx + cx * cx);
    out[JYY] += w * (sy * sy + ay * ay + by * by + cy * cy);
    out[JZZ] += w * (sz * sz + az * az + bz * bz + cz * cz);
    out[JXY] += w * (sx * sy + ax * ay + bx * by + cx * cy);
    out[JXZ] += w * (sx * sz + ax * az + bx * bz + cx * cz);
    out[JYZ] += w * (sy * sz + ay * az + by * bz + cy * cz);
  }
  // Back from the base point to the frame's origin.
  const m = out[M];
  out[JXX] += ox * (2 * out[SX] + m * ox);
  out[JYY] += oy * (2 * out[SY] + m * oy);
  out[JZZ] += oz * (2 * out[SZ] + m * oz);
  out[JXY] += ox * out[SY] + oy * out[SX] + m * ox * oy;
  out[JXZ] += ox * out[SZ] + oz * out[SX] + m * ox * oz;
  out[JYZ] += oy * out[SZ] + oz * out[SY] + m * oy * oz;
  out[SX] += m * ox;
  out[SY] += m * oy;
  out[SZ] += m * oz;
  return out;
}
