import { DOUBT, effectiveFreedom, factor95, squaresAbove } from '../engine/identify/distributions';
import {
  type Estimated,
  ownCovariance,
  type SharedMoments,
  squaresOf,
  withFreedom,
} from './fitRung';
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

/**
 * The steps between rungs in their order: each takes the rung before it off. What each rung's readings have wrong for
 * themselves (noise, the gauge's step, its zero) adds in squares. What they have wrong alike, the drag at rest, the gauge's
 * gain, arm, speed and the scale of pitch, is one error in both: its effects are taken from each other before they are
 * squared (GUM, JCGM 100:2008, F.1.2.3). The gain of the gauge thus counts in proportion to the share itself, and what
 * shifts both rungs alike goes out. Degrees of freedom by Welch and Satterthwaite.
 */
export function ladderSteps(rungs: readonly MeasuredRung[]): readonly LadderStep[] {
  return rungs.map((rung, i) => {
    const before = rungs[i - 1];
    const measured = before ? difference(rung.measured, before.measured) : rung.measured;
    const model = before ? minus(rung.model, before.model) : rung.model;
    const deficit = { ...measured, ...minus(measured, model) };
    const factor = factor95(measured.freedom);
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
  const shared = sharedDifference(a.shared ?? [], b.shared ?? []);
  const [own, other] = [ownCovariance(a), ownCovariance(b)];
  const both = (i: 0 | 1 | 2 | 3) => own[i] + other[i];
  const [spread, product, mixed] = squaresOf(shared);
  return withFreedom({
    ...minus(a, b),
    shared,
    covariance: [both(0) + spread, both(1) + mixed, both(2) + mixed, both(3) + product],
    ownFreedom: Math.min(ownFreedomOf(a, b, 0), ownFreedomOf(a, b, 3)),
  });
}

function ownFreedomOf(a: Estimated, b: Estimated, place: 0 | 3): number {
  const part = (one: Estimated) => ({
    variance: ownCovariance(one)[place],
    freedom: one.ownFreedom ?? one.freedom,
  });
  const [first, second] = [part(a), part(b)];
  const least = Math.min(first.freedom, second.freedom);
  return least > 0 ? effectiveFreedom([first, second]) : least;
}

/** What one of two has not, it has as nothing. */
function sharedDifference(
  a: readonly SharedMoments[],
  b: readonly SharedMoments[],
): readonly SharedMoments[] {
  const ids = [...new Set([...a, ...b].map(({ id }) => id))];
  return ids.map((id) => {
    const [one, other] = [a, b].map((list) => list.find((shared) => shared.id === id));
    const freedom = Math.min(one?.freedom ?? Infinity, other?.freedom ?? Infinity);
    return { id, freedom, ...minus(one ?? NONE, other ?? NONE) };
  });
}

const NONE: SpreadAndProduct = { spread: 0, product: 0 };

/** How a deficit stands against nothing. */
export function agreementOf({ spread, product, covariance, freedom }: Estimated): Agreement {
  const chiSquare = quadratic(covariance, spread, product);
  const pValue = squaresAbove(chiSquare, 2, freedom);
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
