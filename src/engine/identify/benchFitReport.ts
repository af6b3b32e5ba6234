import { type BenchDesign, type BenchKey, type BenchSetup, sharedOf } from './benchDesign';
import type { BenchFit, Entangled, SharedEffect } from './benchFitTypes';
import type { BenchReading, Gauge } from './benchReading';
import { effectiveFreedom, factor95 } from './distributions';
import type { LinearFit } from './linearFit';
import { coarseness } from './quantisation';

interface Fitted {
  readonly readings: readonly BenchReading[];
  readonly gauge: Gauge;
  readonly setup: BenchSetup;
  readonly design: BenchDesign;
  readonly linear: LinearFit;
  /** Of each reading. */
  readonly sigma: Float64Array;
  readonly noise: number;
}

/** Numbers whose interval is shown; the others take the cautious factor of the readings alone. */
const OFTEN: readonly BenchKey['kind'][] = ['spread', 'product', 'friction', 'extra'];

/** A solved bench as its numbers with what can be said of them. */
export function reportFit(fitted: Fitted): BenchFit {
  const { readings, gauge, setup, design, linear, sigma, noise } = fitted;
  const { keys, observed } = design;
  const count = readings.length;
  const noiseFound = gauge.noise === null;
  const quantileFreedom = noiseFound ? linear.freedom : Infinity;
  const shared = sharedEffects(design, setup, linear);
  const own = factor95(quantileFreedom);
  const factorOf = (key: BenchKey, j: number) =>
    OFTEN.includes(key.kind) ? factor95(freedomOf(j, linear, shared, quantileFreedom)) : own;
  const estimates = keys.map((key, j) => ({
    key,
    value: linear.estimate[j],
    sigma: linear.deviation[j],
    half95: factorOf(key, j) * linear.deviation[j],
    determined: linear.determined[j],
    inflation: linear.inflation[j],
  }));
  const residual = linear.residual.slice(0, count);
  const friction = estimates.find(({ key }) => key.kind === 'friction');
  return {
    estimates,
    covariance: linear.covariance,
    shared,
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
    entangled: entangledOf(keys, linear),
    blind: linear.blind,
    condition: linear.condition,
    coarse: coarseness(readings, gauge.step, noise),
    negativeFriction:
      setup.drag.length === 0 && friction !== undefined && friction.value < -2 * friction.sigma,
  };
}

/**
 * What each shared error does: the estimates as functions of what was known of it beforehand have the slope C_j / sigma_j^2
 * (C_j its column of the covariance), times sigma_j for one standard deviation.
 */
function sharedEffects(
  { keys, priors }: BenchDesign,
  setup: BenchSetup,
  { covariance }: LinearFit,
): SharedEffect[] {
  const n = keys.length;
  return priors.flatMap(({ parameter, sigma }) => {
    const name = sharedName(keys[parameter], setup);
    if (!name) return [];
    const effect = Float64Array.from(keys, (_, i) => covariance[i * n + parameter] / sigma);
    return [{ ...name, effect }];
  });
}

/** Rows of drag are the same where they are at the same travel: one bench measures them once. */
function sharedName(
  key: BenchKey,
  setup: BenchSetup,
): { readonly id: string; readonly freedom: number } | null {
  if (key.kind === 'drag') return { id: `drag ${setup.drag[key.index].travel}`, freedom: Infinity };
  if (key.kind !== 'shared') return null;
  const { id, freedom = Infinity } = sharedOf(setup, key.index);
  return { id, freedom };
}

/** Degrees of freedom of an estimate: its own part rests on the readings', shared errors on theirs. */
function freedomOf(
  j: number,
  { covariance, estimate }: LinearFit,
  shared: readonly SharedEffect[],
  own: number,
): number {
  // No readings to spare: nothing is known of the noise.
  if (!(own > 0)) return Number.NaN;
  const parts = shared.map(({ effect, freedom }) => ({ variance: effect[j] ** 2, freedom }));
  const rest = parts.reduce(
    (left, { variance }) => left - variance,
    covariance[j * (estimate.length + 1)],
  );
  return effectiveFreedom([{ variance: rest, freedom: own }, ...parts]);
}

const TIED = 0.95;

function entangledOf(
  keys: readonly BenchKey[],
  { covariance, deviation }: LinearFit,
): readonly Entangled[] {
  const n = keys.length;
  const out: Entangled[] = [];
  for (let first = 0; first < n; first++) {
    for (let second = first + 1; second < n; second++) {
      // What is shared is known only from outside: a number that hangs on it is no less well told from the others.
      if (keys[second].kind === 'shared') continue;
      const correlation = covariance[first * n + second] / (deviation[first] * deviation[second]);
      if (Math.abs(correlation) > TIED) out.push({ first, second, correlation });
    }
  }
  return out;
}
