import type { BenchSetup } from '../engine/identify/benchDesign';
import { benchFit } from '../engine/identify/benchFit';
import type { BenchFault, BenchFit } from '../engine/identify/benchFitTypes';
import type { BenchReading, Gauge } from '../engine/identify/benchReading';
import { type Result, succeed } from '../engine/result';
import type { GaugeHead, SpreadAndProduct } from './gaugeHead';

/** J_yy - J_zz and J_yz with their covariance, kg m^2 and its square. */
export interface Estimated extends SpreadAndProduct {
  /** Row-major 2 x 2: spread, product. */
  readonly covariance: readonly [number, number, number, number];
  /** Degrees of freedom that the uncertainties rest on: infinite where they were given. */
  readonly freedom: number;
}

/** What a rung's readings say beside what the model says. */
export interface FittedHead {
  readonly fit: BenchFit;
  /** Null where the readings do not determine both: at one pitch alone, or where everything is over centre. */
  readonly measured: Estimated | null;
  readonly model: SpreadAndProduct;
  /** Measured less modelled; null as above. */
  readonly deficit: Estimated | null;
}

/** Fits the readings of one head as it was fitted. */
export function fitHead(
  head: GaugeHead,
  readings: readonly BenchReading[],
  gauge: Gauge,
  setup: BenchSetup,
  pitchSigma = 0,
): Result<FittedHead, BenchFault> {
  const fitted = benchFit({ readings, gauge, pitchSigma }, setup);
  if (!fitted.ok) return fitted;
  const measured = estimatedOf(fitted.value);
  const model = head.totals;
  return succeed({
    fit: fitted.value,
    measured,
    model,
    deficit: measured && less(measured, model),
  });
}

/** The two moments out of a fit; null where one of them is not determined. */
export function estimatedOf(fit: BenchFit): Estimated | null {
  const n = fit.estimates.length;
  const a = fit.estimates.findIndex(({ key }) => key.kind === 'spread');
  const p = fit.estimates.findIndex(({ key }) => key.kind === 'product');
  if (a < 0 || p < 0 || !fit.estimates[a].determined || !fit.estimates[p].determined) return null;
  const c = fit.covariance;
  return {
    spread: fit.estimates[a].value,
    product: fit.estimates[p].value,
    covariance: [c[a * n + a], c[a * n + p], c[p * n + a], c[p * n + p]],
    freedom: fit.quantileFreedom,
  };
}

function less(measured: Estimated, model: SpreadAndProduct): Estimated {
  return {
    ...measured,
    spread: measured.spread - model.spread,
    product: measured.product - model.product,
  };
}
