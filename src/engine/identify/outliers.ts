import { normalQuantile } from '../math/normal';
import { type BenchDesign, type BenchSetup, benchDesign, withPriors } from './benchDesign';
import { type BenchFit, fittedOf } from './benchFitTypes';
import type { BenchReading, Gauge } from './benchReading';
import { linearFit } from './linearFit';
import { repeatKey } from './quantisation';

/** Why a reading is doubted. A flag never takes a reading out: whoever asked for it decides. */
export type OutlierReason =
  /** This many robust standard uncertainties from what the other readings say; beyond `limit` once in 20 whole benches. */
  | { readonly kind: 'farFromOthers'; readonly excess: number; readonly limit: number }
  /** At or beyond the gauge's range, N. */
  | { readonly kind: 'overRange'; readonly force: number; readonly limit: number }
  /** Away from the middle of its repeats (same zero, sense, speed and pitch), N, by more than they allow. */
  | { readonly kind: 'unlikeRepeats'; readonly by: number; readonly allowed: number };

export interface OutlierFlag {
  readonly index: number;
  readonly reasons: readonly OutlierReason[];
}

/** Share of benches without a fault in which some reading is flagged all the same. */
const FALSE_ALARM = 0.05;
/** Tukey's biweight keeps 95 % of the efficiency of least squares with this (Huber and Ronchetti, Robust Statistics). */
const BIWEIGHT = 4.685;
/** Median of the size of a normal deviate is 1 over this. */
const MAD = 1.482602218505602;
/** Most of each kind. */
const ROUNDS = 20;

/**
 * Readings that do not agree with the rest, by a fit that they cannot pull toward themselves: least absolute deviations by
 * reweighting, then Tukey's biweight about it with the scale of the median deviation, never below the scale that gauge and
 * pitch setting give. Residuals are divided by sqrt(1 - leverage). It resists wrong readings of up to about a quarter of all
 * when they are spread over the pitches; a wrong half, or several wrong at an end that stands alone, it cannot see.
 * `sigma` are the uncertainties of the readings that a first `benchFit` of all of them found; where the noise was found there
 * too, it is blown up by the outliers and serves as no floor (`trustSigma` false).
 */
export function flagOutliers(
  readings: readonly BenchReading[],
  setup: BenchSetup,
  gauge: Gauge,
  fit: Pick<BenchFit, 'sigma' | 'leverage' | 'noiseFound' | 'estimates'>,
): readonly OutlierFlag[] {
  const design = benchDesign(readings, setup, fittedOf(fit));
  const standard = robustResiduals(design, fit.sigma, fit.leverage, !fit.noiseFound);
  const limit = normalQuantile(1 - FALSE_ALARM / (2 * readings.length));
  const { limit: range = Infinity } = gauge;
  const repeats = repeatsOf(readings);
  const flags: OutlierFlag[] = [];
  readings.forEach((reading, index) => {
    const reasons: OutlierReason[] = [];
    const excess = Math.abs(standard[index]);
    if (excess > limit) reasons.push({ kind: 'farFromOthers', excess, limit });
    if (Math.abs(reading.force) >= range) {
      reasons.push({ kind: 'overRange', force: reading.force, limit: range });
    }
    const repeat = unlikeRepeats(reading, repeats, fit.sigma[index], gauge.step);
    if (repeat) reasons.push(repeat);
    if (reasons.length > 0) flags.push({ index, reasons });
  });
  return flags;
}

/** Residuals of the robust fit over their robust standard uncertainty. */
function robustResiduals(
  design: BenchDesign,
  sigma: ArrayLike<number>,
  leverage: ArrayLike<number>,
  trustSigma: boolean,
): Float64Array {
  const { keys, priors } = design;
  const n = keys.length;
  const count = design.observed.length;
  const { table, observed } = withPriors(design);
  const own = Float64Array.from({ length: count }, (_, i) =>
    Math.sqrt(Math.max(1 - leverage[i], 0.05)),
  );
  const residualsAt = (weight: ArrayLike<number>): Float64Array => {
    const { residual } = linearFit({
      mostRounds: 1,
      design: table,
      parameters: n,
      observed,
      sigma: observed.map((_, i) =>
        i < count ? sigma[i] / Math.sqrt(Math.max(weight[i], 1e-6)) : priors[i - count].sigma,
      ),
    });
    return Float64Array.from({ length: count }, (_, i) => residual[i] / (sigma[i] * own[i]));
  };
  // Absolute deviations first, then the biweight at the scale that they leave.
  let standard = residualsAt(new Float64Array(count).fill(1));
  let scale = scaleOf(standard, n, trustSigma);
  for (let round = 0; round < ROUNDS; round++) {
    const least = 1e-3 * scale;
    standard = residualsAt(standard.map((value) => 1 / Math.max(Math.abs(value), least)));
    scale = scaleOf(standard, n, trustSigma);
  }
  for (let round = 1; round < ROUNDS; round++) {
    const before = standard;
    standard = residualsAt(before.map((value) => biweight(value / scale)));
    if (standard.every((value, i) => Math.abs(value - before[i]) < 1e-6 * scale)) break;
  }
  return standard.map((value) => value / scale);
}

function scaleOf(standard: Float64Array, parameters: number, trustSigma: boolean): number {
  // Least absolute deviations meets as many readings as there are parameters exactly: those say nothing of the scale.
  const sizes = standard
    .map(Math.abs)
    .toSorted()
    .slice(Math.min(parameters, standard.length - 1));
  const scale = MAD * sizes[Math.floor((sizes.length - 1) / 2)];
  return trustSigma ? Math.max(1, scale) : Math.max(scale, 1e-12);
}

function biweight(u: number): number {
  const share = u / BIWEIGHT;
  return Math.abs(share) < 1 ? (1 - share * share) ** 2 : 0;
}

type Repeats = ReadonlyMap<string, readonly BenchReading[]>;

function repeatsOf(readings: readonly BenchReading[]): Repeats {
  const repeats = new Map<string, BenchReading[]>();
  for (const reading of readings) {
    const key = repeatKey(reading);
    const known = repeats.get(key);
    if (known) known.push(reading);
    else repeats.set(key, [reading]);
  }
  return repeats;
}

/** Needs two repeats besides; three standard uncertainties and a step are allowed. */
function unlikeRepeats(
  own: BenchReading,
  repeats: Repeats,
  sigma: number,
  step: number,
): OutlierReason | null {
  const alike = repeats.get(repeatKey(own)) as readonly BenchReading[];
  const others = alike.filter((one) => one !== own);
  if (others.length < 2) return null;
  const forces = others.map(({ force }) => force).toSorted((a, b) => a - b);
  const middle = (forces[(forces.length - 1) >> 1] + forces[forces.length >> 1]) / 2;
  const by = own.force - middle;
  const allowed = 3 * sigma * Math.sqrt(1 + 1.57 / others.length) + step;
  return Math.abs(by) > allowed ? { kind: 'unlikeRepeats', by, allowed } : null;
}
