import type { BenchReading } from './benchReading';

/** Readings that are repeats of each other (one zero, sense, speed and pitch) have the same key. */
export function repeatKey({ zero, sense, angularSpeed, pitch }: BenchReading): string {
  return `${zero} ${sense} ${angularSpeed.toPrecision(9)} ${pitch.toFixed(7)}`;
}

/** How many readings there are under the same conditions as each, itself included. */
export function repeatCounts(readings: readonly BenchReading[]): Int32Array {
  const counts = new Map<string, number>();
  const keys = readings.map(repeatKey);
  for (const key of keys) counts.set(key, (counts.get(key) ?? 0) + 1);
  return Int32Array.from(keys, (key) => counts.get(key) ?? 1);
}

/**
 * What a gauge's step adds to the variance of each reading, N^2.
 *
 * A reading rounded to a step q is off by up to q/2, uniform where the forces fall anywhere within a step: q^2/12 (B. Widrow
 * and I. Kollar, Quantization Noise, Cambridge 2008). Repeats under the same conditions are not independent in this: without
 * noise all n are off by the same, and their mean is no better than one of them. With noise of standard deviation s two
 * repeats share
 *
 *   rho = 6/pi^2 sum_k exp(-(2 pi k s / q)^2) / k^2
 *
 * of it (the same source; averaged over where in the step the force lies). So each of n repeats gets q^2/12 (1 + (n-1) rho),
 * which gives their mean the variance that it has. Repeats are told by `repeatKey`.
 *
 * `counts` are the repeats of each reading (`repeatCounts`).
 * What is left: readings at different pitches are taken as independent, which holds where the force changes by more than a
 * step from one to the next. `coarseness` tells when it does not.
 */
export function stepVariances(counts: Int32Array, step: number, noise: number): Float64Array {
  const base = (step * step) / 12;
  const shared = counts.some((count) => count > 1) ? sharedRounding(step, noise) : 0;
  const out = new Float64Array(counts.length);
  for (let i = 0; i < out.length; i++) out[i] = base * (1 + (counts[i] - 1) * shared);
  return out;
}

/** rho above: 1 without noise, 0.04 for noise of three tenths of a step, none beyond half a step. */
export function sharedRounding(step: number, noise: number): number {
  if (step === 0) return 0;
  if (noise === 0) return 1;
  let sum = 0;
  for (let k = 1; k <= 2000; k++) {
    const blur = (2 * Math.PI * k * noise) / step;
    const term = Math.exp(-blur * blur) / (k * k);
    sum += term;
    if (term < 1e-9) break;
  }
  return Math.min(1, (6 / Math.PI ** 2) * sum);
}

/** Why the step's uncertainty cannot be trusted: all readings of a run lie within few steps, and noise does not blur them. */
export interface Coarseness {
  /** Largest less smallest force, in steps. */
  readonly spanSteps: number;
  /** Noise in steps. */
  readonly noiseSteps: number;
}

/** Fewer steps than this between the readings, with noise below `BLUR` of a step, make rounding errors alike. */
const FEW_STEPS = 4;
const BLUR = 0.3;

export function coarseness(
  readings: readonly BenchReading[],
  step: number,
  noise: number,
): Coarseness | null {
  if (step === 0 || readings.length === 0) return null;
  const lowest = readings.reduce((least, { force }) => Math.min(least, force), Infinity);
  const highest = readings.reduce((most, { force }) => Math.max(most, force), -Infinity);
  const spanSteps = (highest - lowest) / step;
  const noiseSteps = noise / step;
  return spanSteps < FEW_STEPS && noiseSteps < BLUR ? { spanSteps, noiseSteps } : null;
}
