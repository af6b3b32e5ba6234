import { describe, expect, it } from 'vitest';
import { type CurveFit, curveFit } from '../../../src/engine/identify/curveFit';
import { NONLINEAR_SETS, type NonlinearSet } from '../../fixtures/nistStrd/nonlinear';

function fitOf({ model, observed, predictors }: NonlinearSet, start: readonly number[]): CurveFit {
  return curveFit({
    model: (b, out) => {
      predictors.forEach((x, i) => (out[i] = model(b, x)));
      return true;
    },
    observed,
    start,
  });
}

function digits(found: number, certified: number): number {
  const error = Math.abs(found - certified) / Math.abs(certified);
  return error === 0 ? 15 : Math.min(15, -Math.log10(error));
}

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

const RUNS = NONLINEAR_SETS.flatMap((set) =>
  [0, 1].map((k) => ({ set, k, name: `${set.name} from start ${k + 1}` })),
);

describe('nonlinear least squares on the certified values of NIST StRD', () => {
  it.each(RUNS)('solves $name: every parameter to eight digits', ({ set, k }) => {
    const fit = fitOf(set, set.starts[k]);
    expect(fit.status).toBe('converged');
    for (const [j, [value]] of set.certified.entries()) {
      expect(digits(fit.estimate[j], value)).toBeGreaterThan(8);
    }
    // Lanczos1 leaves 1e-13: residuals of 14 digits have two or three of their own in 16.
    const asked = set.name === 'Lanczos1' ? 2 : 6;
    expect(digits(fit.chiSquare, set.sumOfSquares)).toBeGreaterThan(asked);
    for (const [j, [, deviation]] of set.certified.entries()) {
      expect(digits(fit.tangent?.deviation[j] ?? 0, deviation)).toBeGreaterThan(asked);
    }
  });
});

describe('what else can come of a curve', () => {
  const doubling = (b: Float64Array, out: Float64Array) => {
    for (let i = 0; i < out.length; i++) out[i] = b[0] * Math.exp(b[1] * i);
    return true;
  };

  it('says that there is no start where the curve has no value', () => {
    const fit = curveFit({ model: () => false, observed: [1, 2, 3], start: [1] });
    expect(fit.status).toBe('noStart');
    expect(fit.tangent).toBeNull();
  });

  it('weighs by sigma: a point without weight does not matter', () => {
    const observed = [1, 2, 4, 8, 1000];
    const fit = curveFit({
      model: doubling,
      observed,
      sigma: [1, 1, 1, 1, 1e12],
      start: [0.5, 0.5],
    });
    expect(fit.status).toBe('converged');
    expect(fit.estimate[0]).toBeCloseTo(1, 9);
    expect(fit.estimate[1]).toBeCloseTo(Math.LN2, 9);
  });

  it('takes the slopes that it is given', () => {
    let asked = 0;
    const fit = curveFit({
      model: doubling,
      slopes: (b, out) => {
        asked++;
        for (let i = 0; i < 4; i++) {
          out[2 * i] = Math.exp(b[1] * i);
          out[2 * i + 1] = b[0] * i * Math.exp(b[1] * i);
        }
        return true;
      },
      observed: [1, 2, 4, 8],
      start: [0.5, 0.5],
    });
    expect(asked).toBeGreaterThan(0);
    expect(fit.estimate[1]).toBeCloseTo(Math.LN2, 12);
  });

  it('finds two parameters that do the same, and does not call it converged to either', () => {
    const fit = curveFit({
      model: (b, out) => {
        for (let i = 0; i < out.length; i++) out[i] = (b[0] + b[1]) * i;
        return true;
      },
      observed: [0, 2, 4, 6],
      start: [1, 3],
    });
    expect(fit.tangent?.rank).toBe(1);
    expect(fit.status).not.toBe('converged');
    expect(fit.estimate[0] + fit.estimate[1]).toBeCloseTo(2, 9);
  });
});
