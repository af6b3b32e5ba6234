import { describe, expect, it } from 'vitest';
import { curveFit } from '../../../src/engine/identify/curveFit';
import { expectSolved, runsOf } from './certifiedCurve';

describe('nonlinear least squares on the certified values of NIST StRD', () => {
  it.each(runsOf('quick'))('solves $name: every parameter to eight digits', ({ set, k }) => {
    expectSolved(set, k);
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
