import { describe, expect, test } from 'vitest';
import { gaussLegendre } from '../../../src/engine/math/gaussLegendre';

function integrate(n: number, f: (x: number) => number): number {
  const { nodes, weights } = gaussLegendre(n);
  return nodes.reduce((sum, x, i) => sum + weights[i] * f(x), 0);
}

describe('a Gauss-Legendre rule', () => {
  // Published: Abramowitz and Stegun, Handbook of Mathematical Functions, Table 25.4.
  test.each([
    [1, [[0, 2]]],
    [2, [[0.577350269189626, 1]]],
    [
      3,
      [
        [0, 0.888888888888889],
        [0.774596669241483, 0.555555555555556],
      ],
    ],
    [
      5,
      [
        [0, 0.568888888888889],
        [0.538469310105683, 0.478628670499366],
        [0.906179845938664, 0.236926885056189],
      ],
    ],
    [
      16,
      [
        [0.095012509837637, 0.189450610455068],
        [0.98940093499165, 0.027152459411754],
      ],
    ],
  ])('of %d points has the tabulated nodes and weights, on both sides of zero', (n, table) => {
    const { nodes, weights } = gaussLegendre(n);
    for (const [node, weight] of table) {
      for (const side of [node, -node]) {
        const k = nodes.findIndex((x) => Math.abs(x - side) < 1e-14);
        expect(k).toBeGreaterThanOrEqual(0);
        expect(Math.abs(weights[k] - weight)).toBeLessThan(1e-14);
      }
    }
  });

  test('of n points is exact to degree 2 n - 1 and not beyond', () => {
    for (let n = 1; n <= 20; n++) {
      for (let degree = 0; degree <= 2 * n - 1; degree++) {
        const exact = degree % 2 ? 0 : 2 / (degree + 1);
        expect(Math.abs(integrate(n, (x) => x ** degree) - exact)).toBeLessThan(1e-14);
      }
    }
    for (let n = 1; n <= 6; n++) {
      expect(Math.abs(integrate(n, (x) => x ** (2 * n)) - 2 / (2 * n + 1))).toBeGreaterThan(1e-4);
    }
  });

  test('of a hundred points still has ascending nodes within (-1, 1) and weights that sum to two', () => {
    const { nodes, weights } = gaussLegendre(100);
    nodes.forEach((x, i) => expect(x).toBeGreaterThan(i ? nodes[i - 1] : -1));
    expect(nodes[99]).toBeLessThan(1);
    expect(Math.abs(weights.reduce((a, b) => a + b, 0) - 2)).toBeLessThan(1e-13);
    // int exp over (-1, 1) = e - 1/e.
    expect(Math.abs(integrate(100, Math.exp) - (Math.E - 1 / Math.E))).toBeLessThan(1e-13);
  });

  test('is made once per number of points, and refuses a number that is not one', () => {
    expect(gaussLegendre(7)).toBe(gaussLegendre(7));
    for (const n of [0, -1, 2.5, NaN]) expect(() => gaussLegendre(n)).toThrow(RangeError);
  });
});
