import {
  BufferGeometry as Buffer,
  type BufferGeometry,
  ExtrudeGeometry,
  Float32BufferAttribute,
  LatheGeometry,
  Matrix4,
  Path,
  Shape,
  Vector2,
} from 'three';
import type { Outline, Solid } from '../../../src/engine/mass/solid';
import type { Pose } from '../../../src/engine/math/pose';
import { weldedMeshes } from '../../../src/parts/tessellate';
import { flatten } from '../../../src/parts/tessellation/flatten';
import { addMeshMoments, type Ten } from '../meshIntegral';
import { isLump, type PlacedSolids, SEGMENTS } from '../pieces';

/** The head weighed through the scene's own meshes: geometry of every solid built with three.js, then integrated. */
export function threeMoments(parts: readonly PlacedSolids[]): Ten {
  const out: Ten = new Array(10).fill(0);
  for (const { solids, pose } of parts) {
    for (const solid of solids) {
      if (isLump(solid)) continue;
      const geometry = geometryOf(solid);
      if (solid.pose) geometry.applyMatrix4(matrixOf(solid.pose));
      geometry.applyMatrix4(matrixOf(pose));
      const index = geometry.getIndex();
      const positions = geometry.getAttribute('position');
      addMeshMoments(out, positions.array, 3, index ? index.array : null, densityOf(solid));
      geometry.dispose();
    }
  }
  return out;
}

function densityOf(solid: Solid): number {
  return 'density' in solid ? solid.density : 0;
}

function geometryOf(solid: Solid): BufferGeometry {
  const { shape } = solid;
  if (shape.shape === 'revolution') {
    const { points } = flatten(shape.profile, SEGMENTS);
    // three turns about y, the solid about z.
    const profile = [...points, points[0]].map(([r, z]) => new Vector2(r, z));
    return new LatheGeometry(profile, SEGMENTS).applyMatrix4(Y_TO_Z);
  }
  if (shape.shape === 'prism') {
    const outline = new Shape(vectors(shape.outer));
    outline.holes = shape.holes.map((hole) => new Path(vectors(hole)));
    const depth = Math.abs(shape.to - shape.from);
    return new ExtrudeGeometry(outline, { depth, bevelEnabled: false }).translate(
      0,
      0,
      Math.min(shape.from, shape.to),
    );
  }
  // Lofts have no maker of their own in three: the drawn mesh.
  const [mesh] = weldedMeshes([{ ...solid, pose: undefined } as unknown as Solid], {
    segmentsPerTurn: SEGMENTS,
  });
  const geometry = new Buffer();
  geometry.setAttribute('position', new Float32BufferAttribute(mesh.positions, 3));
  geometry.setIndex(Array.from(mesh.triangles));
  return geometry;
}

const Y_TO_Z = new Matrix4().makeRotationX(Math.PI / 2);

function vectors(outline: Outline): Vector2[] {
  return flatten(outline, SEGMENTS).points.map(([x, y]) => new Vector2(x, y));
}

function matrixOf({ rotation: r, translation: [x, y, z] }: Pose): Matrix4 {
  return new Matrix4().set(
    r[0],
    r[1],
    r[2],
    x,
    r[3],
    r[4],
    r[5],
    y,
    r[6],
    r[7],
    r[8],
    z,
    0,
    0,
    0,
    1,
  );
}
