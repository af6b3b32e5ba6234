import { expect } from 'vitest';
import { curveFit } from '../../../src/engine/identify/curveFit';
import { NONLINEAR_SETS, type NonlinearSet } from '../../fixtures/nistStrd/nonlinear';

/** Sets that one fit of a few milliseconds solves; the others take up to a second. */
const QUICK = ['BoxBOD', 'Chwirut2', 'Misra1c', 'Rat42', 'Roszman1'];

/** Each set from both of its starts, the quick ones or the others. */
export function runsOf(speed: 'quick' | 'slow') {
  return NONLINEAR_SETS.flatMap((set) =>
    [0, 1].map((k) => ({ set, k, name: `${set.name} from start ${k + 1}` })),
  ).filter(({ set }) => QUICK.includes(set.name) === (speed === 'quick'));
}

export function digits(found: number, certified: number): number {
  const error = Math.abs(found - certified) / Math.abs(certified);
  return error === 0 ? 15 : Math.min(15, -Math.log10(error));
}

/** Fits a set from one of its starts: every parameter to eight digits. */
export function expectSolved(set: NonlinearSet, k: number): void {
  const fit = curveFit({
    model: (b, out) => {
      set.predictors.forEach((x, i) => (out[i] = set.model(b, x)));
      return true;
    },
    observed: set.observed,
    start: set.starts[k],
  });
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
}
