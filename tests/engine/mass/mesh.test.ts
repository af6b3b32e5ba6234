import { describe, expect, test } from 'vitest';
import { centralSecondMoment, centreOfMass, inertiaTensor } from '../../../src/engine/mass/inertia';
import { inspectMesh, isWatertight, type MeshFaults } from '../../../src/engine/mass/mesh';
import { M } from '../../../src/engine/mass/moments';
import type { TriangleMesh } from '../../../src/engine/mass/solid';
import { momentsDeviation } from '../../support/closeness';
import { ballMesh, boxMesh, cylinderMesh, movedMesh } from '../../support/meshes';
import { randomPose, seeded } from '../../support/seeded';
import { ballShape, boxShape, cylinderShape, solid, volumeOf, weighed } from '../../support/shapes';

function meshMoments(mesh: TriangleMesh) {
  return volumeOf({ shape: 'mesh', ...mesh });
}

describe('mass properties of a closed mesh', () => {
  // Published: F. Tonon, J. Math. Stat. 1(1), 2004: moments of inertia about the centroid, unit density. The products
  // (memory) are a' = int y z 4417.66150, b' = int x z -46343.16662, c' = int x y 11996.20119, here with the tensor's sign
  // and in their right places: the paper's matrix swaps b' and c'. Its centroid's x, 15.92492,
  // is not the mean of its own corners, 63.69979 / 4 = 15.9249475, which stands here.
  test('the tetrahedron of Tonon has the published volume, centroid and tensor', () => {
    const corners = [
      8.3322, -11.86875, 0.93355, 0.75523, 5, 16.37072, 52.61236, 5, -5.3858, 2, 5, 3,
    ];
    const faces = [0, 2, 1, 0, 3, 2, 0, 1, 3, 1, 2, 3];
    function properties(positions: readonly number[]): readonly number[] {
      const mesh = {
        positions: Float64Array.from(positions),
        triangles: Uint32Array.from(faces),
      };
      expect(isWatertight(inspectMesh(mesh))).toBe(true);
      const seen = meshMoments(mesh);
      const J = centralSecondMoment(seen);
      const centre = centreOfMass(seen);
      if (J === null || centre === null) throw new Error('the tetrahedron has no volume');
      const t = inertiaTensor(J);
      return [seen[M], ...centre, t.xx, t.yy, t.zz, t.yz, t.xz, t.xy];
    }
    const published = [
      1873.233236, 15.9249475, 0.78281, 3.72962, 43520.33257, 194711.28938, 191168.76173,
      -4417.6615, 46343.16662, -11996.20119,
    ];
    // Corners and properties are printed to 5e-6: by its own rounding and the corners' may each differ.
    const seen = properties(corners);
    const allowed = seen.map(() => 5.1e-6);
    corners.forEach((_, i) => {
      const moved = properties(corners.map((v, k) => (k === i ? v + 5e-6 : v)));
      moved.forEach((v, k) => {
        allowed[k] += Math.abs(v - seen[k]);
      });
    });
    published.forEach((v, k) => {
      expect(Math.abs(seen[k] - v)).toBeLessThan(allowed[k]);
      expect(allowed[k]).toBeLessThan(2e-5 * Math.max(1, Math.abs(v)));
    });
  });

  test('a box of twelve triangles is the prism to rounding, at any pose', () => {
    const random = seeded(77);
    for (let i = 0; i < 50; i++) {
      const pose = randomPose(random, 2);
      const mesh = movedMesh(boxMesh(0.03, 0.02, 0.004), pose);
      const expected = weighed(solid(boxShape(0.03, 0.02, 0.004), 1, pose));
      // Vertices are rounded at 2 m: 2e-16 x 2 m / 4 mm of the thinnest side, over a few corners.
      expect(momentsDeviation(meshMoments(mesh), expected)).toBeLessThan(1e-12);
    }
  });

  test('a small mesh far from its origin keeps its digits', () => {
    // Vertices on a lattice of 2^-40 m, so that the far copy has the same edges to the last bit.
    const pose = randomPose(seeded(78), 2 ** -8);
    const turned = movedMesh(boxMesh(2 ** -8, 2 ** -9, 2 ** -10), pose);
    const near = {
      ...turned,
      positions: turned.positions.map((v) => Math.round(v * 2 ** 40) / 2 ** 40),
    };
    const far = { ...near, positions: near.positions.map((v, i) => v + [64, -128, 32][i % 3]) };
    expect(meshMoments(far)[M]).toBe(meshMoments(near)[M]);
  });

  test.each([
    ['ball', ballShape(0.01), (n: number) => ballMesh(0.01, n)],
    ['cylinder', cylinderShape(0.004, 0.02), (n: number) => cylinderMesh(0.004, 0.02, n)],
  ])(
    'a tessellated %s closes in on the closed form with the square of its fineness',
    (_, shape, tessellate) => {
      const exact = volumeOf(shape);
      const errors = [16, 32, 64, 128].map((n) => {
        const mesh = tessellate(n);
        expect(isWatertight(inspectMesh(mesh))).toBe(true);
        const seen = meshMoments(mesh);
        expect(seen[M]).toBeLessThan(exact[M]);
        return momentsDeviation(seen, exact);
      });
      // Order 2: each halving leaves a quarter, up to the next even power (1 / 16^2 of a few).
      for (let i = 1; i < errors.length; i++) {
        expect(errors[i - 1] / errors[i]).toBeGreaterThan(3.9);
        expect(errors[i - 1] / errors[i]).toBeLessThan(4.1);
      }
    },
  );

  test('turned inside out it has the same numbers with the sign of a hole', () => {
    const mesh = boxMesh(1, 2, 3);
    const inside = { ...mesh, triangles: mesh.triangles.toReversed() };
    expect(isWatertight(inspectMesh(inside))).toBe(true);
    const negative = meshMoments(mesh).map((v) => -v);
    expect(momentsDeviation(meshMoments(inside), negative)).toBeLessThan(1e-15);
  });
});

describe('inspection of a surface', () => {
  const box = boxMesh(1, 1, 1);
  const sound: MeshFaults = {
    openEdges: 0,
    repeatedEdges: 0,
    degenerateTriangles: 0,
    indicesOutOfRange: 0,
    nonFinitePositions: 0,
  };
  function withTriangles(change: (triangles: number[]) => number[]): MeshFaults {
    return inspectMesh({ ...box, triangles: Uint32Array.from(change([...box.triangles])) });
  }

  test('finds nothing wrong with a closed box, cylinder and ball', () => {
    for (const mesh of [box, cylinderMesh(1, 2, 7), ballMesh(1, 5)]) {
      expect(inspectMesh(mesh)).toEqual(sound);
    }
  });

  const cases: readonly [string, () => MeshFaults, Partial<MeshFaults>][] = [
    [
      'a missing face leaves three open edges',
      () => withTriangles((t) => t.slice(3)),
      { openEdges: 3 },
    ],
    [
      'a face turned over uses three edges twice and leaves three without a partner',
      () => withTriangles(([a, b, c, ...rest]) => [a, c, b, ...rest]),
      { openEdges: 3, repeatedEdges: 3 },
    ],
    [
      'a face written twice repeats its three edges',
      () => withTriangles((t) => [...t, ...t.slice(0, 3)]),
      { repeatedEdges: 3 },
    ],
    [
      'an index past the last vertex is out of range, and its face is missing',
      () => withTriangles(([, ...rest]) => [8, ...rest]),
      { indicesOutOfRange: 1, openEdges: 3 },
    ],
    [
      'a last triple that is not complete is out of range',
      () => withTriangles((t) => [...t, 0, 1]),
      { indicesOutOfRange: 1 },
    ],
    [
      'positions that do not come in threes are out of range',
      () => inspectMesh({ ...box, positions: Float64Array.of(...box.positions, 1) }),
      { indicesOutOfRange: 1 },
    ],
    [
      'each number that is not finite is counted',
      () =>
        inspectMesh({
          ...box,
          positions: box.positions.map((v, i) => (i === 4 ? NaN : i === 5 ? Infinity : v)),
        }),
      { nonFinitePositions: 2 },
    ],
  ];
  test.each(cases)('%s', (_, inspected, fault) => {
    const seen = inspected();
    expect(seen).toEqual({ ...sound, ...fault });
    expect(isWatertight(seen)).toBe(false);
  });

  test('a face of no area is counted but does not open the surface', () => {
    const seen = withTriangles((t) => [...t, 0, 0, 1]);
    expect(seen).toEqual({ ...sound, degenerateTriangles: 1 });
    expect(isWatertight(seen)).toBe(true);
  });
});
