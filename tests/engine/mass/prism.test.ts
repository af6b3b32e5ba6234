import { describe, expect, test } from 'vitest';
import type { Moments } from '../../../src/engine/mass/moments';
import type { Outline, Prism } from '../../../src/engine/mass/solid';
import { momentsDeviation } from '../../support/closeness';
import {
  between,
  circle,
  circleOutline,
  extrudedMoments,
  QUADRATURE,
} from '../../support/quadrature';
import { boxShape, volumeOf } from '../../support/shapes';

describe('a prism agrees with brute-force integration over its volume', () => {
  const slot: Outline = [
    [-3, -1],
    [3, -1, 1],
    [3, 1],
    [-3, 1, 1],
  ];
  const stadium = between(
    -4,
    4,
    (x) => -Math.sqrt(Math.max(0, 1 - Math.max(0, Math.abs(x) - 3) ** 2)),
    (x) => Math.sqrt(Math.max(0, 1 - Math.max(0, Math.abs(x) - 3) ** 2)),
  );
  // The stadium's curves kink where the arcs begin: integrate its pieces apart.
  const pieces = [
    {
      region: between(
        -3,
        3,
        () => -1,
        () => 1,
      ),
      sign: 1,
    },
    { region: { ...stadium, low: -4, high: -3 }, sign: 1 },
    { region: { ...stadium, low: 3, high: 4 }, sign: 1 },
  ] as const;
  const triangle = between(
    0,
    6,
    (x) => x / 3,
    (x) => 4 - x / 3,
  );
  const cases: readonly [string, Prism, () => Moments][] = [
    [
      'box',
      boxShape(2, 3, 5),
      () =>
        extrudedMoments(
          [
            {
              region: between(
                -1,
                1,
                () => -1.5,
                () => 1.5,
              ),
              sign: 1,
            },
          ],
          -2.5,
          2.5,
        ),
    ],
    [
      'triangle',
      {
        shape: 'prism',
        outer: [
          [0, 0],
          [6, 2],
          [0, 4],
        ],
        holes: [],
        from: 1,
        to: 4,
      },
      () => extrudedMoments([{ region: triangle, sign: 1 }], 1, 4),
    ],
    [
      'slot with half-circle ends',
      { shape: 'prism', outer: slot, holes: [], from: 0, to: 2 },
      () => extrudedMoments(pieces, 0, 2),
    ],
    [
      'slot with two round holes, one written clockwise',
      {
        shape: 'prism',
        outer: slot,
        holes: [circleOutline(2, 0.2, 0.5), circleOutline(-2, 0, 0.7, -1)],
        from: -1,
        to: 3,
      },
      () =>
        extrudedMoments(
          [
            ...pieces,
            { region: circle(2, 0.2, 0.5), sign: -1 },
            { region: circle(-2, 0, 0.7), sign: -1 },
          ],
          -1,
          3,
        ),
    ],
  ];
  test.each(cases)('%s', (_, shape, expected) => {
    expect(momentsDeviation(volumeOf(shape), expected())).toBeLessThan(QUADRATURE);
  });

  test('whichever way round its outline and its height are written', () => {
    for (const [, shape] of cases) {
      const upsideDown = { ...shape, from: shape.to, to: shape.from };
      expect(momentsDeviation(volumeOf(upsideDown), volumeOf(shape))).toBe(0);
    }
    const square = boxShape(2, 3, 5);
    const clockwise = { ...square, outer: square.outer.toReversed() };
    expect(momentsDeviation(volumeOf(clockwise), volumeOf(square))).toBeLessThan(1e-15);
  });
});
