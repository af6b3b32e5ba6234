import { describe, expect, it } from 'vitest';
import type { TriangleMesh } from '../../../src/engine/mass/solid';
import { boxOf, cleanMesh } from '../../../src/meshes/checks/clean';
import { boxMesh, joinedMesh } from '../../support/meshes';

const cube = boxMesh(10, 10, 10);

/** Every triangle with corners of its own, as a file without indices has them. */
function soup({ positions, triangles }: TriangleMesh): TriangleMesh {
  return {
    positions: Float64Array.from(
      [...triangles].flatMap((v) => [0, 1, 2].map((axis) => positions[3 * v + axis])),
    ),
    triangles: Uint32Array.from(triangles.keys()),
  };
}

/**
 * A cube that goes ten from its corner 7 toward minus, that corner at `at`, and one of the triangles there with a corner of
 * its own, moved by `gap`.
 */
function cracked(at: readonly number[], gap: readonly number[]): TriangleMesh {
  const positions = cube.positions.map((value, i) => value - 5 + at[i % 3]);
  const h = cube.triangles.indexOf(7);
  return {
    positions: Float64Array.of(...positions, ...at.map((value, axis) => value + gap[axis])),
    triangles: cube.triangles.with(h, 8),
  };
}
/** Of the box's diagonal: what is joined across, in the file's unit. */
const TOLERANCE = 2e-6 * 10 * Math.sqrt(3);
/** A step along each axis and both ways, or none: 26 directions. */
const WAYS = [-1, 0, 1];
const DIRECTIONS = WAYS.flatMap((x) => WAYS.flatMap((y) => WAYS.map((z) => [x, y, z]))).filter(
  (way) => way.some((step) => step !== 0),
);

describe('a mesh is cleaned', () => {
  it('points of the same place become one', () => {
    const clean = cleanMesh(soup(cube));
    expect(clean.positions).toHaveLength(24);
    expect(clean.triangles).toHaveLength(36);
    expect(clean.edges).toMatchObject({ openEdges: 0, crowdedEdges: 0, unorientedEdges: 0 });
    expect(clean).toMatchObject({
      degenerateTriangles: 0,
      repeatedTriangles: 0,
      joinedPoints: 0,
      weldTolerance: 0,
    });
  });

  it('and points that no triangle uses go', () => {
    const more = { ...cube, positions: Float64Array.of(...cube.positions, 99, 99, 99) };
    expect(cleanMesh(more).positions).toHaveLength(24);
    expect(boxOf(cleanMesh(more).positions).high).toEqual([5, 5, 5]);
  });

  it('but points of a pool are taken as they are', () => {
    const clean = cleanMesh({ ...cube, pooled: true });
    expect(clean.positions).toBe(cube.positions);
    expect(clean.triangles).toEqual(cube.triangles);
  });

  it.each([
    ['the first two corners', [0, 0, 1]],
    ['the last two', [0, 1, 1]],
    ['the first and the last', [0, 1, 0]],
    ['all three', [2, 2, 2]],
  ])('triangles with one point in %s go', (_, corners) => {
    const clean = cleanMesh({
      ...cube,
      triangles: Uint32Array.of(
        ...cube.triangles.slice(0, 9),
        ...corners,
        ...cube.triangles.slice(9),
      ),
    });
    expect(clean.degenerateTriangles).toBe(1);
    expect(clean.triangles).toHaveLength(36);
    expect(clean.edges.openEdges).toBe(0);
  });

  it.each([
    ['as it stands', (a: number, b: number, c: number) => [a, b, c]],
    ['from its second corner on', (a: number, b: number, c: number) => [b, c, a]],
    ['from its third corner on', (a: number, b: number, c: number) => [c, a, b]],
  ])('of a triangle that is there twice one goes, written %s', (_, again) => {
    for (let t = 0; t < 12; t++) {
      const [a, b, c] = cube.triangles.slice(3 * t, 3 * t + 3);
      const clean = cleanMesh({
        ...cube,
        triangles: Uint32Array.of(...cube.triangles, ...again(a, b, c)),
      });
      expect(clean.repeatedTriangles).toBe(1);
      expect(clean.triangles).toHaveLength(36);
      expect(clean.edges).toMatchObject({ openEdges: 0, crowdedEdges: 0, unorientedEdges: 0 });
    }
  });

  it('of one that is there three times two go, and of two there twice one each', () => {
    const first = cube.triangles.slice(0, 3);
    const thrice = cleanMesh({
      ...cube,
      triangles: Uint32Array.of(...cube.triangles, ...first, ...first),
    });
    expect([thrice.repeatedTriangles, thrice.triangles.length]).toEqual([2, 36]);
    const all = cleanMesh({
      ...cube,
      triangles: Uint32Array.of(...cube.triangles, ...cube.triangles),
    });
    expect([all.repeatedTriangles, all.triangles.length]).toEqual([12, 36]);
    const alone = cleanMesh({ ...cube, triangles: Uint32Array.of(...first, ...first) });
    expect([alone.repeatedTriangles, alone.triangles.length, alone.edges.openEdges]).toEqual([
      1, 3, 3,
    ]);
  });

  it.each([
    [1, 0, 3],
    [2, 1, 3],
    [0, 2, 3],
  ])(
    'at the border of an open surface too, wherever its neighbour is: %d %d %d',
    (...neighbour) => {
      for (const again of [
        [0, 1, 2],
        [1, 2, 0],
        [2, 0, 1],
      ]) {
        const triangles = Uint32Array.of(...again, ...neighbour, 0, 1, 2);
        const clean = cleanMesh({ ...cube, triangles });
        expect([clean.repeatedTriangles, clean.triangles.length]).toEqual([1, 6]);
      }
    },
  );

  it('but one with its corners in the other sense is another triangle', () => {
    const clean = cleanMesh({ ...cube, triangles: Uint32Array.of(0, 1, 2, 0, 2, 1) });
    expect([clean.repeatedTriangles, clean.triangles.length]).toEqual([0, 6]);
    const back = cube.triangles.slice(0, 3).toReversed();
    const both = cleanMesh({ ...cube, triangles: Uint32Array.of(...cube.triangles, ...back) });
    expect(both.repeatedTriangles).toBe(0);
  });

  it.each(DIRECTIONS)(
    'a crack of rounding is joined, whichever way it goes: %d %d %d',
    (...way) => {
      // Cells are so wide as the tolerance: from beside its border the gap goes into the next one.
      const at = way.map((step) => (step === 0 ? 0.3 : -0.1 * step) * TOLERANCE);
      const gap = way.map((step) => 0.5 * step * TOLERANCE);
      const clean = cleanMesh(cracked(at, gap));
      expect(clean).toMatchObject({
        joinedPoints: 1,
        degenerateTriangles: 0,
        repeatedTriangles: 0,
      });
      expect(clean.edges.openEdges).toBe(0);
      expect(clean.weldTolerance / TOLERANCE).toBeCloseTo(1, 5);
    },
  );

  it.each(DIRECTIONS)('and a wider one is left: %d %d %d', (...way) => {
    const size = (1.05 * TOLERANCE) / Math.hypot(...way);
    const clean = cleanMesh(
      cracked(
        [0, 0, 0],
        way.map((step) => step * size),
      ),
    );
    expect(clean).toMatchObject({ joinedPoints: 0, weldTolerance: 0 });
    expect(clean.edges.openEdges).toBe(4);
  });

  it('two cracks that lie nearer to one another than cells are wide are joined each with its own', () => {
    const tolerance = 2 * TOLERANCE;
    const near = [0.02, 0.02, 0.02].map((share) => share * tolerance);
    const beyond = [0.98, 0.98, 0.98].map((share) => share * tolerance);
    const one = cracked(near, [0, 0, -0.01 * tolerance]);
    // The second one goes from there toward plus, and its crack lies in its corner 0.
    const other = cracked(
      beyond.map((value) => -value),
      [0, 0, 0.01 * tolerance],
    );
    const mirrored = { ...other, positions: other.positions.map((value) => -value) };
    const both = joinedMesh(one, mirrored);
    // The corner of the first crack comes last: others have been laid into its cell by then.
    const t = both.triangles.indexOf(8) - (both.triangles.indexOf(8) % 3);
    const triangles = Uint32Array.of(
      ...both.triangles.slice(0, t),
      ...both.triangles.slice(t + 3),
      ...both.triangles.slice(t, t + 3),
    );
    const clean = cleanMesh({ ...both, triangles });
    expect(clean).toMatchObject({ joinedPoints: 2 });
    expect(clean.edges.openEdges).toBe(0);
  });

  it('points that lie as near but on no open edge stay apart', () => {
    const split = cracked([0, 0, 0], [0.5 * TOLERANCE, 0, 0]);
    // A closed body of four triangles, smaller than a crack.
    const s = 0.3 * TOLERANCE;
    const speck = {
      positions: Float64Array.of(0, 0, 0, s, 0, 0, 0, s, 0, 0, 0, s).map((value) => value - 1),
      triangles: Uint32Array.of(0, 2, 1, 0, 1, 3, 1, 2, 3, 2, 0, 3),
    };
    const clean = cleanMesh(joinedMesh(split, speck));
    expect(clean).toMatchObject({ joinedPoints: 1, degenerateTriangles: 0 });
    expect(clean.edges.openEdges).toBe(0);
  });

  it('nothing is joined unless all is closed then', () => {
    const split = cracked([0, 0, 0], [0.5 * TOLERANCE, 0, 0]);
    const open = cleanMesh({ ...split, triangles: split.triangles.slice(0, -3) });
    expect(open.joinedPoints).toBe(0);
    expect(open.edges.openEdges).toBeGreaterThan(0);
  });

  it('what was dropped before is counted with what goes when a crack is joined', () => {
    const split = cracked([0, 0, 0], [0.5 * TOLERANCE, 0, 0]);
    // A sliver across the crack has no size once it is joined; both its neighbours have open edges before.
    const h = split.triangles.indexOf(8);
    const t = h - (h % 3);
    const others = split.triangles.slice(t, t + 3).filter((v) => v !== 8);
    const clean = cleanMesh({
      ...split,
      triangles: Uint32Array.of(
        ...split.triangles,
        7,
        8,
        others[0],
        1,
        1,
        2,
        ...split.triangles.slice(t, t + 3),
      ),
    });
    expect(clean.edges.openEdges).toBe(0);
    expect(clean).toMatchObject({ degenerateTriangles: 2, repeatedTriangles: 1, joinedPoints: 1 });
  });

  it('a triangle that is there twice only once its crack is joined is counted too', () => {
    const split = cracked([0, 0, 0], [0.5 * TOLERANCE, 0, 0]);
    const h = split.triangles.indexOf(8);
    const t = h - (h % 3);
    // The same triangle again with a corner of its own in the same place.
    const clean = cleanMesh({
      positions: Float64Array.of(...split.positions, -0.5 * TOLERANCE, 0, 0),
      triangles: Uint32Array.of(
        ...split.triangles,
        ...split.triangles.slice(t, t + 3).map((v) => (v === 8 ? 9 : v)),
      ),
    });
    expect(clean).toMatchObject({ repeatedTriangles: 1, degenerateTriangles: 0, joinedPoints: 2 });
    expect(clean.edges).toMatchObject({ openEdges: 0, crowdedEdges: 0 });
  });

  it('many points of a crack are joined each with its own', () => {
    // Two halves of a box, each with the rim of its own, a hair apart.
    const half = boxMesh(10, 10, 10);
    const lid = (z: number) =>
      half.triangles.filter((_, i) => {
        const t = i - (i % 3);
        return ![0, 1, 2].every((k) => half.positions[3 * half.triangles[t + k] + 2] === z);
      });
    const low = { ...half, triangles: lid(5) };
    const high = {
      positions: half.positions.map((value, i) => (i % 3 === 2 ? value + 10 + 1e-6 : value)),
      triangles: lid(-5),
    };
    const clean = cleanMesh(joinedMesh(low, high));
    expect(clean).toMatchObject({ joinedPoints: 4, degenerateTriangles: 0 });
    expect(clean.weldTolerance / (2e-6 * Math.hypot(10, 10, 20))).toBeCloseTo(1, 6);
    expect(clean.edges).toMatchObject({ openEdges: 0, unorientedEdges: 0 });
  });
});

describe('a box', () => {
  it('goes from the least to the greatest of each axis', () => {
    expect(boxOf(Float64Array.of(1, 5, -3, -2, 7, 4, 0, 6, 9))).toEqual({
      low: [-2, 5, -3],
      high: [1, 7, 9],
    });
    expect(boxOf(new Float64Array(0))).toEqual({
      low: [Infinity, Infinity, Infinity],
      high: [-Infinity, -Infinity, -Infinity],
    });
  });
});
