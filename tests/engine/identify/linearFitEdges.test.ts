import { describe, expect, it } from 'vitest';
import { type LinearProblem, linearFit } from '../../../src/engine/identify/linearFit';
import { quickFit } from '../../../src/engine/identify/quickFit';

const fitOf = (rows: readonly (readonly number[])[], more: Partial<LinearProblem> = {}) =>
  linearFit({
    design: rows.flat(),
    parameters: rows[0].length,
    observed: rows.map((_, i) => i / 3),
    ...more,
  });

describe('how well parameters are told apart', () => {
  it('is the ratio of singular values: 3 for [[3, 0], [4, 5]]', () => {
    // sqrt 45 over sqrt 5; both columns are 5 long and scaled alike.
    const fit = fitOf([
      [3, 0],
      [4, 5],
      [0, 0],
    ]);
    expect(fit.condition).toBeCloseTo(3, 12);
    // The cosine of the columns is 20/25: each is 1 / sqrt(1 - 0.64) less sure than alone.
    expect(fit.inflation[0]).toBeCloseTo(1 / 0.6, 12);
    expect(fit.inflation[1]).toBeCloseTo(1 / 0.6, 12);
  });

  it('does not change with the unit of a parameter', () => {
    const scaled = fitOf([
      [3e7, 0],
      [4e7, 5e-3],
      [0, 0],
    ]);
    expect(scaled.inflation[0]).toBeCloseTo(1 / 0.6, 12);
    expect(scaled.inflation[1]).toBeCloseTo(1 / 0.6, 12);
    const alone = fitOf([
      [1, 0],
      [0, 100],
    ]);
    expect([...alone.inflation]).toEqual([1, 1]);
  });
});

describe('columns that depend on each other', () => {
  // a, b, a + b with a and b square and of one length; a fourth that stands alone.
  const rows = [
    [3, 4, 7, 0],
    [4, -3, 1, 0],
    [0, 0, 0, 2],
    [0, 0, 0, 1],
    [0, 0, 0, 5],
  ];

  it('have shares in units of their own lengths, strongest first', () => {
    const { blind } = fitOf(rows);
    expect(blind).toHaveLength(1);
    const [first, ...others] = blind[0].parts;
    expect(first.parameter).toBe(2);
    expect(Math.abs(first.share)).toBeCloseTo(1, 12);
    expect(others.map(({ parameter }) => parameter).toSorted()).toEqual([0, 1]);
    // (1, 1, -1) times 5, 5 and 5 sqrt 2.
    for (const { share } of others) expect(share / first.share).toBeCloseTo(-Math.SQRT1_2, 12);
  });

  it('leave nothing known of themselves and everything of the others', () => {
    const fit = fitOf(rows);
    expect([fit.rank, fit.condition]).toEqual([3, Infinity]);
    expect([...fit.inflation]).toEqual([Infinity, Infinity, Infinity, 1]);
    const n = 4;
    for (let i = 0; i < n; i++) {
      for (let j = 0; j < n; j++) {
        expect(Number.isNaN(fit.covariance[i * n + j])).toBe(i < 3 || j < 3);
      }
    }
    expect(fit.deviation[3]).toBeCloseTo(fit.residualDeviation / Math.sqrt(30), 12);
  });

  it('are dependent from 1e-13 of the largest on (ten rows), or from the error of the design', () => {
    // Ones, and ones with e up and down: singular values sqrt 20 and e sqrt 5, so that e / 2 is held against 1e-13.
    const near = (e: number) =>
      Array.from({ length: 10 }, (_, i) => [1, i % 2 === 0 ? 1 + e : 1 - e]);
    expect(fitOf(near(2.2e-13)).rank).toBe(2);
    expect(fitOf(near(1.8e-13)).rank).toBe(1);
    expect(fitOf(near(2.2e-9), { designError: 1e-9 }).rank).toBe(2);
    expect(fitOf(near(1.8e-9), { designError: 1e-9 }).rank).toBe(1);
  });

  it('may be nothing at all', () => {
    const fit = fitOf([
      [1, 0],
      [2, 0],
      [4, 0],
    ]);
    expect([fit.rank, fit.determined]).toEqual([1, [true, false]]);
    expect(fit.estimate[0]).toBeCloseTo((2 / 3 + 8 / 3) / 21, 14);
    expect(fit.blind[0].parts).toEqual([{ parameter: 1, share: expect.anything() }]);
    expect(Math.abs(fit.blind[0].parts[0].share)).toBe(1);
  });
});

describe('residuals', () => {
  it('over their own uncertainty are those of the textbook where sigma is given', () => {
    const sigma = [0.1, 0.2, 0.4, 0.1];
    const fit = fitOf([[1], [1], [1], [1]], { observed: [1, 2, 3, 2], sigma });
    const weight = sigma.map((one) => 1 / one ** 2);
    const all = weight.reduce((sum, one) => sum + one, 0);
    const mean = [1, 2, 3, 2].reduce((sum, y, i) => sum + weight[i] * y, 0) / all;
    [1, 2, 3, 2].forEach((y, i) => {
      const leverage = weight[i] / all;
      expect(fit.leverage[i]).toBeCloseTo(leverage, 13);
      expect(fit.standardised[i]).toBeCloseTo(
        (y - mean) / (sigma[i] * Math.sqrt(1 - leverage)),
        11,
      );
    });
    expect(fit.deviation[0]).toBeCloseTo(1 / Math.sqrt(all), 14);
  });

  it('say nothing of an observation that alone determines a parameter, nor where none is to spare', () => {
    const fit = fitOf(
      [
        [1, 0],
        [1, 0],
        [0, 0.3],
      ],
      { sigma: [1, 1, 1] },
    );
    expect(fit.standardised[2]).toBeNaN();
    expect(fit.standardised[0]).not.toBeNaN();
    // Its leverage is 1 but for the last bit.
    const skew = fitOf(
      [
        [1, 1],
        [1, 1],
        [1, 1.1],
      ],
      { sigma: [1, 1, 1] },
    );
    expect(skew.leverage[2]).toBeCloseTo(1, 12);
    expect(skew.standardised[2]).toBeNaN();
    const whole = fitOf([
      [1, 1 / 3],
      [0.1, 0.7],
    ]);
    expect([whole.freedom, whole.residualDeviation, whole.pValue]).toEqual([0, Number.NaN, null]);
  });
});

describe('what is no least squares problem', () => {
  const problem: LinearProblem = { design: [1, 2], parameters: 1, observed: [1, 2] };

  it.each([
    ['0 numbers for 0 x 0', { design: [], parameters: 0, observed: [] }],
    ['2 numbers for 3 x 1', { observed: [1, 2, 3] }],
    ['1 sigmas for 2', { sigma: [1] }],
    ['design', { design: [1, Infinity] }],
    ['observed', { observed: [1, Number.NaN] }],
    ['sigma is not positive and finite: 0', { sigma: [1, 0] }],
    ['sigma is not positive and finite: -1', { sigma: [1, -1] }],
    ['sigma is not positive and finite: Infinity', { sigma: [1, Infinity] }],
    ['sigma is not positive and finite: NaN', { sigma: [1, Number.NaN] }],
  ])('is refused: %s', (words, change) => {
    expect(() => linearFit({ ...problem, ...change })).toThrow(words);
  });

  it('may be had in as many rounds as are asked for', () => {
    expect(linearFit({ ...problem, mostRounds: 1 }).rounds).toBe(1);
    expect(linearFit({ ...problem, observed: [1, 3] }).rounds).toBeLessThan(4);
    expect(linearFit({ ...problem, mostRounds: 1 }).estimate[0]).toBeCloseTo(1, 15);
  });
});

describe('the quick solution', () => {
  it('tells columns apart whatever their units are', () => {
    const rows = [
      [1e-12, 1e9],
      [2e-12, 0],
      [3e-12, 4e9],
    ];
    const quick = quickFit(rows.flat(), 2, [5, 4, 13], [1, 1, 1]);
    expect([quick.isWhole, quick.rank]).toEqual([true, 2]);
    const careful = linearFit({ design: rows.flat(), parameters: 2, observed: [5, 4, 13] });
    quick.estimate.forEach((value, j) => expect(value / careful.estimate[j]).toBeCloseTo(1, 12));
    expect(quick.chiSquare).toBeCloseTo(careful.chiSquare, 12);
  });

  it('does without a column that is nothing, and with fewer rows than columns', () => {
    const none = quickFit([1, 0, 2, 0], 2, [3, 6], [1, 1]);
    expect([none.isWhole, none.rank, none.estimate[1]]).toEqual([false, 1, 0]);
    expect(none.estimate[0]).toBeCloseTo(3, 14);
    expect(quickFit([1, 2], 2, [5], [1])).toMatchObject({ isWhole: false, rank: 1 });
  });
});
