import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  accumulate,
  createMoments,
  JXX,
  JYZ,
  JZZ,
  M,
  type Moments,
  transformMoments,
} from '../../../src/engine/mass/moments';
import type { Shape, Solid } from '../../../src/engine/mass/solid';
import { solidMoments, sumSolids } from '../../../src/engine/mass/weigh';
import { compose, transformPoint } from '../../../src/engine/math/pose';
import { multiply, transpose } from '../../../src/engine/math/vector';
import { cloud, LAW, pose, rotation } from '../../support/arbitrary';
import { momentsDeviation } from '../../support/closeness';
import { boxMesh } from '../../support/meshes';
import { randomPose, seeded } from '../../support/seeded';
import {
  capsuleShape,
  cloudMoments,
  hexagonShape,
  solid,
  volumeOf,
  weighed,
} from '../../support/shapes';

const LOFT: Shape = {
  shape: 'airfoilLoft',
  root: { x: 0.04, chord: 0.03, thickness: 0.004, leadingEdgeY: 0.01, z: 0.001 },
  tip: { x: 0.13, chord: 0.02, thickness: 0.002, leadingEdgeY: 0.006, z: -0.002 },
};
const SHAPES: readonly Shape[] = [
  capsuleShape(0.004, 0.02),
  hexagonShape(0.003, 0.0024),
  {
    ...hexagonShape(0.003, 0.0024),
    holes: [
      [
        [0.0015, 0, 1],
        [-0.0015, 0, 1],
      ],
    ],
  },
  LOFT,
  { shape: 'mesh', ...boxMesh(0.01, 0.02, 0.003) },
];
// Turning a tensor is some thirty products, moving it a dozen more.
const ROUNDING = 50 * Number.EPSILON;

/** The same shape with every length `factor` times as long. */
function scaled(shape: Shape, factor: number): Shape {
  const k = factor;
  switch (shape.shape) {
    case 'revolution':
      return { ...shape, profile: shape.profile.map(([x, y, b]) => [k * x, k * y, b ?? 0]) };
    case 'prism': {
      const long = (outline: typeof shape.outer) =>
        outline.map(([x, y, b]) => [k * x, k * y, b ?? 0] as const);
      const holes = shape.holes.map(long);
      return { ...shape, outer: long(shape.outer), holes, from: k * shape.from, to: k * shape.to };
    }
    case 'airfoilLoft': {
      const long = (s: typeof shape.root) => ({
        x: k * s.x,
        chord: k * s.chord,
        thickness: k * s.thickness,
        leadingEdgeY: k * s.leadingEdgeY,
        z: k * s.z,
      });
      return { ...shape, root: long(shape.root), tip: long(shape.tip) };
    }
    case 'sectionLoft': {
      const long = ({ x, corners }: typeof shape.root) => ({
        x: k * x,
        corners: corners.map((v) => k * v),
      });
      return { ...shape, root: long(shape.root), tip: long(shape.tip) };
    }
    case 'mesh':
      return { ...shape, positions: shape.positions.map((v) => k * v) };
    default:
      throw new Error(`scaled(): not for ${shape.shape}`);
  }
}

describe('moments of mass', () => {
  test('of a moved body are those of its points, each moved', () => {
    fc.assert(
      fc.property(cloud, pose, (points, X) => {
        const moved = points.map(([m, x, y, z]) => [m, ...transformPoint(X, [x, y, z])] as const);
        const seen = transformMoments(cloudMoments(points), X, createMoments());
        const mass = points.reduce((sum, [m]) => sum + m, 0);
        // All points lie within 0.36 m: the size that rounding is measured by.
        const expected = cloudMoments(moved);
        seen.forEach((value, i) => {
          const size = i === M ? mass : i < JXX ? mass * 0.36 : mass * 0.13;
          expect(Math.abs(value - expected[i])).toBeLessThanOrEqual(ROUNDING * size);
        });
      }),
      LAW,
    );
  });

  test('J rotates as R J R^T and keeps its trace; the mass does not care', () => {
    fc.assert(
      fc.property(cloud, rotation, (points, R) => {
        const at = cloudMoments(points);
        const turned = transformMoments(
          at,
          { rotation: R, translation: [0, 0, 0] },
          createMoments(),
        );
        const [, , , , xx, yy, zz, xy, xz, yz] = at;
        const J = multiply(multiply(R, [xx, xy, xz, xy, yy, yz, xz, yz, zz]), transpose(R));
        const trace = xx + yy + zz;
        const expected = [J[0], J[4], J[8], J[1], J[2], J[5]];
        expected.forEach((value, k) => {
          expect(Math.abs(turned[JXX + k] - value)).toBeLessThanOrEqual(ROUNDING * trace);
        });
        const turnedTrace = turned[JXX] + turned[JXX + 1] + turned[JZZ];
        expect(Math.abs(turnedTrace - trace)).toBeLessThanOrEqual(ROUNDING * trace);
        expect(turned[M]).toBe(at[M]);
      }),
      LAW,
    );
  });

  test('two moves one after the other are one composed move', () => {
    fc.assert(
      fc.property(cloud, pose, pose, (points, outer, inner) => {
        const body = cloudMoments(points);
        const stepwise = createMoments();
        transformMoments(transformMoments(body, inner, stepwise), outer, stepwise);
        const once = transformMoments(body, compose(outer, inner), createMoments());
        // The inner move may carry a body far out and the outer one back: measure by how far either went.
        const mass = body[M];
        once.forEach((value, i) => {
          const size = i === M ? mass : i < JXX ? mass * 0.6 : mass * 0.36;
          expect(Math.abs(stepwise[i] - value)).toBeLessThanOrEqual(ROUNDING * size);
        });
      }),
      LAW,
    );
  });

  test('a part put on and taken off leaves the rest as it was', () => {
    fc.assert(
      fc.property(cloud, cloud, (rest, part) => {
        const sum = cloudMoments(rest);
        accumulate(sum, cloudMoments(part));
        accumulate(sum, cloudMoments(part), -1);
        const allowed = cloudMoments(
          [...rest, ...part].map(([m, x, y, z]) => [m, Math.abs(x), Math.abs(y), Math.abs(z)]),
        );
        const expected = cloudMoments(rest);
        sum.forEach((v, i) => {
          expect(Math.abs(v - expected[i])).toBeLessThanOrEqual(2 * Number.EPSILON * allowed[i]);
        });
      }),
      LAW,
    );
  });

  test.each([1e-6, 1e-3, 0.1, 7, 1e3])(
    'at %d times the size mass grows as L^3 and J as L^5',
    (factor) => {
      for (const shape of SHAPES) {
        const one = volumeOf(shape);
        const other = volumeOf(scaled(shape, factor));
        const expected = one.map((v, i) => v * factor ** (i === M ? 3 : i < JXX ? 4 : 5));
        expect(momentsDeviation(other, expected)).toBeLessThan(1e-14);
        expect(other[M]).toBeGreaterThan(0);
      }
    },
  );
});

describe('a list of solids', () => {
  test('weighs the sum of its solids, whatever their poses, and a hole of the same shape cancels exactly', () => {
    const random = seeded(3);
    for (let i = 0; i < 30; i++) {
      const solids = SHAPES.map((shape) =>
        solid(shape, random.between(1000, 8000), randomPose(random, 0.1)),
      );
      const apart = createMoments();
      for (const each of solids) accumulate(apart, solidMoments(each, createMoments()));
      expect(weighed(...solids)).toEqual(apart);
      const hole: Solid = { ...solids[0], density: -solids[0].density };
      expect([...weighed(solids[0], hole)].map(Math.abs)).toEqual(Array(10).fill(0));
    }
  });

  test('density multiplies, and a point has its mass at its pose', () => {
    const [light, heavy] = [1000, 3000].map((density) => weighed(solid(LOFT, density)));
    heavy.forEach((v, i) =>
      expect(Math.abs(v - 3 * light[i])).toBeLessThanOrEqual(4e-16 * Math.abs(v)),
    );
    const point: Solid = {
      name: 'ball',
      shape: { shape: 'point', mass: 0.002 },
      pose: { rotation: [0, -1, 0, 1, 0, 0, 0, 0, 1], translation: [0.01, 0.02, 0.03] },
    };
    expect(
      momentsDeviation(weighed(point), cloudMoments([[0.002, 0.01, 0.02, 0.03]])),
    ).toBeLessThan(2e-16);
  });

  test('an earlier sum is forgotten, and no solids weigh nothing', () => {
    const out: Moments = createMoments().fill(7);
    expect(sumSolids([], out)).toEqual(createMoments());
  });

  test('a part has a product of inertia only where it sits off the chord plane', () => {
    expect(weighed(solid(hexagonShape(0.003, 0.002), 7850))[JYZ]).toBe(0);
  });
});
