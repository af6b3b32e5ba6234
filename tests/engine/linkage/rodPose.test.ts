import { describe, expect, it } from 'vitest';
import { rodRotation } from '../../../src/engine/linkage/rodPose';
import { rotationAboutZ } from '../../../src/engine/math/pose';
import { apply, IDENTITY, type Mat3, multiply, transpose } from '../../../src/engine/math/vector';
import { radians } from '../../../src/engine/units';
import { randomPose, seeded } from '../../support/seeded';

function expectClose(a: readonly number[], b: readonly number[]): void {
  a.forEach((value, i) => expect(Math.abs(value - b[i])).toBeLessThan(1e-14));
}

describe('the rod as it is drawn', () => {
  it('lies along the axis, whichever way round is nearer, and stays a rotation', () => {
    const random = seeded(4);
    for (let i = 0; i < 200; i++) {
      const raw = [random.between(-1, 1), random.between(-1, 1), random.between(-1, 1)] as const;
      const size = Math.hypot(...raw);
      const axis = [raw[0] / size, raw[1] / size, raw[2] / size] as const;
      const base = rotationAboutZ(radians(random.between(-3, 3)));
      const R: Mat3 = rodRotation(base, axis);
      const way = axis[2] < 0 ? -1 : 1;
      expectClose(apply(R, [0, 0, way]), axis);
      expectClose(multiply(R, transpose(R)), IDENTITY);
    }
  });

  it('is not turned about itself where it stands as at flat pitch', () => {
    const base = rotationAboutZ(radians(0.3));
    expectClose(rodRotation(base, [0, 0, -1]), base);
    expectClose(rodRotation(base, [0, 0, 1]), base);
  });

  // The trace of a turn by q is 1 + 2 cos q; the least turn is the angle between the two lines.
  it('from any pose turns by the angle between the lines and no more', () => {
    const random = seeded(5);
    for (let i = 0; i < 200; i++) {
      const base = randomPose(random, 1).rotation;
      const raw = [random.between(-1, 1), random.between(-1, 1), random.between(-1, 1)] as const;
      const size = Math.hypot(...raw);
      const axis = [raw[0] / size, raw[1] / size, raw[2] / size] as const;
      const R = rodRotation(base, axis);
      const own = apply(base, [0, 0, 1]);
      const between = own[0] * axis[0] + own[1] * axis[1] + own[2] * axis[2];
      expectClose(
        apply(R, [0, 0, 1]),
        axis.map((one) => Math.sign(between) * one),
      );
      expectClose(multiply(R, transpose(R)), IDENTITY);
      const turn = multiply(R, transpose(base));
      expect(Math.abs(turn[0] + turn[4] + turn[8] - 1 - 2 * Math.abs(between))).toBeLessThan(1e-14);
    }
  });
});
