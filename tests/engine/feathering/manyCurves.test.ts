import { describe, expect, test } from 'vitest';
import { inertialEquilibria } from '../../../src/engine/feathering/equilibria';
import { featheringMoment, featheringSlope } from '../../../src/engine/feathering/harmonics';
import { sampledEquilibria } from '../../../src/engine/feathering/sampledEquilibria';
import { radians } from '../../../src/engine/units';
import { agreesWithQuartic, random4, roots, touchingDips } from '../../support/equilibria';
import { seeded } from '../../support/seeded';
import { shifted, touching } from '../../support/touchingMoments';

const HALF = Math.PI / 2;

/** Slow ones, apart from the others so that `npm run mutants` can leave them out. */
describe('equilibria of very many curves', () => {
  test("2,000 random heads: those of a full turn are the quartic's roots on the unit circle", () => {
    const fours = agreesWithQuartic(62, 2000);
    // Both cases occur often: two equilibria (strong offset) and four.
    expect(fours).toBeGreaterThan(400);
    expect(fours).toBeLessThan(1600);
  });

  test('40 random heads: those of a range are the changes of sign among 100,000 samples', () => {
    const random = seeded(63);
    for (let i = 0; i < 40; i++) {
      const h = random4(random);
      const [from, to] = [random.between(-3, 0), random.between(0, 3)];
      const samples = 1e5;
      const seen: number[] = [];
      let before = featheringMoment(h, radians(from));
      for (let k = 1; k <= samples; k++) {
        const after = featheringMoment(h, radians(from + ((to - from) * k) / samples));
        if (before > 0 !== after > 0) seen.push(from + ((to - from) * (k - 0.5)) / samples);
        before = after;
      }
      const found = roots(h, from, to);
      expect(found).toHaveLength(seen.length);
      found.forEach((root, k) => expect(Math.abs(root.pitch - seen[k])).toBeLessThan(1e-4));
    }
  });

  test('two roots a hair apart are two or one touch, never half of it, wherever the range begins', () => {
    const touches = touchingDips(seeded(75), 6000);
    expect(touches[1]).toBe(0);
    expect(touches[0]).toBeGreaterThan(1000);
  });

  test('those found by samples are those of the certified search, on 1,000 seeded inertial curves', () => {
    const random = seeded(61);
    const [from, to] = [radians(-HALF + 0.001), radians(HALF - 0.002)];
    let seen = 0;
    for (let i = 0; i < 1000; i++) {
      const h = Float64Array.from({ length: 4 }, () => random.between(-1, 1));
      const exact = inertialEquilibria(h, from, to, 1);
      const sampled = sampledEquilibria(
        {
          value: (t) => featheringMoment(h, radians(t)),
          slope: (t) => featheringSlope(h, radians(t)),
        },
        from,
        to,
        1,
      );
      if (exact.kind !== 'found' || sampled.kind !== 'found') throw new Error('neutral');
      expect(sampled.roots.map(({ kind }) => kind)).toEqual(exact.roots.map(({ kind }) => kind));
      sampled.roots.forEach((root, k) => {
        seen++;
        expect(Math.abs(root.pitch - exact.roots[k].pitch)).toBeLessThan(1e-9);
        expect(Math.abs(root.stiffness - exact.roots[k].stiffness)).toBeLessThan(1e-6);
      });
    }
    expect(seen).toBeGreaterThan(1500);
  });

  test('a crossing without slope is one equilibrium, a flee angle where it rises and a rest angle where it falls', () => {
    const random = seeded(73);
    for (let i = 0; i < 15; i++) {
      const at = random.between(-1.3, 1.3);
      for (const g of [1, -1]) {
        const all = roots(shifted(touching(0, g), at), -HALF, HALF);
        const found = all.filter(({ pitch }) => Math.abs(pitch - at) < 0.2);
        expect(found.map((root) => root.kind)).toEqual([g > 0 ? 'unstable' : 'stable']);
        // A cubic is below rounding within (1e-15)^(1/3) = 1e-5; the middle of that is nearer.
        expect(Math.abs(found[0].pitch - at)).toBeLessThan(1e-5);
        expect(Math.abs(found[0].stiffness)).toBeLessThan(1e-9);
      }
    }
  });
});
