import type { TriangleMesh } from '../../engine/mass/solid';
import { transformPoint } from '../../engine/math/pose';
import { INCH_MM, mmFromMetres } from '../../engine/units';
import { weldedMeshes } from '../../parts/tessellate';
import type { FileBody } from './fileBodies';

export type SolidUnit = 'mm' | 'in';

/** What a metre is in the file's unit. */
export function perMetre(unit: SolidUnit): number {
  return unit === 'mm' ? mmFromMetres(1) : mmFromMetres(1) / INCH_MM;
}

/**
 * The surfaces of a body's solids as one mesh in the file's frame, metres. Solids that touch keep their own walls; a
 * hole's faces look into it, so that volumes and moments of the whole add up.
 */
export function bodyMesh({ solids, pose }: FileBody, segmentsPerTurn: number): TriangleMesh {
  const meshes = weldedMeshes(solids, { segmentsPerTurn });
  const count = (key: 'positions' | 'triangles') =>
    meshes.reduce((sum, mesh) => sum + mesh[key].length, 0);
  const positions = new Float64Array(count('positions'));
  const triangles = new Uint32Array(count('triangles'));
  let point = 0;
  let corner = 0;
  for (const mesh of meshes) {
    for (let i = 0; i < mesh.positions.length; i += 3) {
      const [x, y, z] = mesh.positions.subarray(i, i + 3);
      positions.set(transformPoint(pose, [x, y, z]), 3 * point + i);
    }
    for (const vertex of mesh.triangles) triangles[corner++] = vertex + point;
    point += mesh.positions.length / 3;
  }
  return { positions, triangles };
}
