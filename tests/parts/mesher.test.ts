import { expect, test } from 'vitest';
import { PART_TYPES } from '../../src/parts/registry';
import { sameData } from '../../src/parts/sameData';
import { Mesher, tessellate } from '../../src/parts/tessellate';
import { defaults, problemsOf } from './sample';

test('a part meshed again and again, each number changed in turn, is at every step the mesh of its solids alone', () => {
  let steps = 0;
  let keptTriangles = 0;
  for (const type of PART_TYPES) {
    const mesher = new Mesher();
    const start = defaults(type.kind);
    mesher.take(type.solids(start as never));
    for (const [name, parameter] of Object.entries(type.parameters)) {
      const held = (start as Record<string, unknown>)[name];
      if (parameter.type !== 'number' || typeof held !== 'number') continue;
      for (const value of [held * 1.01, held]) {
        const values = { ...start, [name]: value };
        if (problemsOf(type.kind, values).length > 0) continue;
        const solids = type.solids(values as never);
        const { mesh, newTriangles } = mesher.take(solids);
        expect(sameData(mesh, tessellate(solids)), `${type.kind} ${name}`).toBe(true);
        steps++;
        if (!newTriangles) keptTriangles++;
      }
    }
  }
  expect(steps).toBeGreaterThan(100);
  expect(keptTriangles).toBeGreaterThan(steps / 2);
});

test('data is the same where every number, text and list in it is, and nothing more stands in either', () => {
  const solid = () => ({ name: 'a', shape: { at: [1, [2, 3]], points: Float64Array.of(1, 2) } });
  expect(sameData(solid(), solid())).toBe(true);
  for (const other of [
    { ...solid(), name: 'b' },
    { ...solid(), more: 1 },
    { name: 'a' },
    { ...solid(), shape: { at: [1, [2, 4]], points: Float64Array.of(1, 2) } },
    { ...solid(), shape: { at: [1, [2, 3]], points: Float64Array.of(1, 3) } },
    { ...solid(), shape: { at: [1, [2]], points: Float64Array.of(1, 2) } },
    null,
    'a',
  ]) {
    expect(sameData(solid(), other)).toBe(false);
    expect(sameData(other, solid())).toBe(false);
  }
  expect(sameData(0, -0)).toBe(false);
  expect(sameData(Number.NaN, Number.NaN)).toBe(true);
});
