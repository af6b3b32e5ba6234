import { fail, type Result, succeed } from '../result';
import { centralSecondMoment } from './inertia';
import type { MeasuredFault, MeasuredQuantity } from './measured';
import { M, type Moments, SX, SY, SZ } from './moments';

/** One measured value of a body with its standard uncertainty, SI, in the body frame. */
export interface Measurement {
  readonly what: MeasuredQuantity;
  readonly measured: number;
  readonly uncertainty: number;
  /** Standard uncertainty of the modelled value (dimensions, density), where it is known; 0 where absent. */
  readonly modelUncertainty?: number;
}

export interface Comparison {
  readonly what: MeasuredQuantity;
  readonly modelled: number;
  readonly measured: number;
  /** Combined standard uncertainty of the difference: both in squares. */
  readonly uncertainty: number;
  /** measured - modelled. */
  readonly difference: number;
  /** |difference| / uncertainty; Infinity where they differ and neither is uncertain. */
  readonly ratio: number;
  /** Whether `ratio` exceeds `COVERAGE`. */
  readonly disagrees: boolean;
}

/**
 * Coverage factor k = 2: of honest measurements of a true model about 95 % lie within it (normal errors; JCGM 100,
 * GUM, 6.2). One in twenty will disagree by chance.
 */
export const COVERAGE = 2;

/**
 * Each measured value beside the modelled one. `modelled` is the model as drawn: moments that `applyMeasured` has
 * corrected agree with what corrected them and show nothing. Centres and inertias are those of `applyMeasured`. Mass and
 * timing share the scale's error, which is left out: it is far below the others. Fails on a model without mass.
 */
export function compareMeasured(
  modelled: Moments,
  measurements: readonly Measurement[],
): Result<readonly Comparison[], Extract<MeasuredFault, { kind: 'modelWithoutMass' }>> {
  const J = centralSecondMoment(modelled);
  if (J === null) return fail({ kind: 'modelWithoutMass', mass: modelled[M] });
  const m = modelled[M];
  const values: Readonly<Record<MeasuredQuantity, number>> = {
    mass: m,
    centreX: modelled[SX] / m,
    centreY: modelled[SY] / m,
    centreZ: modelled[SZ] / m,
    inertiaX: J.yy + J.zz,
    inertiaY: J.xx + J.zz,
    inertiaZ: J.xx + J.yy,
  };
  return succeed(measurements.map((one) => compared(values[one.what], one)));
}

function compared(modelled: number, one: Measurement): Comparison {
  const { what, measured } = one;
  const uncertainty = Math.hypot(one.uncertainty, one.modelUncertainty ?? 0);
  const difference = measured - modelled;
  const ratio = difference === 0 ? 0 : Math.abs(difference) / uncertainty;
  return {
    what,
    modelled,
    measured,
    uncertainty,
    difference,
    ratio,
    disagrees: ratio > COVERAGE,
  };
}
