import { triangleDistance } from './keepOut';
import type { TriangleTree } from './triangleTree';

const found = new Float64Array(4);
const open = new Int32Array(256);

/**
 * Signed distance of a point from the closed surface in a tree, negative inside. The size is that of the nearest triangle,
 * exact; the sign by counting the surfaces that a ray passes. Allocates nothing.
 */
export function meshDistance(tree: TriangleTree, x: number, y: number, z: number): number {
  const size = surfaceDistance(tree, x, y, z);
  return isInside(tree, x, y, z) ? -size : size;
}

/** Distance of a point from the nearest triangle. */
export function surfaceDistance(tree: TriangleTree, x: number, y: number, z: number): number {
  let best = Infinity;
  let height = 0;
  open[height++] = 0;
  while (height > 0) {
    const node = open[--height];
    if (boxGap(tree, node, x, y, z) >= best) continue;
    const second = tree.second[node];
    if (second === 0) {
      const last = tree.first[node] + tree.count[node];
      for (let i = tree.first[node]; i < last; i++) {
        triangleDistance(tree.corners, 9 * i, x, y, z, found);
        if (found[0] < best) best = found[0];
      }
      continue;
    }
    const nearFirst = boxGap(tree, node + 1, x, y, z) < boxGap(tree, second, x, y, z);
    open[height++] = nearFirst ? second : node + 1;
    open[height++] = nearFirst ? node + 1 : second;
  }
  return best;
}

function boxGap({ centres, halves }: TriangleTree, node: number, x: number, y: number, z: number) {
  const k = 3 * node;
  const qx = Math.max(0, Math.abs(x - centres[k]) - halves[k]);
  const qy = Math.max(0, Math.abs(y - centres[k + 1]) - halves[k + 1]);
  const qz = Math.max(0, Math.abs(z - centres[k + 2]) - halves[k + 2]);
  return Math.sqrt(qx * qx + qy * qy + qz * qz);
}

/** Directions of no simple ratio: a ray along one seldom meets an edge of anything that is drawn. */
const RAYS = [
  [0.5377, 0.3171, 0.7812],
  [-0.2913, 0.8423, 0.4536],
  [0.6649, -0.5281, -0.5283],
] as const;
/** A ray that passes this near to an edge (share of the triangle) or this flat is not trusted. */
const GRAZES = 1e-9;

/**
 * Whether a point lies inside a closed surface: a ray from it leaves more often than it enters. The first ray that passes
 * clear of all edges decides; where none does, the last one.
 */
export function isInside(tree: TriangleTree, x: number, y: number, z: number): boolean {
  let turns = 0;
  for (const [dx, dy, dz] of RAYS) {
    turns = crossings(tree, x, y, z, dx, dy, dz);
    if (!grazed) break;
  }
  return turns > 0;
}

let grazed = false;

/** Times that the ray leaves the solid less the times that it enters. Sets `grazed`. */
function crossings(
  tree: TriangleTree,
  x: number,
  y: number,
  z: number,
  dx: number,
  dy: number,
  dz: number,
): number {
  let turns = 0;
  let height = 0;
  grazed = false;
  if (tree.second.length > 0) open[height++] = 0;
  while (height > 0) {
    const node = open[--height];
    if (!meets(tree, node, x, y, z, dx, dy, dz)) continue;
    const second = tree.second[node];
    if (second !== 0) {
      open[height++] = node + 1;
      open[height++] = second;
      continue;
    }
    const last = tree.first[node] + tree.count[node];
    for (let i = tree.first[node]; i < last; i++) {
      turns += crossing(tree.corners, 9 * i, x, y, z, dx, dy, dz);
    }
  }
  return turns;
}

/** Slab test of a ray and a node's box. */
function meets(
  { centres, halves }: TriangleTree,
  node: number,
  x: number,
  y: number,
  z: number,
  dx: number,
  dy: number,
  dz: number,
): boolean {
  const k = 3 * node;
  const ax = (centres[k] - x) / dx;
  const rx = Math.abs(halves[k] / dx);
  const ay = (centres[k + 1] - y) / dy;
  const ry = Math.abs(halves[k + 1] / dy);
  const az = (centres[k + 2] - z) / dz;
  const rz = Math.abs(halves[k + 2] / dz);
  const near = Math.max(ax - rx, ay - ry, az - rz);
  const far = Math.min(ax + rx, ay + ry, az + rz);
  // A hair of room: a flat box has no width.
  return far >= 0 && near <= far + 1e-12 * Math.abs(far);
}

/** +1 where the ray leaves through the triangle, -1 where it enters, 0 where it misses it. */
function crossing(
  v: Float64Array,
  at: number,
  x: number,
  y: number,
  z: number,
  dx: number,
  dy: number,
  dz: number,
): number {
  const ax = v[at] - x;
  const ay = v[at + 1] - y;
  const az = v[at + 2] - z;
  const bx = v[at + 3] - x;
  const by = v[at + 4] - y;
  const bz = v[at + 5] - z;
  const cx = v[at + 6] - x;
  const cy = v[at + 7] - y;
  const cz = v[at + 8] - z;
  // Volumes of the ray's direction with each edge: all of one sign where it passes through.
  const u = dx * (by * cz - bz * cy) + dy * (bz * cx - bx * cz) + dz * (bx * cy - by * cx);
  const w = dx * (cy * az - cz * ay) + dy * (cz * ax - cx * az) + dz * (cx * ay - cy * ax);
  const q = dx * (ay * bz - az * by) + dy * (az * bx - ax * bz) + dz * (ax * by - ay * bx);
  const sum = u + w + q;
  const size = Math.abs(u) + Math.abs(w) + Math.abs(q);
  const sameSign = (u >= 0 && w >= 0 && q >= 0) || (u <= 0 && w <= 0 && q <= 0);
  if (!sameSign || size === 0) return 0;
  const apart =
    (u * (ax * dx + ay * dy + az * dz) +
      w * (bx * dx + by * dy + bz * dz) +
      q * (cx * dx + cy * dy + cz * dz)) /
    sum;
  if (apart <= 0) return 0;
  if (Math.min(Math.abs(u), Math.abs(w), Math.abs(q)) < GRAZES * size) grazed = true;
  return sum > 0 ? 1 : -1;
}
