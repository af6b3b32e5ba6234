import type { DesignFault } from '../../design/fault';
import type { KnobRef } from '../knobs';
import type { Toleranced } from './tolerances';

/** A share of made-up heads, with its standard error sqrt(p (1 - p) / n). */
export interface Chance {
  readonly share: number;
  readonly standardError: number;
}

/** Spread of the push-rod force at each pitch, N; NaN where no head has a force. */
export interface ForceBand {
  readonly mean: Float64Array;
  readonly sigma: Float64Array;
  /** Below these lie 2.5, 50 and 97.5 % of the heads. */
  readonly low: Float64Array;
  readonly median: Float64Array;
  readonly high: Float64Array;
}

/** What one tolerance adds. */
export interface ToleranceShare extends Toleranced {
  /** Push-rod force per unit of the number at the worst pitch, N; null where it cannot be varied alone. */
  readonly slope: number | null;
  /** Of the variance at the worst pitch, by first order. */
  readonly share: number;
}

/** Halving one tolerance raises the chance from `from` to `to`: by first order, on the same draws. */
export interface Tightening {
  readonly ref: KnobRef;
  readonly plusMinus: number;
  readonly from: number;
  readonly to: number;
}

/** Grips of one rotor, drawn independently of each other and taken as they come. */
export interface Matching {
  readonly rotors: number;
  /** Difference of the push-rod forces of two grips at the worst pitch, N: its standard deviation, and what 95 % stay within. */
  readonly forceSigma: number;
  readonly forceWithin: number;
  /** Static unbalance of the rotor, kg m: half of the rotors stay within the one, 95 % within the other. */
  readonly unbalanceMedian: number;
  readonly unbalanceWithin: number;
  /** Chance of keeping the wanted grade; null where no grade is wanted or the hub's mass is not known. */
  readonly grade: Chance | null;
}

export interface ToleranceResult {
  readonly pitchDeg: Float64Array;
  /** First and last place of the pitch in use. */
  readonly used: readonly [number, number];
  /** As drawn. */
  readonly nominal: Float64Array;
  readonly exact: ForceBand;
  /** By first order with the same draws; `rssSigma` by the root of the sum of squares. */
  readonly linear: ForceBand;
  readonly rssSigma: Float64Array;
  readonly targetForce: number;
  readonly chance: Chance;
  readonly linearChance: Chance;
  /** Heads that could be made, and those that a rule between their numbers forbids (left out of everything). */
  readonly samples: number;
  readonly refused: number;
  readonly firstRefusal: DesignFault | null;
  /** Heads whose rod does not reach, or whose arm goes over centre, within the pitch in use: they miss the target. */
  readonly withoutForce: number;
  /** Place of the worst pitch in use: the one where first order expects the largest force at two standard deviations. */
  readonly worst: number;
  /** The largest first. */
  readonly shares: readonly ToleranceShare[];
  readonly tighten: readonly Tightening[];
  /** Null for a rotor of one blade. */
  readonly matching: Matching | null;
}

/** Why there is nothing to run. */
export type ToleranceFault =
  | { readonly kind: 'design'; readonly fault: DesignFault }
  /** No arm, or no force at any pitch in use. */
  | { readonly kind: 'noForce' }
  | { readonly kind: 'noTolerance' };
