import { bracketedRoot } from '../math/rootBracket';
import { fail, type Result, succeed } from '../result';
import {
  type BenchDesign,
  type BenchSetup,
  benchDesign,
  frictionForce,
  putShared,
  withPriors,
} from './benchDesign';
import { reportFit } from './benchFitReport';
import type { BenchData, BenchFault, BenchFit } from './benchFitTypes';
import { type BenchReading, restDragAt } from './benchReading';
import { linearFit } from './linearFit';
import { repeatCounts, stepVariances } from './quantisation';
import { type QuickFit, quickFit } from './quickFit';
import { type FittedAt, forceSlope } from './sharedErrors';

/**
 * Fits the bench model (`benchDesign`) by weighted least squares, all parameters at once.
 *
 * Variance of a reading: noise^2, the gauge's step (`quantisation`), (dF/dt x pitch sigma)^2 from the first fit, and for a
 * held reading (friction)^2 / 3, friction being anywhere between its two ends. Noise that is not given is found as by Mandel
 * and Paule (J. Res. NBS 87, 1982): the smallest with which chi-square is no more than its degrees of freedom; the
 * uncertainties are then never smaller than the step allows, and quantiles are Student's. Drag at rest, zeros known
 * beforehand and errors that all readings share (`sharedErrors`: gauge, arm, speed, pitch scale) are parameters with their
 * own measurements, so that what they leave open is in every uncertainty, with the correlation that it makes.
 */
export function benchFit(
  { readings, gauge, pitchSigma = 0 }: BenchData,
  setup: BenchSetup,
): Result<BenchFit, BenchFault> {
  const fault = faultOf(readings);
  if (fault) return fail(fault);
  const system = systemOf(readings, setup);
  const counts = repeatCounts(readings);
  let extra: Float64Array = new Float64Array(readings.length);
  const sigmasAt = (sigmaNoise: number) =>
    sigmasOf(
      system,
      stepVariances(counts, gauge.step, sigmaNoise).map(
        (step, i) => sigmaNoise ** 2 + step + extra[i],
      ),
    );
  const quickAt = (sigmaNoise: number) => quick(system, sigmasAt(sigmaNoise));
  let noise = gauge.noise ?? 0;
  let at = fittedAt(system.design, quickAt(gauge.noise ?? gauge.step));
  for (let round = 1; ; round++) {
    extra = extraVariances(readings, setup, at, pitchSigma);
    putShared(system.design, readings, setup, at);
    system.table.set(system.design.rows);
    if (gauge.noise === null) noise = foundNoise(system, quickAt, noise);
    if (round === ROUNDS) break;
    at = fittedAt(system.design, quickAt(noise));
    const isSame = !setup.shared?.length && extra.every((value) => value === 0);
    if (isSame) break;
  }
  const sigma = sigmasAt(noise);
  const linear = linearFit({ ...system, design: system.table, sigma, mostRounds: 2 });
  const own = sigma.slice(0, readings.length);
  return succeed(
    reportFit({ readings, gauge, setup, design: system.design, linear, sigma: own, noise }),
  );
}

/** What depends on the fitted numbers is taken anew this often: it changes little. */
const ROUNDS = 3;

function faultOf(readings: readonly BenchReading[]): BenchFault | null {
  if (readings.length === 0) return { kind: 'noReadings' };
  const index = readings.findIndex((reading) => !numbersOf(reading).every(Number.isFinite));
  return index < 0 ? null : { kind: 'badReading', index };
}

function numbersOf(reading: BenchReading): number[] {
  const { force, pitch, angularSpeed, forcePerMoment, travel } = reading;
  const { knownForce = 0, forcePerMomentSlope = 0, scaleShifts = [], extras = [] } = reading;
  const all = [force, pitch, angularSpeed, forcePerMoment, travel, knownForce, forcePerMomentSlope];
  return [...all, ...scaleShifts, ...extras];
}

/** The design with what is known beforehand below it. */
interface System {
  readonly design: BenchDesign;
  readonly table: Float64Array;
  readonly parameters: number;
  readonly observed: Float64Array;
  /** Least uncertainty of a reading, N: without step and noise all count alike. */
  readonly least: number;
}

/** Smallest uncertainty of a reading, as a share of the largest force. */
const LEAST_SIGMA = 1e-9;

function systemOf(readings: readonly BenchReading[], setup: BenchSetup): System {
  const design = benchDesign(readings, setup);
  return {
    design,
    ...withPriors(design),
    parameters: design.keys.length,
    least: LEAST_SIGMA * (largestOf(design) || 1),
  };
}

function largestOf({ observed }: BenchDesign): number {
  return observed.reduce((most, one) => Math.max(most, Math.abs(one)), 0);
}

function sigmasOf({ design: { priors }, least }: System, variances: Float64Array): Float64Array {
  const count = variances.length;
  const out = new Float64Array(count + priors.length);
  variances.forEach((variance, i) => (out[i] = Math.max(Math.sqrt(variance), least)));
  priors.forEach(({ sigma }, k) => (out[count + k] = sigma));
  return out;
}

function quick({ table, parameters, observed }: System, sigma: Float64Array): QuickFit {
  return quickFit(table, parameters, observed, sigma);
}

/** The numbers that variances and shared errors depend on; nothing where they are not determined. */
function fittedAt({ keys }: BenchDesign, { estimate, isWhole }: QuickFit): FittedAt {
  const at = (kind: keyof FittedAt) =>
    isWhole ? (estimate[keys.findIndex((key) => key.kind === kind)] ?? 0) : 0;
  return { spread: at('spread'), product: at('product'), friction: at('friction') };
}

function spreadOf(design: BenchDesign): number {
  const lowest = design.observed.reduce((least, one) => Math.min(least, one), Infinity);
  const highest = design.observed.reduce((most, one) => Math.max(most, one), -Infinity);
  return highest - lowest + largestOf(design);
}

/** Below this share of the largest force noise is none. */
const NO_NOISE = 1e-6;

/** How far the noise may be from the round before to be looked for there first. */
const NEAR = 1.1;

/** The smallest noise at which chi-square is no more than its degrees of freedom, to a thousandth; 0 where there is none. */
function foundNoise(system: System, quickAt: (noise: number) => QuickFit, before: number): number {
  const alone = quickAt(0);
  const freedom = system.observed.length - alone.rank;
  const largest = spreadOf(system.design);
  if (freedom === 0 || alone.chiSquare <= freedom || !(largest > 0)) return 0;
  const excess = (logNoise: number) => Math.log(quickAt(Math.exp(logNoise)).chiSquare / freedom);
  const near = before > 0 ? rootBetween(excess, before / NEAR, before * NEAR) : null;
  const root = near ?? rootBetween(excess, NO_NOISE * largest, largest);
  return root ?? 0;
}

function rootBetween(excess: (logNoise: number) => number, low: number, high: number) {
  const root = bracketedRoot(excess, Math.log(low), Math.log(high), 1e-3);
  return root === null ? null : Math.exp(root.root);
}

/** What the pitch setting and held friction add to the variance of each reading. */
function extraVariances(
  readings: readonly BenchReading[],
  setup: BenchSetup,
  at: FittedAt,
  pitchSigma: number,
): Float64Array {
  const heldVariance = (reading: BenchReading) => {
    const drag = restDragAt(setup.drag, reading.travel).force;
    return frictionForce(reading, setup, at.friction, drag) ** 2 / 3;
  };
  const out = new Float64Array(readings.length);
  readings.forEach((reading, i) => {
    const slope = pitchSigma === 0 ? 0 : forceSlope(reading, at, setup.precone);
    out[i] = (slope * pitchSigma) ** 2 + (reading.sense === 0 ? heldVariance(reading) : 0);
  });
  return out;
}
