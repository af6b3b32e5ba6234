import type { TriangleMesh } from '../mass/solid';

/**
 * The triangles of a mesh in a tree of boxes along the axes of its own frame. A node's children follow it: the first
 * stands right behind it, the second at `second`. `corners` holds nine numbers a triangle in the order of the leaves, so a
 * leaf is a stretch of it.
 */
export interface TriangleTree {
  readonly corners: Float64Array;
  /** Middle and half sides of each node's box, m. */
  readonly centres: Float64Array;
  readonly halves: Float64Array;
  /** Index of the second child; 0 of a leaf. */
  readonly second: Int32Array;
  /** First triangle of a leaf, and how many it has. */
  readonly first: Int32Array;
  readonly count: Int32Array;
}

/** Triangles that a leaf holds at most. */
const LEAF = 2;

/**
 * Builds the tree by halving at the middle triangle along the longer side of the triangles' middles. O(n log n). Triangles
 * that have no area are kept: they are segments or points, and their distance is one all the same.
 */
export function buildTree(meshes: readonly TriangleMesh[]): TriangleTree {
  const total = meshes.reduce((sum, mesh) => sum + mesh.triangles.length / 3, 0);
  const loose = new Float64Array(9 * total);
  let at = 0;
  for (const { positions, triangles } of meshes) {
    for (let i = 0; i < triangles.length; i++) {
      const p = 3 * triangles[i];
      loose[at++] = positions[p];
      loose[at++] = positions[p + 1];
      loose[at++] = positions[p + 2];
    }
  }
  const middles = new Float64Array(3 * total);
  for (let i = 0; i < middles.length; i++) {
    const p = 9 * Math.floor(i / 3) + (i % 3);
    middles[i] = (loose[p] + loose[p + 3] + loose[p + 6]) / 3;
  }
  const order = Uint32Array.from({ length: total }, (_, i) => i);
  const most = Math.max(1, 2 * total);
  const made = {
    centres: new Float64Array(3 * most),
    halves: new Float64Array(3 * most),
    second: new Int32Array(most),
    first: new Int32Array(most),
    count: new Int32Array(most),
  };
  let nodes = 0;

  function grow(from: number, to: number): void {
    const node = nodes++;
    enclose(loose, order, from, to, node, made);
    if (to - from <= LEAF) {
      made.first[node] = from;
      made.count[node] = to - from;
      return;
    }
    const middle = (from + to) >> 1;
    halve(order, middles, widest(middles, order, from, to), from, to - 1, middle);
    grow(from, middle);
    made.second[node] = nodes;
    grow(middle, to);
  }
  if (total > 0) grow(0, total);

  const corners = new Float64Array(9 * total);
  order.forEach((triangle, i) =>
    corners.set(loose.subarray(9 * triangle, 9 * triangle + 9), 9 * i),
  );
  return {
    corners,
    centres: made.centres.slice(0, 3 * nodes),
    halves: made.halves.slice(0, 3 * nodes),
    second: made.second.slice(0, nodes),
    first: made.first.slice(0, nodes),
    count: made.count.slice(0, nodes),
  };
}

function enclose(
  loose: Float64Array,
  order: Uint32Array,
  from: number,
  to: number,
  node: number,
  { centres, halves }: { readonly centres: Float64Array; readonly halves: Float64Array },
): void {
  for (let k = 0; k < 3; k++) {
    let low = Infinity;
    let high = -Infinity;
    for (let i = from; i < to; i++) {
      const p = 9 * order[i] + k;
      low = Math.min(low, loose[p], loose[p + 3], loose[p + 6]);
      high = Math.max(high, loose[p], loose[p + 3], loose[p + 6]);
    }
    centres[3 * node + k] = (low + high) / 2;
    halves[3 * node + k] = (high - low) / 2;
  }
}

function widest(middles: Float64Array, order: Uint32Array, from: number, to: number): number {
  let axis = 0;
  let size = -1;
  for (let k = 0; k < 3; k++) {
    let low = Infinity;
    let high = -Infinity;
    for (let i = from; i < to; i++) {
      const value = middles[3 * order[i] + k];
      if (value < low) low = value;
      if (value > high) high = value;
    }
    if (high - low > size) {
      size = high - low;
      axis = k;
    }
  }
  return axis;
}

/** Hoare's selection: afterwards what lies before `middle` is no greater along the axis than what lies from it on. */
function halve(
  order: Uint32Array,
  middles: Float64Array,
  axis: number,
  from: number,
  to: number,
  middle: number,
): void {
  let low = from;
  let high = to;
  while (low < high) {
    const pivot = middles[3 * order[(low + high) >> 1] + axis];
    let i = low;
    let j = high;
    while (i <= j) {
      while (middles[3 * order[i] + axis] < pivot) i++;
      while (middles[3 * order[j] + axis] > pivot) j--;
      if (i > j) break;
      const held = order[i];
      order[i++] = order[j];
      order[j--] = held;
    }
    if (middle <= j) high = j;
    else if (middle >= i) low = i;
    else return;
  }
}
