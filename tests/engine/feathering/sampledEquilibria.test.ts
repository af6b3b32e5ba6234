import { describe, expect, test } from 'vitest';
import {
  type SmoothMoment,
  sampledEquilibria,
} from '../../../src/engine/feathering/sampledEquilibria';
import { radians } from '../../../src/engine/units';

const from = radians(-Math.PI / 2 + 0.001);
const to = radians(Math.PI / 2 - 0.002);
/** Width of the cells, as documented: a quarter of a degree. */
const CELL = Math.PI / 720;

function rootsOf(curve: SmoothMoment, low: number = from, high: number = to, scale = 1) {
  const found = sampledEquilibria(curve, radians(low), radians(high), scale);
  if (found.kind === 'neutral') throw new Error('neutral');
  return found.roots;
}

/** a (t - p)(t - q) */
const parabola = (p: number, q: number, a = 1): SmoothMoment => ({
  value: (t) => a * (t - p) * (t - q),
  slope: (t) => a * (2 * t - p - q),
});

const sine: SmoothMoment = { value: (t) => -Math.sin(3 * t), slope: (t) => -3 * Math.cos(3 * t) };

describe('equilibria found by samples', () => {
  test('of -sin 3t are its zeros, at rest and fleeing in turn, as stiff as its slope', () => {
    const roots = rootsOf(sine);
    const third = Math.PI / 3;
    expect(roots).toEqual(
      [-third, 0, third].map((pitch, k) => ({
        pitch: expect.closeTo(pitch, 13),
        kind: k === 1 ? 'stable' : 'unstable',
        stiffness: expect.closeTo(k === 1 ? 3 : -3, 12),
      })),
    );
  });

  test('on the very ends and on the edges of cells are there once', () => {
    // Zero exactly at -1, 0 and 1: both ends, and an edge of two cells.
    const cubic: SmoothMoment = { value: (t) => t * (t * t - 1), slope: (t) => 3 * t * t - 1 };
    expect(rootsOf(cubic, -1, 1).map(({ pitch, kind }) => [pitch, kind])).toEqual([
      [-1, 'unstable'],
      [0, 'stable'],
      [1, 'unstable'],
    ]);
  });

  test.each([
    [1, 'unstable'],
    [-1, 'stable'],
  ])('on the edge that two cells share is found once (slope %d)', (slope, kind) => {
    // Four cells, whose edges are whole cells to the bit.
    const curve: SmoothMoment = { value: (t) => slope * (t - 2 * CELL), slope: () => slope };
    expect(rootsOf(curve, 0, 4 * CELL)).toEqual([{ pitch: 2 * CELL, kind, stiffness: -slope }]);
    expect(rootsOf(curve, 2 * CELL, 4 * CELL).map((root) => root.kind)).toEqual([kind]);
    expect(rootsOf(curve, 0, 2 * CELL).map((root) => root.kind)).toEqual([kind]);
  });

  test.each([
    [1, 'stable', 'unstable'],
    [-1, 'unstable', 'stable'],
  ])('a pair within one cell is found, from above and from below (%d)', (a, first, second) => {
    // Inside the cell that begins at 0.
    const [p, q] = [0.3 * CELL, 0.6 * CELL];
    const roots = rootsOf(parabola(p, q, a), 0, 10 * CELL);
    expect(roots.map(({ kind }) => kind)).toEqual([first, second]);
    expect(roots[0].pitch).toBeCloseTo(p, 13);
    expect(roots[1].pitch).toBeCloseTo(q, 13);
    // The slope at either root is the width between them.
    expect(roots[0].stiffness).toBeCloseTo(a * 0.3 * CELL, 13);
    expect(roots[1].stiffness).toBeCloseTo(-a * 0.3 * CELL, 13);
  });

  test.each([1, -1])('a touch is neither, from above and from below (%d)', (a) => {
    const at = 4.4 * CELL;
    const roots = rootsOf(parabola(at, at, a), 0, 10 * CELL);
    expect(roots).toEqual([
      { pitch: expect.closeTo(at, 12), kind: 'tangent', stiffness: expect.closeTo(0, 12) },
    ]);
  });

  // A dip counts as a touch within 1e-9 of the scale, which is 2 here.
  test.each([
    [1.9e-9, ['tangent']],
    [2.1e-9, []],
    [-1.9e-9, ['tangent']],
    [-2.1e-9, ['stable', 'unstable']],
  ])('a dip that ends %d from zero', (gap, kinds) => {
    const at = 4.4 * CELL;
    const dip: SmoothMoment = { value: (t) => (t - at) ** 2 + gap, slope: (t) => 2 * (t - at) };
    expect(rootsOf(dip, 0, 10 * CELL, 2).map(({ kind }) => kind)).toEqual(kinds);
    const hill: SmoothMoment = { value: (t) => -dip.value(t), slope: (t) => -dip.slope(t) };
    const turned = kinds.map((kind) =>
      kind === 'stable' ? 'unstable' : kind === 'unstable' ? 'stable' : kind,
    );
    expect(rootsOf(hill, 0, 10 * CELL, 2).map(({ kind }) => kind)).toEqual(turned);
  });

  test('on both ends of a cell are the two, with no touch between', () => {
    expect(rootsOf(parabola(CELL, 2 * CELL), 0, 4 * CELL)).toEqual([
      { pitch: CELL, kind: 'stable', stiffness: expect.closeTo(CELL, 15) },
      { pitch: 2 * CELL, kind: 'unstable', stiffness: expect.closeTo(-CELL, 15) },
    ]);
  });

  test('a bulge away from zero, and a curve that only nears it, have none', () => {
    const bulge: SmoothMoment = { value: (t) => 1 - (t - 0.1) ** 2, slope: (t) => -2 * (t - 0.1) };
    expect(rootsOf(bulge, 0, 0.5)).toEqual([]);
    expect(rootsOf({ value: (t) => Math.exp(-t), slope: (t) => -Math.exp(-t) }, 0, 1)).toEqual([]);
    expect(rootsOf({ value: (t) => Math.exp(t), slope: (t) => Math.exp(t) }, 0, 1)).toEqual([]);
  });

  test('a gap hides its own part and nothing else', () => {
    const parted: SmoothMoment = {
      value: (t) => (Math.abs(t) < 0.2 ? NaN : sine.value(t)),
      slope: sine.slope,
    };
    expect(rootsOf(parted).map(({ pitch, kind }) => [Math.abs(pitch).toFixed(6), kind])).toEqual([
      ['1.047198', 'unstable'],
      ['1.047198', 'unstable'],
    ]);
    // A sign that changes across the gap is no root, and the value at its edge is not looked past.
    const jump: SmoothMoment = {
      value: (t) => (Math.abs(t) < 1e-4 ? NaN : t < 0 ? 0 : 1),
      slope: () => 1,
    };
    expect(rootsOf(jump, 0, 0.1)).toEqual([]);
  });

  test('are looked for at places no wider apart than a quarter of a degree, the ends among them', () => {
    for (const width of [0, 0.4 * CELL, CELL, 3 * CELL, 3.5 * CELL, 1.7]) {
      const seen: number[] = [];
      const low = 0.123;
      const look: SmoothMoment = {
        value: (t) => {
          seen.push(t);
          return 1;
        },
        slope: () => 1,
      };
      rootsOf(look, low, low + width);
      expect(seen[0]).toBe(low);
      expect(seen.at(-1)).toBe(low + width);
      seen.slice(1).forEach((t, k) => {
        expect(t - seen[k]).toBeLessThanOrEqual(CELL * (1 + 1e-9));
        expect(t - seen[k]).toBeGreaterThanOrEqual(0);
      });
      // As few as that asks for.
      expect(seen).toHaveLength(1 + Math.max(1, Math.ceil(width / CELL - 1e-6)));
    }
  });

  test('a curve of nothing but rounding is neutral, by its scale', () => {
    const level = (value: number): SmoothMoment => ({ value: () => value, slope: () => 0 });
    for (const value of [1e-14, -1e-14, 0.9e-12, 0]) {
      expect(sampledEquilibria(level(value), from, to, 1)).toEqual({ kind: 'neutral' });
    }
    for (const value of [1.1e-12, -1.1e-12]) {
      expect(sampledEquilibria(level(value), from, to, 1)).toEqual({ kind: 'found', roots: [] });
    }
    expect(sampledEquilibria(level(0), from, to, 0)).toEqual({ kind: 'neutral' });
    expect(sampledEquilibria(level(1e-10), from, to, 1000)).toEqual({ kind: 'neutral' });
    expect(sampledEquilibria(level(1e-10), from, to, 10).kind).toBe('found');
    // One place above rounding is enough, wherever it is, and a gap does not hide it.
    for (const at of [from, to]) {
      const one: SmoothMoment = {
        value: (t) => (t === at ? 1 : Math.abs(t) < 0.5 ? NaN : 1e-14),
        slope: () => 0,
      };
      expect(sampledEquilibria(one, from, to, 1).kind).toBe('found');
    }
  });
});

test('a curve without a single value is not neutral: nothing is known of it, and nothing is found', () => {
  const gap: SmoothMoment = { value: () => Number.NaN, slope: () => Number.NaN };
  expect(sampledEquilibria(gap, from, to, 1)).toEqual({ kind: 'found', roots: [] });
  // With one stretch of zero it is neutral as far as it is known.
  const still = { ...gap, value: (t: number) => (t > 0 ? 0 : Number.NaN) };
  expect(sampledEquilibria(still, from, to, 1)).toEqual({ kind: 'neutral' });
});
