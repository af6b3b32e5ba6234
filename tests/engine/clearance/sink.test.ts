import { describe, expect, it } from 'vitest';
import { GripMotion } from '../../../src/engine/clearance/motion';
import { sinkSearch } from '../../../src/engine/clearance/sink';
import { placeSurface } from '../../../src/engine/clearance/surface';
import { buildTree } from '../../../src/engine/clearance/triangleTree';
import type { TriangleMesh } from '../../../src/engine/mass/solid';
import { POSE_IDENTITY } from '../../../src/engine/math/pose';
import type { Vec3 } from '../../../src/engine/math/vector';
import { radians } from '../../../src/engine/units';

/** A square of full side 2 at a height, of two triangles; about (x, 0). */
function square(x: number, z: number): TriangleMesh {
  return {
    positions: Float64Array.from([x - 1, -1, z, x + 1, -1, z, x + 1, 1, z, x - 1, 1, z]),
    triangles: Uint32Array.from([0, 1, 2, 0, 2, 3]),
  };
}
const motion = new GripMotion({ angularSpeed: 0, torqueOffset: 0, precone: radians(0) });
const placed = (...meshes: TriangleMesh[]) => placeSurface(buildTree(meshes), POSE_IDENTITY);
const STILL = { low: 0, high: 0, turn: 0 };

describe('the deepest point of a surface in a field of distances', () => {
  it('is the nearest point of a square to the middle of a ball', () => {
    // A ball of radius 3 about (0.4, 0.2, 2): the square at height 0 comes to 2 of its middle, so it is 1 deep.
    const ball = (_p: number, _a: number, [x, y, z]: Vec3) =>
      Math.hypot(x - 0.4, y - 0.2, z - 2) - 3;
    const found = sinkSearch(placed(square(0, 0)), motion, ball, STILL, 4000);
    // Wanted to a twentieth.
    expect(found.distance).toBeGreaterThanOrEqual(-1);
    expect(found.distance).toBeLessThan(-0.94);
    expect(found.bound).toBeLessThanOrEqual(-1);
    expect(found.bound).toBeGreaterThan(-1.06);
    expect(Math.hypot(found.point[0] - 0.4, found.point[1] - 0.2)).toBeLessThan(0.5);
    expect(ball(0, 0, found.point as Vec3)).toBe(found.distance);
    expect(found.evaluations).toBeLessThan(4000);
  });

  it('is the deepest of all that were looked at on the surface, not the last', () => {
    const looks: number[] = [];
    const ball = (_p: number, _a: number, [x, y, z]: Vec3) => {
      looks.push(Math.hypot(x - 0.4, y - 0.2, z - 2) - 3);
      return looks.at(-1) ?? 0;
    };
    for (const budget of [4, 5, 8, 9, 40]) {
      looks.length = 0;
      const found = sinkSearch(placed(square(0, 0)), motion, ball, STILL, budget);
      // The first look is at the middle of the box, the others at triangles.
      expect(found.distance).toBe(Math.min(...looks.slice(1)));
    }
  });

  it('is in the deeper of two wells of a field that is not convex', () => {
    const wells = (_p: number, _a: number, [x, y, z]: Vec3) =>
      Math.min(Math.hypot(x - 4, y, z) - 0.3, Math.hypot(x + 4, y, z) - 0.5);
    const found = sinkSearch(placed(square(4, 0), square(-4, 0)), motion, wells, STILL, 4000);
    expect(found.distance).toBeLessThan(-0.45);
    expect(found.point[0]).toBeLessThan(-3.9);
  });

  it('is found over pitch and azimuth too', () => {
    // The square 4 out on x turns about the shaft; the well stands at azimuth 2 in the rotor plane, at pitch 0.3 only.
    const field = (pitch: number, azimuth: number, [x, y, z]: Vec3) => {
      const [c, s] = [Math.cos(azimuth), Math.sin(azimuth)];
      const h = y * Math.cos(pitch) - z * Math.sin(pitch);
      const k = y * Math.sin(pitch) + z * Math.cos(pitch);
      const [px, py] = [c * x - s * h, s * x + c * h];
      return Math.hypot(px - 5 * Math.cos(2), py - 5 * Math.sin(2), k) - 1;
    };
    const span = { low: -0.5, high: 0.7, turn: 2 * Math.PI };
    const found = sinkSearch(placed(square(4, 0.3)), motion, field, span, 4000);
    // The far edge of the square passes 5 out; its height of 0.3 at no pitch, nothing there at the pitch that dips the edge.
    expect(found.distance).toBeLessThan(-0.93);
    expect(Math.abs(found.azimuth - 2)).toBeLessThan(0.2);
    expect(found.bound).toBeGreaterThan(-1.06);
    expect(field(found.pitch, found.azimuth, found.point as Vec3)).toBe(found.distance);
  });

  it('is proven as far as the budget goes, and never beyond', () => {
    const ball = (_p: number, _a: number, [x, y, z]: Vec3) => Math.hypot(x, y, z - 0.1) - 1;
    let last = -Infinity;
    for (const budget of [1, 4, 16, 64, 256]) {
      const found = sinkSearch(placed(square(0, 0)), motion, ball, STILL, budget);
      expect(found.bound).toBeLessThanOrEqual(-0.9);
      expect(found.bound).toBeGreaterThanOrEqual(last);
      expect(found.evaluations).toBeLessThan(budget + 3);
      last = found.bound;
    }
    expect(last).toBeGreaterThan(-0.95);
  });
});
