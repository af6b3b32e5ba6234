import { expect } from 'vitest';
import {
  type Equilibrium,
  findEquilibria,
  inertialEquilibria,
  type MomentCurve,
} from '../../src/engine/feathering/equilibria';
import {
  featheringBound,
  featheringSlope,
  type Harmonics,
} from '../../src/engine/feathering/harmonics';
import { radians } from '../../src/engine/units';
import { circleRoots } from './quartic';
import { type Seeded, seeded } from './seeded';

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

/**
 * Parabolas that dip below zero by a hair, by turns within rounding and clearly beyond it: how many of either are found as one
 * touch. Throws where one is found as anything but a touch or its two roots.
 */
export function touchingDips(
  random: Seeded,
  count: number,
): readonly [within: number, beyond: number] {
  const touches: [number, number] = [0, 0];
  for (let i = 0; i < count; i++) {
    const at = random.between(-0.2, 0.2);
    const loose = 10 ** random.between(0, 1);
    const curvature = random.between(0.6, 2);
    // Signs have a floor of 3e-15 and 3e-16 of the curvature bound, together below 1e-14 x loose.
    const clear = i % 2;
    const depth = loose * 10 ** (clear ? random.between(-13.7, -12) : random.between(-16, -13.7));
    const dip: MomentCurve = {
      value: (t) => (curvature / 2) * (t - at) ** 2 - depth,
      slope: (t) => curvature * (t - at),
      slopeBound: 2 * loose,
      curvatureBound: 2 * loose,
      scale: 1,
    };
    const from = at - 10 ** random.between(-4, 0);
    const found = findEquilibria(dip, radians(from), radians(at + 10 ** random.between(-4, 0)));
    const kinds = found.map((root) => root.kind).join();
    if (kinds === 'tangent') touches[clear]++;
    else if (kinds !== 'stable,unstable') throw new Error(`dip ${i} of depth ${depth}: ${kinds}`);
  }
  return touches;
}

/**
 * Holds the equilibria of so many random heads against the quartic's roots on the unit circle, one by one; how many heads have
 * four.
 */
export function agreesWithQuartic(seed: number, heads: number): number {
  const random = seeded(seed);
  let fours = 0;
  for (let i = 0; i < heads; i++) {
    const h = random4(random);
    const algebra = circleRoots(h);
    const found = roots(h, -Math.PI, Math.PI);
    expect(found.map((root) => root.pitch)).toHaveLength(algebra.angles.length);
    found.forEach(({ pitch }, k) => {
      const steepness = Math.abs(featheringSlope(h, radians(pitch))) / featheringBound(h);
      // Both routes stop within some 1e-15 of the moment's size: the flatter, the farther apart.
      expect(Math.abs(pitch - algebra.angles[k])).toBeLessThan(1.5e-14 + 1e-14 / steepness);
    });
    if (found.length === 4) fours++;
  }
  return fours;
}
