import { describe, expect, test } from 'vitest';
import { inspectMesh, isWatertight } from '../../../src/engine/mass/mesh';

/** Slow, apart from the others so that `npm run mutants` can leave it out. */
describe('inspection of a very large surface', () => {
  test('closes over a ring of 5.8 million triangles, whose edges are more than a Map can hold', () => {
    const [around, along] = [2400, 1200];
    const triangles = new Uint32Array(6 * around * along);
    const at = (i: number, k: number) => (i % around) * along + (k % along);
    for (let i = 0, n = 0; i < around; i++) {
      for (let k = 0; k < along; k++, n += 6) {
        const [a, b, c, d] = [at(i, k), at(i + 1, k), at(i + 1, k + 1), at(i, k + 1)];
        triangles.set([a, b, c, a, c, d], n);
      }
    }
    expect(triangles.length).toBeGreaterThan(2 ** 24);
    const positions = new Float64Array(3 * around * along);
    expect(inspectMesh({ positions, triangles })).toEqual({
      openEdges: 0,
      repeatedEdges: 0,
      degenerateTriangles: 0,
      indicesOutOfRange: 0,
      nonFinitePositions: 0,
    });
    triangles[7] = 5;
    expect(isWatertight(inspectMesh({ positions, triangles }))).toBe(false);
  }, 60_000);
});
