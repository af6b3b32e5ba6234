import { describe, expect, it } from 'vitest';
import { linearFit } from '../../../src/engine/identify/linearFit';

// D. Hilbert's matrix 1 / (i + j + 1), made whole by the least common multiple of its denominators: the usual example of
// columns that hardly differ (N. J. Higham, Accuracy and Stability of Numerical Algorithms, 28.1). Whole numbers below 2^53 are
// exact, so that what is right is known to the last bit.
const SIDE = 8;
const MULTIPLE = 360_360;
const hilbert = Array.from({ length: SIDE }, (_, i) =>
  Array.from({ length: SIDE }, (__, j) => MULTIPLE / (i + j + 1)),
);
const solution = [3, -1, 4, 1, -5, 9, -2, 6];
const right = hilbert.map((row) => row.reduce((sum, a, j) => sum + a * solution[j], 0));

function solved(designBy: number, observedBy: number, mostRounds?: number) {
  return linearFit({
    design: hilbert.flat().map((a) => a * designBy),
    parameters: SIDE,
    observed: right.map((b) => b * observedBy),
    ...(mostRounds === undefined ? {} : { mostRounds }),
  });
}
const worst = (estimate: Float64Array) =>
  Math.max(...estimate.map((x, j) => Math.abs(x / solution[j] - 1)));

describe('a solution refined by what is left of it', () => {
  it('is exact to the last bit where the plain one has seven digits', () => {
    expect(Number.isSafeInteger(Math.max(...right.map(Math.abs)))).toBe(true);
    expect(worst(solved(1, 1, 1).estimate)).toBeGreaterThan(1e-8);
    expect([...solved(1, 1).estimate]).toEqual(solution);
  });

  it.each([
    [2 ** -60, 1],
    [2 ** 60, 1],
    [1, 2 ** -80],
    [1, 2 ** 80],
    [2 ** -60, 2 ** 80],
    [2 ** 60, 2 ** -80],
  ])('in any unit: design times %d, observations times %d', (designBy, observedBy) => {
    const { estimate } = solved(designBy, observedBy);
    expect([...estimate].map((x) => (x * designBy) / observedBy)).toEqual(solution);
  });

  it('gains the same share of digits in each round, and no more rounds are made than asked for', () => {
    const errors = [1, 2, 3].map((rounds) => worst(solved(1, 1, rounds).estimate));
    expect(errors[1]).toBeLessThan(1e-4 * errors[0]);
    expect(errors[2]).toBeLessThanOrEqual(1e-4 * errors[1]);
    expect([1, 2, 3].map((rounds) => solved(1, 1, rounds).rounds)).toEqual([1, 2, 3]);
    expect(solved(1, 1).rounds).toBeLessThan(6);
  });

  it('leaves the residuals of the exact solution', () => {
    // Each equation twice, once with one more and once with one less: the solution stays, and the residuals are those ones.
    const off = right.map((_, i) => (i % 2 === 0 ? 1 : -1));
    const { estimate, residual } = linearFit({
      design: [...hilbert, ...hilbert].flat(),
      parameters: SIDE,
      observed: [...right.map((b, i) => b + off[i]), ...right.map((b, i) => b - off[i])],
      sigma: Array.from({ length: 2 * SIDE }, () => 0.25),
    });
    expect([...estimate]).toEqual(solution);
    expect([...residual]).toEqual([...off, ...off.map((one) => -one)]);
  });

  it('is nothing where nothing was observed', () => {
    const none = linearFit({ design: [1, 2], parameters: 1, observed: [0, 0] });
    expect([none.estimate[0], none.chiSquare]).toEqual([0, 0]);
  });
});
