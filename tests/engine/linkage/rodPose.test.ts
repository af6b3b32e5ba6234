import { describe, expect, it } from 'vitest';
import { rodRotation } from '../../../src/engine/linkage/rodPose';
import { rotationAboutZ } from '../../../src/engine/math/pose';
import { apply, IDENTITY, type Mat3, multiply, transpose } from '../../../src/engine/math/vector';
import { radians } from '../../../src/engine/units';
import { seeded } from '../../support/seeded';

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
});
