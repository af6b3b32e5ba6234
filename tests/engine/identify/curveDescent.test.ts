import { describe, expect, it } from 'vitest';
import {
  createDescent,
  descend,
  POLICIES,
  type Policy,
} from '../../../src/engine/identify/curveDescent';
import { type CurveProblem, curveFit } from '../../../src/engine/identify/curveFit';
import { linearFit } from '../../../src/engine/identify/linearFit';

type Curve = (b: ArrayLike<number>) => number[];

/** A problem that notes at which parameters its curve is asked: start, feelers of a bend and trials, in their order. */
function watched(curve: Curve, slopes: Curve, more: Omit<CurveProblem, 'model' | 'slopes'>) {
  const asked: number[][] = [];
  const problem: CurveProblem = {
    ...more,
    model: (b, out) => {
      asked.push([...b]);
      out.set(curve(b));
      return true;
    },
    slopes: (b, out) => {
      out.set(slopes(b));
      return true;
    },
  };
  return { asked, problem };
}

const way = (damping: number, more: Partial<Policy> = {}): Policy => ({
  name: 'test',
  scaling: 'present',
  bent: false,
  damping,
  ...more,
});

function go({ problem }: ReturnType<typeof watched>, policy: Policy) {
  const state = createDescent(problem);
  if (!state) throw new Error('no start');
  descend(state, policy);
  return state;
}

function expectPoints(seen: readonly number[][], wanted: readonly number[]): void {
  wanted.forEach((value, k) => expect(seen[k][0]).toBeCloseTo(value, 12));
}

// Levenberg-Marquardt of a line a b: with the column's own length as scale a step is the whole way over 1 + damping. Nielsen
// (IMM-REP-1999-05): a step that gains what the straight model says takes the damping to a third.
describe('steps down a straight line', () => {
  const line = () =>
    watched(
      (b) => [4 * b[0]],
      () => [4],
      { observed: [8], start: [0.5] },
    );

  it.each([...POLICIES.map((policy) => ({ policy })), { policy: way(1) }])(
    'are the whole way over 1 + damping, a third of it the next time: $policy.name',
    ({ policy }) => {
      const seen = line();
      go(seen, policy);
      const trials = seen.asked.filter((_, k) => k > 0 && (!policy.bent || k % 2 === 0));
      let at = 0.5;
      let { damping } = policy;
      const wanted = Array.from({ length: 4 }, () => {
        at += (2 - at) / (1 + damping);
        damping /= 3;
        return at;
      });
      expectPoints(trials, wanted);
      // A bend is felt for at a tenth of the step.
      if (policy.bent) expectPoints(seen.asked.slice(1), [0.5 + 0.15 / (1 + policy.damping)]);
    },
  );

  it('end on it', () => {
    for (const policy of POLICIES) {
      const state = go(line(), policy);
      expect(state.x[0]).toBeCloseTo(2, 12);
      expect(state.cost).toBeLessThan(1e-24);
      expect(state.tired).toBe(false);
      expect(state.rounds).toBeLessThan(40);
    }
  });

  it('weigh by sigma: of 0 and 3, the second twice as sure, 2.4 is the mean', () => {
    for (const scaling of ['present', 'remembered', 'start'] as const) {
      const seen = watched(
        (b) => [b[0], b[0]],
        () => [1, 1],
        {
          observed: [0, 3],
          sigma: [1, 0.5],
          start: [0],
          typical: [1],
        },
      );
      const state = go(seen, way(1, { scaling }));
      expectPoints(seen.asked.slice(1), [1.2]);
      expect(state.x[0]).toBeCloseTo(2.4, 9);
      // Half of 2.4^2 and (0.6 / 0.5)^2.
      expect(state.cost).toBeCloseTo((5.76 + 1.44) / 2, 9);
      expect(state.evaluations).toBe(seen.asked.length);
    }
  });

  it('grow shorter where the curve refuses them: damping twice, then four times, then eight times as large', () => {
    const asked: number[] = [];
    const problem: CurveProblem = {
      model: (b, out) => {
        asked.push(b[0]);
        out[0] = b[0];
        return b[0] < 0.1 || b[0] > 0.95;
      },
      slopes: (_, out) => {
        out[0] = 1;
        return true;
      },
      observed: [1],
      start: [0],
    };
    const state = createDescent(problem);
    if (!state) throw new Error('no start');
    descend(state, way(1));
    // 1/2, 1/3, 1/9 are refused, 1/65 is taken; from there with a third of 64.
    const fourth = 1 / 65;
    const fifth = fourth + (1 - fourth) / (1 + 64 / 3);
    [0, 1 / 2, 1 / 3, 1 / 9, fourth, fifth].forEach((value, k) =>
      expect(asked[k]).toBeCloseTo(value, 13),
    );
  });
});

describe('steps of several parameters', () => {
  // Two lines, 3 b0 and 5 b1: each parameter by itself.
  const two = (more: Partial<CurveProblem> = {}) =>
    watched(
      (b) => [3 * b[0], 5 * b[1]],
      () => [3, 0, 0, 5],
      {
        observed: [30, 20],
        start: [1, -2],
        ...more,
      },
    );
  const step = (a: number, r: number, scale: number, damping: number) =>
    (a * r) / (a * a + damping * scale * scale);

  it('are damped by the lengths of the columns', () => {
    const seen = two();
    go(seen, way(0.5));
    expect(seen.asked[1][0]).toBeCloseTo(1 + 9 / 1.5, 13);
    expect(seen.asked[1][1]).toBeCloseTo(-2 + 6 / 1.5, 13);
  });

  it('or as shares of where they start, as strongly as the heaviest: 3 x 1 and 5 x 2', () => {
    const seen = two();
    go(seen, way(0.5, { scaling: 'start' }));
    expect(seen.asked[1][0]).toBeCloseTo(1 + step(3, 27, 10, 0.5), 13);
    expect(seen.asked[1][1]).toBeCloseTo(-2 + step(5, 30, 5, 0.5), 13);
  });

  it('or of their typical sizes, and of their columns where they start at nothing', () => {
    const typical = two({ typical: [8, 0.5] });
    go(typical, way(0.5, { scaling: 'start' }));
    expect(typical.asked[1][0]).toBeCloseTo(1 + step(3, 27, 3, 0.5), 13);
    expect(typical.asked[1][1]).toBeCloseTo(-2 + step(5, 30, 48, 0.5), 13);
    // 1/3 and 1/5: both count 1.
    const nothing = two({ start: [0, 0] });
    go(nothing, way(0.5, { scaling: 'start' }));
    expect(nothing.asked[1][0]).toBeCloseTo(10 / 1.5, 13);
    expect(nothing.asked[1][1]).toBeCloseTo(4 / 1.5, 13);
  });

  it('leave alone what the curve does not hang on', () => {
    const seen = watched(
      (b) => [3 * b[0]],
      () => [3, 0],
      { observed: [30], start: [1, 7] },
    );
    for (const scaling of ['present', 'remembered', 'start'] as const) {
      const state = go(seen, way(0.1, { scaling }));
      expect(state.x[0]).toBeCloseTo(10, 9);
      expect(state.x[1]).toBe(7);
    }
  });
});

describe('steps down a bent curve', () => {
  const square = (observed: number, start: number) =>
    watched(
      (b) => [b[0] ** 2],
      (b) => [2 * b[0]],
      { observed: [observed], start: [start] },
    );

  it('change the damping by 1 - (2 gain ratio - 1)^3', () => {
    // From 1 toward 2 with damping 0.2: 1.5 / 1.2 = 1.25 too far; gained 4.5 - 1.0625^2 / 2 of the 4.375 told.
    const seen = square(4, 1);
    go(seen, way(0.2));
    const ratio = (4.5 - 1.0625 ** 2 / 2) / 4.375;
    const damping = 0.2 * (1 - (2 * ratio - 1) ** 3);
    expectPoints(seen.asked, [1, 2.25, 2.25 - 1.0625 / 4.5 / (1 + damping)]);
  });

  it('remember the longest column or that of the start, or know the present one only', () => {
    // From 3 toward 1 with damping 1: slopes 6, then smaller.
    for (const scaling of ['present', 'remembered', 'start'] as const) {
      const seen = square(1, 3);
      go(seen, way(1, { scaling }));
      const first = 3 - 8 / 6 / 2;
      const slope = 2 * first;
      const left = 1 - first ** 2;
      const told = 4 * (8 - 4 / 2);
      const ratio = (32 - left ** 2 / 2) / told;
      const damping = Math.max(1 / 3, 1 - (2 * ratio - 1) ** 3);
      const scale = scaling === 'present' ? slope : 6;
      const second = first + (slope * left) / (slope ** 2 + damping * scale ** 2);
      expectPoints(seen.asked, [3, first, second]);
    }
  });

  it('go along the bend: half of the acceleration -f" s^2 / f\' over 1 + damping', () => {
    // Transtrum and Sethna (2011). b^2 from 2 toward 5: s = 1/4 / (1 + damping), f" s^2 = 2 s^2.
    const seen = square(5, 2);
    go(seen, way(0.25, { bent: true }));
    const s = 0.25 / 1.25;
    expectPoints(seen.asked, [2, 2 + 0.1 * s, 2 + s - (2 * s * s) / 4 / 1.25 / 2]);
  });

  it('are not taken where the bend is more than three quarters of them', () => {
    // Acceleration over step: 2 s / (4 x 1.25) for b^2 from 2, so s of 2 is too much by a little: f = 4 + 4 x 2 x 1.25.
    const near = square(4 + 10 * 0.93, 2);
    go(near, way(0.25, { bent: true }));
    const s = (10 * 0.93) / 4 / 1.25;
    expectPoints(near.asked, [2, 2 + 0.1 * s, 2 + s - (s * s) / 5]);
    const far = square(4 + 10 * 0.95, 2);
    go(far, way(0.25, { bent: true }));
    // The feeler only, then one of a step damped twice as much.
    const t = (10 * 0.95) / 4;
    expectPoints(far.asked, [2, 2 + 0.1 * (t / 1.25), 2 + 0.1 * (t / 1.5)]);
  });

  // J. J. More, B. S. Garbow, K. E. Hillstrom, ACM TOMS 7 (1981), problem 1, and 4 (badly scaled).
  it.each(POLICIES.map((policy) => ({ policy })))(
    '$policy.name: come down the valley of Rosenbrock',
    ({ policy }) => {
      const rosenbrock = watched(
        (b) => [10 * (b[1] - b[0] ** 2), 1 - b[0]],
        (b) => [-20 * b[0], 10, -1, 0],
        { observed: [0, 0], start: [-1.2, 1] },
      );
      const state = go(rosenbrock, policy);
      expect(state.x[0]).toBeCloseTo(1, 9);
      expect(state.x[1]).toBeCloseTo(1, 9);
      // Some 20 to 40 rounds were seen; without its damping it takes hundreds or none.
      expect(state.rounds).toBeLessThan(80);
      expect(state.evaluations).toBeLessThan(250);
    },
  );
});

describe('a place on the way down', () => {
  const problem: CurveProblem = {
    model: (b, out) => {
      out[0] = b[0];
      out[1] = 1 / b[0];
      return true;
    },
    observed: [2, 1],
    start: [1],
  };

  it('is none where the curve is no number, nor where it says so', () => {
    expect(createDescent({ ...problem, start: [0] })).toBeNull();
    expect(createDescent({ ...problem, model: () => false })).toBeNull();
    expect(createDescent(problem)?.cost).toBe(0.5);
  });

  it('is left only for a lower one, unless a rise is allowed', () => {
    const state = createDescent(problem);
    if (!state) throw new Error('no start');
    expect(state.moveBy(Float64Array.of(-0.5))).toBe(false);
    expect([state.x[0], state.cost]).toEqual([1, 0.5]);
    // To 1: the same, which is no lower.
    expect(state.moveBy(Float64Array.of(0))).toBe(false);
    expect(state.moveBy(Float64Array.of(0), 1e-6)).toBe(true);
    // To 0.9: (1.1^2 + (1/0.9 - 1)^2) / 2 = 0.611, a fifth more.
    expect(state.moveBy(Float64Array.of(-0.1), 0.2)).toBe(false);
    expect(state.moveBy(Float64Array.of(-0.1), 0.25)).toBe(true);
    expect(state.x[0]).toBeCloseTo(0.9, 15);
    expect(state.moveBy(Float64Array.of(0.1))).toBe(true);
    expect(state.residual[0]).toBeCloseTo(1, 14);
    // From where nothing is left it may go on to where nothing is left, if a rise is allowed.
    const exact = createDescent({ ...problem, observed: [1, 1] });
    expect(exact?.moveBy(Float64Array.of(0))).toBe(false);
    expect(exact?.moveBy(Float64Array.of(0), 1e-6)).toBe(true);
    expect(exact?.moveBy(Float64Array.of(0.1), 1e-6)).toBe(false);
  });
});

describe('the best of all ways', () => {
  it('says what it took and which it was', () => {
    const seen = watched(
      (b) => [Math.exp(b[0]), b[0] + 1],
      (b) => [Math.exp(b[0]), 1],
      {
        observed: [2, 1 + Math.LN2],
        start: [0],
      },
    );
    const fit = curveFit(seen.problem);
    expect(fit).toMatchObject({ status: 'converged', evaluations: expect.any(Number) });
    expect(POLICIES.map(({ name }) => name)).toContain(fit.policy);
    expect(fit.estimate[0]).toBeCloseTo(Math.LN2, 14);
    expect(fit.lastStep).toBeLessThan(1e-9);
    expect(fit.rounds).toBeGreaterThanOrEqual(POLICIES.length);
    expect(fit.evaluations).toBeGreaterThan(fit.rounds);
  });

  it('finds a lower valley than the first way does, and keeps the lower', () => {
    const fit = curveFit({
      model: (b, out) => {
        out[0] = b[0] ** 2;
        return true;
      },
      observed: [-1],
      start: [3],
    });
    // No parabola goes below zero: the bottom at 0 leaves (0 + 1)^2.
    expect(fit.chiSquare).toBeCloseTo(1, 9);
  });

  it('of a straight line is the straight fit, uncertainties and residuals too', () => {
    const x = [0, 1, 2, 5, 7];
    const observed = [1.1, 2.9, 5.2, 10.8, 15.3];
    const sigma = [0.1, 0.3, 0.2, 0.1, 0.4];
    const fit = curveFit({
      model: (b, out) => {
        x.forEach((one, i) => (out[i] = b[0] + b[1] * one));
        return true;
      },
      observed,
      sigma,
      start: [5, 0],
    });
    const line = linearFit({
      design: x.flatMap((one) => [1, one]),
      parameters: 2,
      observed,
      sigma,
    });
    expect(fit.status).toBe('converged');
    expect(fit.chiSquare).toBeCloseTo(line.chiSquare, 9);
    for (let j = 0; j < 2; j++) {
      expect(fit.estimate[j]).toBeCloseTo(line.estimate[j], 9);
      expect(fit.tangent?.deviation[j]).toBeCloseTo(line.deviation[j], 9);
    }
    x.forEach((_, i) => expect(fit.tangent?.residual[i]).toBeCloseTo(line.residual[i], 9));
  });

  it('of a slope that is nothing converges, though its share of itself is no measure', () => {
    const x = [-3, -1, 1, 3];
    const fit = curveFit({
      model: (b, out) => {
        x.forEach((one, i) => (out[i] = b[0] + b[1] * one));
        return true;
      },
      observed: [1, 2, 2, 1],
      start: [1, 1],
    });
    expect(fit.status).toBe('converged');
    expect(fit.estimate[0]).toBeCloseTo(1.5, 12);
    expect(Math.abs(fit.estimate[1])).toBeLessThan(1e-12);
  });

  it('of no start is all that the start says', () => {
    expect(curveFit({ model: () => false, observed: [1], start: [4, 5] })).toEqual({
      status: 'noStart',
      estimate: Float64Array.of(4, 5),
      tangent: null,
      chiSquare: Number.NaN,
      rounds: 0,
      evaluations: 1,
      policy: '',
      lastStep: Number.NaN,
    });
  });

  it('of two parameters that do the same stalls on the first best', () => {
    const fit = curveFit({
      model: (b, out) => {
        for (let i = 0; i < out.length; i++) out[i] = (b[0] + b[1]) * i;
        return true;
      },
      observed: [0, 2, 4, 6.5],
      start: [1, 3],
    });
    expect(fit.status).toBe('stalled');
    expect(fit.tangent?.determined).toEqual([false, false]);
  });
});
