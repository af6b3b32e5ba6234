import { expect, it } from 'vitest';
import { translation } from '../../../src/engine/math/pose';
import { boxOf } from '../../../src/meshes/checks/clean';
import { estimateWinding } from '../../../src/meshes/checks/winding';
import { boxMesh, joinedMesh, movedMesh } from '../../support/meshes';
import { checked } from './checked';

it('nothing is said of what is counted twice where too many surfaces lie behind one another', async () => {
  const plates = Array.from({ length: 10 }, () => boxMesh(4, 6, 10));
  const mesh = joinedMesh(...plates);
  const how = { rest: async () => {}, grids: [256] };
  expect(await estimateWinding(mesh, boxOf(mesh.positions), how)).toBeNull();
});

it('nor in the report of a body of two thousand boxes in one place, which cross all the same', async () => {
  const boxes = Array.from({ length: 2100 }, (_, k) =>
    movedMesh(boxMesh(4, 6, 10), translation(k * 1e-3, k * 1e-4, k * 2e-4)),
  );
  const { report } = await checked(joinedMesh(...boxes));
  expect(report).toMatchObject({
    verdict: 'crossing',
    shells: 2100,
    crossing: { pairs: 10_000, finished: false, countedTwice: null, countedNegative: null },
  });
});
