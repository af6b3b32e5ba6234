import { describe, expect, it } from 'vitest';
import { circleThrough } from '../../../src/engine/math/circleThrough';
import { rotationFixedXyz } from '../../../src/engine/math/pose';
import { add, apply, dot, length, subtract, type Vec3 } from '../../../src/engine/math/vector';
import { radians } from '../../../src/engine/units';
import { seeded } from '../../support/seeded';

describe('the circle through three points', () => {
  it('is the circumcircle of the 3-4-5 triangle: radius half the hypotenuse, centre in its middle (Euclid)', () => {
    const circle = circleThrough([0, 0, 0], [3, 0, 0], [0, 4, 0]);
    expect(circle?.radius).toBeCloseTo(2.5, 14);
    expect(circle?.centre[0]).toBeCloseTo(1.5, 14);
    expect(circle?.centre[1]).toBeCloseTo(2, 14);
    expect(Math.abs(circle?.normal[2] ?? 0)).toBeCloseTo(1, 14);
  });

  it('gives back a circle laid anywhere in space, from any three of its points', () => {
    const random = seeded(31);
    for (let i = 0; i < 300; i++) {
      const turn = () => radians(random.between(-3, 3));
      const R = rotationFixedXyz(turn(), turn(), turn());
      const centre: Vec3 = [random.between(-1, 1), random.between(-1, 1), random.between(-1, 1)];
      const radius = random.between(0.001, 0.05);
      const start = random.between(0, 6);
      const points = [0, random.between(0.5, 2), random.between(2.5, 5)].map((angle): Vec3 => {
        const a = start + angle;
        return add(centre, apply(R, [radius * Math.cos(a), radius * Math.sin(a), 0]));
      });
      const found = circleThrough(points[0], points[1], points[2]);
      // Points of size 1 carry 1e-16; the height of the flattest triangle here is a tenth of the radius.
      expect(length(subtract(found?.centre ?? [9, 9, 9], centre))).toBeLessThan(1e-11);
      expect(found?.radius).toBeCloseTo(radius, 11);
      expect(Math.abs(dot(found?.normal ?? [0, 0, 0], apply(R, [0, 0, 1])))).toBeCloseTo(1, 9);
    }
  });

  it('is not made up where the points lie on a line or on one another', () => {
    expect(circleThrough([0, 0, 0], [1, 1, 1], [2, 2, 2])).toBeNull();
    expect(circleThrough([0, 0, 0], [0, 0, 0], [2, 2, 2])).toBeNull();
    expect(circleThrough([0, 0, 0], [1, 0, 0], [2, 1e-4, 0])).toBeNull();
    // Two of the three nearly coincide: flat against the longest side, not against the shortest.
    expect(circleThrough([0, 0, 0], [1, 0, 0], [1, 5e-4, 0])).toBeNull();
  });
});
