import { describe, expect, it } from 'vitest';
import { boundedLeastSquares, type Residuals } from '../../../src/engine/solve/boundedLeastSquares';

/** Rosenbrock's valley as two residuals. */
const rosenbrock: Residuals = ([a, b], out) => {
  out[0] = 10 * (b - a * a);
  out[1] = 1 - a;
  return true;
};

/**
 * Test functions of J. J. More, B. S. Garbow and K. E. Hillstrom, "Testing Unconstrained Optimization Software", ACM
 * Trans. Math. Softw. 7 (1981), with their published starts and minima (formulas and values from memory).
 */
describe('boundedLeastSquares', () => {
  const wide = { low: [-100, -100], high: [100, 100] };

  it('finds the published minimum of the Rosenbrock function (1, 1)', () => {
    const found = boundedLeastSquares({
      residuals: rosenbrock,
      count: 2,
      start: [-1.2, 1],
      ...wide,
    });
    expect(found.x[0]).toBeCloseTo(1, 10);
    expect(found.x[1]).toBeCloseTo(1, 10);
    expect(found.cost).toBeLessThan(1e-20);
  });

  it('finds one of the published minima of the Freudenstein and Roth function, 0 or 48.98425', () => {
    const found = boundedLeastSquares({
      residuals: ([a, b], out) => {
        out[0] = -13 + a + ((5 - b) * b - 2) * b;
        out[1] = -29 + a + ((b + 1) * b - 14) * b;
        return true;
      },
      count: 2,
      start: [0.5, -2],
      ...wide,
    });
    // Sum of squares, twice the cost; at (11.41..., -0.8968...).
    expect(2 * found.cost).toBeCloseTo(48.98425, 4);
    expect(found.x[0]).toBeCloseTo(11.4127789869, 4);
    expect(found.x[1]).toBeCloseTo(-0.8968052533, 4);
  });

  it('finds the published minimum of the Beale function (3, 0.5)', () => {
    const found = boundedLeastSquares({
      residuals: ([a, b], out) => {
        out[0] = 1.5 - a * (1 - b);
        out[1] = 2.25 - a * (1 - b ** 2);
        out[2] = 2.625 - a * (1 - b ** 3);
        return true;
      },
      count: 3,
      start: [1, 1],
      low: [-10, -10],
      high: [10, 10],
    });
    expect(found.x[0]).toBeCloseTo(3, 8);
    expect(found.x[1]).toBeCloseTo(0.5, 8);
  });

  it('stops at a limit beyond which the sum of squares would fall, and says which', () => {
    // Rosenbrock with a <= 0.5: on the edge b = a^2 and the cost is (1 - a)^2 / 2.
    const found = boundedLeastSquares({
      residuals: rosenbrock,
      count: 2,
      start: [-1.2, 1],
      low: [-2, -2],
      high: [0.5, 2],
    });
    expect(found.x[0]).toBe(0.5);
    expect(found.x[1]).toBeCloseTo(0.25, 8);
    expect([...found.held]).toEqual([1, 0]);
    expect(found.cost).toBeCloseTo(0.125, 12);
  });

  it('goes round a region where the residuals cannot be had', () => {
    const found = boundedLeastSquares({
      residuals: ([a, b], out) => {
        if (a > 2 && b < 1) return false;
        out[0] = a - 3;
        out[1] = b - 2;
        return true;
      },
      count: 2,
      start: [0, 0],
      low: [-10, -10],
      high: [10, 10],
    });
    expect(found.x[0]).toBeCloseTo(3, 9);
    expect(found.x[1]).toBeCloseTo(2, 9);
  });

  it('with more unknowns than conditions takes the point nearest its start', () => {
    // a + b = 4 from (0, 0), equal ranges: (2, 2).
    const found = boundedLeastSquares({
      residuals: ([a, b], out) => {
        out[0] = a + b - 4;
        return true;
      },
      count: 1,
      start: [0, 0],
      low: [-10, -10],
      high: [10, 10],
    });
    expect(found.x[0]).toBeCloseTo(2, 6);
    expect(found.x[1]).toBeCloseTo(2, 6);
    expect(found.cost).toBeLessThan(1e-18);
  });

  it('says that it has no start where the residuals cannot be had there, and refuses a box turned over', () => {
    const residuals = () => false;
    const refused = boundedLeastSquares({ residuals, count: 1, start: [0], low: [-1], high: [1] });
    expect(refused.status).toBe('noStart');
    expect(() =>
      boundedLeastSquares({ residuals, count: 1, start: [0], low: [1], high: [-1] }),
    ).toThrow(/low is not below high/);
  });
});
