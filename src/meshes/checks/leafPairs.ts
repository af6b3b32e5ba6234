import type { MeshBVH } from 'three-mesh-bvh';

/** Looks at the triangles of two leaves, from one place in the tree's order up to another; true ends the walk. */
export type LeafVisit = (from: number, to: number, otherFrom: number, otherTo: number) => boolean;

/** Goes on by at most so many pairs of nodes; true when the walk is over. */
export type LeafWalk = (steps: number) => boolean;

/**
 * A walk that calls `visit` once for every two leaves of a tree whose boxes meet, and once for every leaf with itself. The
 * library's own `bvhcast` of a tree on itself comes to every two in both orders, turns each box by a matrix on the way, and
 * cannot be left and gone on with.
 */
export function leafPairWalk(tree: MeshBVH, visit: LeafVisit): LeafWalk {
  const { boxes, right, from, to } = flatTree(tree);
  // Pairs of nodes still to be looked at, the next one last. The left child of node i is i + 1.
  const waiting: number[] = [0, 0];

  /** Both nodes below, or both leaves looked at; true where that ends the walk. */
  function step(): boolean {
    const b = waiting.pop() as number;
    const a = waiting.pop() as number;
    const farA = right[a];
    if (a === b) {
      if (farA < 0) return visit(from[a], to[a], from[a], to[a]);
      waiting.push(a + 1, farA, farA, farA, a + 1, a + 1);
      return false;
    }
    if (boxesApart(boxes, 6 * a, 6 * b)) return false;
    const farB = right[b];
    if (farA < 0 && farB < 0) return visit(from[a], to[a], from[b], to[b]);
    if (farA < 0) waiting.push(a, farB, a, b + 1);
    else if (farB < 0) waiting.push(farA, b, a + 1, b);
    else waiting.push(farA, farB, farA, b + 1, a + 1, farB, a + 1, b + 1);
    return false;
  }

  return (steps) => {
    for (let k = 0; k < steps && waiting.length > 0; k++) {
      if (step()) waiting.length = 0;
    }
    return waiting.length === 0;
  };
}

/** The nodes in the order of a walk that goes down on the left first. */
interface FlatTree {
  /** Least x, y, z and greatest of each. */
  readonly boxes: Float64Array;
  /** The right child, -1 for a leaf. */
  readonly right: Int32Array;
  /** The triangles of a leaf. */
  readonly from: Uint32Array;
  readonly to: Uint32Array;
}

function flatTree(tree: MeshBVH): FlatTree {
  let count = 0;
  tree.traverse(() => {
    count++;
  });
  const boxes = new Float64Array(6 * count);
  const right = new Int32Array(count).fill(-1);
  const from = new Uint32Array(count);
  const to = new Uint32Array(count);
  // The last branch seen at each depth: the parent of what follows one deeper.
  const branch: number[] = [];
  let node = 0;
  tree.traverse((depth, isLeaf, box, offset, triangles) => {
    boxes.set(box, 6 * node);
    const parent = depth > 0 ? branch[depth - 1] : node;
    if (node > parent + 1) right[parent] = node;
    if (isLeaf) {
      from[node] = offset;
      to[node] = offset + triangles;
    } else {
      branch[depth] = node;
    }
    node++;
  });
  return { boxes, right, from, to };
}

/** Of every triangle the least x, y, z and the greatest, one after the other. */
export function triangleBoxes(p: Float64Array, triangles: Uint32Array): Float64Array {
  const boxes = new Float64Array(2 * triangles.length);
  for (let t = 0; t < triangles.length; t += 3) {
    for (let axis = 0; axis < 3; axis++) {
      const a = p[3 * triangles[t] + axis];
      const b = p[3 * triangles[t + 1] + axis];
      const c = p[3 * triangles[t + 2] + axis];
      boxes[2 * t + axis] = Math.min(a, b, c);
      boxes[2 * t + axis + 3] = Math.max(a, b, c);
    }
  }
  return boxes;
}

/** Whether two of a list of boxes (least x, y, z and greatest of each), that begin at places a and b, do not even touch. */
export function boxesApart(boxes: Float64Array, a: number, b: number): boolean {
  return (
    boxes[a] > boxes[b + 3] ||
    boxes[b] > boxes[a + 3] ||
    boxes[a + 1] > boxes[b + 4] ||
    boxes[b + 1] > boxes[a + 4] ||
    boxes[a + 2] > boxes[b + 5] ||
    boxes[b + 2] > boxes[a + 5]
  );
}
