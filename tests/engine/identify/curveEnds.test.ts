import { describe, expect, it } from 'vitest';
import {
  createDescent,
  type Descent,
  descend,
  POLICIES,
  type Policy,
} from '../../../src/engine/identify/curveDescent';
import { type CurveProblem, curveFit } from '../../../src/engine/identify/curveFit';

const way: Policy = { name: 'test', scaling: 'present', bent: false, damping: 1e-3 };

/** A problem whose slopes are given, and the places at which its curve is asked. */
function watched(
  curve: (b: ArrayLike<number>) => number[] | null,
  slopes: (b: ArrayLike<number>) => number[],
  more: Omit<CurveProblem, 'model' | 'slopes'>,
) {
  const asked: number[][] = [];
  const problem: CurveProblem = {
    ...more,
    model: (b, out) => {
      asked.push([...b]);
      const values = curve(b);
      if (values) out.set(values);
      return values !== null;
    },
    slopes: (b, out) => {
      out.set(slopes(b));
      return true;
    },
  };
  return { asked, problem };
}

function gone(problem: CurveProblem, policy = way): Descent {
  const state = createDescent(problem);
  if (!state) throw new Error('no start');
  descend(state, policy);
  return state;
}

/** b and b^2 / 2 that are to be 0 and d: Gauss-Newton shortens b by the factor d in each round, as the bend is left out. */
const creeping = (d: number, start = 0.01) =>
  watched(
    (b) => [b[0], b[0] ** 2 / 2],
    (b) => [1, b[0]],
    { observed: [0, d], start: [start] },
  );

describe('the ways of damping', () => {
  it('are called by what they do, no two alike', () => {
    for (const { name, scaling, bent } of POLICIES) {
      expect(name).toBe(bent ? `${scaling}, bent` : scaling);
      expect(['remembered', 'present', 'start']).toContain(scaling);
    }
    expect(new Set(POLICIES.map(({ name }) => name)).size).toBe(POLICIES.length);
  });

  it('measure a bend in the same units as the step', () => {
    // b0^2 from 2 toward 13.5 bends by more than three quarters of its step (curveDescent.test.ts); beside a step of 100 b1 that
    // is as long in residuals it is less than three quarters of both.
    const { asked, problem } = watched(
      (b) => [b[0] ** 2, 100 * b[1]],
      (b) => [2 * b[0], 0, 0, 100],
      { observed: [13.5, 9.5], start: [2, 0] },
    );
    gone(problem, { ...way, bent: true, damping: 0.25 });
    const s = 9.5 / 4 / 1.25;
    expect(asked[2][0]).toBeCloseTo(2 + s - (s * s) / 5, 12);
  });
});

describe('the way down ends', () => {
  it('when four steps in a row gain less than 1e-13 of what is left', () => {
    const { asked, problem } = creeping(0.9);
    const state = gone(problem);
    const costs = asked.map(([b]) => (b ** 2 + (0.9 - b ** 2 / 2) ** 2) / 2);
    const gains = costs.slice(1).map((cost, k) => (costs[k] - cost) / costs[k]);
    const small = gains.findIndex((gain) => gain <= 1e-13);
    expect(gains.every((gain) => gain > 1e-15)).toBe(true);
    expect(gains).toHaveLength(small + 4);
    expect(state.tired).toBe(false);
  });

  it('at once where nothing is left', () => {
    const { asked, problem } = watched(
      (b) => [b[0]],
      () => [1],
      { observed: [1], start: [0] },
    );
    expect(gone(problem).cost).toBe(0);
    expect(asked.filter(([b]) => b === 1)).toHaveLength(1);
  });

  it('when forty steps, each shorter, were refused', () => {
    const { asked, problem } = watched(
      (b) => (b[0] === 0 ? [0] : null),
      () => [1],
      { observed: [1], start: [0] },
    );
    const state = gone(problem);
    expect([asked.length, state.evaluations, state.cost]).toEqual([41, 41, 0.5]);
  });

  it('after 1500 rounds, tired, where each gains a little', () => {
    // d = 1: the square is gone from what is to be made least, b falls with the root of the rounds only.
    const { problem } = creeping(1, 1);
    const state = gone(problem);
    expect([state.tired, state.rounds]).toEqual([true, 1500]);
    const fit = curveFit(problem);
    expect([fit.status, fit.rounds]).toEqual(['tired', 1500 * POLICIES.length]);
    expect(Math.abs(fit.estimate[0])).toBeLessThan(0.05);
  });
});

describe('the fit', () => {
  it('takes the lowest of all ways, the first of those that end as low', () => {
    // Two waves, of which the slower is the right one; from between them ways of damping part.
    const x = Array.from({ length: 12 }, (_, i) => i / 2);
    const wave = (start: number) =>
      watched(
        (b) => x.map((one) => Math.sin(b[0] * one)),
        (b) => x.map((one) => one * Math.cos(b[0] * one)),
        { observed: x.map((one) => Math.sin(0.7 * one)), start: [start] },
      ).problem;
    const firsts = new Set<string>();
    for (let start = 1; start < 6; start += 0.25) {
      const problem = wave(start);
      const costs = POLICIES.map((policy) => gone(problem, policy).cost);
      const lowest = Math.min(...costs);
      const first = costs.findIndex((cost) => cost < lowest * (1 + 1e-6) + 1e-20);
      const fit = curveFit(problem);
      expect(fit.chiSquare / 2).toBeLessThan(lowest * (1 + 1e-8) + 1e-20);
      if (lowest > 1e-9) expect(fit.policy).toBe(POLICIES[first].name);
      firsts.add(fit.policy);
    }
    expect(firsts.size).toBeGreaterThan(1);
  });

  it('counts every time that the curve was asked', () => {
    const { asked, problem } = creeping(0.5);
    expect(curveFit(problem).evaluations).toBe(asked.length);
  });

  it.each([1, 1e-6, 1e-12])(
    'that comes up against a wall at half the way says what step it was refused, in units of %d',
    (unit) => {
      // Two numbers that are to be 1 and 2 units, the first no more than a half.
      const { problem } = watched(
        (b) => (b[0] <= unit / 2 ? [b[0] / unit, b[1] / unit] : null),
        () => [1 / unit, 0, 0, 1 / unit],
        { observed: [1, 2], start: [0.1 * unit, unit] },
      );
      const fit = curveFit(problem);
      expect(fit.status).toBe('stalled');
      expect(fit.estimate[0] / unit).toBeCloseTo(0.5, 4);
      // As a share of the parameter: half a unit more than half a unit.
      expect(fit.lastStep).toBeCloseTo(1, 3);
    },
  );

  it('of what two parameters do alike asks no last step', () => {
    const fit = curveFit({
      model: (b, out) => {
        for (let i = 0; i < out.length; i++) out[i] = (b[0] + b[1]) * i;
        return true;
      },
      observed: [0, 2, 4, 6.5],
      start: [1, 3],
    });
    expect(fit.lastStep).toBe(Infinity);
  });

  it('to data without any error is converged', () => {
    // Sums of 1/3 and 1/7 leave the last bits of the residuals, against which the last step is long; against itself it is none.
    const x = [0, 1, 2, 3, 4, 5];
    const fit = curveFit({
      model: (b, out) => {
        x.forEach((one, i) => (out[i] = b[0] * Math.exp(b[1] * one)));
        return true;
      },
      observed: x.map((one) => Math.exp(one / 7) / 3),
      start: [1, 0.3],
    });
    expect(fit.status).toBe('converged');
    expect(fit.estimate[0]).toBeCloseTo(1 / 3, 13);
    expect(fit.estimate[1]).toBeCloseTo(1 / 7, 13);
  });

  it('says nothing of uncertainties where the curve has no slope', () => {
    const problem = (slope: number): CurveProblem => ({
      model: (b, out) => {
        out[0] = b[0];
        return true;
      },
      slopes: (_, out) => {
        out.fill(slope);
        return true;
      },
      observed: [2],
      sigma: [0.5],
      start: [1],
    });
    const none = curveFit(problem(Number.NaN));
    expect([none.status, none.estimate[0], none.tangent?.rank]).toEqual(['stalled', 1, 0]);
    expect(none.tangent?.deviation[0]).toBeNaN();
    expect(curveFit(problem(1)).tangent?.deviation[0]).toBeCloseTo(0.5, 14);
  });
});
