import { PointPool } from '../readers/pointPool';
import type { RawMesh } from '../types';
import { buildEdges, type EdgeTable, edgeEnd, isCrowded, OPEN } from './edges';

export interface Cleaned {
  readonly positions: Float64Array;
  readonly triangles: Uint32Array;
  readonly edges: EdgeTable;
  readonly degenerateTriangles: number;
  readonly repeatedTriangles: number;
  readonly joinedPoints: number;
  readonly weldTolerance: number;
}

/** Cracks up to this share of the box's diagonal are what rounding to six or seven digits leaves. */
const CRACK_SHARE = 2e-6;
/** More loose points than these are no rounding matter. */
const MOST_LOOSE_POINTS = 200_000;

/**
 * Joins points of equal coordinates, drops triangles with two corners in one point, and of triangles with the same
 * corners in the same sense keeps one. Where edges are open then, points on them that lie within `CRACK_SHARE` of the
 * diagonal of one another are joined too, if and only if that closes the surface; else it is left as it was.
 */
export function cleanMesh(raw: Pick<RawMesh, 'positions' | 'triangles' | 'pooled'>): Cleaned {
  const exact = raw.pooled ? raw : joinEqualPoints(raw.positions, raw.triangles);
  const kept = dropDegenerate(exact.triangles);
  const degenerate = (raw.triangles.length - kept.length) / 3;
  const one = finish(exact.positions, kept, degenerate, 0, 0);
  if (one.edges.openEdges === 0) return one;
  const joined = joinAcrossCracks(one);
  return joined && joined.edges.openEdges === 0 ? joined : one;
}

function joinEqualPoints(positions: Float64Array, triangles: Uint32Array) {
  const pool = new PointPool();
  const index = new Int32Array(positions.length / 3).fill(-1);
  const out = new Uint32Array(triangles.length);
  for (let i = 0; i < triangles.length; i++) {
    const v = triangles[i];
    if (index[v] < 0) index[v] = pool.add(...pointAt(positions, v));
    out[i] = index[v];
  }
  return { positions: pool.toArray(), triangles: out };
}

function pointAt(p: Float64Array, v: number): [number, number, number] {
  return [p[3 * v], p[3 * v + 1], p[3 * v + 2]];
}

function dropDegenerate(triangles: Uint32Array): Uint32Array {
  return keepTriangles(triangles, (a, b, c) => a !== b && b !== c && c !== a);
}

function keepTriangles(
  triangles: Uint32Array,
  keep: (a: number, b: number, c: number, t: number) => boolean,
): Uint32Array {
  const out = new Uint32Array(triangles.length);
  let length = 0;
  for (let i = 0; i < triangles.length; i += 3) {
    const a = triangles[i];
    const b = triangles[i + 1];
    const c = triangles[i + 2];
    if (!keep(a, b, c, i / 3)) continue;
    out[length] = a;
    out[length + 1] = b;
    out[length + 2] = c;
    length += 3;
  }
  return length === out.length ? out : out.slice(0, length);
}

function finish(
  positions: Float64Array,
  triangles: Uint32Array,
  degenerateTriangles: number,
  joinedPoints: number,
  weldTolerance: number,
): Cleaned {
  const edges = buildEdges(triangles, positions.length / 3);
  const single = dropRepeated(triangles, edges);
  return {
    positions,
    triangles: single,
    edges: single === triangles ? edges : buildEdges(single, positions.length / 3),
    degenerateTriangles,
    repeatedTriangles: (triangles.length - single.length) / 3,
    joinedPoints,
    weldTolerance,
  };
}

/** Only triangles on crowded edges, or the two of a pair, can be repeated; a third edge says no more than the first two. */
function dropRepeated(triangles: Uint32Array, { twin }: EdgeTable): Uint32Array {
  const seen = new Set<string>();
  const drop = new Set<number>();
  for (let t = 0; t < triangles.length / 3; t++) {
    const h = 3 * t;
    const pair = twin[h] >= 0 && Math.floor(twin[h] / 3) === Math.floor(twin[h + 1] / 3);
    const crowded = isCrowded(twin[h]) || isCrowded(twin[h + 1]);
    if (!pair && !crowded) continue;
    const key = senseKey(triangles[h], triangles[h + 1], triangles[h + 2]);
    if (seen.has(key)) drop.add(t);
    else seen.add(key);
  }
  return drop.size === 0 ? triangles : keepTriangles(triangles, (_a, _b, _c, t) => !drop.has(t));
}

/** Corners from the lowest on, in their sense. */
function senseKey(a: number, b: number, c: number): string {
  if (a < b && a < c) return `${a},${b},${c}`;
  return b < c ? `${b},${c},${a}` : `${c},${a},${b}`;
}

function joinAcrossCracks(mesh: Cleaned): Cleaned | undefined {
  const { positions, triangles, edges } = mesh;
  const loose = new Set<number>();
  for (let h = 0; h < triangles.length; h++) {
    if (edges.twin[h] !== OPEN) continue;
    loose.add(triangles[h]);
    loose.add(edgeEnd(triangles, h));
    if (loose.size > MOST_LOOSE_POINTS) return undefined;
  }
  const tolerance = CRACK_SHARE * diagonal(positions);
  const home = nearestHomes(positions, loose, tolerance);
  if (home.size === 0) return undefined;
  const moved = triangles.map((v) => home.get(v) ?? v);
  const kept = dropDegenerate(moved);
  const degenerate = mesh.degenerateTriangles + (moved.length - kept.length) / 3;
  const joined = finish(positions, kept, degenerate, home.size, tolerance);
  return { ...joined, repeatedTriangles: joined.repeatedTriangles + mesh.repeatedTriangles };
}

/** For each loose point that lies within `tolerance` of an earlier one: that one. By cells of a grid. */
function nearestHomes(p: Float64Array, loose: Set<number>, tolerance: number): Map<number, number> {
  const cells = new Map<string, number[]>();
  const home = new Map<number, number>();
  for (const v of loose) {
    const at = pointAt(p, v);
    const [x, y, z] = at.map((value) => Math.floor(value / tolerance));
    let found: number | undefined;
    for (let k = 0; k < 27 && found === undefined; k++) {
      const key = `${x + (k % 3) - 1},${y + (Math.floor(k / 3) % 3) - 1},${z + Math.floor(k / 9) - 1}`;
      found = cells.get(key)?.find((other) => {
        const [ox, oy, oz] = pointAt(p, other);
        return Math.hypot(at[0] - ox, at[1] - oy, at[2] - oz) <= tolerance;
      });
    }
    if (found !== undefined) home.set(v, found);
    else {
      const key = `${x},${y},${z}`;
      const cell = cells.get(key);
      if (cell) cell.push(v);
      else cells.set(key, [v]);
    }
  }
  return home;
}

function diagonal(p: Float64Array): number {
  const { low, high } = boxOf(p);
  return Math.hypot(high[0] - low[0], high[1] - low[1], high[2] - low[2]);
}

export interface Box {
  readonly low: readonly [number, number, number];
  readonly high: readonly [number, number, number];
}

export function boxOf(positions: Float64Array): Box {
  const low: [number, number, number] = [Infinity, Infinity, Infinity];
  const high: [number, number, number] = [-Infinity, -Infinity, -Infinity];
  for (let i = 0; i < positions.length; i += 3) {
    for (let k = 0; k < 3; k++) {
      const value = positions[i + k];
      if (value < low[k]) low[k] = value;
      if (value > high[k]) high[k] = value;
    }
  }
  return { low, high };
}
