import { BufferAttribute, BufferGeometry } from 'three';
import { MeshBVH } from 'three-mesh-bvh';
import type { Rest } from '../rest';
import { boxesApart, leafPairWalk, triangleBoxes } from './leafPairs';

export interface Crossings {
  /** Pairs of triangles of which an edge of one goes through the other, farther than the tolerance from its border. */
  readonly through: number;
  /** And pairs of which one only meets the other's border: bodies that reach into one another there, or lie on one another. */
  readonly onBorder: number;
  readonly finished: boolean;
}

const MOST_PAIRS = 10_000;
/** Pairs of nodes between two looks at the clock: some tenths of a millisecond. */
const STEPS = 512;

/**
 * Counts pairs of triangles of which an edge of one goes through the other. An edge counts when its ends lie on both
 * sides, each farther than `tolerance` from the other's plane: rounding is no crossing, nor is a vertex that only
 * touches. Neighbours need no exception: an edge that ends in a corner of the other triangle ends in its plane. Stops at
 * `MOST_PAIRS` and when `outOfTime` says so; `rest` is awaited again and again on the way.
 */
export async function findCrossings(
  positions: Float64Array,
  triangles: Uint32Array,
  tolerance: number,
  { outOfTime, rest }: { readonly outOfTime: () => boolean; readonly rest: Rest },
): Promise<Crossings> {
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(positions, 3));
  // The tree sorts the triangles; their order does not matter here.
  const sorted = triangles.slice();
  geometry.setIndex(new BufferAttribute(sorted, 1));
  const tree = new MeshBVH(geometry);
  const boxes = triangleBoxes(positions, sorted);
  const meeting = createPairTest(positions, sorted, tolerance);
  let through = 0;
  let onBorder = 0;
  const walk = leafPairWalk(tree, (from, to, otherFrom, otherTo) => {
    for (let a = from; a < to; a++) {
      for (let b = from === otherFrom ? a + 1 : otherFrom; b < otherTo; b++) {
        if (boxesApart(boxes, 6 * a, 6 * b)) continue;
        const found = meeting(a, b);
        if (found === THROUGH) through++;
        else if (found === ON_BORDER) onBorder++;
        if (through + onBorder >= MOST_PAIRS) return true;
      }
    }
    return false;
  });
  let finished = true;
  while (!walk(STEPS)) {
    if (outOfTime()) {
      finished = false;
      break;
    }
    await rest();
  }
  if (through + onBorder >= MOST_PAIRS) finished = false;
  return { through, onBorder, finished };
}

/** How two triangles meet; the greater of two says more. */
type PairMeeting = typeof APART | typeof ON_BORDER | typeof THROUGH;
const APART = 0;
const ON_BORDER = 1;
const THROUGH = 2;

function createPairTest(p: Float64Array, triangles: Uint32Array, tolerance: number) {
  const planes = [new Float64Array(4), new Float64Array(4)];
  const sides = new Float64Array(3);
  function corner(t: number, k: number): number {
    return 3 * triangles[3 * t + (k % 3)];
  }
  /** Unit normal and offset; false for a triangle without area, which has no inside to go through. */
  function plane(t: number, out: Float64Array): boolean {
    const i = corner(t, 0);
    const j = corner(t, 1);
    const k = corner(t, 2);
    const ux = p[j] - p[i];
    const uy = p[j + 1] - p[i + 1];
    const uz = p[j + 2] - p[i + 2];
    const vx = p[k] - p[i];
    const vy = p[k + 1] - p[i + 1];
    const vz = p[k + 2] - p[i + 2];
    const nx = uy * vz - uz * vy;
    const ny = uz * vx - ux * vz;
    const nz = ux * vy - uy * vx;
    const size = Math.sqrt(nx * nx + ny * ny + nz * nz);
    if (!(size > 0)) return false;
    out[0] = nx / size;
    out[1] = ny / size;
    out[2] = nz / size;
    out[3] = (nx * p[i] + ny * p[i + 1] + nz * p[i + 2]) / size;
    return true;
  }
  function pierced(edges: number, target: number, n: Float64Array): PairMeeting {
    let most: PairMeeting = APART;
    for (let k = 0; k < 3; k++) {
      const i = corner(edges, k);
      sides[k] = n[0] * p[i] + n[1] * p[i + 1] + n[2] * p[i + 2] - n[3];
    }
    for (let k = 0; k < 3; k++) {
      const from = sides[k];
      const to = sides[(k + 1) % 3];
      const passes = (from > tolerance && to < -tolerance) || (from < -tolerance && to > tolerance);
      if (!passes) continue;
      const i = corner(edges, k);
      const j = corner(edges, k + 1);
      const s = from / (from - to);
      const x = p[i] + s * (p[j] - p[i]);
      const y = p[i + 1] + s * (p[j + 1] - p[i + 1]);
      const z = p[i + 2] + s * (p[j + 2] - p[i + 2]);
      const here = placeIn(target, n, x, y, z);
      if (here > most) most = here;
    }
    return most;
  }
  /** Where in a triangle a point of its plane lies: apart from it, within it, or no farther from its border than `tolerance`. */
  function placeIn(t: number, n: Float64Array, x: number, y: number, z: number): PairMeeting {
    let place: PairMeeting = THROUGH;
    for (let k = 0; k < 3; k++) {
      const i = corner(t, k);
      const j = corner(t, k + 1);
      const ux = p[j] - p[i];
      const uy = p[j + 1] - p[i + 1];
      const uz = p[j + 2] - p[i + 2];
      const vx = x - p[i];
      const vy = y - p[i + 1];
      const vz = z - p[i + 2];
      const inward =
        n[0] * (uy * vz - uz * vy) + n[1] * (uz * vx - ux * vz) + n[2] * (ux * vy - uy * vx);
      if (inward < 0) return APART;
      if (inward <= tolerance * Math.sqrt(ux * ux + uy * uy + uz * uz)) place = ON_BORDER;
    }
    return place;
  }
  // Many pairs in a row have the same first triangle.
  let last = -1;
  let hasPlane = false;
  return (a: number, b: number): PairMeeting => {
    if (a !== last) {
      hasPlane = plane(a, planes[0]);
      last = a;
    }
    if (!hasPlane || !plane(b, planes[1])) return APART;
    const one = pierced(b, a, planes[0]);
    const other = pierced(a, b, planes[1]);
    return one > other ? one : other;
  };
}
