import { describe, expect, it } from 'vitest';
import type { TriangleMesh } from '../../../src/engine/mass/solid';
import { translation } from '../../../src/engine/math/pose';
import { boxMesh, joinedMesh, movedMesh } from '../../support/meshes';
import { along, checked, over } from './checked';

/** Far off in y and z, so that few of the rays meet anything: they stand 0.4 apart. */
const far = movedMesh(boxMesh(1, 1, 1), translation(0, 100, 100));
const cube = boxMesh(10, 10, 10);

async function reportOf(...meshes: readonly TriangleMesh[]) {
  return (await checked(joinedMesh(...meshes, far))).report;
}

describe('the report of bodies that overlap or not', () => {
  it.each([
    ['one beside another', [cube, along(cube, 20)], { verdict: 'sound', shells: 3 }],
    ['two that touch', [cube, along(cube, 10)], { verdict: 'sound', shells: 2 }],
    ['one hollow', [cube, over(boxMesh(4, 4, 4))], { verdict: 'sound', shells: 3, cavities: 1 }],
  ] as const)('%s: sound, and nothing counted twice or negatively', async (_, meshes, wanted) => {
    expect(await reportOf(...meshes)).toMatchObject({
      ...wanted,
      crossing: { pairs: 0, finished: true, countedTwice: 0, countedNegative: 0 },
    });
  });

  it.each([
    ['one through another', [cube, along(cube, 5)], 500, 0],
    ['one within another', [cube, boxMesh(6, 6, 6)], 216, 0],
    ['a cavity in a cavity', [boxMesh(20, 20, 20), over(cube), over(boxMesh(6, 6, 6))], 0, 216],
  ] as const)('%s: crossing, and how much is told', async (_, meshes, twice, negative) => {
    const report = await reportOf(...meshes);
    expect(report).toMatchObject({ verdict: 'crossing', weighable: true });
    expect(report.crossing.pairs > 0).toBe(meshes.length === 2 && twice === 500);
    // Half a spacing round the outline of six at least, in y and in z.
    const share = 2 * (0.4 / 6);
    expect(Math.abs((report.crossing.countedTwice ?? 0) - twice)).toBeLessThanOrEqual(
      share * twice,
    );
    expect(Math.abs((report.crossing.countedNegative ?? 0) - negative)).toBeLessThanOrEqual(
      share * negative,
    );
  });

  it('what does not close is looked at for crossings, and its volume for nothing', async () => {
    const open = { ...cube, triangles: cube.triangles.slice(3) };
    const { report } = await checked(joinedMesh(open, along(cube, 5)));
    expect(report).toMatchObject({
      verdict: 'cracked',
      crossing: { countedTwice: 0, countedNegative: 0, finished: true },
    });
    expect(report.crossing.pairs).toBeGreaterThan(0);
  });
});
