import type { BenchSetup } from '../engine/identify/benchDesign';
import { benchFit } from '../engine/identify/benchFit';
import type { BenchFault, BenchFit } from '../engine/identify/benchFitTypes';
import type { BenchReading, Gauge } from '../engine/identify/benchReading';
import { effectiveFreedom } from '../engine/identify/distributions';
import { type Result, succeed } from '../engine/result';
import type { GaugeHead, SpreadAndProduct } from './gaugeHead';

/** J_yy - J_zz and J_yz with their covariance, kg m^2 and its square. */
export interface Estimated extends SpreadAndProduct {
  /** Row-major 2 x 2: spread, product. */
  readonly covariance: readonly [number, number, number, number];
  /** Degrees of freedom that the uncertainties rest on: infinite where they were given. */
  readonly freedom: number;
  /** What of the covariance is shared with other rungs of the same bench; left out: nothing. */
  readonly shared?: readonly SharedMoments[];
  /** Degrees of freedom of what is not shared; left out: as of the whole. */
  readonly ownFreedom?: number;
}

/** What one standard deviation of a shared error does to the two moments, kg m^2. */
export interface SharedMoments extends SpreadAndProduct {
  readonly id: string;
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
  const shared = fit.shared.map(({ id, freedom, effect }) => ({
    id,
    freedom,
    spread: effect[a],
    product: effect[p],
  }));
  return withFreedom({
    spread: fit.estimates[a].value,
    product: fit.estimates[p].value,
    covariance: [c[a * n + a], c[a * n + p], c[p * n + a], c[p * n + p]],
    ownFreedom: fit.quantileFreedom,
    shared,
  });
}

/** The part of a covariance that nothing else shares. */
export function ownCovariance({ covariance, shared = [] }: Estimated): Estimated['covariance'] {
  const [aa, ap, pa, pp] = covariance;
  const [spread, product, mixed] = squaresOf(shared);
  return [aa - spread, ap - mixed, pa - mixed, pp - product];
}

/** Sums of the squares of shared effects, and of the products of the two: what they add to a covariance. */
export function squaresOf(shared: readonly SharedMoments[]): readonly [number, number, number] {
  let [spreads, products, mixed] = [0, 0, 0];
  for (const { spread, product } of shared) {
    spreads += spread ** 2;
    products += product ** 2;
    mixed += spread * product;
  }
  return [spreads, products, mixed];
}

/**
 * Moments with the degrees of freedom of their whole uncertainty (Welch and Satterthwaite): of the two numbers the
 * smaller, which is cautious for the other.
 */
export function withFreedom(
  moments: Omit<Estimated, 'freedom'> & { readonly ownFreedom: number },
): Estimated {
  const { shared = [], ownFreedom } = moments;
  if (!(ownFreedom > 0)) return { ...moments, freedom: ownFreedom };
  const own = ownCovariance({ ...moments, freedom: ownFreedom });
  const of = (name: keyof SpreadAndProduct, variance: number) =>
    effectiveFreedom([
      { variance, freedom: ownFreedom },
      ...shared.map((one) => ({ variance: one[name] ** 2, freedom: one.freedom })),
    ]);
  return { ...moments, freedom: Math.min(of('spread', own[0]), of('product', own[3])) };
}

function less(measured: Estimated, model: SpreadAndProduct): Estimated {
  return {
    ...measured,
    spread: measured.spread - model.spread,
    product: measured.product - model.product,
  };
}
