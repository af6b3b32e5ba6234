import type { TriangleMesh } from '../../../src/engine/mass/solid';
import { translation } from '../../../src/engine/math/pose';
import { checkMesh } from '../../../src/meshes/checkMesh';
import type { MeshProgress, RawMesh } from '../../../src/meshes/types';
import { movedMesh } from '../../support/meshes';

export async function checked(mesh: TriangleMesh, more: Partial<RawMesh> = {}) {
  const steps: MeshProgress[] = [];
  let rests = 0;
  const found = await checkMesh(
    { ...mesh, notes: [], ...more },
    'obj',
    (step) => steps.push(step),
    async () => {
      rests++;
    },
  );
  return { ...found, steps, rests };
}
/** Inside out. */
export function over(mesh: TriangleMesh): TriangleMesh {
  return { ...mesh, triangles: mesh.triangles.toReversed() };
}
export const along = (mesh: TriangleMesh, x: number) => movedMesh(mesh, translation(x, 0, 0));
