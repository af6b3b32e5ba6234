import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { crossings } from '../../../src/engine/solve/oneUnknown';
import { seeded } from '../../support/seeded';

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

  it('finds what two looks miss where it is told to look between them, inside the range only', () => {
    // Roots at 2.2 and 2.6, both between the looks at 2 and 3.
    const f = (x: number) => (x - 2.2) * (x - 2.6);
    expect(crossings(f, 0, 5, 6).roots).toEqual([]);
    const seen: number[] = [];
    const { roots } = crossings(
      (x) => {
        seen.push(x);
        return f(x);
      },
      0,
      5,
      6,
      [7, 2.4, -1, 0, 5, 2.4],
    );
    expect(roots.map(({ x }) => x)).toEqual([expect.closeTo(2.2, 12), expect.closeTo(2.6, 12)]);
    expect(seen.slice(0, 7)).toEqual([0, 1, 2, 2.4, 3, 4, 5]);
  });

  it('gives a root at a look once, and none where it only touches', () => {
    expect(crossings((x) => x - 2, 0, 4, 5).roots).toEqual([{ x: 2, value: 0 }]);
    expect(crossings((x) => (x - 1.5) ** 2, 0, 3, 4).roots).toEqual([]);
    expect(crossings((x) => x, 0, 3, 4).roots).toEqual([{ x: 0, value: 0 }]);
    expect(crossings((x) => x - 3, 0, 3, 4).roots).toEqual([{ x: 3, value: 0 }]);
  });

  it('finds a root just inside the edge where the function begins', () => {
    const f = (x: number) => (x > 1.999999 ? x - 1.9999995 : Number.NaN);
    const { roots, allowed, nearest } = crossings(f, -10, 10, 21);
    expect(roots.map(({ x }) => x)).toEqual([expect.closeTo(1.9999995, 12)]);
    expect(allowed).toEqual([expect.closeTo(1.999999, 9), 10]);
    expect(Math.abs(nearest?.value ?? 9)).toBeLessThan(1e-14);
  });

  it('names the stretch about the nearest place alone where gaps part the range', () => {
    // Allowed below 2, from 3 to 6 and above 8; nearest to zero at 5, in the middle one.
    const f = (x: number) =>
      x < 2 || (x >= 3 && x <= 6) || x > 8 ? 1 + Math.abs(x - 5) : Number.NaN;
    const { allowed, nearest } = crossings(f, 0, 10, 11);
    expect(nearest).toEqual({ x: 5, value: 1 });
    expect(allowed).toEqual([expect.closeTo(3, 12), expect.closeTo(6, 12)]);
  });

  it('looks at evenly spaced places from the low limit to the high one, in order', () => {
    const seen: number[] = [];
    crossings(
      (x) => {
        seen.push(x);
        return 1;
      },
      1,
      4,
      4,
      [6, 2.5],
    );
    expect(seen).toEqual([1, 2, 2.5, 3, 4]);
  });

  it('is as sharp in micrometres as in metres', () => {
    for (const size of [1e-6, 1, 1e6]) {
      const { roots } = crossings((x) => Math.sinh(x / size - 0.33), 0, size, 5);
      expect(roots).toHaveLength(1);
      expect(Math.abs(roots[0].x / size - 0.33)).toBeLessThan(1e-14);
    }
  });

  it('looks at the limits themselves, wherever rounding would put the last look', () => {
    const random = seeded(31);
    let rounded = 0;
    for (let i = 0; i < 300; i++) {
      const low = Math.sin(random.between(-1, 1));
      const high = low + Math.exp(random.between(-2, 1));
      // (d n) / n is d for every n = 2^i + 2^j (W. Kahan); 11 is none of these.
      if (low + ((high - low) * 11) / 11 !== high) rounded++;
      const seen: number[] = [];
      const look = (x: number) => {
        seen.push(x);
        return 1;
      };
      crossings(look, low, high, 12);
      expect(seen).toHaveLength(12);
      expect([seen[0], seen[11]]).toEqual([low, high]);
    }
    expect(rounded).toBeGreaterThan(10);
  });

  it('gives a root on the very edge of what can be had once, at either side', () => {
    const below = crossings((x) => (x <= 2 ? x - 2 : Number.NaN), 0, 4, 5);
    expect(below.roots).toEqual([{ x: 2, value: 0 }]);
    expect(below.allowed).toEqual([0, 2]);
    const above = crossings((x) => (x >= 2 ? x - 2 : Number.NaN), 0, 4, 5);
    expect(above.roots).toEqual([{ x: 2, value: 0 }]);
    expect(above.allowed).toEqual([2, 4]);
  });

  it('finds no root where the function changes sign across a hole between two looks', () => {
    const f = (x: number) => (Math.abs(x - 2.5) < 0.2 ? Number.NaN : x - 2.5);
    expect(crossings(f, 0, 5, 6).roots).toEqual([]);
  });

  it('finds the edge to the last digit, from the side where the function can be had', () => {
    const random = seeded(32);
    for (let i = 0; i < 100; i++) {
      const edge = random.between(0.1, 2.9);
      const left = crossings((x) => (x <= edge ? 1 : Number.NaN), 0, 3, 4);
      expect(left.allowed).toEqual([0, edge]);
      const right = crossings((x) => (x >= edge ? 1 : Number.NaN), 0, 3, 4);
      expect(right.allowed).toEqual([edge, 3]);
    }
  });

  it('of a root between two looks it names the stretch from edge to edge', () => {
    const f = (x: number) => (x > 0.75 && x < 3.5 ? x - 2.25 : Number.NaN);
    const { allowed, nearest } = crossings(f, 0, 5, 6);
    expect(nearest?.x).toBeCloseTo(2.25, 14);
    expect(allowed).toEqual([expect.closeTo(0.75, 14), expect.closeTo(3.5, 14)]);
  });

  it('of two places equally near takes the first', () => {
    expect(crossings((x) => 1 + Math.abs(x - 1.5), 0, 3, 4).nearest).toEqual({ x: 1, value: 1.5 });
  });
});
