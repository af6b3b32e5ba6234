import type { MeshBVH } from 'three-mesh-bvh';

/** Looks at the triangles of two leaves, from one place in the tree's order up to another; true ends the walk. */
export type LeafVisit = (from: number, to: number, otherFrom: number, otherTo: number) => boolean;

/**
 * Calls `visit` once for every two leaves of a tree whose boxes meet, and once for every leaf with itself. The library's
 * own `bvhcast` of a tree on itself comes to every two in both orders and turns each box by a matrix on the way.
 */
export function visitLeafPairs(tree: MeshBVH, visit: LeafVisit): void {
  const { boxes, right, from, to } = flatTree(tree);
  // The left child of node i is i + 1. Each walk says whether the whole is over.
  function within(node: number): boolean {
    const far = right[node];
    if (far < 0) return visit(from[node], to[node], from[node], to[node]);
    return within(node + 1) || within(far) || between(node + 1, far);
  }
  function between(a: number, b: number): boolean {
    if (boxesApart(boxes, 6 * a, 6 * b)) return false;
    const farA = right[a];
    const farB = right[b];
    if (farA < 0) {
      if (farB < 0) return visit(from[a], to[a], from[b], to[b]);
      return between(a, b + 1) || between(a, farB);
    }
    if (farB < 0) return between(a + 1, b) || between(farA, b);
    return (
      between(a + 1, b + 1) || between(a + 1, farB) || between(farA, b + 1) || between(farA, farB)
    );
  }
  within(0);
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
