import { describe, expect, test } from 'vitest';
import { bracketedRoot } from '../../../src/engine/math/rootBracket';
import { seeded } from '../../support/seeded';

describe('a bracketed root', () => {
  const cases: readonly [string, (x: number) => number, number, number, number][] = [
    ['cos x = x', (x) => Math.cos(x) - x, 0, 1, 0.739085133215161],
    ['a line', (x) => 3 * x - 1, -5, 5, 1 / 3],
    ['a falling curve', (x) => 2 - x ** 3, 0, 2, Math.cbrt(2)],
    ['exp x = 10', (x) => Math.exp(x) - 10, 0, 10, Math.LN10],
    ['a bracket written from right to left', (x) => x * x - 2, 2, 0, Math.SQRT2],
  ];
  test.each(cases)(
    '%s is found to 1e-14 in a dozen steps, where halving takes forty-five',
    (_, f, low, high, root) => {
      const found = bracketedRoot(f, low, high);
      expect(Math.abs(Number(found?.root) - root)).toBeLessThan(1e-14 + 2e-16 * Math.abs(root) * 4);
      expect(found?.iterations).toBeLessThanOrEqual(14);
      expect(found?.residual).toBe(f(Number(found?.root)));
      expect(found?.uncertainty).toBeLessThan(1e-13);
    },
  );

  test('one secant lands on the root of a line; closing the bracket behind it takes two more steps', () => {
    for (const slope of [3, -0.2]) {
      expect(bracketedRoot((x) => slope * (x - 0.7), -5, 5)?.iterations).toBeLessThanOrEqual(3);
    }
  });

  test('a triple root, a step and a nearly vertical curve are no harder than halving', () => {
    const hard: readonly [(x: number) => number, number, number][] = [
      [(x) => (x - 0.3) ** 3, 0.3, 6e-6],
      [(x) => (x < 0.123 ? -1 : 1), 0.123, 1e-13],
      [(x) => Math.atan(1e9 * (x - 0.7)), 0.7, 1e-13],
      [(x) => Math.sign(x - 0.4) * Math.abs(x - 0.4) ** 0.2, 0.4, 1e-13],
    ];
    for (const [f, root, near] of hard) {
      const found = bracketedRoot(f, -1, 2);
      expect(Math.abs(Number(found?.root) - root)).toBeLessThan(near);
      expect(found?.iterations).toBeLessThan(150);
    }
  });

  test('an end that is a root is returned as it is', () => {
    expect(bracketedRoot((x) => x, 0, 1)).toEqual({
      root: 0,
      residual: 0,
      iterations: 0,
      uncertainty: 0,
    });
    expect(bracketedRoot((x) => x - 1, 0, 1)?.root).toBe(1);
  });

  test('ends of the same sign bracket nothing', () => {
    expect(bracketedRoot((x) => x * x + 1, -1, 1)).toBeNull();
    expect(bracketedRoot((x) => -1 - x * x, -1, 1)).toBeNull();
  });

  test('the tolerance asked for is kept and not overdone', () => {
    const random = seeded(14);
    for (let i = 0; i < 200; i++) {
      const root = random.between(-1, 1);
      const f = (x: number) => Math.sinh(3 * (x - root));
      const coarse = bracketedRoot(f, -2, 2, 1e-3);
      expect(Math.abs(Number(coarse?.root) - root)).toBeLessThanOrEqual(1e-3);
      // A step leaves nothing but halving: it stops once the bracket is as narrow as asked, and no earlier.
      const step = bracketedRoot((x) => (x < root ? -1 : 1), -2, 2, 1e-3);
      expect(step?.uncertainty).toBeLessThanOrEqual(1e-3 + 1e-15);
      expect(step?.uncertainty).toBeGreaterThan(0.25e-3);
      expect(Number(bracketedRoot(f, -2, 2)?.iterations)).toBeGreaterThanOrEqual(
        Number(coarse?.iterations),
      );
    }
  });
});
