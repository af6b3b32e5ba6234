import { createMoments, type Moments } from '../../../src/engine/mass/moments';
import { Exact, exact } from '../../support/precise';
import type { Seeded } from '../../support/seeded';

/** Parts whose numbers span ten decades and both signs, so that rounding has every chance to stay behind. */
export function randomPart(random: Seeded): Moments {
  return createMoments().map(() => random.between(-1, 1) * 10 ** random.between(-10, 0));
}

/** The correctly rounded sum, by decimal arithmetic. */
export function exactSum(parts: readonly Moments[]): Moments {
  return createMoments().map((_, i) =>
    parts.reduce((sum, part) => sum.add(exact(part[i])), new Exact(0)).toNumber(),
  );
}
