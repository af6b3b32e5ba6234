import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  compose,
  inverse,
  POSE_IDENTITY,
  rotationAboutX,
  rotationAboutY,
  rotationAboutZ,
  rotationFixedXyz,
  transformPoint,
  translation,
} from '../../../src/engine/math/pose';
import {
  add,
  apply,
  cross,
  dot,
  IDENTITY,
  length,
  multiply,
  scale,
  subtract,
  transpose,
  type Vec3,
} from '../../../src/engine/math/vector';
import { radians, radiansFromDegrees } from '../../../src/engine/units';
import { LAW, pose, position, rotation } from '../../support/arbitrary';

const quarter = radians(Math.PI / 2);

function expectNear(actual: readonly number[], expected: readonly number[], near = 1e-15): void {
  actual.forEach((v, i) => expect(Math.abs(v - expected[i])).toBeLessThanOrEqual(near));
}

describe('rotations', () => {
  test('a quarter turn takes y to z about x, z to x about y, x to y about z, exactly', () => {
    expectNear(apply(rotationAboutX(quarter), [0, 1, 0]), [0, 0, 1], 0);
    expectNear(apply(rotationAboutY(quarter), [0, 0, 1]), [1, 0, 0], 0);
    expectNear(apply(rotationAboutZ(quarter), [1, 0, 0]), [0, 1, 0], 0);
  });

  test('multiples of a quarter turn leave no rounding behind, near misses are not rounded away', () => {
    for (let k = -9; k <= 9; k++) {
      for (const entry of rotationAboutZ(radiansFromDegrees(90 * k))) {
        expect([0, 1]).toContain(Math.abs(entry));
      }
    }
    expectNear(apply(rotationAboutZ(radiansFromDegrees(180)), [1, 0, 0]), [-1, 0, 0], 0);
    expectNear(apply(rotationAboutZ(radiansFromDegrees(270)), [1, 0, 0]), [0, -1, 0], 0);
    expect(rotationAboutX(radians(Math.PI / 2 - 1e-12))[4]).toBeGreaterThan(0.99e-12);
  });

  test('fixed x, then y, then z is the order of a design file', () => {
    // Derived: y goes to z about x; z to x about y; x to y about z. So y comes back to itself.
    expectNear(apply(rotationFixedXyz(quarter, quarter, quarter), [0, 1, 0]), [0, 1, 0]);
    expectNear(apply(rotationFixedXyz(quarter, quarter, radians(0)), [0, 1, 0]), [1, 0, 0]);
    expectNear(apply(rotationFixedXyz(quarter, radians(0), quarter), [1, 0, 0]), [0, 1, 0]);
  });
});

describe('poses', () => {
  test('composed they move a point as one after the other', () => {
    fc.assert(
      fc.property(pose, pose, position, (outer, inner, point) => {
        const stepwise = transformPoint(outer, transformPoint(inner, point));
        expectNear(transformPoint(compose(outer, inner), point), stepwise);
      }),
      LAW,
    );
  });

  test('the inverse takes every point back, and each is the inverse of the other', () => {
    fc.assert(
      fc.property(pose, position, (placed, point) => {
        expectNear(transformPoint(inverse(placed), transformPoint(placed, point)), point, 4e-15);
        expectNear(transformPoint(placed, transformPoint(inverse(placed), point)), point, 4e-15);
      }),
      LAW,
    );
  });

  test('the identity changes nothing and a translation only adds', () => {
    expect(transformPoint(POSE_IDENTITY, [1, 2, 3])).toEqual([1, 2, 3]);
    expect(transformPoint(translation(1, -2, 0.5), [1, 2, 3])).toEqual([2, 0, 3.5]);
  });
});

describe('vectors', () => {
  test('x cross y is z, and a cross product is square to both with the area as length', () => {
    expect(cross([1, 0, 0], [0, 1, 0])).toEqual([0, 0, 1]);
    const [a, b]: Vec3[] = [
      [1, 2, 3],
      [-4, 0.5, 2],
    ];
    const c = cross(a, b);
    expect([dot(a, c), dot(b, c)]).toEqual([0, 0]);
    const area = Math.sqrt(dot(a, a) * dot(b, b) - dot(a, b) ** 2);
    expect(length(c)).toBeCloseTo(area, 13);
  });

  test('sums, differences and multiples are component by component', () => {
    expect(add([1, 2, 3], [10, 20, 30])).toEqual([11, 22, 33]);
    expect(subtract([10, 20, 30], [1, 2, 3])).toEqual([9, 18, 27]);
    expect(scale([1, -2, 3], 2)).toEqual([2, -4, 6]);
  });

  test('a rotation times its transpose is the identity, and turning keeps lengths', () => {
    fc.assert(
      fc.property(rotation, position, (R, p) => {
        expectNear(multiply(R, transpose(R)), IDENTITY, 2e-15);
        expect(Math.abs(length(apply(R, p)) - length(p))).toBeLessThanOrEqual(1e-15);
      }),
      LAW,
    );
  });
});
