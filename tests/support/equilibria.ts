import { type Equilibrium, inertialEquilibria } from '../../src/engine/feathering/equilibria';
import { featheringBound, type Harmonics } from '../../src/engine/feathering/harmonics';
import { radians } from '../../src/engine/units';
import type { Seeded } from './seeded';

/** The equilibria of a head that has a moment, from one pitch to another, rad. Throws for a neutral one. */
export function roots(h: Harmonics, from: number, to: number): readonly Equilibrium[] {
  const result = inertialEquilibria(h, radians(from), radians(to), featheringBound(h));
  if (result.kind === 'neutral') throw new Error('a head with a moment is not neutral');
  return result.roots;
}

/** SIN1, COS1, SIN2, COS2, each between -1 and 1. */
export function random4(random: Seeded): Harmonics {
  return Float64Array.from({ length: 4 }, () => random.between(-1, 1));
}
