import { describe, expect, it } from 'vitest';
import { triangleDistance } from '../../../src/engine/clearance/keepOut';
import { GripMotion } from '../../../src/engine/clearance/motion';
import { CORNERS, halveTriangle, WIDTH } from '../../../src/engine/clearance/rows';
import { ClearanceSearch } from '../../../src/engine/clearance/search';
import { sinkSearch } from '../../../src/engine/clearance/sink';
import { placeSurface } from '../../../src/engine/clearance/surface';
import { Target } from '../../../src/engine/clearance/target';
import { buildTree } from '../../../src/engine/clearance/triangleTree';
import { POSE_IDENTITY, transformPoint } from '../../../src/engine/math/pose';
import { dot, subtract, type Vec3 } from '../../../src/engine/math/vector';
import { radians } from '../../../src/engine/units';
import { randomPose, randomVector, type Seeded, seeded } from '../../support/seeded';

type Triangle = readonly [Vec3, Vec3, Vec3];
const MOTION = new GripMotion({ angularSpeed: 0, torqueOffset: 0, precone: radians(0) });
const STILL = { low: 0, high: 0, turn: 0 };

const soup = (random: Seeded, count: number, [x, y, z]: Vec3): Triangle[] =>
  Array.from({ length: count }, () => {
    const [cx, cy, cz] = randomVector(random, 4);
    return [0, 1, 2].map(() => {
      const [a, b, c] = randomVector(random, 1);
      return [x + cx + a, y + cy + b, z + cz + c];
    }) as unknown as Triangle;
  });
const treeOf = (triangles: readonly Triangle[]) =>
  buildTree([
    {
      positions: Float64Array.from(triangles.flat(2)),
      triangles: Uint32Array.from({ length: 3 * triangles.length }, (_, i) => i),
    },
  ]);

/** Least distance of two segments: clamped, after Ericson, Real-Time Collision Detection (2005), section 5.1.9. */
function segments(p: Vec3, q: Vec3, r: Vec3, s: Vec3): number {
  const [u, v, w] = [subtract(q, p), subtract(s, r), subtract(p, r)];
  const [a, b, c, d, e] = [dot(u, u), dot(u, v), dot(v, v), dot(u, w), dot(v, w)];
  const clamp = (t: number) => Math.min(1, Math.max(0, t));
  const first = clamp((b * e - c * d) / (a * c - b * b));
  const t = clamp((b * first + e) / c);
  const again = clamp((b * t - d) / a);
  return Math.hypot(...w.map((value, k) => value + again * u[k] - t * v[k]));
}
/** Two triangles that do not cross are as near as a corner and a face, or two edges. */
function apart(one: Triangle, other: Triangle): number {
  const out = new Float64Array(4);
  const corners = (from: Triangle, to: Triangle) =>
    from.map((p) => {
      triangleDistance(Float64Array.from(to.flat()), 0, ...p, out);
      return out[0];
    });
  const edges = [0, 1, 2].flatMap((i) =>
    [0, 1, 2].map((k) => segments(one[i], one[(i + 1) % 3], other[k], other[(k + 1) % 3])),
  );
  return Math.min(...corners(one, other), ...corners(other, one), ...edges);
}

describe('loose triangles before loose triangles', () => {
  it('are as near as the nearest two of them, whatever their number', () => {
    const random = seeded(9);
    const search = new ClearanceSearch();
    for (const mine of [1, 2, 3, 4, 5, 7]) {
      for (const theirs of [1, 2, 3, 5, 6, 11]) {
        const pose = randomPose(random, 1);
        const part = soup(random, mine, [9, 5, 3]);
        const other = soup(random, theirs, [0, 0, 0]);
        const moved = other.map(
          (t) => t.map((p) => transformPoint(pose, p)) as unknown as Triangle,
        );
        const truth = Math.min(...part.flatMap((a) => moved.map((b) => apart(a, b))));
        const found = search.run(
          placeSurface(treeOf(part), POSE_IDENTITY),
          MOTION,
          new Target(treeOf(other), pose),
          STILL,
          1e-3,
          20_000,
        );
        expect(found.distance).toBeGreaterThanOrEqual(truth - 1e-9);
        expect(found.bound).toBeLessThanOrEqual(truth + 1e-9);
        expect(found.distance - found.bound).toBeLessThanOrEqual(0.004 * found.distance + 1e-3);
        expect(found.evaluations).toBeLessThan(1500);
      }
    }
  });

  it('do not depend on where the part has its frame', () => {
    const random = seeded(10);
    for (let i = 0; i < 8; i++) {
      const pose = randomPose(random, 9);
      const part = soup(random, 5, [0, 0, 0]);
      const placed = placeSurface(treeOf(part), pose);
      const corners = part.flat().map((p) => transformPoint(pose, p));
      for (let k = 0; k < placed.corners.length; k += 3) {
        const p = placed.corners.subarray(k, k + 3);
        const near = corners.map((q) => Math.hypot(p[0] - q[0], p[1] - q[1], p[2] - q[2]));
        expect(Math.min(...near)).toBeLessThan(1e-12);
      }
      const middle = transformPoint(pose, [
        ...placed.tree.centres.subarray(0, 3),
      ] as unknown as Vec3);
      middle.forEach((value, k) => expect(placed.centres[k]).toBeCloseTo(value, 12));
    }
  });
});

describe('a keep-out in any pose', () => {
  const out = new Float64Array(4);
  it('has the distances of its own frame, and their ways turned with it', () => {
    const random = seeded(12);
    for (let i = 0; i < 20; i++) {
      const pose = randomPose(random, 5);
      // 1 off the face, 5 off the edge, 3 off the corner: by hand, with their ways.
      for (const [p, d, way] of [
        [[1, 1, 2], 1, [0, 0, 1]],
        [[6, 1, -5], 5, [0.6, 0, -0.8]],
        [[-4, 4, 3], 3, [-1 / 3, 2 / 3, 2 / 3]],
        [[0.5, -1.9, 0.1], -0.1, [0, -1, 0]],
      ] as const) {
        const target = new Target({ shape: 'box', half: [3, 2, 1] }, pose);
        target.distance(-1, ...transformPoint(pose, p), out);
        const turned = transformPoint({ ...pose, translation: [0, 0, 0] }, way);
        [d, ...turned].forEach((value, k) => expect(out[k]).toBeCloseTo(value, 12));
        // And the box about two triangles that fill it, off the origin.
        const tree = treeOf([
          [
            [7, -7, 4],
            [13, -3, 6],
            [7, -3, 4],
          ],
          [
            [7, -7, 4],
            [13, -7, 6],
            [13, -3, 6],
          ],
        ]);
        const off: Vec3 = [p[0] + 10, p[1] - 5, p[2] + 5];
        const mesh = new Target(tree, pose);
        mesh.distance(0, ...transformPoint(pose, off), out);
        [d, ...turned].forEach((value, k) => expect(out[k]).toBeCloseTo(value, 12));
        expect(mesh.size(0)).toBeCloseTo(Math.sqrt(14), 12);
      }
    }
  });
});

describe('a triangle cut in two', () => {
  it('is cut at the middle of its longest side, whichever that is', () => {
    const random = seeded(13);
    for (let i = 0; i < 60; i++) {
      const corners = [0, 1, 2].map(() => randomVector(random, 5));
      const v = new Float64Array(3 * WIDTH).fill(50);
      v.set(corners.flat(), WIDTH + CORNERS);
      v.set(corners.flat(), 2 * WIDTH + CORNERS);
      halveTriangle(v, WIDTH, 2 * WIDTH);
      const sides = [0, 1, 2].map((k) => Math.hypot(...subtract(corners[k], corners[(k + 1) % 3])));
      const p = sides.indexOf(Math.max(...sides));
      const q = (p + 1) % 3;
      const middle = corners[p].map((value, k) => (value + corners[q][k]) / 2);
      const one = corners.with(q, middle as unknown as Vec3);
      const other = corners.with(p, middle as unknown as Vec3);
      expect([...v.subarray(WIDTH + CORNERS, 2 * WIDTH)]).toEqual(one.flat());
      expect([...v.subarray(2 * WIDTH + CORNERS)]).toEqual(other.flat());
    }
  });
});

describe('the tree', () => {
  it('keeps no more than its nodes', () => {
    const tree = treeOf(soup(seeded(3), 9, [0, 0, 0]));
    const nodes = tree.second.length;
    expect([tree.first.length, tree.count.length]).toEqual([nodes, nodes]);
    expect([tree.centres.length, tree.halves.length]).toEqual([3 * nodes, 3 * nodes]);
  });
});

describe('the first look of the search for depth', () => {
  // Two triangles on edge, x from 2 to 4 and y 1 to 5: the middle of their box lies between them.
  const triangles: readonly Triangle[] = [
    [
      [2, 1, 0],
      [2, 5, 0],
      [2, 1, 2],
    ],
    [
      [4, 1, 0],
      [4, 5, 0],
      [4, 5, 2],
    ],
  ];
  const surface = () => placeSurface(treeOf(triangles), POSE_IDENTITY);

  it('is at the middle of everything, and bounded by all that can bring it nearer', () => {
    const looks: number[][] = [];
    const field = (pitch: number, azimuth: number, point: Vec3) => {
      looks.push([pitch, azimuth, ...point]);
      return 100;
    };
    const found = sinkSearch(surface(), MOTION, field, { low: 0.1, high: 0.5, turn: 1 }, 1);
    expect(looks).toEqual([[0.3, 0.5, 3, 3, 1]]);
    // Ball root(1 + 4 + 1), arc root(9 + 1) x 0.2, swing half a radian about the shaft, from where pitch 0.3 puts it.
    const across = 3 * Math.cos(0.3) - Math.sin(0.3);
    const swing = 0.5 * Math.hypot(3, across);
    expect(found.bound).toBeCloseTo(100 - Math.sqrt(6) - 0.2 * Math.sqrt(10) - swing, 12);
    expect(found.distance).toBe(Infinity);
  });

  it('counts for the surface only where there is one', () => {
    // The middle of the box lies 10 deep, the triangles 1 at most.
    const field = (_p: number, _a: number, [x]: Vec3) => -10 + 9 * Math.abs(x - 3);
    const found = sinkSearch(surface(), MOTION, field, STILL, 200);
    expect(found.distance).toBe(-1);
    expect(Math.abs(found.point[0] - 3)).toBe(1);
  });

  it.each([
    ['pitch', { low: -0.9, high: 0.9, turn: 0.1 }, 0],
    ['azimuth', { low: -0.1, high: 0.1, turn: 3 }, 1],
    ['the piece', { low: -0.1, high: 0.1, turn: 0.1 }, 2],
  ] as const)('is followed by a cut of what is largest: %s', (_, span, largest) => {
    const looks: number[][] = [];
    const field = (pitch: number, azimuth: number, point: Vec3) => {
      looks.push([pitch, azimuth, ...point]);
      return 0;
    };
    sinkSearch(surface(), MOTION, field, span, 2);
    const { low, high, turn } = span;
    const middle = [(low + high) / 2, turn / 2, 3, 3, 1];
    const halves = [
      [
        [(3 * low + high) / 4, turn / 2, 3, 3, 1],
        [(low + 3 * high) / 4, turn / 2, 3, 3, 1],
      ],
      [
        [middle[0], turn / 4, 3, 3, 1],
        [middle[0], (3 * turn) / 4, 3, 3, 1],
      ],
      [
        [middle[0], turn / 2, 2, 7 / 3, 2 / 3],
        [middle[0], turn / 2, 4, 11 / 3, 2 / 3],
      ],
    ][largest];
    expect(looks).toHaveLength(3);
    [middle, ...halves].forEach((look, i) =>
      look.forEach((value, k) => expect(looks[i][k]).toBeCloseTo(value, 12)),
    );
  });
});
