import { expect, it } from 'vitest';
import { boxOf } from '../../../src/meshes/checks/clean';
import { estimateWinding } from '../../../src/meshes/checks/winding';
import { boxMesh, joinedMesh } from '../../support/meshes';

it('nothing is said of what is counted twice where too many surfaces lie behind one another', async () => {
  const plates = Array.from({ length: 10 }, () => boxMesh(4, 6, 10));
  const mesh = joinedMesh(...plates);
  const how = { rest: async () => {}, grids: [256] };
  expect(await estimateWinding(mesh, boxOf(mesh.positions), how)).toBeNull();
});
