import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type ConvexShape,
  convexDistance,
  middleDepth,
  triangleDistance,
} from '../../../src/engine/clearance/keepOut';
import {
  isInside,
  meshDistance,
  surfaceDistance,
} from '../../../src/engine/clearance/meshDistance';
import { buildTree } from '../../../src/engine/clearance/triangleTree';
import { real } from '../../support/arbitrary';
import { meshOf } from './randomHeads';

const BOX: ConvexShape = { shape: 'box', half: [3, 2, 1] };
const CYLINDER: ConvexShape = { shape: 'cylinder', radius: 2, half: 1 };

function distance(shape: ConvexShape, x: number, y: number, z: number): number[] {
  const out = new Float64Array(4);
  convexDistance(shape, x, y, z, out);
  return [...out];
}

// Every value here is derived by hand: Pythagoras in right triangles 3-4-5 and 1-2-2.
describe('the signed distance of a convex keep-out', () => {
  it('is the height over a plane, below zero under it', () => {
    expect(distance({ shape: 'plane' }, 7, -3, 0.5)).toEqual([0.5, 0, 0, 1]);
    expect(distance({ shape: 'plane' }, 7, -3, -0.5)).toEqual([-0.5, 0, 0, 1]);
  });

  it('of a box counts from its face, its edge, its corner', () => {
    expect(distance(BOX, 5, 1, 0)).toEqual([2, 1, 0, 0]);
    expect(distance(BOX, 3 + 3, 2 + 4, 0.3)).toEqual([5, 0.6, 0.8, 0]);
    expect(distance(BOX, -(3 + 1), 2 + 2, -(1 + 2))[0]).toBe(3);
    expect(distance(BOX, -(3 + 1), 2 + 2, -(1 + 2)).slice(1)).toEqual([-1 / 3, 2 / 3, -2 / 3]);
  });

  it('inside a box is the way to its nearest face', () => {
    expect(distance(BOX, 2.5, 0, 0)).toEqual([-0.5, 1, 0, 0]);
    expect(distance(BOX, 0, -1.75, 0)).toEqual([-0.25, 0, -1, 0]);
    expect(distance(BOX, 0, 0, 0)[0]).toBe(-1);
    expect(middleDepth(BOX)).toBe(1);
  });

  it('of a cylinder counts from its wall, its end, its rim', () => {
    expect(distance(CYLINDER, 0, 5, 0.2)).toEqual([3, 0, 1, 0]);
    expect(distance(CYLINDER, 1, 1, -4)).toEqual([3, 0, 0, -1]);
    // From the rim 3 out and 4 up.
    expect(distance(CYLINDER, 5, 0, 5)).toEqual([5, 0.6, 0, 0.8]);
    expect(distance(CYLINDER, 1.5, 0, 0)).toEqual([-0.5, 1, 0, 0]);
    expect(distance(CYLINDER, 0, 0, 0.9)[0]).toBeCloseTo(-0.1, 15);
    expect(middleDepth(CYLINDER)).toBe(1);
  });

  it('lies above each of its tangents, which the search rests on', () => {
    const number = real(-8, 8);
    const shape = fc.constantFrom<ConvexShape>({ shape: 'plane' }, BOX, CYLINDER);
    fc.assert(
      fc.property(
        shape,
        fc.tuple(number, number, number),
        fc.tuple(number, number, number),
        (one, p, q) => {
          const [d, gx, gy, gz] = distance(one, ...p);
          const tangent = d + gx * (q[0] - p[0]) + gy * (q[1] - p[1]) + gz * (q[2] - p[2]);
          expect(distance(one, ...q)[0]).toBeGreaterThanOrEqual(tangent - 1e-12);
          expect(Math.hypot(gx, gy, gz)).toBeCloseTo(1, 12);
        },
      ),
      { seed: 7, numRuns: 2000 },
    );
  });
});

describe('the distance of a triangle', () => {
  const corners = Float64Array.from([0, 0, 0, 4, 0, 0, 0, 4, 0]);
  const from = (x: number, y: number, z: number) => {
    const out = new Float64Array(4);
    triangleDistance(corners, 0, x, y, z, out);
    return out[0];
  };

  it('counts from its face, its edges, its corners', () => {
    expect(from(1, 1, 2)).toBe(2);
    expect(from(1, 1, 0)).toBe(0);
    expect(from(2, -3, 4)).toBe(5);
    expect(from(-3, 2, 4)).toBe(5);
    expect(from(-3, -4, 0)).toBe(5);
    expect(from(4 + 3, -4, 0)).toBe(5);
    // Off the slanted edge x + y = 4 at its middle (2, 2).
    expect(from(3, 3, 0)).toBeCloseTo(Math.SQRT2, 14);
  });

  it('of one without area is that of the segment or point that it is', () => {
    const out = new Float64Array(4);
    triangleDistance(Float64Array.from([0, 0, 0, 2, 0, 0, 1, 0, 0]), 0, 5, 4, 0, out);
    expect(out[0]).toBeCloseTo(5, 12);
    triangleDistance(Float64Array.from([1, 0, 0, 1, 0, 0, 1, 0, 0]), 0, 4, 4, 0, out);
    expect(out[0]).toBe(5);
  });
});

describe('the signed distance of a closed mesh', () => {
  const number = real(-6, 6);

  it('of a box as twelve triangles is that of the box', () => {
    const tree = buildTree([meshOf(BOX)]);
    fc.assert(
      fc.property(number, number, number, (x, y, z) => {
        expect(meshDistance(tree, x, y, z)).toBeCloseTo(distance(BOX, x, y, z)[0], 12);
      }),
      { seed: 11, numRuns: 1000 },
    );
  });

  it('finds the nearest of many triangles as a look at all of them does', () => {
    const tree = buildTree([meshOf(CYLINDER)]);
    const out = new Float64Array(4);
    fc.assert(
      fc.property(number, number, number, (x, y, z) => {
        let least = Infinity;
        for (let i = 0; 9 * i < tree.corners.length; i++) {
          triangleDistance(tree.corners, 9 * i, x, y, z, out);
          least = Math.min(least, out[0]);
        }
        expect(surfaceDistance(tree, x, y, z)).toBeCloseTo(least, 12);
      }),
      { seed: 12, numRuns: 300 },
    );
  });

  it('knows inside from outside straight under an edge and a corner too', () => {
    const tree = buildTree([meshOf(BOX)]);
    expect(isInside(tree, 0, 0, 0)).toBe(true);
    expect(isInside(tree, 2.999999, 1.999999, 0.999999)).toBe(true);
    expect(isInside(tree, 3.000001, 0, 0)).toBe(false);
    expect(isInside(tree, 0, 0, -1.000001)).toBe(false);
  });
});
