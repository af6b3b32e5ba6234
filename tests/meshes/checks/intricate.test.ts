import { expect, it } from 'vitest';
import { boxOf } from '../../../src/meshes/checks/clean';
import { estimateWinding } from '../../../src/meshes/checks/winding';
import { boxMesh, joinedMesh } from '../../support/meshes';

it('nothing is said of what is counted twice where too many surfaces lie behind one another', () => {
  const plates = Array.from({ length: 10 }, () => boxMesh(4, 6, 10));
  const { positions, triangles } = joinedMesh(...plates);
  expect(estimateWinding(positions, triangles, boxOf(positions), [256])).toBeNull();
});
