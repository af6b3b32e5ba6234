import { bracketedRoot } from '../math/rootBracket';
import { fail, type Result, succeed } from '../result';
import {
  type BenchDesign,
  type BenchKey,
  type BenchSetup,
  benchDesign,
  frictionForce,
} from './benchDesign';
import type { BenchData, BenchFault, BenchFit, Entangled } from './benchFitTypes';
import { type BenchReading, type Gauge, restDragAt } from './benchReading';
import { studentQuantile } from './distributions';
import { type LinearFit, linearFit } from './linearFit';
import { coarseness, quantisationVariances } from './quantisation';

/**
 * Fits the bench model (`benchDesign`) by weighted least squares, all parameters at once.
 *
 * Variance of a reading: noise^2, the gauge's step (`quantisation`), (dF/dt x pitch sigma)^2 from the first fit, and for a
 * held reading (friction)^2 / 3, friction being anywhere between its two ends. Noise that is not given is found as by Mandel
 * and Paule (J. Res. NBS 87, 1982): the smallest with which chi-square is no more than its degrees of freedom; the
 * uncertainties are then never smaller than the step allows, and quantiles are Student's. Drag at rest and zeros known
 * beforehand are parameters with their own measurements, so that what they leave open is in every uncertainty.
 *
 * Left out: a common error of the pitch scale, which moves all readings together (see `calibration`).
 */
export function benchFit(
  { readings, gauge, pitchSigma = 0 }: BenchData,
  setup: BenchSetup,
): Result<BenchFit, BenchFault> {
  const fault = faultOf(readings);
  if (fault) return fail(fault);
  const design = benchDesign(readings, setup);
  let extra: Float64Array = new Float64Array(readings.length);
  let noise = gauge.noise ?? 0;
  const fitAt = (sigmaNoise: number) => {
    const steps = quantisationVariances(readings, gauge.step, sigmaNoise);
    return solve(
      design,
      steps.map((step, i) => sigmaNoise ** 2 + step + extra[i]),
    );
  };
  let fit = fitAt(gauge.noise ?? gauge.step);
  for (let round = 0; round < 3; round++) {
    extra = extraVariances(readings, setup, design, fit.linear, pitchSigma);
    if (gauge.noise === null) noise = foundNoise((value) => fitAt(value).linear, spreadOf(design));
    fit = fitAt(noise);
    if (round > 0 && extra.every((value) => value === 0)) break;
  }
  return succeed(report(readings, gauge, setup, design, fit, noise));
}

function faultOf(readings: readonly BenchReading[]): BenchFault | null {
  if (readings.length === 0) return { kind: 'noReadings' };
  const index = readings.findIndex(
    ({ force, pitch, angularSpeed, forcePerMoment, travel, knownForce = 0, extras = [] }) =>
      ![force, pitch, angularSpeed, forcePerMoment, travel, knownForce, ...extras].every(
        Number.isFinite,
      ),
  );
  return index < 0 ? null : { kind: 'badReading', index };
}

interface Solved {
  readonly linear: LinearFit;
  readonly sigma: Float64Array;
}

/** Smallest uncertainty of a reading, as a share of the largest force: without step and noise all count alike. */
const LEAST_SIGMA = 1e-9;

function solve({ keys, rows, observed, priors }: BenchDesign, variances: Float64Array): Solved {
  const n = keys.length;
  const count = observed.length;
  const least = LEAST_SIGMA * (Math.max(...observed.map(Math.abs)) || 1);
  const sigma = variances.map((variance) => Math.max(Math.sqrt(variance), least));
  const design = new Float64Array((count + priors.length) * n);
  design.set(rows);
  priors.forEach(({ parameter }, k) => (design[(count + k) * n + parameter] = 1));
  const linear = linearFit({
    design,
    parameters: n,
    observed: [...observed, ...priors.map(({ value }) => value)],
    sigma: [...sigma, ...priors.map((prior) => prior.sigma)],
  });
  return { linear, sigma };
}

function spreadOf({ observed }: BenchDesign): number {
  return Math.max(...observed) - Math.min(...observed) + Math.max(...observed.map(Math.abs));
}

/** Below this share of the largest force noise is none. */
const NO_NOISE = 1e-6;

/** The smallest noise at which chi-square is no more than its degrees of freedom, to a thousandth; 0 where there is none. */
function foundNoise(fitAt: (noise: number) => LinearFit, largest: number): number {
  const excess = (logNoise: number) => {
    const { chiSquare, freedom } = fitAt(Math.exp(logNoise));
    return Math.log(chiSquare / freedom);
  };
  const alone = fitAt(0);
  if (alone.freedom === 0 || alone.chiSquare <= alone.freedom || !(largest > 0)) return 0;
  const root = bracketedRoot(excess, Math.log(NO_NOISE * largest), Math.log(largest), 1e-3);
  return root === null ? 0 : Math.exp(root.root);
}

/** What the pitch setting and held friction add to the variance of each reading. */
function extraVariances(
  readings: readonly BenchReading[],
  setup: BenchSetup,
  { keys }: BenchDesign,
  { estimate }: LinearFit,
  pitchSigma: number,
): Float64Array {
  const at = (kind: BenchKey['kind']) => {
    const value = estimate[keys.findIndex((key) => key.kind === kind)] ?? 0;
    return Number.isNaN(value) ? 0 : value;
  };
  const [spread, product, friction] = [at('spread'), at('product'), at('friction')];
  return Float64Array.from(readings, (reading) => {
    const { pitch, angularSpeed, forcePerMoment, forcePerMomentSlope = 0, sense, travel } = reading;
    const [sin, cos] = [Math.sin(2 * pitch), Math.cos(2 * pitch)];
    const perRadian =
      (angularSpeed * Math.cos(setup.precone)) ** 2 *
      (forcePerMoment * (spread * cos - 2 * product * sin) +
        forcePerMomentSlope * ((spread / 2) * sin + product * cos));
    const drag = restDragAt(setup.drag, travel).force;
    const held = sense === 0 ? frictionForce(reading, setup, friction, drag) ** 2 / 3 : 0;
    return (perRadian * pitchSigma) ** 2 + held;
  });
}

const TIED = 0.95;

function report(
  readings: readonly BenchReading[],
  gauge: Gauge,
  setup: BenchSetup,
  { keys, observed }: BenchDesign,
  { linear, sigma }: Solved,
  noise: number,
): BenchFit {
  const n = keys.length;
  const count = readings.length;
  const noiseFound = gauge.noise === null;
  const quantileFreedom = noiseFound ? linear.freedom : Infinity;
  const factor = quantileOf(quantileFreedom);
  const estimates = keys.map((key, j) => ({
    key,
    value: linear.estimate[j],
    sigma: linear.deviation[j],
    half95: factor * linear.deviation[j],
    determined: linear.determined[j],
    inflation: linear.inflation[j],
  }));
  const entangled: Entangled[] = [];
  for (let first = 0; first < n; first++) {
    for (let second = first + 1; second < n; second++) {
      const correlation =
        linear.covariance[first * n + second] /
        (linear.deviation[first] * linear.deviation[second]);
      if (Math.abs(correlation) > TIED) entangled.push({ first, second, correlation });
    }
  }
  const residual = linear.residual.slice(0, count);
  const friction = estimates.find(({ key }) => key.kind === 'friction');
  return {
    estimates,
    covariance: linear.covariance,
    fitted: residual.map((value, i) => observed[i] + (readings[i].knownForce ?? 0) - value),
    residual,
    sigma,
    standardised: linear.standardised.slice(0, count),
    leverage: linear.leverage.slice(0, count),
    chiSquare: linear.chiSquare,
    freedom: linear.freedom,
    pValue: noiseFound ? null : linear.pValue,
    noise,
    noiseFound,
    quantileFreedom,
    entangled,
    blind: linear.blind,
    condition: linear.condition,
    coarse: coarseness(readings, gauge.step, noise),
    negativeFriction:
      setup.drag.length === 0 && friction !== undefined && friction.value < -2 * friction.sigma,
  };
}

/** Two-sided 95 % factor: Student's, or the normal one for infinite freedom; NaN without freedom. */
function quantileOf(freedom: number): number {
  if (freedom === Infinity) return NORMAL_95;
  return freedom > 0 ? studentQuantile(0.975, freedom) : Number.NaN;
}
/** The standard normal deviate of 0.975 (Abramowitz and Stegun, table 26.1). */
const NORMAL_95 = 1.959963984540054;
