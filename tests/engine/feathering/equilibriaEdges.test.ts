import { describe, expect, test } from 'vitest';
import type { Equilibrium } from '../../../src/engine/feathering/equilibria';
import { roots } from '../../support/equilibria';
import { seeded } from '../../support/seeded';
import { shifted, touching } from '../../support/touchingMoments';

const HALF = Math.PI / 2;

function near(found: readonly Equilibrium[], centre: number, reach = 0.2): readonly Equilibrium[] {
  return found.filter(({ pitch }) => Math.abs(pitch - centre) < reach);
}

describe('a moment that touches zero', () => {
  test('is one tangent equilibrium, wherever in the range and whichever side it touches from', () => {
    const random = seeded(71);
    for (let i = 0; i < 300; i++) {
      const b = random.between(0.2, 1) * random.pick([-1, 1]);
      const at = random.between(-1.3, 1.3);
      const found = near(
        roots(shifted(touching(b, random.between(-1, 1) * 0.5), at), -HALF, HALF),
        at,
        1e-3,
      );
      expect(found.map((root) => root.kind)).toEqual(['tangent']);
      // Coefficients rounded to 1e-16 move a touch sideways by as much over the curvature.
      expect(Math.abs(found[0].pitch - at)).toBeLessThan(1e-13);
      expect(Math.abs(found[0].stiffness)).toBeLessThan(1e-12);
    }
  });

  test('at either end of the range, or on the edge of two cells, it is still one', () => {
    for (const at of [-HALF, 0, HALF / 4, HALF]) {
      const found = near(roots(shifted(touching(1, 0.3), at), -HALF, HALF), at);
      expect(found.map(({ pitch, kind }) => [pitch, kind])).toEqual([
        [expect.closeTo(at, 12), 'tangent'],
      ]);
      expect(Math.abs(found[0].pitch)).toBeLessThanOrEqual(HALF);
    }
  });

  // Derived: lifted by e, (3/4) b t^2 + e = 0 at t = +-sqrt(-4 e / 3 b), to the next order in t.
  test.each([1e-4, 1e-6, 1e-8, 1e-10, 1e-12, 1e-13])(
    'lifted clear by %d it has no root, pushed through two',
    (e) => {
      const random = seeded(72);
      for (let i = 0; i < 40; i++) {
        const at = random.between(-1, 1);
        expect(near(roots(shifted(touching(1, 0, e), at), -HALF, HALF), at)).toEqual([]);
        const pair = near(roots(shifted(touching(1, 0, -e), at), -HALF, HALF), at);
        expect(pair.map((root) => root.kind)).toEqual(['stable', 'unstable']);
        const half = Math.sqrt((4 * e) / 3);
        pair.forEach(({ pitch }, k) => {
          const expected = at + (k ? half : -half);
          // The next order moves each by a share t^2; rounding of M by 2e-16 over the slope 1.5 t, and twice for safety.
          expect(Math.abs(pitch - expected)).toBeLessThan(half ** 3 + (2e-15 / half) * 2 + 1e-14);
        });
      }
    },
  );

  test('roots a millionth of a radian apart are two, wherever the search happens to cut', () => {
    const random = seeded(74);
    for (let i = 0; i < 1000; i++) {
      const at = random.between(-1.3, 1.3);
      const b = random.between(0.3, 1);
      // Depths from 1e-14, twice the floor of 3e-15 of the bound and 3e-16 of the curvature, to 1e-12.
      const e = 10 ** random.between(-14, -12);
      const h = touching(b, random.between(-0.2, 0.2), -e);
      const pair = near(roots(shifted(h, at), at - 0.1, at + 0.1), at);
      expect(pair.map((root) => root.kind)).toEqual(['stable', 'unstable']);
      const half = Math.sqrt((4 * e) / (3 * b));
      pair.forEach(({ pitch }, k) => {
        // Rounding of M, 1e-15, over the slope 1.5 b half.
        expect(Math.abs(pitch - at - (k ? half : -half))).toBeLessThan(1e-15 / (b * half) + 1e-12);
      });
    }
  });

  test('a bulge below rounding is a touch', () => {
    for (const e of [1e-16, -1e-16]) {
      expect(near(roots(touching(1, 0, e), -HALF, HALF), 0).map((root) => root.kind)).toEqual([
        'tangent',
      ]);
    }
  });
});

describe('a moment that crosses zero with no slope', () => {
  test.each([
    ['flee', 'rises', 1, 'unstable'],
    ['rest', 'falls', -1, 'stable'],
  ] as const)('is one %s angle where it %s', (_name, _way, g, kind) => {
    const found = near(roots(shifted(touching(0, g), 0.37), 0.3, 0.5), 0.37);
    expect(found.map((root) => root.kind)).toEqual([kind]);
    // A cubic is below rounding within (1e-15)^(1/3) = 1e-5; the middle of that is nearer.
    expect(Math.abs(found[0].pitch - 0.37)).toBeLessThan(1e-5);
    expect(Math.abs(found[0].stiffness)).toBeLessThan(1e-9);
  });

  test('is one equilibrium though the search cut it into many runs of cells', () => {
    // Cells of the whole half turn; the place was met at random (see `manyCurves.test.ts`).
    const at = seeded(73).between(-1.3, 1.3);
    const found = near(roots(shifted(touching(0, 1), at), -HALF, HALF), at);
    expect(found.map((root) => root.kind)).toEqual(['unstable']);
  });

  // Derived: sin t (1 - (1 + 2 e) cos t) has roots at 0 and where cos t = 1 / (1 + 2 e), about +-2 sqrt(e).
  test.each([1e-3, 1e-5, 1e-7, 1e-9])(
    'split by %d it is three, the middle one turned about',
    (e) => {
      const found = near(roots(Float64Array.of(1, 0, -(1 + 2 * e) / 2, 0), -HALF, HALF), 0);
      const outer = Math.acos(1 / (1 + 2 * e));
      expect(found.map((root) => root.kind)).toEqual(['unstable', 'stable', 'unstable']);
      // Slopes there are about 4 e and 2 e; rounding of M by 3e-16 over them.
      [-outer, 0, outer].forEach((expected, k) => {
        expect(Math.abs(found[k].pitch - expected)).toBeLessThan(1e-14 + 1e-15 / e);
      });
    },
  );

  test('split the other way it stays one', () => {
    for (const e of [1e-3, 1e-5, 1e-7, 1e-9, 1e-12]) {
      const found = near(roots(Float64Array.of(1, 0, -(1 - 2 * e) / 2, 0), -HALF, HALF), 0);
      expect(found.map((root) => root.kind)).toEqual(['unstable']);
    }
  });
});

describe('the ends of the range', () => {
  const blade = Float64Array.of(0, 0, -1, 0);
  const angles = (from: number, to: number) => roots(blade, from, to).map((root) => root.pitch);

  test('belong to it; a root that rounding put 1e-12 outside is on the end, farther out it is not there', () => {
    expect(angles(0, 1)).toEqual([0]);
    expect(angles(-1, 0)).toEqual([0]);
    expect(angles(5e-13, 1)).toEqual([5e-13]);
    expect(angles(-1, -5e-13)).toEqual([-5e-13]);
    expect(angles(3e-12, 1)).toEqual([]);
    expect(angles(1e-9, 1)).toEqual([]);
  });

  test('may coincide: a range of no width asks about one angle', () => {
    expect(angles(0, 0)).toEqual([0]);
    expect(angles(0.1, 0.1)).toEqual([]);
  });

  test.each([
    [-Math.PI, Math.PI],
    [0, 2 * Math.PI],
    [-HALF, 3 * HALF],
    [0.3, 0.3 + 2 * Math.PI],
    [-Math.PI, 3 * Math.PI],
  ])('a turn from %d to %d has each orientation once', (from, to) => {
    const found = roots(blade, from, to);
    expect(found).toHaveLength(4);
    const turns = found.map(({ pitch }) => Math.round(pitch / HALF));
    expect(new Set(turns.map((k) => ((k % 4) + 4) % 4)).size).toBe(4);
    found.forEach(({ pitch }, k) => expect(Math.abs(pitch - turns[k] * HALF)).toBeLessThan(1e-14));
  });

  test('in the wrong order, or not finite, are a fault that throws', () => {
    for (const [from, to] of [
      [1, -1],
      [NaN, 1],
      [0, NaN],
      [-Infinity, 0],
      [0, Infinity],
    ]) {
      expect(() => roots(blade, from, to)).toThrow(RangeError);
    }
  });
});
