import type { BenchFit } from '../engine/identify/benchFitTypes';
import { type SplitPasses, splitPasses } from '../engine/identify/reduce';
import type { RungAnalysis } from './analysis';
import type { FittedHead } from './fitRung';

/** Push and pull of a rung split pitch by pitch, with the zeros and the noise that its fit found. */
export function splitRung(
  { readings, gauge, setup }: Pick<RungAnalysis, 'readings' | 'gauge' | 'setup'>,
  { fit }: Pick<FittedHead, 'fit'>,
): SplitPasses {
  return splitPasses(readings, { ...gauge, noise: fit.noise }, zerosOf(fit), setup.drag);
}

/** Fitted zeros of the gauge, N, by the number that a reading calls its zero by; what was not fitted is left out. */
export function zerosOf({ estimates }: Pick<BenchFit, 'estimates'>): readonly number[] {
  const zeros: number[] = [];
  for (const { key, value, determined } of estimates)
    if (key.kind === 'zero' && determined) zeros[key.index] = value;
  return zeros;
}
