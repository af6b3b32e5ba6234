import { describe, expect, test } from 'vitest';
import { inertialEquilibria } from '../../../src/engine/feathering/equilibria';
import {
  featheringMoment,
  featheringSlope,
  type Harmonics,
} from '../../../src/engine/feathering/harmonics';
import { createMoments, JYY, JYZ, JZZ } from '../../../src/engine/mass/moments';
import { radians } from '../../../src/engine/units';
import { agreesWithQuartic, random4, roots } from '../../support/equilibria';
import { harmonicsOf, rotor } from '../../support/feathering';
import { seeded } from '../../support/seeded';

const HALF = Math.PI / 2;

describe('equilibria without offset lie at tan 2t = -2 J_yz / A', () => {
  test('rest and flee angles alternate 90 degrees apart, the long axis of the ellipse at rest', () => {
    const random = seeded(61);
    for (let i = 0; i < 500; i++) {
      const moments = createMoments();
      moments[JYY] = random.between(0, 1);
      moments[JZZ] = random.between(0, 1);
      moments[JYZ] = random.between(-0.3, 0.3);
      const spread = moments[JYY] - moments[JZZ];
      const h = harmonicsOf(moments, rotor(1000));
      const rest = -Math.atan2(2 * moments[JYZ], spread) / 2;
      const flee = rest > 0 ? rest - HALF : rest + HALF;
      const found = roots(h, -HALF, HALF);
      expect(found).toHaveLength(2);
      for (const { pitch, kind, stiffness } of found) {
        // Brent's tolerance, half of 1e-14 each way, and the rounding of an angle up to pi / 2.
        expect(Math.abs(pitch - (kind === 'stable' ? rest : flee))).toBeLessThan(1.5e-14);
        // Derived: at either root the stiffness is W^2 sqrt(A^2 + 4 J_yz^2), turned about at the flee angle.
        const steep = 1e6 * Math.hypot(spread, 2 * moments[JYZ]) * (kind === 'stable' ? 1 : -1);
        expect(Math.abs(stiffness / steep - 1)).toBeLessThan(1e-13);
      }
      expect(new Set(found.map((root) => root.kind)).size).toBe(2);
    }
  });

  test('a blade rests flat and flees on edge; a bolt flees flat and rests on edge', () => {
    const blade = Float64Array.of(0, 0, -1, 0);
    const kinds = (h: Harmonics) => roots(h, -HALF, HALF).map(({ pitch, kind }) => [pitch, kind]);
    expect(kinds(blade)).toEqual([
      [-HALF, 'unstable'],
      [0, 'stable'],
      [HALF, 'unstable'],
    ]);
    expect(kinds(blade.map((v) => -v))).toEqual([
      [-HALF, 'stable'],
      [0, 'unstable'],
      [HALF, 'stable'],
    ]);
  });
});

describe('all equilibria of any grip, offset and precone included', () => {
  test("100 random heads: those of a full turn are the quartic's roots on the unit circle", () => {
    const fours = agreesWithQuartic(66, 100);
    // Both cases occur often: two equilibria (strong offset) and four.
    expect(fours).toBeGreaterThan(20);
    expect(fours).toBeLessThan(80);
  });

  test('rest and flee angles alternate round the turn, each where the slope says', () => {
    const random = seeded(64);
    for (let i = 0; i < 500; i++) {
      const h = random4(random);
      const found = roots(h, -Math.PI, Math.PI);
      // No mean moment over a turn: it must change sign at least twice, and as often up as down.
      expect([2, 4]).toContain(found.length);
      found.forEach((root, k) => {
        const next = found[(k + 1) % found.length];
        expect([root.kind, next.kind].toSorted()).toEqual(['stable', 'unstable']);
        expect(featheringMoment(h, radians(root.pitch - 1e-4)) > 0).toBe(root.kind === 'stable');
        expect(root.stiffness > 0).toBe(root.kind === 'stable');
        expect(root.stiffness).toBeCloseTo(-featheringSlope(h, root.pitch), 12);
      });
    }
  });

  test('a moment 1e12 times as large or as small rests at the same angles', () => {
    const random = seeded(65);
    for (let i = 0; i < 100; i++) {
      const h = random4(random);
      const found = roots(h, -HALF, HALF);
      for (const size of [2 ** -40, 2 ** 40]) {
        const other = roots(
          h.map((v) => v * size),
          -HALF,
          HALF,
        );
        expect(other.map((root) => [root.pitch, root.kind])).toEqual(
          found.map((root) => [root.pitch, root.kind]),
        );
      }
    }
  });
});

describe('a neutral head', () => {
  test('has no moment at any pitch, or less than 1e-12 of what its largest part would make', () => {
    const whole = (h: Harmonics, scale: number) =>
      inertialEquilibria(h, radians(-1), radians(1), scale).kind;
    expect(whole(new Float64Array(4), 0)).toBe('neutral');
    expect(whole(new Float64Array(4), 1)).toBe('neutral');
    for (let k = 0; k < 4; k++) {
      const small = new Float64Array(4);
      small[k] = 0.9e-12;
      expect(whole(small, 1)).toBe('neutral');
      expect(whole(small, 0.8)).toBe('found');
    }
  });

  test('is not what a moment that is not a number is called', () => {
    for (const bad of [NaN, Infinity]) {
      expect(() =>
        inertialEquilibria(Float64Array.of(0, bad, 1, 0), radians(-1), radians(1), 1),
      ).toThrow('not finite');
    }
  });
});
