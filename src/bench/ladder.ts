import { chiSquareAbove, fisherBelow, studentQuantile } from '../engine/identify/distributions';
import type { Estimated } from './fitRung';
import type { SpreadAndProduct } from './gaugeHead';
import type { RungKey } from './rungs';

/** A rung that was measured. */
export interface MeasuredRung {
  readonly key: RungKey;
  /** Parts that it has and the rung before it has not, or has in another form. */
  readonly added: readonly string[];
  readonly model: SpreadAndProduct;
  readonly measured: Estimated;
}

/** What the parts added from one measured rung to the next turn out to share, kg m^2. */
export interface LadderStep {
  /** Null: the lowest rung itself. */
  readonly from: RungKey | null;
  readonly to: RungKey;
  readonly added: readonly string[];
  readonly model: SpreadAndProduct;
  readonly measured: Estimated;
  /** Measured less modelled, with the same covariance. */
  readonly deficit: Estimated;
  /** Half widths of the 95 % intervals of the two; NaN with no readings to spare. */
  readonly half95: SpreadAndProduct;
  readonly agreement: Agreement;
}

/** How a deficit of two numbers stands against its covariance. */
export interface Agreement {
  /** d^T C^-1 d; two degrees of freedom. */
  readonly chiSquare: number;
  /** Share of sound benches with true models that differ by as much; NaN with no readings to spare. */
  readonly pValue: number;
  /** Not beyond doubt at 5 %. */
  readonly agrees: boolean;
}

const DOUBT = 0.05;

/**
 * The steps between rungs in their order: each takes the rung before it off, and covariances add. Two runs share the drag
 * at rest and the pitch scale; what these have wrong alike cancels in the difference and is counted here all the same, so
 * that the uncertainty is rather too large. With the noise learnt from the readings F is used in chi-square's place, with
 * the smaller of the two degrees of freedom (cautious).
 */
export function ladderSteps(rungs: readonly MeasuredRung[]): readonly LadderStep[] {
  return rungs.map((rung, i) => {
    const before = rungs[i - 1];
    const measured = before ? difference(rung.measured, before.measured) : rung.measured;
    const model = before ? minus(rung.model, before.model) : rung.model;
    const deficit = { ...measured, ...minus(measured, model) };
    const factor = measured.freedom > 0 ? quantile95(measured.freedom) : Number.NaN;
    return {
      from: before?.key ?? null,
      to: rung.key,
      added: rung.added,
      model,
      measured,
      deficit,
      half95: {
        spread: factor * Math.sqrt(measured.covariance[0]),
        product: factor * Math.sqrt(measured.covariance[3]),
      },
      agreement: agreementOf(deficit),
    };
  });
}

function minus(a: SpreadAndProduct, b: SpreadAndProduct): SpreadAndProduct {
  return { spread: a.spread - b.spread, product: a.product - b.product };
}

function difference(a: Estimated, b: Estimated): Estimated {
  const [aa, ap, pa, pp] = a.covariance;
  const [baa, bap, bpa, bpp] = b.covariance;
  return {
    ...minus(a, b),
    covariance: [aa + baa, ap + bap, pa + bpa, pp + bpp],
    freedom: Math.min(a.freedom, b.freedom),
  };
}

/** Two-sided 95 % factor. The normal one: Abramowitz and Stegun, table 26.1. */
export function quantile95(freedom: number): number {
  return freedom === Infinity ? 1.959963984540054 : studentQuantile(0.975, freedom);
}

/** How a deficit stands against nothing. */
export function agreementOf({ spread, product, covariance, freedom }: Estimated): Agreement {
  const chiSquare = quadratic(covariance, spread, product);
  const pValue =
    freedom === Infinity
      ? chiSquareAbove(chiSquare, 2)
      : freedom > 0
        ? 1 - fisherBelow(chiSquare / 2, 2, freedom)
        : Number.NaN;
  return { chiSquare, pValue, agrees: !(pValue < DOUBT) };
}

/** d^T C^-1 d of two numbers; scaled by the diagonal first. */
export function quadratic(
  covariance: Estimated['covariance'],
  spread: number,
  product: number,
): number {
  const [root, root2] = [Math.sqrt(covariance[0]), Math.sqrt(covariance[3])];
  const correlation = covariance[1] / (root * root2);
  const [x, y] = [spread / root, product / root2];
  return (x * x - 2 * correlation * x * y + y * y) / (1 - correlation * correlation);
}
