import { createMoments, JYY, JZZ } from '../engine/mass/moments';
import { leadingResidual } from './goal';
import type { TrialHead } from './trialHead';

/** What a search may set a knob to, in the knob's unit, both allowed. */
export interface KnobLimits {
  readonly min: number;
  readonly max: number;
}

export interface KnobSolution {
  readonly values: readonly number[];
  /** The goal is met to rounding, all of it; a least value never is, nor a compromise. */
  readonly met: boolean;
  /** What one number can bring to zero is zero: J_yy - J_zz of a neutral head, the pull of a centring one. */
  readonly leads: boolean;
  /** Half the sum of squares of the residuals (see `fillResiduals`). */
  readonly cost: number;
  /** Knobs at a limit beyond which it would get better still: -1 at the low one, +1 at the high one. */
  readonly held: readonly number[];
}

/** Share of the spread (or of the start's residual) that counts as met. */
export const MET = 1e-10;

export type Bench = ReturnType<typeof createBench>;

/** Residuals of a head over a scale, so that 1 is about what is wrong at the start. */
export function createBench(head: TrialHead) {
  const raw = new Float64Array(head.residualCount);
  head.set(head.start);
  const known = head.residuals(raw);
  const totals = head.forces.model.totals(createMoments());
  const spread = totals[JYY] + totals[JZZ];
  const size = known ? raw.reduce((most, value) => Math.max(most, Math.abs(value)), 0) : 0;
  const scale = head.wanted.goal.kind === 'neutral' ? spread || 1 : size || 1;
  const startCost = cost(raw.map((value) => value / scale));

  function residuals(values: ArrayLike<number>, out: Float64Array): boolean {
    if (!head.set(values) || !head.residuals(out)) return false;
    for (let i = 0; i < out.length; i++) out[i] /= scale;
    return true;
  }

  return {
    head,
    scale,
    startCost,
    count: raw.length,
    residuals,
    /** NaN where a rule refuses it. */
    leading(value: number): number {
      return residuals([value], raw) ? leadingResidual(head.wanted.goal, raw) : Number.NaN;
    },
    /** Largest residual over the scale; NaN where a rule refuses it. */
    worstAt(values: ArrayLike<number>): number {
      if (!residuals(values, raw)) return Number.NaN;
      return raw.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
    },
    costAt(values: ArrayLike<number>): number {
      return residuals(values, raw) ? cost(raw) : Number.NaN;
    },
  };
}

function cost(residuals: Float64Array): number {
  return residuals.reduce((sum, value) => sum + value * value, 0) / 2;
}
