import { describe, expect, it } from 'vitest';
import {
  AFFINE_IDENTITY,
  type Affine,
  addPlaced,
  compose,
  determinant,
} from '../../../src/meshes/readers/affine';
import { GrowingFloats, GrowingIndices } from '../../../src/meshes/readers/growing';
import { PointPool } from '../../../src/meshes/readers/pointPool';
import { type Seeded, seeded } from '../../support/seeded';

function randomPlace(random: Seeded): Affine {
  return Array.from({ length: 12 }, () => random.between(-2, 2));
}
const asSquare = (a: Affine) => [a.slice(0, 4), a.slice(4, 8), a.slice(8, 12), [0, 0, 0, 1]];

/** Schoolbook product of square matrices. */
function product(a: readonly (readonly number[])[], b: readonly (readonly number[])[]) {
  return a.map((row) => b.map((_, c) => row.reduce((sum, one, k) => sum + one * b[k][c], 0)));
}

/** Leibniz' sum over the permutations of three with their signs. */
function leibniz([r, s, t]: readonly (readonly number[])[]): number {
  const even = r[0] * s[1] * t[2] + r[1] * s[2] * t[0] + r[2] * s[0] * t[1];
  return even - r[0] * s[2] * t[1] - r[1] * s[0] * t[2] - r[2] * s[1] * t[0];
}

describe('a placing of a body', () => {
  it('after another is the product of their matrices', () => {
    const random = seeded(21);
    for (let i = 0; i < 50; i++) {
      const [outer, inner] = [randomPlace(random), randomPlace(random)];
      const found = compose(outer, inner);
      expect(found).toHaveLength(12);
      const hand = product(asSquare(outer), asSquare(inner)).slice(0, 3).flat();
      found.forEach((one, k) => expect(Math.abs(one - hand[k])).toBeLessThan(1e-14));
    }
    const place = randomPlace(random);
    expect(compose(AFFINE_IDENTITY, place)).toEqual(place);
    expect(compose(place, AFFINE_IDENTITY)).toEqual(place);
  });

  it('has the determinant of its turning part', () => {
    const random = seeded(22);
    for (let i = 0; i < 50; i++) {
      const place = randomPlace(random);
      expect(Math.abs(determinant(place) - leibniz(asSquare(place)))).toBeLessThan(1e-13);
    }
    expect(determinant(AFFINE_IDENTITY)).toBe(1);
  });

  it('puts every point where the matrix says, and turns triangles round where it mirrors', () => {
    const random = seeded(23);
    for (let i = 0; i < 50; i++) {
      const place = randomPlace(random);
      const positions = new GrowingFloats();
      const points = Array.from({ length: 4 }, () => [0, 1, 2].map(() => random.between(-3, 3)));
      for (const [x, y, z] of points) positions.push3(x, y, z);
      const triangles = new GrowingIndices();
      triangles.push3(0, 1, 2);
      triangles.push3(3, 2, 1);
      const pool = new PointPool();
      const out = new GrowingIndices();
      let checked = 0;
      addPlaced(place, positions, triangles, pool, out, (value) => {
        checked++;
        return value;
      });
      expect([checked, pool.count]).toEqual([12, 4]);
      const all = pool.toArray();
      points.forEach((point, v) => {
        const hand = asSquare(place)
          .slice(0, 3)
          .map(([a, b, c, shift]) => a * point[0] + b * point[1] + c * point[2] + shift);
        hand.forEach((one, k) => expect(Math.abs(all[3 * v + k] - one)).toBeLessThan(1e-14));
      });
      const mirrors = leibniz(asSquare(place)) < 0;
      expect([...out.toArray()]).toEqual(mirrors ? [0, 2, 1, 3, 1, 2] : [0, 1, 2, 3, 2, 1]);
    }
  });
});

describe('lists that grow', () => {
  it('keep every number in its place beyond what they began with', () => {
    const floats = new GrowingFloats();
    const indices = new GrowingIndices();
    for (let k = 0; k < 5000; k++) {
      floats.push3(k, k + 0.25, -k);
      indices.push3(k, 2 * k, 3 * k);
    }
    expect([floats.length, indices.length]).toEqual([15_000, 15_000]);
    const [all, whole] = [floats.toArray(), indices.toArray()];
    expect([all.length, whole.length]).toEqual([15_000, 15_000]);
    for (const k of [0, 340, 341, 342, 682, 683, 4999]) {
      expect([...all.subarray(3 * k, 3 * k + 3)]).toEqual([k, k + 0.25, -k]);
      expect([...whole.subarray(3 * k, 3 * k + 3)]).toEqual([k, 2 * k, 3 * k]);
      expect([floats.at(3 * k + 1), indices.at(3 * k + 2)]).toEqual([k + 0.25, 3 * k]);
    }
  });
});
