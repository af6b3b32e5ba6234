import type { Pose } from '../math/pose';
import {
  boxDistance,
  type ConvexShape,
  convexDistance,
  middleDepth,
  triangleDistance,
} from './keepOut';
import type { TriangleTree } from './triangleTree';

/**
 * A keep-out as the search sees it: one convex shape, or the triangles of a mesh in boxes, every one of which is convex
 * too. Its frame K stands in the frame that it is fixed to (F: the rotor's, or the case's, which is the rotor's at azimuth
 * zero) by `pose`.
 */
export class Target {
  private readonly out = new Float64Array(4);

  constructor(
    readonly shape: ConvexShape | TriangleTree,
    private readonly pose: Pose,
  ) {}

  get tree(): TriangleTree | null {
    return 'shape' in this.shape ? null : this.shape;
  }

  /** No point is nearer than this: the depth of a convex shape's middle, m. */
  get floor(): number {
    const { shape } = this;
    return 'shape' in shape ? -middleDepth(shape) : 0;
  }

  /** A plane's distance is linear: nothing is gained by cutting what is held against it. */
  get flat(): boolean {
    return 'shape' in this.shape && this.shape.shape === 'plane';
  }

  /** Signed distance of a point of F from a convex shape, or from a node's box or a triangle; out[1..3] the gradient in F. */
  distance(target: number, x: number, y: number, z: number, out: Float64Array): void {
    const { rotation: r, translation: t } = this.pose;
    const dx = x - t[0];
    const dy = y - t[1];
    const dz = z - t[2];
    const kx = r[0] * dx + r[3] * dy + r[6] * dz;
    const ky = r[1] * dx + r[4] * dy + r[7] * dz;
    const kz = r[2] * dx + r[5] * dy + r[8] * dz;
    const g = this.out;
    const { shape } = this;
    if ('shape' in shape) convexDistance(shape, kx, ky, kz, g);
    else if (target < -1) triangleDistance(shape.corners, 9 * (-2 - target), kx, ky, kz, g);
    else nodeDistance(shape, target, kx, ky, kz, g);
    out[0] = g[0];
    out[1] = r[0] * g[1] + r[1] * g[2] + r[2] * g[3];
    out[2] = r[3] * g[1] + r[4] * g[2] + r[5] * g[3];
    out[3] = r[6] * g[1] + r[7] * g[2] + r[8] * g[3];
  }

  /** The same for the whole of it: of a mesh the nearest triangle, never negative. For results, not for the search. */
  nearest(x: number, y: number, z: number, out: Float64Array): void {
    const { shape } = this;
    if ('shape' in shape) {
      this.distance(-1, x, y, z, out);
      return;
    }
    let least = Infinity;
    let at = 0;
    for (let i = 0; 9 * i < shape.corners.length; i++) {
      this.distance(-2 - i, x, y, z, out);
      if (out[0] >= least) continue;
      least = out[0];
      at = i;
    }
    this.distance(-2 - at, x, y, z, out);
  }

  /** Half the diagonal of a node's box; 0 of anything else. */
  size(target: number): number {
    const { shape } = this;
    if ('shape' in shape || target < 0) return 0;
    const h = 3 * target;
    return Math.hypot(shape.halves[h], shape.halves[h + 1], shape.halves[h + 2]);
  }
}

function nodeDistance(
  { centres, halves }: TriangleTree,
  node: number,
  x: number,
  y: number,
  z: number,
  out: Float64Array,
): void {
  const k = 3 * node;
  boxDistance(
    x - centres[k],
    y - centres[k + 1],
    z - centres[k + 2],
    halves[k],
    halves[k + 1],
    halves[k + 2],
    out,
  );
}
