import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  overCentreAngles,
  type ParallelRod,
  pushRodForce,
  rodLever,
} from '../../../src/engine/linkage/parallelRod';
import { radians, radiansFromDegrees } from '../../../src/engine/units';
import { LAW, pitchAngle, real } from '../../support/arbitrary';
import { rotor } from '../../support/feathering';
import { rotorPosition } from '../../support/forces';
import { seeded } from '../../support/seeded';

const FLAT = radians(0);
const HALF = Math.PI / 2;

function rod(y: number, z: number, direction: 1 | -1 = 1, x = 0.01): ParallelRod {
  return { ball_G: [x, y, z], direction };
}

describe('a push rod parallel to the shaft', () => {
  // Derived, by statics at flat pitch: ball 20 mm ahead of the axis, the moment 0.4 N m pressing the leading edge
  // down: 20 N down at the ball, which the rod has to hold up.
  test.each([
    ['pulls with 20 N from above at the leading edge', rod(0.02, 0), 20],
    ['pushes with 20 N from below at the leading edge', rod(0.02, 0, -1), -20],
    ['pushes with 20 N from above at the trailing edge', rod(-0.02, 0), -20],
    ['pulls with 20 N from below at the trailing edge', rod(-0.02, 0, -1), 20],
  ])('%s', (_, arm, tension) => {
    expect(pushRodForce(-0.4, arm, FLAT, FLAT)).toBeCloseTo(tension, 12);
  });

  test('needs twice the force where 60 degrees of pitch have halved its lever', () => {
    expect(rodLever(rod(0.02, 0), radiansFromDegrees(60), FLAT)).toBeCloseTo(0.01, 15);
    expect(pushRodForce(-0.4, rod(0.02, 0), radiansFromDegrees(60), FLAT)).toBeCloseTo(40, 12);
  });

  test('loses lever to a ball above the axis as the leading edge rises, and gains it below', () => {
    expect(rodLever(rod(0.02, 0.005), radians(0.3), FLAT)).toBeCloseTo(
      0.02 * Math.cos(0.3) - 0.005 * Math.sin(0.3),
      15,
    );
    expect(rodLever(rod(0.02, 0.005), radians(0.3), FLAT)).toBeLessThan(
      rodLever(rod(0.02, -0.005), radians(0.3), FLAT),
    );
  });

  test("does the work that the moment does: T times the ball's way along the rod, offset and precone included", () => {
    const step = 1e-6;
    fc.assert(
      fc.property(
        pitchAngle,
        real(-0.5, 0.5),
        real(-0.03, 0.03),
        real(-0.03, 0.03),
        fc.constantFrom<1 | -1>(1, -1),
        real(-5, 5),
        (pitch, precone, y, z, direction, moment) => {
          const arm = rod(y, z, direction);
          const tension = pushRodForce(moment, arm, radians(pitch), radians(precone));
          fc.pre(tension !== null);
          const at = rotor(1000, 0.01, precone);
          const height = (t: number) => rotorPosition(arm.ball_G, at, t)[2];
          const way = (direction * (height(pitch + step) - height(pitch - step))) / (2 * step);
          // Central difference: step^2 / 6 of the reach, and rounding of a height below 0.1 m over the step.
          const allowed =
            Math.abs(tension ?? NaN) * (1e-13 * Math.hypot(y, z) + (4e-17 * 0.1 * 4) / step);
          expect(Math.abs((tension ?? NaN) * way + moment)).toBeLessThanOrEqual(
            allowed + 1e-14 * Math.abs(moment),
          );
        },
      ),
      LAW,
    );
  });

  test('carries no finite force over centre, nor at a ball on the feathering axis', () => {
    expect(pushRodForce(1, rod(0.02, 0), radians(HALF), FLAT)).toBeNull();
    expect(pushRodForce(1, rod(0, 0.02), FLAT, FLAT)).toBeNull();
    expect(pushRodForce(0, rod(0, 0), FLAT, FLAT)).toBeNull();
    expect(pushRodForce(1, rod(0.02, 0), radians(HALF - 1e-8), FLAT)).not.toBeNull();
    expect(pushRodForce(1, rod(0.02, 0), radians(HALF - 1e-10), FLAT)).toBeNull();
  });
});

describe('over-centre angles', () => {
  test('are every change of sign of the lever in the range', () => {
    const random = seeded(81);
    for (let i = 0; i < 200; i++) {
      const arm = rod(random.between(-1, 1), random.between(-1, 1));
      const [from, to] = [random.between(-7, 0), random.between(0, 7)];
      const seen: number[] = [];
      const samples = 2000;
      const at = (k: number) => from + ((to - from) * k) / samples;
      for (let k = 0; k < samples; k++) {
        const [before, after] = [at(k), at(k + 1)].map((t) => rodLever(arm, radians(t), FLAT));
        if (before > 0 !== after > 0) seen.push((at(k) + at(k + 1)) / 2);
      }
      const turn = seen.filter((t) => to - from < 2 * Math.PI || t < seen[0] + 6);
      const found = overCentreAngles(arm, radians(from), radians(to));
      expect(found).toHaveLength(turn.length);
      found.forEach((t, k) => {
        expect(Math.abs(t - turn[k])).toBeLessThan(0.01);
        expect(Math.abs(rodLever(arm, t, FLAT))).toBeLessThan(1e-14);
        expect(pushRodForce(1, arm, t, FLAT)).toBeNull();
      });
    }
  });

  test('of an arm level with the axis are +-90 degrees, both ends belong to the range', () => {
    expect(overCentreAngles(rod(0.02, 0), radians(-HALF), radians(HALF))).toEqual([-HALF, HALF]);
    expect(overCentreAngles(rod(0.02, 0), radians(-1.5), radians(1.5))).toEqual([]);
    // A ball 45 degrees up goes over centre at +45 and at -135.
    expect(overCentreAngles(rod(0.02, 0.02), radians(-HALF), radians(HALF))).toEqual([Math.PI / 4]);
  });

  test('an angle that rounding put outside an end is on it', () => {
    expect(overCentreAngles(rod(0.02, 0), radians(0), radians(HALF - 5e-13))).toEqual([
      HALF - 5e-13,
    ]);
    expect(overCentreAngles(rod(0.02, 0), radians(5e-13 - HALF), radians(0))).toEqual([
      5e-13 - HALF,
    ]);
    expect(overCentreAngles(rod(0.02, 0), radians(0), radians(HALF - 1e-9))).toEqual([]);
    expect(overCentreAngles(rod(0.02, 0), radians(1e-9 - HALF), radians(0))).toEqual([]);
  });

  test('count each orientation of a turn once', () => {
    expect(overCentreAngles(rod(0, -0.02), radians(-Math.PI), radians(Math.PI))).toHaveLength(2);
    expect(overCentreAngles(rod(0.02, 0), radians(-Math.PI), radians(Math.PI))).toEqual([
      -HALF,
      HALF,
    ]);
    expect(overCentreAngles(rod(0.02, 0), radians(-HALF), radians(3 * HALF))).toHaveLength(2);
  });

  test('are none for a ball on the axis, and a fault for a range in the wrong order', () => {
    expect(overCentreAngles(rod(0, 0), radians(-1), radians(1))).toEqual([]);
    for (const [from, to] of [
      [1, -1],
      [NaN, 1],
      [0, NaN],
    ]) {
      expect(() => overCentreAngles(rod(0.02, 0), radians(from), radians(to))).toThrow(RangeError);
    }
  });
});
