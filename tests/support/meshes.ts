import type { TriangleMesh } from '../../src/engine/mass/solid';
import type { Pose } from '../../src/engine/math/pose';
import { transformPoint } from '../../src/engine/math/pose';
import type { Vec3 } from '../../src/engine/math/vector';

export function meshOf(
  points: readonly Vec3[],
  faces: readonly (readonly number[])[],
): TriangleMesh {
  return { positions: Float64Array.from(points.flat()), triangles: Uint32Array.from(faces.flat()) };
}

export function movedMesh(mesh: TriangleMesh, pose: Pose): TriangleMesh {
  const positions = mesh.positions.slice();
  for (let i = 0; i < positions.length; i += 3) {
    positions.set(transformPoint(pose, [positions[i], positions[i + 1], positions[i + 2]]), i);
  }
  return { positions, triangles: mesh.triangles };
}

/** One mesh of several, each with its own points. */
export function joinedMesh(...meshes: readonly TriangleMesh[]): TriangleMesh {
  const positions: number[] = [];
  const triangles: number[] = [];
  for (const mesh of meshes) {
    const first = positions.length / 3;
    positions.push(...mesh.positions);
    for (const corner of mesh.triangles) triangles.push(first + corner);
  }
  return { positions: Float64Array.from(positions), triangles: Uint32Array.from(triangles) };
}

/** Corner k of a box has its bits for x, y, z; twelve triangles facing outward. */
export function boxMesh(x: number, y: number, z: number): TriangleMesh {
  const corners = Array.from(
    { length: 8 },
    (_, k): Vec3 => [k & 1 ? x / 2 : -x / 2, k & 2 ? y / 2 : -y / 2, k & 4 ? z / 2 : -z / 2],
  );
  const quads = [
    [0, 2, 3, 1],
    [4, 5, 7, 6],
    [0, 1, 5, 4],
    [2, 6, 7, 3],
    [0, 4, 6, 2],
    [1, 3, 7, 5],
  ];
  return meshOf(
    corners,
    quads.flatMap(([a, b, c, d]) => [
      [a, b, c],
      [a, c, d],
    ]),
  );
}

/** A cylinder about z with `sides` flat sides whose edges lie on the true surface. */
export function cylinderMesh(radius: number, height: number, sides: number): TriangleMesh {
  const ring = (z: number) =>
    Array.from({ length: sides }, (_, k): Vec3 => {
      const angle = (2 * Math.PI * k) / sides;
      return [radius * Math.cos(angle), radius * Math.sin(angle), z];
    });
  const low = 2 * sides;
  const faces = Array.from({ length: sides }, (_, k) => {
    const next = (k + 1) % sides;
    return [
      [k, next, sides + next],
      [k, sides + next, sides + k],
      [low, next, k],
      [low + 1, sides + k, sides + next],
    ];
  }).flat();
  const ends: Vec3[] = [
    [0, 0, -height / 2],
    [0, 0, height / 2],
  ];
  return meshOf([...ring(-height / 2), ...ring(height / 2), ...ends], faces);
}

/** A ball of `rings` latitudes and twice as many longitudes, vertices on the true surface. */
export function ballMesh(radius: number, rings: number): TriangleMesh {
  const around = 2 * rings;
  const points: Vec3[] = [];
  for (let i = 1; i < rings; i++) {
    const polar = (Math.PI * i) / rings;
    for (let k = 0; k < around; k++) {
      const angle = (2 * Math.PI * k) / around;
      points.push([
        radius * Math.sin(polar) * Math.cos(angle),
        radius * Math.sin(polar) * Math.sin(angle),
        radius * Math.cos(polar),
      ]);
    }
  }
  const top = points.push([0, 0, radius]) - 1;
  const bottom = points.push([0, 0, -radius]) - 1;
  const faces: number[][] = [];
  for (let k = 0; k < around; k++) {
    const next = (k + 1) % around;
    const last = (rings - 2) * around;
    faces.push([top, k, next], [bottom, last + next, last + k]);
    for (let i = 0; i + 2 < rings; i++) {
      const upper = i * around;
      const lower = upper + around;
      faces.push([upper + k, lower + k, lower + next], [upper + k, lower + next, upper + next]);
    }
  }
  return meshOf(points, faces);
}
