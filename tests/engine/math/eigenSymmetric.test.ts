import { describe, expect, test } from 'vitest';
import { eigenSymmetric, type Symmetric3 } from '../../../src/engine/math/eigenSymmetric';
import { type Mat3, multiply, transpose, type Vec3 } from '../../../src/engine/math/vector';
import { quaternionMatrix, randomQuaternion, randomVector, seeded } from '../../support/seeded';

function diagonal([a, b, c]: Vec3): Mat3 {
  return [a, 0, 0, 0, b, 0, 0, 0, c];
}
function symmetric(m: Mat3): Symmetric3 {
  return { xx: m[0], yy: m[4], zz: m[8], xy: m[1], xz: m[2], yz: m[5] };
}
function full(s: Symmetric3): Mat3 {
  return [s.xx, s.xy, s.xz, s.xy, s.yy, s.yz, s.xz, s.yz, s.zz];
}
function largest(values: readonly number[]): number {
  return Math.max(...values.map(Math.abs));
}
function difference(a: readonly number[], b: readonly number[]): number {
  return largest(a.map((v, i) => v - b[i]));
}
function determinant(m: Mat3): number {
  return (
    m[0] * (m[4] * m[8] - m[5] * m[7]) -
    m[1] * (m[3] * m[8] - m[5] * m[6]) +
    m[2] * (m[3] * m[7] - m[4] * m[6])
  );
}

/** Everything an eigensystem promises, to some twenty roundings of the largest value. */
function expectSound(matrix: Symmetric3): ReturnType<typeof eigenSymmetric> {
  const system = eigenSymmetric(matrix);
  const { values, vectors } = system;
  const size = largest(full(matrix)) || 1;
  const rebuilt = multiply(multiply(vectors, diagonal(values)), transpose(vectors));
  expect(difference(rebuilt, full(matrix)) / size).toBeLessThan(5e-15);
  expect(difference(multiply(transpose(vectors), vectors), diagonal([1, 1, 1]))).toBeLessThan(
    3e-15,
  );
  expect(determinant(vectors)).toBeCloseTo(1, 14);
  expect(values[0]).toBeLessThanOrEqual(values[1]);
  expect(values[1]).toBeLessThanOrEqual(values[2]);
  return system;
}

describe('eigenvalues and vectors of a symmetric matrix', () => {
  test('rebuild the matrix from a right-handed orthonormal set, values ascending', () => {
    const random = seeded(21);
    for (let i = 0; i < 2000; i++) {
      const [xx, yy, zz] = randomVector(random, 1);
      const [xy, xz, yz] = randomVector(random, 1);
      expectSound({ xx, yy, zz, xy, xz, yz });
    }
  });

  test('of a diagonal in any order are right-handed too', () => {
    for (const order of [
      [1, 2, 3],
      [1, 3, 2],
      [2, 1, 3],
      [2, 3, 1],
      [3, 1, 2],
      [3, 2, 1],
    ] as const) {
      expect(expectSound(symmetric(diagonal([...order]))).values).toEqual([1, 2, 3]);
    }
  });

  test('return the values that a turned diagonal was made of, over 24 decades of size and spread', () => {
    const random = seeded(22);
    for (let i = 0; i < 500; i++) {
      const size = 10 ** random.between(-12, 12);
      const made = [
        size,
        size * 10 ** random.between(-9, 0),
        size * random.between(-1, 1),
      ] as const;
      const R = quaternionMatrix(randomQuaternion(random));
      const turned = multiply(multiply(R, diagonal(made)), transpose(R));
      const { values } = expectSound(symmetric(turned));
      const sorted = made.toSorted((a, b) => a - b);
      // Weyl: a value moves no further than the matrix was rounded.
      expect(difference(values, sorted) / size).toBeLessThan(3e-15);
    }
  });

  test.each([
    ['none', [1, 2, 3]],
    ['lower', [1, 1, 3]],
    ['upper', [1, 3, 3]],
    ['all', [2, 2, 2]],
    ['all', [0, 0, 0]],
    ['lower', [1, 1 + 1e-13, 3]],
    ['none', [1, 1 + 1e-10, 3]],
    ['upper', [-5, 1, 1]],
  ] as const)('repeated values are %s for %j, turned or not', (repeated, made) => {
    const random = seeded(23);
    expect(expectSound(symmetric(diagonal(made))).repeated).toBe(repeated);
    for (let i = 0; i < 100; i++) {
      const R = quaternionMatrix(randomQuaternion(random));
      const turned = multiply(multiply(R, diagonal(made)), transpose(R));
      expect(expectSound(symmetric(turned)).repeated).toBe(repeated);
    }
  });

  test('values nearer than a stated error of the matrix count as one', () => {
    const matrix = symmetric(diagonal([1, 1.001, 3]));
    expect(eigenSymmetric(matrix).repeated).toBe('none');
    expect(eigenSymmetric(matrix, 0.01).repeated).toBe('lower');
  });

  // Derived: [[2, 1], [1, 2]] has 1 along (1, -1) and 3 along (1, 1).
  test('of a worked example are 1, 3, 5 with the diagonals of the plane as axes', () => {
    const { values, vectors } = expectSound({ xx: 2, yy: 2, zz: 5, xy: 1, xz: 0, yz: 0 });
    expect(difference(values, [1, 3, 5])).toBeLessThan(1e-15);
    expect(vectors[0] * vectors[3]).toBeCloseTo(-0.5, 15);
    expect(vectors[1] * vectors[4]).toBeCloseTo(0.5, 15);
    expect(Math.abs(vectors[8])).toBe(1);
  });

  // What coincides is judged against the greatest size, of either sign, whatever the unit.
  test('call values equal within 1e-12 of the largest size, negative or not, large or small', () => {
    const of = (xx: number, yy: number, zz: number) =>
      eigenSymmetric({ xx, yy, zz, xy: 0, xz: 0, yz: 0 }).repeated;
    expect(of(-1, 0, 5e-13)).toBe('upper');
    expect(of(-5e-13, 0, 1)).toBe('lower');
    expect(of(1e6, 1e6 + 1e-7, 2e6)).toBe('lower');
    expect(of(1e-6, 1e-6 + 1e-12, 2e-6)).toBe('none');
    expect(of(0, 0, 0)).toBe('all');
  });
});
