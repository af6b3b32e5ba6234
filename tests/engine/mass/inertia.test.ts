import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  centralSecondMoment,
  centreOfMass,
  inertiaTensor,
  principalInertia,
  spreadEllipse,
} from '../../../src/engine/mass/inertia';
import { JYY, JZZ, M, type Moments } from '../../../src/engine/mass/moments';
import { rotationAboutX, rotationFixedXyz, translation } from '../../../src/engine/math/pose';
import { radians } from '../../../src/engine/units';
import { cloud, LAW } from '../../support/arbitrary';
import { momentAt } from '../../support/feathering';
import { randomPose, seeded } from '../../support/seeded';
import {
  ballShape,
  boxShape,
  cloudMoments,
  cylinderShape,
  pointAt,
  solid,
  weighed,
} from '../../support/shapes';

function principal(moments: Moments) {
  const system = principalInertia(moments);
  if (system === null) throw new Error('the body has mass');
  return system;
}

describe('centre of mass and central moments', () => {
  test('the centre is the mean of the points, and J about it is that of the points about it', () => {
    fc.assert(
      fc.property(cloud, (points) => {
        const moments = cloudMoments(points);
        const centre = centreOfMass(moments) ?? [NaN, NaN, NaN];
        const about = cloudMoments(
          points.map(([m, x, y, z]) => [m, x - centre[0], y - centre[1], z - centre[2]]),
        );
        const J = centralSecondMoment(moments);
        const trace = moments[4] + moments[5] + moments[6];
        const values = J && [J.xx, J.yy, J.zz, J.xy, J.xz, J.yz];
        values?.forEach((value, k) => {
          expect(Math.abs(value - about[4 + k])).toBeLessThanOrEqual(50 * Number.EPSILON * trace);
        });
        expect(values).not.toBeNull();
      }),
      LAW,
    );
  });

  test('the inertia tensor of a turned rod is m L^2 / 12 across and its products have the sign -int x y', () => {
    const rod = weighed(pointAt(1, 1, 1, 0), pointAt(1, -1, -1, 0));
    const J = centralSecondMoment(rod);
    expect(J && inertiaTensor(J)).toEqual({ xx: 2, yy: 2, zz: 4, xy: -2, xz: -0, yz: -0 });
  });

  test('a body without mass, or with more hole than body, has neither centre nor axes', () => {
    const hole = weighed(solid(ballShape(0.01), -1000));
    for (const nothing of [weighed(), hole]) {
      expect(centreOfMass(nothing)).toBeNull();
      expect(centralSecondMoment(nothing)).toBeNull();
      expect(principalInertia(nothing)).toBeNull();
      expect(spreadEllipse(nothing)).toBeNull();
    }
  });
});

describe('principal moments and axes', () => {
  // Derived: m (b^2 + c^2) / 12 and so on, whatever the pose.
  test('of a box are those of its edges at any pose, axes right-handed along the edges', () => {
    const random = seeded(55);
    const [a, b, c] = [0.03, 0.02, 0.004];
    const mass = 1000 * a * b * c;
    const expected = [b * b + c * c, a * a + c * c, a * a + b * b].map((s) => (mass * s) / 12);
    for (let i = 0; i < 100; i++) {
      const pose = randomPose(random, 0.1);
      const system = principal(weighed(solid(boxShape(a, b, c), 1000, pose)));
      expect(system.repeated).toBe('none');
      expected.forEach((value, k) => {
        // Steiner's subtraction: mass x (0.17 m)^2 is up to 350 times the least of these.
        expect(Math.abs(system.values[k] / value - 1)).toBeLessThan(1e-12);
        // Axis k of the values is edge k of the box, either way along.
        const along = [0, 1, 2].reduce(
          (sum, row) => sum + system.vectors[3 * row + k] * pose.rotation[3 * row + k],
          0,
        );
        expect(Math.abs(along)).toBeGreaterThan(1 - 1e-12);
      });
    }
  });

  test.each([
    ['a ball', solid(ballShape(0.01), 7850), 'all'],
    ['a long pin', solid(cylinderShape(0.001, 0.03), 7850), 'upper'],
    ['a flat disc', solid(cylinderShape(0.01, 0.001), 7850), 'lower'],
  ] as const)('%s has repeated moments, at its own origin and far from it', (_, body, repeated) => {
    const random = seeded(56);
    expect(principal(weighed(body)).repeated).toBe(repeated);
    for (let i = 0; i < 50; i++) {
      expect(principal(weighed({ ...body, pose: randomPose(random, 0.2) })).repeated).toBe(
        repeated,
      );
    }
  });

  test('a single point anywhere has no moments of its own, a pair of points only two', () => {
    const random = seeded(57);
    for (let i = 0; i < 100; i++) {
      const [x, y, z] = randomPose(random, 0.2).translation;
      const point = principal(weighed(pointAt(0.001, x, y, z)));
      expect(point.values).toEqual([0, 0, 0]);
      expect(point.repeated).toBe('all');
      const pair = principal(weighed(pointAt(0.001, x, y, z), pointAt(0.002, z, x, y)));
      expect(pair.values[0]).toBe(0);
      expect(pair.repeated).toBe('upper');
    }
  });

  test('a flat body has its third moment equal to the sum of the other two', () => {
    const flat = [
      [1, 2, 0, 0],
      [2, -1, 3, 0],
      [1, 0, -2, 0],
    ] as const;
    const [a, b, c] = principal(cloudMoments(flat)).values;
    expect(Math.abs(a + b - c) / c).toBeLessThan(1e-15);
  });
});

describe('the spread ellipse', () => {
  test('of a box blade has its long axis along the chord, turned with the blade', () => {
    for (const angle of [0, 0.3, 1.2, -1.5, Math.PI / 2]) {
      const pose = { rotation: rotationAboutX(radians(angle)), translation: [0.1, 0, 0] as const };
      const ellipse = spreadEllipse(weighed(solid(boxShape(0.08, 0.03, 0.0036), 1157, pose)));
      expect(ellipse?.angle).toBeCloseTo(angle, 12);
      // Root-mean-square of a uniform spread: width over sqrt(12).
      expect(Number(ellipse?.long) / (0.03 / Math.sqrt(12))).toBeCloseTo(1, 13);
      expect(Number(ellipse?.short) / (0.0036 / Math.sqrt(12))).toBeCloseTo(1, 11);
    }
  });

  test('seeks the rotor plane: at the pitch that lays its long axis flat the moment vanishes', () => {
    const random = seeded(58);
    for (let i = 0; i < 100; i++) {
      const body = weighed(
        solid(boxShape(0.03, 0.02, 0.004), 2700, randomPose(random, 0.03)),
        pointAt(0.001, 0, random.between(-0.02, 0.02), random.between(-0.02, 0.02)),
      );
      const ellipse = spreadEllipse(body);
      const degrees = (Number(ellipse?.angle) * -180) / Math.PI;
      const scale = 1e6 * (body[JYY] + body[JZZ]);
      expect(Math.abs(momentAt(body, 1000, degrees)) / scale).toBeLessThan(1e-15);
      // A nudge up is answered by a moment down.
      expect(momentAt(body, 1000, degrees + 1)).toBeLessThan(0);
      expect(momentAt(body, 1000, degrees - 1)).toBeGreaterThan(0);
      // Both axes together hold all of J.
      const squares = Number(ellipse?.long) ** 2 + Number(ellipse?.short) ** 2;
      expect((squares * body[M]) / (body[JYY] + body[JZZ])).toBeCloseTo(1, 13);
    }
  });

  test('of a round body is a circle without a direction', () => {
    const turned = {
      rotation: rotationFixedXyz(radians(0.4), radians(0), radians(0)),
      translation: [0.02, 0, 0] as const,
    };
    const ellipse = spreadEllipse(weighed(solid(ballShape(0.01), 1000, turned)));
    expect(ellipse?.angle).toBe(0);
    expect(Number(ellipse?.long)).toBeCloseTo(Number(ellipse?.short), 14);
  });

  test('of mass spread along z alone stands at +90 degrees, also where the product of inertia is -0', () => {
    const upright = weighed(solid(cylinderShape(0.001, 0.03), 7850, translation(0.01, 0, 0)));
    expect(spreadEllipse(upright)?.angle).toBe(Math.PI / 2);
    expect(spreadEllipse(upright.map((v, i) => (i === 9 ? -0 : v)))?.angle).toBe(Math.PI / 2);
  });

  test('of mass on the axis is a point', () => {
    expect(spreadEllipse(weighed(pointAt(1, 3, 0, 0)))).toEqual({ long: 0, short: 0, angle: 0 });
  });
});
