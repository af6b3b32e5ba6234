import { describe, expect, test } from 'vitest';
import {
  COVERAGE,
  compareMeasured,
  type Measurement,
} from '../../../src/engine/mass/compareMeasured';
import { createMoments, M } from '../../../src/engine/mass/moments';
import { IDENTITY } from '../../../src/engine/math/vector';
import { seeded } from '../../support/seeded';
import { boxShape, solid, weighed } from '../../support/shapes';

const [a, b, c] = [0.09, 0.025, 0.004];
const mass = 7850 * a * b * c;
function barMoments() {
  const pose = { rotation: IDENTITY, translation: [0.06, 0.002, -0.001] } as const;
  return weighed(solid(boxShape(a, b, c), 7850, pose));
}

function compare(...measurements: Measurement[]) {
  const result = compareMeasured(barMoments(), measurements);
  if (!result.ok) throw new Error('no mass');
  return result.value;
}

describe('a model beside what was measured of it', () => {
  // Hand: a bar's mass, centre and m (b^2 + c^2) / 12.
  test('shows mass, centre and moments of inertia about the centre, each in its own axis', () => {
    const names = [
      'mass',
      'centreX',
      'centreY',
      'centreZ',
      'inertiaX',
      'inertiaY',
      'inertiaZ',
    ] as const;
    const hand = [
      mass,
      0.06,
      0.002,
      -0.001,
      (mass * (b * b + c * c)) / 12,
      (mass * (a * a + c * c)) / 12,
      (mass * (a * a + b * b)) / 12,
    ];
    const found = compare(...names.map((what) => ({ what, measured: 1, uncertainty: 1 })));
    expect(found.map((one) => one.what)).toEqual(names);
    found.forEach((one, k) => {
      expect(one.modelled / hand[k]).toBeCloseTo(1, 11);
      expect(one.difference).toBe(1 - one.modelled);
    });
  });

  test('disagrees beyond twice the combined standard uncertainty, errors of both in squares', () => {
    const one = (off: number) =>
      compare({
        what: 'centreX',
        measured: 0.06 + off,
        uncertainty: 0.0003,
        modelUncertainty: 0.0004,
      })[0];
    expect(one(0.001).uncertainty).toBeCloseTo(0.0005, 15);
    expect(one(0.00099).ratio).toBeCloseTo(1.98, 10);
    expect(one(0.00099).disagrees).toBe(false);
    expect(one(-0.00101).ratio).toBeCloseTo(2.02, 10);
    expect(one(-0.00101).disagrees).toBe(true);
    expect(one(-0.00101).difference).toBeCloseTo(-0.00101, 15);
  });

  test('agrees when it is equal to the bit, and disagrees without bound when it is not, both without uncertainty', () => {
    const own = barMoments()[M];
    const equal = compare({ what: 'mass', measured: own, uncertainty: 0 })[0];
    expect([equal.ratio, equal.disagrees]).toEqual([0, false]);
    const other = compare({ what: 'mass', measured: own * 1.001, uncertainty: 0 })[0];
    expect([other.ratio, other.disagrees]).toEqual([Number.POSITIVE_INFINITY, true]);
  });

  // Normal errors: 2 (1 - Phi(2)) = 4.55 % (handbook table of the normal distribution, memory). Of 20,000 the share has
  // a standard deviation of 0.15 %; four of them.
  test('disagrees with one honest measurement in twenty-two by chance', () => {
    expect(COVERAGE).toBe(2);
    const random = seeded(95);
    const normal = () =>
      Math.sqrt(-2 * Math.log(1 - random.unit())) * Math.cos(2 * Math.PI * random.unit());
    const measurements = Array.from({ length: 20_000 }, () => ({
      what: 'mass' as const,
      measured: mass + 1e-4 * normal(),
      uncertainty: 1e-4,
    }));
    const share = compare(...measurements).filter((one) => one.disagrees).length / 20_000;
    expect(Math.abs(share - 0.0455)).toBeLessThan(0.006);
  });

  test('cannot be compared without mass', () => {
    expect(compareMeasured(createMoments(), [])).toEqual({
      ok: false,
      error: { kind: 'modelWithoutMass', mass: 0 },
    });
  });
});
