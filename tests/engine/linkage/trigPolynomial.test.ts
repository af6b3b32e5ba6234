import { describe, expect, test } from 'vitest';
import { trigPolynomialOf, trigSlope, trigValue } from '../../../src/engine/linkage/trigPolynomial';
import { seeded } from '../../support/seeded';

/** Identities of any table of trigonometry: sin^2, sin^3 and cos^4 as sums of multiples of the angle. */
describe('the trigonometric polynomial of a function', () => {
  test('has the coefficients of the multiple-angle identities', () => {
    const near = (values: readonly number[]) => values.map((value) => expect.closeTo(value, 15));
    const square = trigPolynomialOf((t) => Math.sin(t) ** 2, 2);
    expect(square.cosines).toEqual(near([0.5, 0, -0.5]));
    expect(square.sines).toEqual([0, 0, 0]);
    const cube = trigPolynomialOf((t) => Math.sin(t) ** 3, 3);
    expect(cube.cosines).toEqual([0, 0, 0, 0]);
    expect(cube.sines).toEqual(near([0, 3 / 4, 0, -1 / 4]));
    const fourth = trigPolynomialOf((t) => Math.cos(t) ** 4, 4);
    expect(fourth.cosines).toEqual(near([3 / 8, 0, 1 / 2, 0, 1 / 8]));
    expect(fourth.sines).toEqual([0, 0, 0, 0, 0]);
  });

  test('bounds value, slope and curvature by the sizes of its waves', () => {
    // 3 - 4 cos t + 3 sin t - 12 cos 2t + 5 sin 2t: sizes 3, 5, 13.
    const one = trigPolynomialOf(
      (t) => 3 - 4 * Math.cos(t) + 3 * Math.sin(t) - 12 * Math.cos(2 * t) + 5 * Math.sin(2 * t),
      2,
    );
    expect(one.scale).toBeCloseTo(21, 13);
    expect(one.slopeBound).toBeCloseTo(5 + 2 * 13, 13);
    expect(one.curvatureBound).toBeCloseTo(5 + 4 * 13, 13);
  });

  test('is the function at any angle, and its slope the function\u2019s', () => {
    const random = seeded(41);
    for (let i = 0; i < 50; i++) {
      const [p, q, r] = [random.between(-1, 1), random.between(-1, 1), random.between(-1, 1)];
      const f = (t: number) => (p + q * Math.sin(t)) * (1 + r * Math.cos(t)) * Math.cos(2 * t);
      const slope = (t: number) =>
        q * Math.cos(t) * (1 + r * Math.cos(t)) * Math.cos(2 * t) -
        (p + q * Math.sin(t)) * r * Math.sin(t) * Math.cos(2 * t) -
        2 * (p + q * Math.sin(t)) * (1 + r * Math.cos(t)) * Math.sin(2 * t);
      const one = trigPolynomialOf(f, 4);
      const t = random.between(-7, 7);
      // Ten sums of ten terms of size one.
      expect(Math.abs(trigValue(one, t) - f(t))).toBeLessThan(2e-14);
      expect(Math.abs(trigSlope(one, t) - slope(t))).toBeLessThan(1e-13);
    }
  });
});
