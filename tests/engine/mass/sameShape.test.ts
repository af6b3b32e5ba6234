import { describe, expect, test } from 'vitest';
import { inspectMesh } from '../../../src/engine/mass/mesh';
import { JXX, JXY, JYY, JZZ, M, SX, SZ, transformMoments } from '../../../src/engine/mass/moments';
import type { Outline } from '../../../src/engine/mass/solid';
import { threadMeanRadius } from '../../../src/engine/mass/thread';
import { rotationAboutZ } from '../../../src/engine/math/pose';
import { radians } from '../../../src/engine/units';
import { momentsDeviation } from '../../support/closeness';
import { boxMesh } from '../../support/meshes';
import { volumeOf } from '../../support/shapes';

const prism = (outer: Outline, holes: readonly Outline[] = []) =>
  volumeOf({ shape: 'prism', outer, holes, from: 0, to: 1 });
const turned = (profile: Outline) => volumeOf({ shape: 'revolution', profile });
const rotated = (outline: Outline, k: number): Outline => [
  ...outline.slice(k),
  ...outline.slice(0, k),
];

/** Four arcs and lines of every way and bulge, none along an axis. */
const BENT: Outline = [
  [1, 0.2, 0.5],
  [3, 1, -0.3],
  [2.5, 3],
  [0.5, 2, 0.8],
];

describe('the same outline', () => {
  test.each([0.4, 1.3, 2.9, -2])('turned by %d rad has the moments of the turned body', (angle) => {
    const [c, s] = [Math.cos(angle), Math.sin(angle)];
    const outer = BENT.map(([x, y, bulge = 0]) => [c * x - s * y, s * x + c * y, bulge] as const);
    const pose = { rotation: rotationAboutZ(radians(angle)), translation: [0, 0, 0] } as const;
    const wanted = transformMoments(prism(BENT), pose, new Float64Array(10));
    expect(momentsDeviation(prism(outer), wanted)).toBeLessThan(1e-14);
  });

  test('may begin at any of its corners', () => {
    for (const k of [1, 2, 3]) {
      expect(momentsDeviation(prism(rotated(BENT, k)), prism(BENT))).toBeLessThan(1e-14);
      expect(momentsDeviation(turned(rotated(BENT, k)), turned(BENT))).toBeLessThan(1e-14);
    }
  });

  test('turned about an axis weighs by Pappus: 2 pi times the first moment of its area', () => {
    for (const k of [0, 1, 2, 3]) {
      const profile = rotated(BENT, k);
      const [flat, solid] = [prism(profile), turned(profile)];
      expect(solid[M] / (2 * Math.PI * flat[SX])).toBeCloseTo(1, 13);
      expect(solid[SZ] / (2 * Math.PI * flat[JXY])).toBeCloseTo(1, 13);
    }
  });

  test('of two half circles is a circle, wherever they meet and whichever way round', () => {
    // pi r^2 about (2, 3) with r^2 = 0.3^2 + 0.4^2; pi r^4 / 4 about its middle.
    for (const bulge of [1, -1]) {
      const circle = prism([
        [2.3, 3.4, bulge],
        [1.7, 2.6, bulge],
      ]);
      const area = Math.PI * 0.25;
      expect(circle[M]).toBeCloseTo(area, 13);
      expect(circle[JXX]).toBeCloseTo(area * (4 + 0.25 / 4), 12);
      expect(circle[JYY]).toBeCloseTo(area * (9 + 0.25 / 4), 12);
      expect(circle[JXY]).toBeCloseTo(area * 6, 12);
    }
    // Half a circle and a flatter arc are none: a lens of the half circle and a segment.
    const lens = prism([
      [1, 0, 1],
      [-1, 0, 0.5],
    ]);
    const sweep = 4 * Math.atan(0.5);
    const radius = 1 / Math.sin(sweep / 2);
    expect(lens[M]).toBeCloseTo(Math.PI / 2 + (radius ** 2 / 2) * (sweep - Math.sin(sweep)), 13);
  });
});

describe('a tube', () => {
  const [r, R, low, high] = [0.3, 0.7, 0.2, 1.4];
  const rectangle: Outline = [
    [r, low],
    [R, low],
    [R, high],
    [r, high],
  ];

  test('has the moments of the handbook, wherever its profile begins', () => {
    const volume = Math.PI * (R * R - r * r) * (high - low);
    for (const profile of [
      rectangle,
      rotated(rectangle, 1),
      rotated(rectangle, 2),
      rectangle.toReversed(),
    ]) {
      const tube = turned(profile);
      expect(tube[M]).toBeCloseTo(volume, 13);
      expect(tube[SZ]).toBeCloseTo(volume * 0.8, 13);
      expect(tube[JXX]).toBeCloseTo((volume * (R * R + r * r)) / 4, 13);
      expect(tube[JZZ]).toBeCloseTo(volume * (0.64 + 1.44 / 12), 13);
    }
  });

  test.each([0, 1, 2, 3])(
    'with corner %d somewhere else is none: a corner more on an edge changes nothing',
    (k) => {
      for (const [dx, dy] of [
        [0.11, 0],
        [0, 0.13],
      ]) {
        const quad = rectangle.map(([x, y], i) =>
          i === k ? ([x + dx, y + dy] as const) : ([x, y] as const),
        );
        const middle = [(quad[0][0] + quad[1][0]) / 2, (quad[0][1] + quad[1][1]) / 2] as const;
        const five = [quad[0], middle, ...quad.slice(1)];
        expect(momentsDeviation(turned(quad), turned(five))).toBeLessThan(1e-14);
      }
      const bent = rectangle.map(([x, y], i) => [x, y, i === k ? 0.2 : 0] as const);
      expect(momentsDeviation(turned(bent), turned(rotated(bent, 1)))).toBeLessThan(1e-14);
      expect(Math.abs(turned(bent)[M] - turned(rectangle)[M])).toBeGreaterThan(0.01);
    },
  );
});

test('a body that is known has the moments that are told', () => {
  const moments = Float64Array.from({ length: 10 }, (_, i) => i + 1);
  expect(volumeOf({ shape: 'known', moments, picture: boxMesh(1, 1, 1) })).toEqual(moments);
  expect(() => volumeOf({ shape: 'cube' } as never)).toThrow('case is not handled');
});

describe('a face with a corner that cannot be', () => {
  const box = boxMesh(1, 1, 1);
  const faults = (...face: number[]) =>
    inspectMesh({ ...box, triangles: Uint32Array.from([...box.triangles, ...face]) });

  test.each([
    [8, 0, 1],
    [0, 8, 1],
    [0, 1, 8],
  ])('is out of range at any of its places: %d %d %d', (a, b, c) => {
    expect(faults(a, b, c)).toEqual({ ...inspectMesh(box), indicesOutOfRange: 1 });
  });

  test.each([
    [2, 2, 1],
    [1, 2, 2],
    [2, 1, 2],
  ])('has no area where two are the same: %d %d %d', (a, b, c) => {
    expect(faults(a, b, c)).toEqual({ ...inspectMesh(box), degenerateTriangles: 1 });
  });
});

test('a thread has no pitch below nothing, and is its own bolt at none', () => {
  expect(() => threadMeanRadius(3, -0.5)).toThrow('pitch');
  expect(threadMeanRadius(3, 0)).toBeCloseTo(1.5, 14);
});
