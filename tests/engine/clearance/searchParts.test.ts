import { describe, expect, it } from 'vitest';
import {
  CORNERS,
  halveTriangle,
  KEY,
  NODE,
  Rows,
  takeTriangle,
  WIDTH,
} from '../../../src/engine/clearance/rows';
import { placeSurface } from '../../../src/engine/clearance/surface';
import { Target } from '../../../src/engine/clearance/target';
import { buildTree, type TriangleTree } from '../../../src/engine/clearance/triangleTree';
import type { TriangleMesh } from '../../../src/engine/mass/solid';
import { POSE_IDENTITY, rotationAboutZ } from '../../../src/engine/math/pose';
import { radians } from '../../../src/engine/units';
import { seeded } from '../../support/seeded';

/** Loose triangles anywhere in a flat slab. */
function scattered(count: number, seed: number): TriangleMesh {
  const random = seeded(seed);
  const positions = Float64Array.from(
    { length: 9 * count },
    (_, i) => random.between(-1, 1) * [5, 1, 0.2][i % 3],
  );
  return { positions, triangles: Uint32Array.from({ length: 3 * count }, (_, i) => i) };
}

describe('open rows', () => {
  it('come out by their keys, least first, however they went in', () => {
    const rows = new Rows();
    const random = seeded(3);
    const waiting: number[] = [];
    for (let step = 0; step < 4000; step++) {
      if (waiting.length > 0 && random.unit() < 0.45) {
        const at = rows.take();
        const least = Math.min(...waiting);
        expect(rows.values[at + KEY]).toBe(least);
        waiting.splice(waiting.indexOf(least), 1);
        rows.drop(at);
      } else {
        const at = rows.room();
        const key = random.whole(0, 50);
        rows.values[at + KEY] = key;
        waiting.push(key);
        rows.put(at);
      }
      expect(rows.count).toBe(waiting.length);
    }
    expect(waiting.length).toBeGreaterThan(100);
  });

  it('have places of their own, given back and given out again, and as many as are asked for', () => {
    const rows = new Rows();
    const places = Array.from({ length: 2500 }, (_, i) => {
      const at = rows.room();
      rows.values.fill(i, at, at + WIDTH);
      return at;
    });
    expect(new Set(places).size).toBe(2500);
    places.forEach((at, i) => {
      expect(rows.values[at]).toBe(i);
      expect(rows.values[at + WIDTH - 1]).toBe(i);
    });
    rows.drop(places[7]);
    rows.drop(places[9]);
    expect(new Set([rows.room(), rows.room()])).toEqual(new Set([places[7], places[9]]));
    expect(places).not.toContain(rows.room());
  });

  it('begin as copies of another where that is said, and are none after a new start', () => {
    const rows = new Rows();
    const first = rows.room();
    for (let k = 0; k < WIDTH; k++) rows.values[first + k] = k + 1;
    const second = rows.room(first);
    expect([...rows.values.subarray(second, second + WIDTH)]).toEqual(
      Array.from({ length: WIDTH }, (_, k) => k + 1),
    );
    rows.put(first);
    rows.drop(second);
    rows.clear();
    expect(rows.count).toBe(0);
    expect([rows.room(), rows.room()]).toEqual([0, WIDTH]);
  });

  it('keep what is open when there is more of it than ever', () => {
    const rows = new Rows();
    for (let i = 0; i < 1500; i++) {
      const at = rows.room();
      rows.values[at + KEY] = (i * 7919) % 1500;
      rows.put(at);
    }
    for (let i = 0; i < 1500; i++) expect(rows.values[rows.take() + KEY]).toBe(i);
  });
});

describe('a triangle of a row', () => {
  it('is that of the surface by its number', () => {
    const surface = placeSurface(buildTree([scattered(3, 1)]), POSE_IDENTITY);
    const v = new Float64Array(2 * WIDTH).fill(7);
    takeTriangle(v, WIDTH, surface, 2);
    expect([...v.subarray(WIDTH + CORNERS)]).toEqual([...surface.corners.subarray(18, 27)]);
    expect(v[WIDTH + NODE]).toBe(-1);
    expect(v.subarray(0, WIDTH).every((value) => value === 7)).toBe(true);
  });

  it.each([
    [
      'first',
      [0, 0, 0, 4, 0, 0, 1, 1, 0],
      [0, 0, 0, 2, 0, 0, 1, 1, 0],
      [2, 0, 0, 4, 0, 0, 1, 1, 0],
    ],
    [
      'second',
      [1, 1, 0, 0, 0, 0, 4, 0, 0],
      [1, 1, 0, 0, 0, 0, 2, 0, 0],
      [1, 1, 0, 2, 0, 0, 4, 0, 0],
    ],
    [
      'third',
      [4, 0, 0, 1, 1, 0, 0, 0, 0],
      [2, 0, 0, 1, 1, 0, 0, 0, 0],
      [4, 0, 0, 1, 1, 0, 2, 0, 0],
    ],
    ['tall', [0, 0, 0, 0, 0, 6, 0, 2, 3], [0, 0, 0, 0, 0, 3, 0, 2, 3], [0, 0, 3, 0, 0, 6, 0, 2, 3]],
  ])('is cut across its longest side: the %s', (_, corners, one, other) => {
    const v = new Float64Array(2 * WIDTH);
    v.set(corners, CORNERS);
    v.set(corners, WIDTH + CORNERS);
    halveTriangle(v, 0, WIDTH);
    const halves = [v.subarray(CORNERS, WIDTH), v.subarray(WIDTH + CORNERS)].map((half) => [
      ...half,
    ]);
    expect(halves.toSorted()).toEqual([one, other].toSorted());
  });
});

/** Nodes below a node, itself first, with the triangles of its leaves. */
function walk(tree: TriangleTree, node: number): { nodes: number[]; triangles: number[] } {
  const second = tree.second[node];
  if (second === 0) {
    const triangles = Array.from({ length: tree.count[node] }, (_, i) => tree.first[node] + i);
    return { nodes: [node], triangles };
  }
  const [a, b] = [walk(tree, node + 1), walk(tree, second)];
  return {
    nodes: [node, ...a.nodes, ...b.nodes],
    triangles: [...a.triangles, ...b.triangles],
  };
}

describe('a tree of triangles', () => {
  const meshes = [scattered(37, 5), scattered(4, 6)];
  const built = () => buildTree(meshes);

  it('holds every triangle of all meshes once, as they are', () => {
    const tree = built();
    expect(walk(tree, 0).triangles.toSorted((a, b) => a - b)).toEqual(
      Array.from({ length: 41 }, (_, i) => i),
    );
    const told = (corners: ArrayLike<number>) =>
      Array.from({ length: corners.length / 9 }, (_, i) =>
        Array.from({ length: 9 }, (_one, k) => corners[9 * i + k]).join(),
      ).toSorted();
    expect(told(tree.corners)).toEqual(told(meshes.flatMap(({ positions }) => [...positions])));
  });

  it('has boxes that fit: every one touches its triangles on all sides', () => {
    const tree = built();
    for (const node of walk(tree, 0).nodes) {
      const { triangles } = walk(tree, node);
      for (let k = 0; k < 3; k++) {
        const all = triangles.flatMap((i) => [0, 3, 6].map((c) => tree.corners[9 * i + c + k]));
        const [low, high] = [Math.min(...all), Math.max(...all)];
        expect(tree.centres[3 * node + k]).toBeCloseTo((low + high) / 2, 14);
        expect(tree.halves[3 * node + k]).toBeCloseTo((high - low) / 2, 14);
      }
    }
  });

  it('is halved at the middle triangle along the longer side of their middles, down to two', () => {
    const tree = built();
    const middle = (i: number, k: number) =>
      (tree.corners[9 * i + k] + tree.corners[9 * i + 3 + k] + tree.corners[9 * i + 6 + k]) / 3;
    for (const node of walk(tree, 0).nodes) {
      const { triangles } = walk(tree, node);
      if (tree.second[node] === 0) {
        expect(triangles.length).toBeLessThanOrEqual(2);
        continue;
      }
      const one = walk(tree, node + 1).triangles;
      const other = walk(tree, tree.second[node]).triangles;
      expect(one).toHaveLength(triangles.length >> 1);
      const widths = [0, 1, 2].map((k) => {
        const all = triangles.map((i) => middle(i, k));
        return Math.max(...all) - Math.min(...all);
      });
      const axis = widths.indexOf(Math.max(...widths));
      expect(Math.max(...one.map((i) => middle(i, axis)))).toBeLessThanOrEqual(
        Math.min(...other.map((i) => middle(i, axis))) + 1e-15,
      );
    }
  });

  it('is as deep as it must be also where all triangles are the same', () => {
    const same = {
      positions: Float64Array.from([0, 0, 0, 1, 0, 0, 0, 1, 0]),
      triangles: Uint32Array.from({ length: 3 * 64 }, (_, i) => i % 3),
    };
    const many = buildTree([same]);
    expect(walk(many, 0).nodes).toHaveLength(63);
    expect(many.second).toHaveLength(63);
  });

  it('of nothing has no nodes', () => {
    const none = buildTree([]);
    expect([none.corners.length, none.second.length, none.centres.length]).toEqual([0, 0, 0]);
  });

  it('in another frame has its corners and middles there', () => {
    const tree = built();
    const rotation = rotationAboutZ(radians(Math.PI / 2));
    const placed = placeSurface(tree, { rotation, translation: [10, 20, 30] });
    for (let i = 0; i < 9; i += 3) {
      expect(placed.corners[i]).toBeCloseTo(10 - tree.corners[i + 1], 14);
      expect(placed.corners[i + 1]).toBeCloseTo(20 + tree.corners[i], 14);
      expect(placed.corners[i + 2]).toBeCloseTo(30 + tree.corners[i + 2], 14);
    }
    expect(placed.centres[1]).toBeCloseTo(20 + tree.centres[0], 14);
    expect(placed.axes).toBe(rotation);
  });
});

describe('a keep-out as the search sees it', () => {
  const pose = { rotation: rotationAboutZ(radians(Math.PI / 2)), translation: [10, 0, 0] } as const;
  const out = new Float64Array(4);

  it('of one shape has the distance and gradient of the shape in its place', () => {
    // A box of half sides 3, 2, 1 turned by a quarter: 2 wide along X, 3 along Y.
    const box = new Target({ shape: 'box', half: [3, 2, 1] }, pose);
    box.distance(-1, 14, 1, 0, out);
    [2, 1, 0, 0].forEach((value, k) => expect(out[k]).toBeCloseTo(value, 14));
    box.distance(-1, 10, -8, 0.5, out);
    [5, 0, -1, 0].forEach((value, k) => expect(out[k]).toBeCloseTo(value, 14));
    box.nearest(10, 0, 6, out);
    [5, 0, 0, 1].forEach((value, k) => expect(out[k]).toBeCloseTo(value, 14));
    expect([box.tree, box.flat, box.floor, box.size(-1), box.size(0)]).toEqual([
      null,
      false,
      -1,
      0,
      0,
    ]);
    const plane = new Target({ shape: 'plane' }, pose);
    expect([plane.flat, plane.floor]).toEqual([true, -Infinity]);
  });

  it('of a mesh has the distances of boxes and triangles', () => {
    const tree = buildTree([scattered(9, 2)]);
    const mesh = new Target(tree, pose);
    expect([mesh.tree, mesh.flat, mesh.floor]).toEqual([tree, false, 0]);
    expect(mesh.size(0)).toBeCloseTo(Math.hypot(...tree.halves.subarray(0, 3)), 14);
    expect(mesh.size(2)).toBeCloseTo(Math.hypot(...tree.halves.subarray(6, 9)), 14);
    expect(mesh.size(-3)).toBe(0);
    // The far face of the root's box seen along its own x, which is Y here.
    const [cx, cy, cz] = tree.centres;
    mesh.distance(0, 10 - cy, cx + tree.halves[0] + 4, cz, out);
    [4, 0, 1, 0].forEach((value, k) => expect(out[k]).toBeCloseTo(value, 13));
    // On a corner of triangle 5 nothing is left of its distance, and nowhere is anything nearer.
    const corner = tree.corners.subarray(9 * 5, 9 * 5 + 3);
    const there = [10 - corner[1], corner[0], corner[2]] as const;
    mesh.distance(-7, ...there, out);
    expect(out[0]).toBeCloseTo(0, 13);
    mesh.nearest(...there, out);
    expect(out[0]).toBeCloseTo(0, 13);
  });

  it('of a mesh is as near as the nearest of its triangles', () => {
    const tree = buildTree([scattered(9, 2)]);
    const mesh = new Target(tree, pose);
    const random = seeded(1);
    for (let i = 0; i < 20; i++) {
      const p = [random.between(5, 15), random.between(-6, 6), random.between(-3, 3)] as const;
      const all = Array.from({ length: 9 }, (_, k) => {
        mesh.distance(-2 - k, ...p, out);
        return [...out];
      });
      mesh.nearest(...p, out);
      const nearest = all.reduce((best, one) => (one[0] < best[0] ? one : best));
      expect([...out]).toEqual(nearest);
    }
  });
});
