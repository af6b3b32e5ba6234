import type { Shape, TriangleMesh } from '../../engine/mass/solid';
import type { Pose } from '../../engine/math/pose';
import { meshSurface } from './creases';
import { type ShadedMesh, shade } from './shading';
import { weldedMesh } from './surface';

/** The triangles that a shape brings with it, in its local frame and in metres; null where a surface is made of it. */
export function givenMesh(shape: Shape | { readonly shape: 'point' }): TriangleMesh | null {
  if (shape.shape === 'mesh') return shape;
  return shape.shape === 'known' ? shape.picture : null;
}

interface Remembered {
  readonly triangles: Uint32Array;
  readonly shaded: ShadedMesh;
}

/** By the array of points: shading a fine mesh takes longer than a frame. */
const remembered = new WeakMap<Float64Array, Remembered>();

/**
 * A given mesh shaded in its own frame, and remembered for as long as its array of points lives: nobody may write
 * into the arrays of a mesh, nor into the result.
 */
export function shadedOnce(mesh: TriangleMesh): ShadedMesh {
  const known = remembered.get(mesh.positions);
  if (known?.triangles === mesh.triangles) return known.shaded;
  const surface = meshSurface(mesh);
  const shaded = shade(weldedMesh(surface), surface.faces);
  remembered.set(mesh.positions, { triangles: mesh.triangles, shaded });
  return shaded;
}

/** The same surface in the frame that `pose` places it in. A pose keeps angles, so the shading goes with it. */
export function placedShading(shaded: ShadedMesh, pose?: Pose): ShadedMesh {
  if (!pose) return shaded;
  const { rotation: r, translation: t } = pose;
  return {
    positions: carried(shaded.positions, r, t),
    normals: carried(shaded.normals, r, [0, 0, 0]),
    triangles: shaded.triangles,
    edges: carried(shaded.edges, r, t),
  };
}

function carried(points: ArrayLike<number>, r: Pose['rotation'], t: Pose['translation']): number[] {
  const out = new Array<number>(points.length);
  for (let i = 0; i < points.length; i += 3) {
    const [x, y, z] = [points[i], points[i + 1], points[i + 2]];
    out[i] = r[0] * x + r[1] * y + r[2] * z + t[0];
    out[i + 1] = r[3] * x + r[4] * y + r[5] * z + t[1];
    out[i + 2] = r[6] * x + r[7] * y + r[8] * z + t[2];
  }
  return out;
}
