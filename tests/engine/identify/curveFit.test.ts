import { describe, expect, it } from 'vitest';
import { NONLINEAR_SETS } from '../../fixtures/nistStrd/nonlinear';
import { digits, expectSolved, runsOf } from './certifiedCurve';

describe('the copied data of NIST StRD', () => {
  it('are all 27 sets', () => {
    expect(NONLINEAR_SETS).toHaveLength(27);
  });

  it.each(NONLINEAR_SETS)('$name gives its certified sum of squares', (set) => {
    const b = set.certified.map(([value]) => value);
    let sum = 0;
    set.predictors.forEach((x, i) => {
      sum += (set.observed[i] - set.model(b, x)) ** 2;
    });
    // The parameters are certified to eleven digits. Lanczos1 fits to 1e-13, where those digits alone leave 1e-10 squared.
    if (set.name === 'Lanczos1') expect(sum).toBeLessThan(1e-18);
    else expect(digits(sum, set.sumOfSquares)).toBeGreaterThan(10);
  });
});

describe('nonlinear least squares on the certified values of NIST StRD', () => {
  it.each(runsOf('slow'))('solves $name: every parameter to eight digits', ({ set, k }) => {
    expectSolved(set, k);
  });
});
