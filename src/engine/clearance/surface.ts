import type { Pose } from '../math/pose';
import type { Mat3 } from '../math/vector';
import type { TriangleTree } from './triangleTree';

/** A tree of triangles put into another frame C: corners and middles of boxes there; the boxes stay turned as they were. */
export interface PlacedSurface {
  readonly tree: TriangleTree;
  readonly corners: Float64Array;
  readonly centres: Float64Array;
  /** Axes of the tree's frame in C: the boxes' sides lie along its columns. */
  readonly axes: Mat3;
}

export function placeSurface(tree: TriangleTree, pose: Pose): PlacedSurface {
  return {
    tree,
    corners: moved(tree.corners, pose),
    centres: moved(tree.centres, pose),
    axes: pose.rotation,
  };
}

function moved(points: Float64Array, { rotation: r, translation: t }: Pose): Float64Array {
  const out = new Float64Array(points.length);
  for (let i = 0; i < points.length; i += 3) {
    const x = points[i];
    const y = points[i + 1];
    const z = points[i + 2];
    out[i] = r[0] * x + r[1] * y + r[2] * z + t[0];
    out[i + 1] = r[3] * x + r[4] * y + r[5] * z + t[1];
    out[i + 2] = r[6] * x + r[7] * y + r[8] * z + t[2];
  }
  return out;
}
