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
    for (const high of [
      [1, -1],
      [1, 0],
    ]) {
      expect(() =>
        boundedLeastSquares({ residuals, count: 1, start: [0, 0], low: [0, 0], high }),
      ).toThrow(/low is not below high/);
    }
  });

  it('finds the published minimum of the helical valley (1, 0, 0)', () => {
    const found = boundedLeastSquares({
      residuals: ([a, b, c], out) => {
        const turn = Math.atan(b / a) / (2 * Math.PI) + (a < 0 ? 0.5 : 0);
        out[0] = 10 * (c - 10 * turn);
        out[1] = 10 * (Math.hypot(a, b) - 1);
        out[2] = c;
        return true;
      },
      count: 3,
      start: [-1, 0, 0],
      low: [-10, -20, -30],
      high: [10, 20, 30],
    });
    expect(found.x[0]).toBeCloseTo(1, 9);
    expect(found.x[1]).toBeCloseTo(0, 9);
    expect(found.x[2]).toBeCloseTo(0, 9);
    expect(found.status).toBe('converged');
  });

  // Linear: the best line through (0, 1), (1, 3), (2, 4), (3, 4) is 1.5 + x (normal equations by hand): residuals
  // 0.5, -0.5, -0.5, 0.5, half the sum of squares 0.5. The cost is flat to 1e-16, so places are good to 1e-8.
  // A third unknown that does nothing stays at its start.
  const line: Residuals = ([a, b], out) => {
    [1, 3, 4, 4].forEach((y, x) => {
      out[x] = a + b * x - y;
    });
    return true;
  };
  const lineIn = (low: number[], high: number[], more: object = {}) =>
    boundedLeastSquares({ residuals: line, count: 4, start: [0, 0, 0.3], low, high, ...more });

  it('draws the best line through four points, with the gradient zero', () => {
    const found = lineIn([-9, -9, 0], [9, 9, 1]);
    expect([...found.x]).toEqual([expect.closeTo(1.5, 7), expect.closeTo(1, 7), 0.3]);
    expect([...found.residuals]).toEqual([0.5, -0.5, -0.5, 0.5].map((r) => expect.closeTo(r, 7)));
    expect(found.cost).toBeCloseTo(0.5, 12);
    expect(found.status).toBe('converged');
    for (const slope of found.gradient) expect(slope).toBeCloseTo(0, 6);
    expect([...found.held]).toEqual([0, 0, 0]);
  });

  // With b <= 0.5: a = mean of y - 0.5 x = 2.25; d cost / db = sum x (a + x / 2 - y) = 6 (2.25) + 7 - 23 = -2.5.
  it('tells at a limit how fast the cost would fall beyond it', () => {
    const found = lineIn([-9, -9, 0], [9, 0.5, 1]);
    expect([...found.x]).toEqual([expect.closeTo(2.25, 7), 0.5, 0.3]);
    expect(found.gradient[1]).toBeCloseTo(-2.5, 7);
    expect([...found.held]).toEqual([0, 1, 0]);
  });

  // With b >= 2: a = mean of y - 2 x = 0; d cost / db = 0 + 28 - 23 = 5.
  it('holds at a low limit as at a high one, and starts inside the box', () => {
    const found = lineIn([-9, 2, 0], [9, 9, 1]);
    expect([...found.x]).toEqual([expect.closeTo(0, 7), 2, 0.3]);
    expect(found.gradient[1]).toBeCloseTo(5, 7);
    expect([...found.held]).toEqual([0, -1, 0]);
    const seen: number[] = [];
    boundedLeastSquares({
      residuals: ([a], out) => {
        seen.push(a);
        out[0] = a;
        return true;
      },
      count: 1,
      start: [40],
      low: [1],
      high: [2],
    });
    expect(Math.min(...seen)).toBeGreaterThanOrEqual(1);
    expect(Math.max(...seen)).toBeLessThanOrEqual(2);
  });

  it('stops where it is good enough, at once at a minimum, and in few rounds on a line', () => {
    expect(lineIn([-9, -9, 0], [9, 9, 1], { enough: 1e9 }).rounds).toBe(1);
    const good = lineIn([-9, -9, 0], [9, 9, 1], { enough: 0.6 });
    expect(good.cost).toBeLessThanOrEqual(0.6);
    expect(lineIn([-9, -9, 0], [9, 9, 1]).rounds).toBeLessThan(20);
    const there = boundedLeastSquares({
      residuals: ([a], out) => {
        out[0] = a;
        return true;
      },
      count: 1,
      start: [0],
      low: [-1],
      high: [1],
    });
    expect([there.rounds, there.status, there.cost]).toEqual([1, 'converged', 0]);
  });

  it('takes a residual that is not a number for one that cannot be had', () => {
    const found = boundedLeastSquares({
      residuals: ([a], out) => {
        out[0] = a < 1 ? a - 3 : Number.NaN;
        out[1] = 0;
        return true;
      },
      count: 2,
      start: [0],
      low: [-5],
      high: [5],
    });
    expect(found.x[0]).toBeGreaterThan(0.99);
    expect(found.x[0]).toBeLessThan(1);
    expect(found.cost).toBeLessThan(2.1);
  });
});

/** The places at which a solver took a step, without those beside them that its differences ask for. */
function stepsOf(residuals: (a: number) => number | null, start: number, far = 10) {
  const seen: number[] = [];
  const found = boundedLeastSquares({
    residuals: ([a], out) => {
      seen.push(a);
      const value = residuals(a);
      out[0] = value ?? 0;
      return value !== null;
    },
    count: 1,
    start: [start],
    low: [-far],
    high: [far],
  });
  // Differences are taken 6e-6 of the range away.
  const steps = seen.filter(
    (a, i) => i === 0 || Math.abs(a - seen[i - 1]) > 1e-4 || Math.abs(seen[i + 1] - a) > 1e-4,
  );
  return { steps, found };
}

describe("Marquardt's damping (SIAM J. Appl. Math. 11, 1963)", () => {
  // For r = a - 3 the damped normal equation is (1 + d) s = 3 - a, so a step leaves d / (1 + d) of the way.
  it('begins at a thousandth and becomes a sixth with every step that helps', () => {
    const { steps } = stepsOf((a) => a - 3, 0);
    let left = 3;
    let damping = 1e-3;
    for (let k = 1; k < 4; k++) {
      left *= damping / (1 + damping);
      damping /= 6;
      // Differences of a line are good to rounding over their step, 1e-16 / 1e-4.
      const reached = steps.some((a) => Math.abs(3 - a - left) < 1e-10 * 3 + 1e-3 * left);
      expect(reached).toBe(true);
    }
  });

  it('becomes fourfold with every step that is refused, until one is short enough', () => {
    const { steps, found } = stepsOf((a) => (a > 1.5 ? null : a - 3), 0);
    for (let k = 0; k < 5; k++) {
      const expected = 3 / (1 + 1e-3 * 4 ** k);
      expect(steps.some((a) => Math.abs(a - expected) < 1e-9)).toBe(true);
    }
    expect(found.x[0]).toBeLessThanOrEqual(1.5);
    expect(found.x[0]).toBeGreaterThan(1.499);
  });

  // By Cramer's rule, ranges of 20 and 2: J = [[20, 4], [20, -2]] in scaled unknowns, r = (-4, 1), N = J'J =
  // [[800, 40], [40, 20]], g = J'r = (-60, -18); damped by 0.001 of the greatest diagonal term, 0.8, on both.
  it('weighs unknowns by their ranges, and damps all by the same share of the greatest', () => {
    const seen: number[][] = [];
    boundedLeastSquares({
      residuals: ([a, b], out) => {
        seen.push([a, b]);
        out[0] = a + 2 * b - 4;
        out[1] = a - b + 1;
        return true;
      },
      count: 2,
      start: [0, 0],
      low: [-10, -1],
      high: [10, 1],
    });
    const [p, q, r] = [800.8, 40, 20.8];
    const determinant = p * r - q * q;
    const first = [(20 * (r * 60 - q * 18)) / determinant, (2 * (p * 18 - q * 60)) / determinant];
    const cut = [first[0], Math.min(1, first[1])];
    // Four looks for the differences, after the start.
    const [a, b] = seen[5];
    expect(a).toBeCloseTo(cut[0], 8);
    expect(b).toBeCloseTo(cut[1], 8);
  });
});

describe('a least squares that does not come to an end', () => {
  // Newton on a^4 leaves three quarters of the way each time, less damping: after 120 rounds there is still a way to go.
  it('says that it is tired, and where it is', () => {
    let looks = 0;
    const found = boundedLeastSquares({
      residuals: ([a], out) => {
        looks++;
        out[0] = a ** 4;
        return true;
      },
      count: 1,
      start: [1],
      low: [-1.5],
      high: [1.5],
    });
    expect([found.status, found.rounds]).toEqual(['tired', 120]);
    // The start, and in each round two for the differences and a step that helps.
    expect(looks).toBe(1 + 120 * 3);
    expect(Math.abs(found.x[0])).toBeLessThan(1e-5);
    expect(found.cost).toBeCloseTo(found.x[0] ** 8 / 2, 60);
  });

  // Both unknowns do the same: J'J is singular, and the damping falls below rounding on the long way down.
  it('goes on where the equations become singular', () => {
    const seen: number[] = [];
    const found = boundedLeastSquares({
      residuals: ([a, b], out) => {
        seen.push(a, b);
        // On a grid far finer than the differences, so that both columns are the same to the bit.
        out[0] = Math.exp(-Math.round((a + b) * 2 ** 30) / 2 ** 30);
        return true;
      },
      count: 1,
      start: [0, 0],
      low: [-1000, -1000],
      high: [1000, 1000],
    });
    expect(seen.every(Number.isFinite)).toBe(true);
    expect(found.status).toBe('converged');
    expect(found.cost).toBeLessThan(1e-30);
  });

  it('that has no way to go is at its end, a gradient of nothing over a cost of something', () => {
    const found = boundedLeastSquares({
      residuals: ([a], out) => {
        out[0] = 1 + a * a;
        return true;
      },
      count: 1,
      start: [0],
      low: [-1],
      high: [1],
    });
    expect([found.status, found.rounds, found.cost]).toEqual(['converged', 1, 0.5]);
  });
});

describe('differences beside a limit', () => {
  // r = a^2 at its limits 1 and 2: cost a^4 / 2, slope 2 a^3: 2 at the low end and 16 at the high one.
  it.each([
    ['low', 1, 2, -1],
    ['high', -2, -1, 1],
  ] as const)('are one-sided at the %s one, and good to their step', (_name, low, high, side) => {
    const seen: number[] = [];
    const found = boundedLeastSquares({
      residuals: ([a], out) => {
        seen.push(a);
        out[0] = a * a;
        return true;
      },
      count: 1,
      start: [side < 0 ? low : high],
      low: [low],
      high: [high],
    });
    expect([...found.held]).toEqual([side]);
    expect(found.x[0]).toBe(-side);
    // One-sided: step 6e-6 times half the second derivative of the residual, 1, times the residual, 1.
    expect(Math.abs(found.gradient[0] + 2 * side)).toBeLessThan(1e-5);
    for (const a of seen) expect(a >= low && a <= high).toBe(true);
  });

  // Central differences of a^3 have an error of h^2 alone: 1.44e-10 of 3 for h = 1.2e-5.
  it('are central inside, with the error of the square of the step', () => {
    const found = boundedLeastSquares({
      residuals: ([a], out) => {
        out[0] = a ** 3 + 1;
        return true;
      },
      count: 1,
      start: [0.5],
      low: [-1],
      high: [1],
      enough: 10,
    });
    expect(found.rounds).toBe(1);
    // d cost = r r' = (1 + 1/8) 3/4.
    expect(Math.abs(found.gradient[0] - 1.125 * 0.75)).toBeLessThan(1e-9);
  });

  it('are one-sided where a neighbour cannot be had', () => {
    for (const side of [-1, 1]) {
      const found = boundedLeastSquares({
        residuals: ([a], out) => {
          out[0] = a * a;
          return side * (a - 0.5) <= 0;
        },
        count: 1,
        start: [0.5],
        low: [-1],
        high: [1],
        enough: 10,
      });
      // d cost = a^2 2 a = 1/4, less or more half the second derivative, 1, times the step of 1.2e-5, times a^2.
      expect(found.gradient[0]).toBeCloseTo(0.25 - side * 1.2e-5 * 0.25, 9);
    }
  });

  it('are nothing where neither neighbour can be had', () => {
    const found = boundedLeastSquares({
      residuals: ([a], out) => {
        out[0] = 1;
        return a === 0.5;
      },
      count: 1,
      start: [0.5],
      low: [0],
      high: [1],
    });
    expect([found.status, found.rounds, found.x[0], found.gradient[0]]).toEqual([
      'converged',
      1,
      0.5,
      0,
    ]);
  });
});

describe('ends and edges of a least squares', () => {
  const one = (f: (a: number) => number, start: number, low: number, high: number, enough = 0) =>
    boundedLeastSquares({
      residuals: ([a], out) => {
        out[0] = f(a);
        return !Number.isNaN(out[0]);
      },
      count: 1,
      start: [start],
      low: [low],
      high: [high],
      enough,
    });

  it('before a wall that lets no step through it has converged', () => {
    const found = one((a) => (a > 0.5 ? Number.NaN : a - 3), 0.5, 0, 10);
    expect([found.status, found.rounds, found.x[0]]).toEqual(['converged', 1, 0.5]);
  });

  it('leaves a limit at which the cost falls inward, and is not held where it is level', () => {
    expect(one((a) => a - 2, 1, 1, 3).x[0]).toBeCloseTo(2, 10);
    expect(one((a) => a - 2, 3, 1, 3).x[0]).toBeCloseTo(2, 10);
    for (const [low, high] of [
      [0, 1],
      [-1, 0],
    ]) {
      expect([...one((a) => a, 0, low, high).held]).toEqual([0]);
    }
  });

  it('good enough is what costs just as much as is allowed', () => {
    const found = one((a) => 1 + a, 0, -1, 1, 0.5);
    expect([found.x[0], found.rounds, found.cost]).toEqual([0, 1, 0.5]);
  });

  it('has no start where one residual of several is not a number', () => {
    for (const bad of [Number.NaN, Infinity]) {
      const found = boundedLeastSquares({
        residuals: (_, out) => {
          out[0] = 1;
          out[1] = bad;
          return true;
        },
        count: 2,
        start: [0],
        low: [-1],
        high: [1],
      });
      expect(found.status).toBe('noStart');
    }
  });

  // Ranges of 2, columns u = (2, 0, 2, 0), v = (0, 2, 2, 2), w = (2, 2, 0, 2) scaled; the middle unknown begins at its
  // high limit with the cost falling beyond it. Its row is out, but its diagonal, 12, is the greatest with w's.
  it('takes no account of a held unknown when it goes along the others', () => {
    const rows = [
      [1, 0, 1],
      [0, 1, 1],
      [1, 1, 0],
      [0, 1, 1],
    ];
    const wanted = [0.3, 1.8, 1.6, 1.5];
    const seen: number[][] = [];
    const found = boundedLeastSquares({
      residuals: (x, out) => {
        seen.push([...x]);
        rows.forEach((row, i) => {
          out[i] = row.reduce((sum, value, k) => sum + value * x[k], -wanted[i]);
        });
        return true;
      },
      count: 4,
      start: [0, 1, 0],
      low: [-1, -1, -1],
      high: [1, 1, 1],
    });
    // r at the start: (-0.3, -0.8, -0.6, -0.5); J'r = (-1.8, -3.8, -3.2) with columns of 2.
    const damping = 1e-3 * 12;
    const [uu, uw, ww] = [8 + damping, 4, 12 + damping];
    const determinant = uu * ww - uw * uw;
    const step = [(1.8 * ww - 3.2 * uw) / determinant, (3.2 * uu - 1.8 * uw) / determinant];
    // The start, six differences less the one beyond the limit, and the step.
    expect(seen[6]).toEqual([expect.closeTo(2 * step[0], 9), 1, expect.closeTo(2 * step[1], 9)]);
    expect([...found.held]).toEqual([0, 1, 0]);
  });

  // Kirchhoff's chain: -x(k-1) + 3 x(k) - x(k+1) + x(1) / 4 = what x = (1, 2, 3, 4, 5) / 10 gives.
  it('solves five coupled unknowns in a few rounds', () => {
    const row = (x: ArrayLike<number>, k: number) =>
      3 * x[k] - (x[k - 1] ?? 0) - (x[k + 1] ?? 0) + x[0] / 4 + (x[4] * (k + 1)) / 8;
    const wanted = [0.1, 0.2, 0.3, 0.4, 0.5];
    const found = boundedLeastSquares({
      residuals: (x, out) => {
        for (let k = 0; k < 5; k++) out[k] = row(x, k) - row(wanted, k);
        return true;
      },
      count: 5,
      start: [0, 0, 0, 0, 0],
      low: [-1, -1, -1, -1, -1],
      high: [1, 1, 1, 1, 1],
    });
    wanted.forEach((value, k) => expect(found.x[k]).toBeCloseTo(value, 12));
    expect(found.rounds).toBeLessThan(9);
  });

  // Three free unknowns through three conditions: x = (0.1, -0.4, 0.7), by substitution.
  it('solves three coupled unknowns in a few rounds, as a straight system asks for', () => {
    const found = boundedLeastSquares({
      residuals: ([a, b, c], out) => {
        out[0] = 4 * a + 2 * b + c - 0.3;
        out[1] = 2 * a + 5 * b + 3 * c - 0.3;
        out[2] = a + 3 * b + 6 * c - 3.1;
        return true;
      },
      count: 3,
      start: [0, 0, 0],
      low: [-1, -1, -1],
      high: [1, 1, 1],
    });
    [0.1, -0.4, 0.7].forEach((value, k) => expect(found.x[k]).toBeCloseTo(value, 12));
    expect(found.rounds).toBeLessThan(9);
  });
});
