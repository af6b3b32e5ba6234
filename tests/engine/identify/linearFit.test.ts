import { describe, expect, it } from 'vitest';
import { type LinearFit, linearFit } from '../../../src/engine/identify/linearFit';
import { LINEAR_SETS, type LinearSet } from '../../fixtures/nistStrd/linear';

function fitOf({ rows, powers }: LinearSet): LinearFit {
  const design = rows.flatMap(([, ...x]) =>
    powers === null ? [1, ...x] : powers.map((k) => x[0] ** k),
  );
  return linearFit({
    design,
    parameters: design.length / rows.length,
    observed: rows.map(([y]) => y),
  });
}

/** Digits that agree: -log10 of the relative error, of the plain error where the certified value is zero; 15 at most. */
function digits(found: number, certified: number): number {
  const error = Math.abs(found - certified) / (certified === 0 ? 1 : Math.abs(certified));
  return error === 0 ? 15 : Math.min(15, -Math.log10(error));
}

describe('linear least squares on the certified values of NIST StRD', () => {
  it.each(LINEAR_SETS)('gives every parameter of $name to nine digits, Filip to seven', (set) => {
    const fit = fitOf(set);
    const asked = set.name === 'Filip' ? 7 : 9;
    for (const [j, [value]] of set.certified.entries()) {
      expect(digits(fit.estimate[j], value)).toBeGreaterThan(asked);
    }
    expect(fit.rank).toBe(set.certified.length);
  });

  it.each(LINEAR_SETS)('gives every deviation of $name to nine digits, Filip to seven', (set) => {
    const fit = fitOf(set);
    const asked = set.name === 'Filip' ? 7 : 9;
    for (const [j, [, deviation]] of set.certified.entries()) {
      expect(digits(fit.deviation[j], deviation)).toBeGreaterThan(asked);
    }
    expect(digits(fit.residualDeviation, set.residualDeviation)).toBeGreaterThan(asked);
  });
});

describe('weights, leverage and judgement', () => {
  const x = [0, 1, 2, 5, 7];
  const y = [1.1, 2.9, 5.2, 10.8, 15.3];
  const line = (xs: readonly number[]) => xs.flatMap((value) => [1, value]);

  it('counts an observation with half the uncertainty like four of it', () => {
    const weighted = linearFit({
      design: line(x),
      parameters: 2,
      observed: y,
      sigma: [1, 1, 0.5, 1, 1],
    });
    const four = [2, 2, 2];
    const repeated = linearFit({
      design: line([...x, ...four]),
      parameters: 2,
      observed: [...y, ...four.map(() => 5.2)],
      sigma: [...x, ...four].map(() => 1),
    });
    for (let k = 0; k < 2; k++) {
      // Both are refined to a few roundings.
      expect(weighted.estimate[k]).toBeCloseTo(repeated.estimate[k], 13);
      expect(weighted.deviation[k]).toBeCloseTo(repeated.deviation[k], 13);
    }
  });

  it('has the covariance, leverage and standardised residuals of the textbook line', () => {
    // Draper and Smith, Applied Regression Analysis, ch. 1 and 8: closed forms of the straight line.
    const fit = linearFit({ design: line(x), parameters: 2, observed: y });
    const mean = x.reduce((sum, value) => sum + value, 0) / x.length;
    const square = x.reduce((sum, value) => sum + (value - mean) ** 2, 0);
    const variance = fit.chiSquare / 3;
    expect(fit.covariance[3]).toBeCloseTo(variance / square, 13);
    expect(fit.covariance[0]).toBeCloseTo(variance * (1 / 5 + mean ** 2 / square), 13);
    expect(fit.covariance[1]).toBeCloseTo((-variance * mean) / square, 13);
    x.forEach((value, i) => {
      const leverage = 1 / 5 + (value - mean) ** 2 / square;
      expect(fit.leverage[i]).toBeCloseTo(leverage, 13);
      const residual = y[i] - fit.estimate[0] - fit.estimate[1] * value;
      expect(fit.standardised[i]).toBeCloseTo(residual / Math.sqrt(variance * (1 - leverage)), 11);
    });
  });

  it('gives the p value that SciPy has for this chi-square', () => {
    const fit = linearFit({
      design: [1, 1, 1, 1],
      parameters: 1,
      observed: [-0.5, 0.5, 0, 0],
      sigma: [1, 1, 1, 1],
    });
    expect(fit.chiSquare).toBeCloseTo(0.5, 14);
    // scipy.stats.chi2.sf(0.5, 3), SciPy 1.17.1.
    expect(fit.pValue).toBeCloseTo(0.9188914116546758, 12);
  });

  it('says which parameters cannot be told apart, and still gives the one that can', () => {
    // The third column is the first less twice the second; the fourth stands alone.
    const rows = [
      [1, 0, 3],
      [1, 1, -1],
      [1, 2, 4],
      [1, 3, 1],
      [1, 5, -5],
      [1, 8, 9],
    ].map(([a, b, d]) => [a, b, a - 2 * b, d]);
    const fit = linearFit({
      design: rows.flat(),
      parameters: 4,
      observed: rows.map(([a, b, , d]) => a + b + 7 * d),
    });
    expect(fit.rank).toBe(3);
    expect(fit.determined).toEqual([false, false, false, true]);
    expect([...fit.estimate.subarray(0, 3)].every(Number.isNaN)).toBe(true);
    expect(fit.estimate[3]).toBeCloseTo(7, 12);
    expect(fit.blind).toHaveLength(1);
    expect(fit.blind[0].parts.map(({ parameter }) => parameter).toSorted()).toEqual([0, 1, 2]);
    for (const value of fit.residual) expect(Math.abs(value)).toBeLessThan(1e-12);
  });

  it('has no uncertainty and no judgement where nothing is left over', () => {
    const fit = linearFit({ design: line([1, 2]), parameters: 2, observed: [3, 5] });
    expect(fit.freedom).toBe(0);
    expect(fit.pValue).toBeNull();
    expect(fit.estimate[1]).toBeCloseTo(2, 14);
    expect(fit.deviation[1]).toBeNaN();
  });

  it('refuses lengths that do not match and a sigma that is none', () => {
    expect(() => linearFit({ design: [1], parameters: 2, observed: [1] })).toThrow(RangeError);
    expect(() => linearFit({ design: [1], parameters: 1, observed: [1], sigma: [0] })).toThrow(
      RangeError,
    );
    expect(() => linearFit({ design: [Number.NaN], parameters: 1, observed: [1] })).toThrow(
      RangeError,
    );
  });
});
