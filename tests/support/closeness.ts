import {
  JXX,
  JYY,
  JZZ,
  M,
  MOMENT_COUNT,
  type Moments,
  SX,
  SY,
  SZ,
} from '../../src/engine/mass/moments';

/**
 * Largest difference between two sets of ten moments, each number measured against its own natural size: the mass;
 * mass times radius of gyration for S; the trace for J. Off-diagonals that ought to vanish are thus held to the size
 * of what they are made of.
 */
export function momentsDeviation(actual: Moments, expected: Moments): number {
  const mass = Math.abs(expected[M]);
  const trace = Math.abs(expected[JXX]) + Math.abs(expected[JYY]) + Math.abs(expected[JZZ]);
  const first = Math.max(
    Math.sqrt(mass * trace),
    Math.abs(expected[SX]) + Math.abs(expected[SY]) + Math.abs(expected[SZ]),
  );
  let worst = 0;
  for (let i = 0; i < MOMENT_COUNT; i++) {
    const size = i === M ? mass : i <= SZ ? first : trace;
    const deviation = Math.abs(actual[i] - expected[i]) / (size || 1);
    // NaN must not slip through a comparison.
    if (!(deviation <= worst)) worst = deviation;
  }
  return worst;
}

export function relativeDeviation(actual: number, expected: number): number {
  return Math.abs(actual - expected) / (Math.abs(expected) || 1);
}
