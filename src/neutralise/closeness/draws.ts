import { normalQuantile } from '../../engine/math/normal';
import { openUnit, philox } from '../../engine/math/philox';
import type { Toleranced, ToleranceValues } from './tolerances';

/**
 * The deviations of one made-up head, in each number's own unit: the same for the same seed, sample and place in the list,
 * whatever was drawn before. Normal deviates have the limits at three standard deviations and are not cut off there: 0.27 %
 * lie beyond.
 */
export function drawDeviations(
  list: readonly Toleranced[],
  { seed, distribution }: Pick<ToleranceValues, 'seed' | 'distribution'>,
  sample: number,
  out: Float64Array,
): Float64Array {
  for (let j = 0; j < list.length; j++) {
    if (j % 4 === 0) philox([sample, j / 4, 0, 0], [seed, 0], words);
    const unit = openUnit(words[j % 4]);
    const { plusMinus } = list[j];
    out[j] =
      distribution === 'normal'
        ? (plusMinus / 3) * normalQuantile(unit)
        : plusMinus * (2 * unit - 1);
  }
  return out;
}

const words = new Uint32Array(4);

/** Standard deviation of a number with limits at plus and minus one: 1/sqrt(3) of a uniform one, a third of a normal one. */
export function spreadOf({ distribution }: Pick<ToleranceValues, 'distribution'>): number {
  return distribution === 'normal' ? 1 / 3 : 1 / Math.sqrt(3);
}
