import { describe, expect, it } from 'vitest';
import {
  buildEdges,
  edgeEnd,
  isCrowded,
  nextCrowded,
  OPEN,
} from '../../../src/meshes/checks/edges';
import { seeded } from '../../support/seeded';

/** Every undirected edge with the half-edges that run along it, gathered in the plain way. */
function usersOf(triangles: Uint32Array): Map<string, number[]> {
  const users = new Map<string, number[]>();
  for (let t = 0; t < triangles.length / 3; t++) {
    for (let k = 0; k < 3; k++) {
      const ends = [triangles[3 * t + k], triangles[3 * t + ((k + 1) % 3)]];
      const key = ends.toSorted((a, b) => a - b).join(' ');
      users.set(key, [...(users.get(key) ?? []), 3 * t + k]);
    }
  }
  return users;
}

/** Checks the table against that: partners, rings of crowded ones, and the three counts. */
function expectTable(triangles: Uint32Array, vertexCount: number): void {
  const table = buildEdges(triangles, vertexCount);
  const counts = { openEdges: 0, crowdedEdges: 0, unorientedEdges: 0 };
  for (const halves of usersOf(triangles).values()) {
    const low = Math.min(...halves.map((h) => triangles[h]));
    const balance = halves.reduce((sum, h) => sum + (triangles[h] === low ? 1 : -1), 0);
    if (halves.length === 1) counts.openEdges++;
    else if (balance !== 0) counts.unorientedEdges++;
    if (halves.length > 2) counts.crowdedEdges++;
    if (halves.length === 1) expect(table.twin[halves[0]]).toBe(OPEN);
    if (halves.length === 2) expect(halves.map((h) => table.twin[h])).toEqual(halves.toReversed());
    if (halves.length > 2) {
      const ring: number[] = [];
      for (let h = halves[0]; ring.length < halves.length; h = nextCrowded(table.twin[h])) {
        expect(isCrowded(table.twin[h])).toBe(true);
        ring.push(h);
      }
      expect(ring.toSorted((a, b) => a - b)).toEqual(halves);
    }
  }
  expect(table).toMatchObject(counts);
}

describe('the edges of a mesh', () => {
  it.each([
    ['one triangle', [0, 1, 2]],
    ['two that share an edge, in opposite senses', [0, 1, 2, 1, 0, 3]],
    ['two that share an edge, in the same sense', [0, 1, 2, 0, 1, 3]],
    ['three on an edge', [0, 1, 2, 1, 0, 3, 0, 1, 4]],
    ['four on an edge, as many each way', [0, 1, 2, 1, 0, 3, 0, 1, 4, 1, 0, 5]],
    ['four on an edge, three of them one way', [0, 1, 2, 0, 1, 3, 0, 1, 4, 1, 0, 5]],
    ['a tetrahedron', [0, 2, 1, 0, 3, 2, 0, 1, 3, 1, 2, 3]],
    ['one twice', [0, 1, 2, 0, 1, 2]],
    ['one from both sides', [0, 1, 2, 0, 2, 1]],
    ['none', []],
  ])('are matched: %s', (_, triangles) => {
    expectTable(Uint32Array.from(triangles), 6);
  });

  it('are matched round a hub of many, in whatever order they come', () => {
    for (const spokes of [16, 17, 40]) {
      const fan = Array.from({ length: spokes }, (_, k) => [0, 1 + k, 1 + ((k * 7 + 3) % spokes)]);
      const proper = fan.filter(([, b, c]) => b !== c);
      expectTable(Uint32Array.from(proper.flat()), spokes + 1);
      expectTable(Uint32Array.from(proper.flat().map((v) => spokes - v)), spokes + 1);
      // With three points below the hub, all in one triangle with it.
      const raised = [...proper.flat().map((v) => v + 3), 0, 1, 2, 0, 3, 1];
      expectTable(Uint32Array.from(raised), spokes + 4);
    }
  });

  it('are matched in heaps of triangles at random', () => {
    const random = seeded(5);
    for (let round = 0; round < 40; round++) {
      const points = random.whole(4, 11);
      const triangles: number[] = [];
      while (triangles.length < 60) {
        const [a, b, c] = [0, 1, 2].map(() => random.whole(0, points - 1));
        if (a !== b && b !== c && c !== a) triangles.push(a, b, c);
      }
      expectTable(Uint32Array.from(triangles), points);
    }
  });

  it('end where the next corner of their triangle is', () => {
    const triangles = Uint32Array.of(5, 6, 7, 8, 9, 10);
    expect([0, 1, 2, 3, 4, 5].map((h) => edgeEnd(triangles, h))).toEqual([6, 7, 5, 9, 10, 8]);
    expect([OPEN, OPEN - 1, 0].map(isCrowded)).toEqual([false, true, false]);
  });
});
