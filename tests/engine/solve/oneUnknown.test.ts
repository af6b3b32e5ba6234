import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { crossings } from '../../../src/engine/solve/oneUnknown';

describe('crossings', () => {
  it('finds every root of a cubic with known roots', () => {
    const { roots } = crossings((x) => (x - 1) * (x - 2) * (x - 4.5), 0, 5, 41);
    expect(roots.map(({ x }) => x)).toEqual([1, expect.closeTo(2, 14), expect.closeTo(4.5, 14)]);
  });

  it('finds roots of sines placed at random to rounding', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 3, noNaN: true }), (phase) => {
        const { roots } = crossings((x) => Math.sin(x - phase), 0, 3.2, 33);
        expect(roots.some(({ x }) => Math.abs(x - phase) < 1e-14)).toBe(true);
      }),
      { seed: 5, numRuns: 200 },
    );
  });

  it('finds a root just inside the edge of what can be had', () => {
    // Allowed below 2.000001 only; the looks stand at whole numbers.
    const f = (x: number) => (x < 2.000001 ? x - 2.0000005 : Number.NaN);
    const { roots, allowed } = crossings(f, 0, 10, 11);
    expect(roots).toHaveLength(1);
    expect(roots[0].x).toBeCloseTo(2.0000005, 12);
    expect(allowed?.[0]).toBe(0);
    expect(allowed?.[1]).toBeCloseTo(2.000001, 9);
  });

  it('without a root says where it comes nearest, and nothing where there is nothing', () => {
    const found = crossings((x) => 1 + x, 0, 3, 4);
    expect(found.roots).toEqual([]);
    expect(found.nearest).toEqual({ x: 0, value: 1 });
    const none = crossings(() => Number.NaN, 0, 3, 4);
    expect(none.nearest).toBeNull();
    expect(none.allowed).toBeNull();
  });
});
