import { describe, expect, test } from 'vitest';
import { createMoments, JXX, JYY, JYZ, JZZ, M, SX, SY } from '../../../src/engine/mass/moments';
import { findValidity } from '../../../src/engine/mass/validity';

/** A body of mass, centred at x, with the central second moments given. */
function body(mass: number, x: number, xx: number, yy: number, zz: number) {
  const moments = createMoments();
  moments[M] = mass;
  moments[SX] = mass * x;
  moments[JXX] = xx + mass * x * x;
  moments[JYY] = yy;
  moments[JZZ] = zz;
  return moments;
}

describe('the validity of moments', () => {
  test('a rod, a plate and a block can be; so can a point, far out', () => {
    expect(findValidity(body(0.01, 0.1, 1e-6, 0, 0))).toEqual([]);
    expect(findValidity(body(0.01, 0.1, 1e-6, 1e-7, 0))).toEqual([]);
    expect(findValidity(body(0.01, 0.1, 1e-6, 1e-7, 1e-8))).toEqual([]);
    const point = body(0.0123, 0.7, 0, 0, 0);
    point[SY] = point[M] * 0.3;
    point[JYY] = point[M] * 0.09;
    point[7] = point[M] * 0.21;
    expect(findValidity(point)).toEqual([]);
  });

  test('a number that is not finite is named first', () => {
    const moments = body(0.01, 0.1, 1e-6, 1e-7, 1e-8);
    moments[JYZ] = Number.NaN;
    expect(findValidity(moments)).toEqual([{ kind: 'notFinite', place: JYZ, value: Number.NaN }]);
  });

  test('a hole heavier than what it is in has no positive mass', () => {
    expect(findValidity(body(-0.002, 0, -1e-9, -1e-9, -1e-9))).toEqual([
      { kind: 'massNotPositive', mass: -0.002 },
    ]);
  });

  test('a hole wider than its part breaks the triangle inequality, with the inertias that do', () => {
    const [finding, ...more] = findValidity(body(0.01, 0.1, 1e-6, -2e-7, 3e-7));
    expect(more).toEqual([]);
    if (finding?.kind !== 'impossibleSpread') throw new Error('not found');
    expect(finding.smallestEigenvalue).toBeCloseTo(-2e-7, 18);
    const [low, middle, high] = finding.principalInertia;
    expect([low, middle, high].map((one) => Number(one.toPrecision(9)))).toEqual([
      1e-7, 8e-7, 1.3e-6,
    ]);
    expect(high).toBeGreaterThan(low + middle);
  });

  test('grams taken for kilograms and millimetres for metres are asked about', () => {
    expect(findValidity(body(900, 0.1, 1, 1, 1)).map(({ kind }) => kind)).toEqual([
      'implausibleMass',
    ]);
    expect(findValidity(body(1e-8, 0.1, 0, 0, 0)).map(({ kind }) => kind)).toEqual([
      'implausibleMass',
    ]);
    expect(findValidity(body(0.01, 90, 1e-6, 1e-6, 1e-6)).map(({ kind }) => kind)).toEqual([
      'implausibleReach',
    ]);
  });

  test('from a milligram to half a ton, and ten metres out, nothing is asked', () => {
    const kinds = (moments: Float64Array) => findValidity(moments).map(({ kind }) => kind);
    expect(kinds(body(1e-6, 0.1, 0, 0, 0))).toEqual([]);
    expect(kinds(body(0.999e-6, 0.1, 0, 0, 0))).toEqual(['implausibleMass']);
    expect(kinds(body(500, 0, 1, 1, 1))).toEqual([]);
    expect(kinds(body(500.1, 0, 1, 1, 1))).toEqual(['implausibleMass']);
    expect(findValidity(body(501, 0, 1, 1, 1))).toEqual([
      { kind: 'implausibleMass', mass: 501, low: 1e-6, high: 500 },
    ]);
    // Root mean square of three directions of 10 m^2 each is sqrt(30); of x = 6, y = 0, z = 8 it is 10.
    expect(kinds(body(1, 0, 36, 0, 64))).toEqual([]);
    expect(findValidity(body(1, 0, 36, 1, 64))).toEqual([
      { kind: 'implausibleReach', reach: Math.sqrt(101), high: 10 },
    ]);
  });

  test('rounding of 1e-12 of all the spread is forgiven, more is not, wherever it is', () => {
    for (const axis of [JXX, JYY, JZZ]) {
      const spread = (share: number) => {
        const moments = body(0.01, 0, 1e-6, 1e-6, 1e-6);
        moments[axis] = -share * 2e-6;
        return findValidity(moments).map(({ kind }) => kind);
      };
      expect(spread(0.9e-12)).toEqual([]);
      expect(spread(1.1e-12)).toEqual(['impossibleSpread']);
    }
  });
});
