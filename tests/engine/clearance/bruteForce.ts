import { BufferAttribute, BufferGeometry, DoubleSide, Matrix4, Ray, Vector3 } from 'three';
import { MeshBVH } from 'three-mesh-bvh';
import type { RotorConditions } from '../../../src/engine/feathering/rotor';
import type { TriangleMesh } from '../../../src/engine/mass/solid';
import type { Pose } from '../../../src/engine/math/pose';
import type { Vec3 } from '../../../src/engine/math/vector';

const RAYS: readonly Vec3[] = [
  [0.3, 0.5, 0.81],
  [-0.71, 0.22, 0.43],
  [0.11, -0.83, 0.37],
];

/** Distances between meshes by another hand: three-mesh-bvh, the poses by three.js matrices. Lengths m. */
export class BruteMesh {
  readonly geometry = new BufferGeometry();
  readonly bvh: MeshBVH;

  constructor(readonly mesh: TriangleMesh) {
    this.geometry.setAttribute(
      'position',
      new BufferAttribute(Float64Array.from(mesh.positions) as never, 3),
    );
    this.geometry.setIndex(new BufferAttribute(Uint32Array.from(mesh.triangles), 1));
    this.bvh = new MeshBVH(this.geometry);
    this.geometry.boundsTree = this.bvh;
  }

  /** Distance of the surfaces when `other` stands by `matrix` in this mesh's frame; 0 where they cross; `beyond` where it is no less. */
  distanceTo(other: BruteMesh, matrix: Matrix4, beyond = Infinity): number {
    const hit = { point: new Vector3(), distance: 0, faceIndex: 0 };
    const found = this.bvh.closestPointToGeometry(
      other.geometry,
      matrix,
      hit,
      undefined,
      0,
      beyond,
    );
    return found ? found.distance : beyond;
  }

  /** Corners, middles of edges and middles of its triangles, at most so many. */
  surfacePoints(most: number): readonly Vec3[] {
    const { positions: p, triangles } = this.mesh;
    const corner = (i: number): Vec3 => [p[3 * i], p[3 * i + 1], p[3 * i + 2]];
    const points: Vec3[] = Array.from({ length: p.length / 3 }, (_, i) => corner(i));
    for (let t = 0; t < triangles.length; t += 3) {
      const [a, b, c] = [0, 1, 2].map((k) => corner(triangles[t + k]));
      points.push(mean(a, b), mean(a, b, c));
    }
    const every = Math.ceil(points.length / most);
    return points.filter((_, i) => i % every === 0);
  }

  /** Signed distance of a point: nearest point of the mesh, and the parity of what rays meet. */
  signedDistance([x, y, z]: Vec3): number {
    const point = new Vector3(x, y, z);
    const found = this.bvh.closestPointToPoint(point);
    if (!found) throw new Error('signedDistance(): no distance');
    // A ray through an edge may meet two triangles or none: most of three decide.
    const odd = RAYS.filter((way) => {
      const ray = new Ray(point, new Vector3(...way).normalize());
      return this.bvh.raycast(ray, DoubleSide).length % 2 === 1;
    });
    return odd.length >= 2 ? -found.distance : found.distance;
  }
}

export function matrixOf({ rotation: r, translation: t }: Pose): Matrix4 {
  return new Matrix4().set(
    r[0],
    r[1],
    r[2],
    t[0],
    r[3],
    r[4],
    r[5],
    t[1],
    r[6],
    r[7],
    r[8],
    t[2],
    0,
    0,
    0,
    1,
  );
}

/** The grip frame seen from the case: azimuth about Z, torque offset along Y, precone about -Y, pitch about x. */
export function gripMatrix(rotor: RotorConditions, pitch: number, azimuth: number): Matrix4 {
  return new Matrix4()
    .makeRotationZ(azimuth)
    .multiply(new Matrix4().makeTranslation(0, rotor.torqueOffset, 0))
    .multiply(new Matrix4().makeRotationY(-rotor.precone))
    .multiply(new Matrix4().makeRotationX(pitch));
}

export function pointBy(matrix: Matrix4, [x, y, z]: Vec3): Vec3 {
  const moved = new Vector3(x, y, z).applyMatrix4(matrix);
  return [moved.x, moved.y, moved.z];
}

function mean(...points: readonly Vec3[]): Vec3 {
  const of = (k: 0 | 1 | 2) => points.reduce((sum, point) => sum + point[k], 0) / points.length;
  return [of(0), of(1), of(2)];
}
