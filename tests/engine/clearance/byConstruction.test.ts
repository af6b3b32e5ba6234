import { describe, expect, it } from 'vitest';
import {
  boxDistance,
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
import type { TriangleMesh } from '../../../src/engine/mass/solid';
import { cross, dot, type Vec3 } from '../../../src/engine/math/vector';
import { randomVector, type Seeded, seeded } from '../../support/seeded';

// Points are made from the answer: a place on the shape, gone away from along its outward normal (or into the normal cone
// of an edge or corner), so distance and gradient are known beforehand. Elementary geometry throughout.

const plus = (p: Vec3, ...more: (readonly [number, Vec3])[]): Vec3 => {
  const sum = [...p];
  for (const [by, q] of more) for (let k = 0; k < 3; k++) sum[k] += by * q[k];
  return sum as unknown as Vec3;
};
const minus = (p: Vec3, q: Vec3) => plus(p, [-1, q]);
const unit = (p: Vec3) => plus([0, 0, 0], [1 / Math.hypot(...p), p]);

function triangleOf(random: Seeded): readonly [Vec3, Vec3, Vec3] {
  for (;;) {
    const made = [0, 1, 2].map(() => randomVector(random, 5)) as unknown as [Vec3, Vec3, Vec3];
    const [a, b, c] = made;
    if (Math.hypot(...cross(minus(b, a), minus(c, a))) > 8) return made;
  }
}

function expectFar(corners: readonly Vec3[], p: Vec3, d: number, way: Vec3) {
  const out = new Float64Array(4);
  // Another triangle stands before it in the array.
  const v = Float64Array.from([...Array.from({ length: 9 }, () => 99), ...corners.flat()]);
  triangleDistance(v, 9, ...p, out);
  [d, ...way].forEach((value, k) => expect(out[k]).toBeCloseTo(value, 11));
}

describe('a triangle anywhere', () => {
  const random = seeded(31);
  const cases = Array.from({ length: 25 }, () => triangleOf(random));
  const orders = [
    [0, 1, 2],
    [1, 2, 0],
    [2, 0, 1],
    [0, 2, 1],
  ];

  it('is as far from a point over its face as that stands above it', () => {
    for (const [a, b, c] of cases) {
      const n = unit(cross(minus(b, a), minus(c, a)));
      const [s, t] = [random.between(0.05, 0.5), random.between(0.05, 0.45)];
      const foot = plus(a, [s, minus(b, a)], [t, minus(c, a)]);
      expectFar([a, b, c], plus(foot, [0.7, n]), 0.7, n);
      expectFar([a, b, c], plus(foot, [-1.3, n]), 1.3, plus([0, 0, 0], [-1, n]));
    }
  });

  it('has no distance and no way on itself', () => {
    const flat: readonly Vec3[] = [
      [0, 0, 0],
      [4, 0, 0],
      [0, 4, 0],
    ];
    expectFar(flat, [1, 1, 0], 0, [0, 0, 0]);
    expectFar(flat, [0, 0, 0], 0, [0, 0, 0]);
    expectFar(flat, [2, 0, 0], 0, [0, 0, 0]);
  });

  it('and from one beyond an edge by the hypotenuse', () => {
    for (const corners of cases) {
      for (const [i, j, k] of orders) {
        const [p, q, r] = [corners[i], corners[j], corners[k]];
        const n = unit(cross(minus(q, p), minus(r, p)));
        const outward = unit(cross(minus(q, p), n));
        const foot = plus(p, [random.between(0.02, 0.98), minus(q, p)]);
        const way = plus([0, 0, 0], [0.6, outward], [0.8, n]);
        expectFar(corners, plus(foot, [0.01, way]), 0.01, way);
        expectFar(corners, plus(foot, [2, outward]), 2, outward);
      }
    }
  });

  it('and from one beyond a corner by the way to it', () => {
    for (const corners of cases) {
      for (const [i, j, k] of orders) {
        const [p, q, r] = [corners[i], corners[j], corners[k]];
        const n = unit(cross(minus(q, p), minus(r, p)));
        const one = unit(cross(minus(q, p), n));
        const other = unit(cross(n, minus(r, p)));
        const share = random.between(0.1, 0.9);
        const way = unit(plus([0, 0, 0], [share, one], [1 - share, other], [0.5, n]));
        expectFar(corners, plus(p, [3, way]), 3, way);
      }
    }
  });
});

describe('convex shapes, from every octant', () => {
  const out = new Float64Array(4);
  const signs = [-1, 1].flatMap((x) => [-1, 1].flatMap((y) => [-1, 1].map((z) => [x, y, z])));
  const told = (p: readonly number[], wanted: readonly number[]) => {
    boxDistance(p[0], p[1], p[2], 3, 2, 1, out);
    wanted.forEach((value, k) => expect(out[k]).toBeCloseTo(value, 14));
  };

  it('a box: corner, edges, faces and inside', () => {
    for (const [x, y, z] of signs) {
      told([4 * x, 4 * y, 3 * z], [3, x / 3, (2 * y) / 3, (2 * z) / 3]);
      told([6 * x, 6 * y, 0.2 * z], [5, 0.6 * x, 0.8 * y, 0]);
      told([6 * x, 0.2 * y, 5 * z], [5, 0.6 * x, 0, 0.8 * z]);
      told([0.2 * x, 5 * y, 5 * z], [5, 0, 0.6 * y, 0.8 * z]);
      told([2.9 * x, y, 0.5 * z], [-0.1, x, 0, 0]);
      told([2 * x, 1.9 * y, 0.5 * z], [-0.1, 0, y, 0]);
      told([2 * x, y, 0.9 * z], [-0.1, 0, 0, z]);
      // On a face and on an edge: nothing is left, and the way is still one of length 1.
      told([3 * x, y, 0], [0, x, 0, 0]);
      told([x, 2 * y, 0], [0, 0, y, 0]);
      told([x, y, z], [0, 0, 0, z]);
    }
    told([2.5, 1.5, 0.2], [-0.5, 1, 0, 0]);
    told([2, 1.5, 0.5], [-0.5, 0, 1, 0]);
  });

  it('a cylinder: wall, end, rim and inside', () => {
    const shape = { shape: 'cylinder', radius: 5, half: 2 } as const;
    for (const [x, y, z] of signs) {
      const cylinder = (p: Vec3, wanted: readonly number[]) => {
        convexDistance(shape, ...p, out);
        wanted.forEach((value, k) => expect(out[k]).toBeCloseTo(value, 14));
      };
      cylinder([6 * x, 8 * y, z], [5, 0.6 * x, 0.8 * y, 0]);
      cylinder([3 * x, 2 * y, 3 * z], [1, 0, 0, z]);
      // 3 beyond the wall, 4 beyond the end; the way across is 3-4-5 again.
      cylinder([4.8 * x, 6.4 * y, 6 * z], [5, 0.36 * x, 0.48 * y, 0.8 * z]);
      cylinder([2.7 * x, 3.6 * y, z], [-0.5, 0.6 * x, 0.8 * y, 0]);
      cylinder([x, y, 1.75 * z], [-0.25, 0, 0, z]);
      cylinder([3 * x, 4 * y, z], [0, 0.6 * x, 0.8 * y, 0]);
      cylinder([x, y, 2 * z], [0, 0, 0, z]);
      // As near to the wall as to the end.
      cylinder([2.7 * x, 3.6 * y, 1.5 * z], [-0.5, 0.6 * x, 0.8 * y, 0]);
    }
    convexDistance({ shape: 'cylinder', radius: 1, half: 5 }, 0, 0, 0, out);
    expect([...out]).toEqual([-1, 1, 0, 0]);
    convexDistance(shape, 0, 0, 0, out);
    expect([...out]).toEqual([-2, 0, 0, 1]);
  });

  it('are as deep in their middle as their least half side', () => {
    expect(middleDepth({ shape: 'plane' })).toBe(Infinity);
    expect(middleDepth({ shape: 'box', half: [3, 2, 1] })).toBe(1);
    expect(middleDepth({ shape: 'box', half: [1, 2, 3] })).toBe(1);
    expect(middleDepth({ shape: 'box', half: [2, 1, 3] })).toBe(1);
    expect(middleDepth({ shape: 'cylinder', radius: 1, half: 3 })).toBe(1);
    expect(middleDepth({ shape: 'cylinder', radius: 3, half: 2 })).toBe(2);
  });
});

/** A tetrahedron that faces outward. */
function tetrahedron(corners: readonly Vec3[]): TriangleMesh {
  const [a, b, c, d] = corners;
  const volume = dot(cross(minus(b, a), minus(c, a)), minus(d, a));
  const faces = [0, 2, 1, 0, 1, 3, 1, 2, 3, 2, 0, 3];
  return {
    positions: Float64Array.from(corners.flat()),
    triangles: Uint32Array.from(volume > 0 ? faces : faces.toReversed()),
  };
}

/** By barycentric coordinates: inside where all four are positive; their least says how clearly. */
function insideness([a, b, c, d]: readonly Vec3[], p: Vec3): number {
  const volume = (q: Vec3, r: Vec3, s: Vec3, t: Vec3) =>
    dot(cross(minus(r, q), minus(s, q)), minus(t, q));
  const whole = volume(a, b, c, d);
  return Math.min(
    volume(p, b, c, d) / whole,
    volume(a, p, c, d) / whole,
    volume(a, b, p, d) / whole,
    volume(a, b, c, p) / whole,
  );
}

/** The rays of the count, to aim at edges with: they are asked for by what they meet. */
const FIRST: Vec3 = [0.5377, 0.3171, 0.7812];
const SECOND: Vec3 = [-0.2913, 0.8423, 0.4536];

describe('inside and outside of a tetrahedron', () => {
  const random = seeded(77);
  const solids = Array.from({ length: 25 }, () => {
    const middle = randomVector(random, 20);
    return [0, 1, 2, 3].map(() => plus(middle, [1, randomVector(random, 3)]));
  }).filter((corners) => Math.abs(insideness(corners, corners[0])) < 1e-9);

  it('are told as its four barycentric coordinates tell them', () => {
    let within = 0;
    for (const corners of solids) {
      const tree = buildTree([tetrahedron(corners)]);
      for (let i = 0; i < 30; i++) {
        const shares = [0, 1, 2, 3].map(() => random.between(-0.3, 1));
        const sum = shares.reduce((a, b) => a + b);
        if (Math.abs(sum) < 0.2) continue;
        const p = plus([0, 0, 0], ...corners.map((c, k) => [shares[k] / sum, c] as const));
        const least = insideness(corners, p);
        if (Math.abs(least) < 1e-7) continue;
        if (least > 0) within++;
        expect(isInside(tree, ...p)).toBe(least > 0);
        expect(Math.sign(meshDistance(tree, ...p))).toBe(least > 0 ? -1 : 1);
        expect(Math.abs(meshDistance(tree, ...p))).toBe(surfaceDistance(tree, ...p));
      }
    }
    expect(within).toBeGreaterThan(80);
  });

  it('also where the first ray, or the first two, run through edges', () => {
    let looked = 0;
    for (let i = 0; i < 150; i++) {
      const p = randomVector(random, 4);
      const along = (ray: Vec3, from: number) => plus(p, [random.between(from, 3), ray]);
      const one = along(FIRST, 0.5);
      const other = i % 2 === 0 ? along(SECOND, 0.5) : randomVector(random, 4);
      const [u, w] = [randomVector(random, 3), randomVector(random, 3)];
      const corners = [
        plus(one, [1, u]),
        plus(one, [-1, u]),
        plus(other, [1, w]),
        plus(other, [-1, w]),
      ];
      const least = insideness(corners, p);
      if (Math.abs(least) < 1e-3 || !Number.isFinite(least)) continue;
      looked++;
      expect(isInside(buildTree([tetrahedron(corners)]), ...p)).toBe(least > 0);
    }
    expect(looked).toBeGreaterThan(100);
  });

  it('do not change by triangles without area', () => {
    const solid: readonly Vec3[] = [
      [-3, -3, -3],
      [9, -3, -3],
      [-3, 9, -3],
      [-3, -3, 9],
    ];
    const point = {
      positions: Float64Array.from([0.1, 0.2, 0.3]),
      triangles: Uint32Array.from([0, 0, 0]),
    };
    const tree = buildTree([tetrahedron(solid), point, point]);
    expect(isInside(tree, 0.1, 0.2, 0.3)).toBe(true);
    expect(isInside(tree, 0, 0, 0)).toBe(true);
    expect(isInside(tree, -4, -4, -4)).toBe(false);
  });

  it('and where nothing is, nothing is inside or near', () => {
    const none = buildTree([]);
    expect(isInside(none, 0, 0, 0)).toBe(false);
  });
});

describe('a cloud of boxes', () => {
  it('is as near as the nearest of them, and its inside is theirs', () => {
    const random = seeded(5);
    const faces = [0, 2, 1, 0, 3, 2, 4, 5, 6, 4, 6, 7, 0, 1, 5, 0, 5, 4, 1, 2, 6, 1, 6, 5].concat([
      2, 3, 7, 2, 7, 6, 3, 0, 4, 3, 4, 7,
    ]);
    const boxes = Array.from({ length: 27 }, (_, i) => ({
      at: [10 * (i % 3), 7 * (Math.floor(i / 3) % 3), -4 * Math.floor(i / 9)] as Vec3,
      half: [random.between(0.3, 4), random.between(0.3, 3), random.between(0.2, 1.8)] as Vec3,
    }));
    const tree = buildTree(
      boxes.map(({ at, half: [x, y, z] }) => ({
        positions: Float64Array.from(
          [
            [-x, -y, -z],
            [x, -y, -z],
            [x, y, -z],
            [-x, y, -z],
            [-x, -y, z],
            [x, -y, z],
            [x, y, z],
            [-x, y, z],
          ].flatMap((corner) => corner.map((value, k) => value + at[k])),
        ),
        triangles: Uint32Array.from(faces),
      })),
    );
    const out = new Float64Array(4);
    for (let i = 0; i < 150; i++) {
      const p: Vec3 = [random.between(-8, 28), random.between(-8, 22), random.between(-14, 6)];
      const all = boxes.map(({ at, half }) => {
        boxDistance(...minus(p, at), ...half, out);
        return out[0];
      });
      const least = Math.min(...all.map(Math.abs));
      expect(meshDistance(tree, ...p)).toBeCloseTo(Math.min(...all) < 0 ? -least : least, 11);
    }
  });
});
