import { describe, expect, it } from 'vitest';
import type { CurveProblem } from '../../../src/engine/identify/curveFit';
import { curveSlopes } from '../../../src/engine/identify/curveSlopes';

/** Slopes at a place, as rows of observations. */
function slopesOf(problem: Partial<CurveProblem> & Pick<CurveProblem, 'model'>, at: number[]) {
  const observed = problem.observed ?? [0, 0];
  const out = new Float64Array(observed.length * at.length);
  const had = curveSlopes({ observed, start: at, ...problem }, Float64Array.from(at), out);
  return { had, out: [...out] };
}

describe('the slopes of a curve by its parameters', () => {
  const model: CurveProblem['model'] = (b, out) => {
    out[0] = b[0] ** 3 * b[1];
    out[1] = Math.exp(b[0]) + 5 * b[1];
    return true;
  };

  it('are those of the calculus: 3 b0^2 b1, b0^3, e^b0, 5', () => {
    const { had, out } = slopesOf({ model }, [1.5, -2]);
    expect(had).toBe(true);
    const wanted = [3 * 1.5 ** 2 * -2, 1.5 ** 3, Math.exp(1.5), 5];
    // Rounding of values of some 10 over steps of a thousandth.
    out.forEach((slope, k) => expect(slope).toBeCloseTo(wanted[k], 10));
  });

  it('are had at nothing, by the typical size or by one', () => {
    expect(slopesOf({ model, start: [0, 0] }, [0, 0]).out[3]).toBeCloseTo(5, 10);
    // A parameter of some 1e-6 that is now at nothing: a step of a thousandth of one would leave the curve.
    const narrow: CurveProblem['model'] = (b, out) => {
      out[0] = Math.sin(1e6 * b[0]);
      return true;
    };
    const near = { model: narrow, observed: [0] };
    expect(slopesOf({ ...near, typical: [1e-6] }, [0]).out[0] / 1e6).toBeCloseTo(1, 9);
    expect(slopesOf({ ...near, start: [-1e-6] }, [0]).out[0] / 1e6).toBeCloseTo(1, 9);
  });

  it('are taken on smaller steps where the curve refuses a point', () => {
    // The root of 1 - b has no value from one on; the widest step of 4e-3 goes beyond it.
    const root: CurveProblem['model'] = (b, out) => {
      out[0] = Math.sqrt(1 - b[0]);
      return b[0] < 1;
    };
    const at = 1 - 1e-3;
    const { had, out } = slopesOf({ model: root, observed: [0] }, [at]);
    expect(had).toBe(true);
    expect(out[0] / (-0.5 / Math.sqrt(1 - at))).toBeCloseTo(1, 6);
  });

  it('are not had where the curve has no value all around, nor where it is no number', () => {
    const hole: CurveProblem['model'] = (b, out) => {
      out.fill(1);
      return b[0] === 2;
    };
    expect(slopesOf({ model: hole }, [2]).had).toBe(false);
    // Six steps are tried, each given up at its first point.
    const tried: number[] = [];
    const none: CurveProblem['model'] = ([b]) => tried.push(b) < 0;
    slopesOf({ model: none }, [2]);
    expect(tried).toHaveLength(6);
    tried.slice(1).forEach((b, k) => expect((b - 2) / (tried[k] - 2)).toBeCloseTo(1 / 16, 6));
    const noNumber: CurveProblem['model'] = (b, out) => {
      out[0] = b[0];
      out[1] = Number.NaN;
      return true;
    };
    expect(slopesOf({ model: noNumber }, [2]).had).toBe(false);
  });

  it('are those that the problem gives, if they are numbers', () => {
    const given = (value: number, said = true) =>
      slopesOf(
        {
          model,
          slopes: (_, out) => {
            out.fill(value);
            return said;
          },
        },
        [1, 1],
      );
    expect(given(7)).toEqual({ had: true, out: [7, 7, 7, 7] });
    expect(given(Number.NaN).had).toBe(false);
    expect(given(7, false).had).toBe(false);
    const half = slopesOf(
      {
        model,
        slopes: (_, out) => {
          out.set([1, 2, Number.NaN, 4]);
          return true;
        },
      },
      [1, 1],
    );
    expect(half.had).toBe(false);
  });
});
