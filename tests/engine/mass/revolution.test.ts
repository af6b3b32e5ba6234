import { describe, expect, test } from 'vitest';
import { JXX, JZZ, M, type Moments } from '../../../src/engine/mass/moments';
import type { Outline, Revolution } from '../../../src/engine/mass/solid';
import { momentsDeviation } from '../../support/closeness';
import {
  between,
  circle,
  circleOutline,
  QUADRATURE,
  revolvedMoments,
} from '../../support/quadrature';
import {
  ballShape,
  capsuleShape,
  cylinderShape,
  frustumShape,
  volumeOf,
} from '../../support/shapes';

describe('a solid of revolution agrees with brute-force integration over its volume', () => {
  const cases: readonly [string, Revolution, () => Moments][] = [
    [
      'cylinder',
      cylinderShape(3, 8),
      () =>
        revolvedMoments([
          between(
            -4,
            4,
            () => 0,
            () => 3,
          ),
        ]),
    ],
    [
      'cone',
      frustumShape(2, 0, 5),
      () =>
        revolvedMoments([
          between(
            -2.5,
            2.5,
            () => 0,
            (z) => (2 * (2.5 - z)) / 5,
          ),
        ]),
    ],
    [
      'frustum',
      frustumShape(1, 4, 6),
      () =>
        revolvedMoments([
          between(
            -3,
            3,
            () => 0,
            (z) => 2.5 + z / 2,
          ),
        ]),
    ],
    [
      'tube with a step, away from the origin',
      {
        shape: 'revolution',
        profile: [
          [2, 10],
          [5, 10],
          [5, 12],
          [3, 12],
          [3, 17],
          [2, 17],
        ],
      },
      () =>
        revolvedMoments([
          between(
            10,
            12,
            () => 2,
            () => 5,
          ),
          between(
            12,
            17,
            () => 2,
            () => 3,
          ),
        ]),
    ],
    [
      'ball',
      ballShape(2.5),
      () =>
        revolvedMoments([
          between(
            -2.5,
            2.5,
            () => 0,
            (z) => Math.sqrt(6.25 - z * z),
          ),
        ]),
    ],
    [
      'capsule with quarter arcs',
      capsuleShape(2, 3),
      () =>
        revolvedMoments([
          between(
            -1.5,
            1.5,
            () => 0,
            () => 2,
          ),
          between(
            -3.5,
            -1.5,
            () => 0,
            (z) => Math.sqrt(Math.max(0, 4 - (z + 1.5) ** 2)),
          ),
          between(
            1.5,
            3.5,
            () => 0,
            (z) => Math.sqrt(Math.max(0, 4 - (z - 1.5) ** 2)),
          ),
        ]),
    ],
    [
      'torus',
      { shape: 'revolution', profile: circleOutline(7, 1, 2) },
      () => revolvedMoments([circle(1, 7, 2)]),
    ],
    [
      'groove with a hollow arc',
      {
        shape: 'revolution',
        profile: [
          [0, 0],
          [4, 0, -1],
          [4, 2],
          [0, 2],
        ],
      },
      () =>
        revolvedMoments([
          between(
            0,
            2,
            () => 0,
            (z) => 4 - Math.sqrt(Math.max(0, 1 - (z - 1) ** 2)),
          ),
        ]),
    ],
  ];
  test.each(cases)('%s', (_, shape, expected) => {
    expect(momentsDeviation(volumeOf(shape), expected())).toBeLessThan(QUADRATURE);
  });

  test('whichever way round the profile is written', () => {
    for (const [, shape] of cases) {
      // Reversed, an edge leaves from its other end and turns the other way.
      const n = shape.profile.length;
      const profile = shape.profile.map((_, i): Outline[number] => {
        const [x, y] = shape.profile[n - 1 - i];
        return [x, y, -(shape.profile[(2 * n - 2 - i) % n][2] ?? 0)];
      });
      expect(
        momentsDeviation(volumeOf({ shape: 'revolution', profile }), volumeOf(shape)),
      ).toBeLessThan(1e-14);
    }
  });

  // Derived (Pappus): V = 2 pi^2 R a^2; about the axis 2 V (R^2 / 2 + 3 a^2 / 8), of which x and y have half each.
  test('a thin ring far from its axis keeps its digits', () => {
    // Powers of two, so that 1 + thin and 1 - thin are exact and all error is the engine's.
    for (const thin of [2 ** -3, 2 ** -10, 2 ** -20]) {
      const ring = volumeOf({ shape: 'revolution', profile: circleOutline(1, 0, thin) });
      const volume = 2 * Math.PI ** 2 * thin ** 2;
      expect(Math.abs(ring[M] / volume - 1)).toBeLessThan(1e-14);
      expect(Math.abs(ring[JXX] / (volume * (1 / 2 + (3 * thin ** 2) / 8)) - 1)).toBeLessThan(
        1e-14,
      );
      expect(Math.abs(ring[JZZ] / (volume * (thin ** 2 / 4)) - 1)).toBeLessThan(1e-14);
    }
  });
});
