import { describe, expect, test } from 'vitest';
import { inspectMesh, isWatertight, meshVolumeMoments } from '../../../src/engine/mass/mesh';
import { createMoments, JXX, JYY, JZZ, M, type Moments } from '../../../src/engine/mass/moments';
import { fourDigitOutline } from '../../../src/engine/mass/sectionOutline';
import type { AirfoilLoft, SectionLoft } from '../../../src/engine/mass/solid';
import { weldedMeshes } from '../../../src/parts/tessellate';
import { momentsDeviation } from '../../support/closeness';
import { grid, QUADRATURE } from '../../support/quadrature';
import { type CloudPoint, cloudMoments, volumeOf } from '../../support/shapes';

type Quad = readonly (readonly [number, number])[];
const ROOT: Quad = [
  [0.4, -0.2],
  [0.9, 0.1],
  [0.7, 0.8],
  [-0.3, 0.5],
];
const TIP: Quad = [
  [1.3, 0.2],
  [1.5, 0.7],
  [0.9, 0.9],
  [0.8, 0.1],
];

function loftOf(root: Quad, tip: Quad, from = 2, to = 5): SectionLoft {
  const end = (x: number, quad: Quad) => ({ x, corners: Float64Array.from(quad.flat()) });
  return { shape: 'sectionLoft', root: end(from, root), tip: end(to, tip) };
}

/** Points weighted over the twisted block: corners straight from end to end, each section filled bilinearly. */
function brute(root: Quad, tip: Quad, from: number, to: number): Moments {
  const points: CloudPoint[] = [];
  for (const [t, dt] of grid(0, 1, 1)) {
    const q = root.map(([y, z], i) => [y + t * (tip[i][0] - y), z + t * (tip[i][1] - z)]);
    for (const [u, du] of grid(0, 1, 1)) {
      for (const [v, dv] of grid(0, 1, 1)) {
        const at = (axis: 0 | 1, a: number, b: number, c: number, d: number) =>
          a * q[0][axis] + b * q[1][axis] + c * q[2][axis] + d * q[3][axis];
        const [y, z] = ([0, 1] as const).map((k) =>
          at(k, (1 - u) * (1 - v), u * (1 - v), u * v, (1 - u) * v),
        );
        const [yu, zu] = ([0, 1] as const).map((k) => at(k, v - 1, 1 - v, v, -v));
        const [yv, zv] = ([0, 1] as const).map((k) => at(k, u - 1, -u, u, 1 - u));
        const weight = (yu * zv - zu * yv) * dt * (to - from) * du * dv;
        points.push([weight, from + t * (to - from), y, z]);
      }
    }
  }
  return cloudMoments(points);
}

describe('a loft between two polygons', () => {
  test('agrees with brute-force integration over a twisted, tapered, swept block', () => {
    const seen = volumeOf(loftOf(ROOT, TIP));
    expect(momentsDeviation(seen, brute(ROOT, TIP, 2, 5))).toBeLessThan(QUADRATURE);
  });

  test('weighs the same whichever end is the root and whichever way the corners run', () => {
    const seen = volumeOf(loftOf(ROOT, TIP));
    expect(momentsDeviation(volumeOf(loftOf(TIP, ROOT, 5, 2)), seen)).toBeLessThan(1e-14);
    const turned = loftOf(ROOT.toReversed(), TIP.toReversed());
    expect(momentsDeviation(volumeOf(turned), seen)).toBeLessThan(1e-14);
  });

  // Volume of a frustum of a pyramid, h (A + sqrt(A B) + B) / 3 (geometry, memory).
  test('of similar squares is the frustum of a pyramid', () => {
    const square = (half: number): Quad => [
      [-half, -half],
      [half, -half],
      [half, half],
      [-half, half],
    ];
    const seen = volumeOf(loftOf(square(1), square(0.25), 0, 3));
    expect(seen[M]).toBeCloseTo(((4 + 1 + 0.25) * 3) / 3, 14);
  });

  test('refuses ends with different numbers of corners', () => {
    expect(() => volumeOf(loftOf(ROOT, TIP.slice(0, 3)))).toThrow(/differ in corners: 8, 6/);
  });

  test('comes to the closed form of the symmetric airfoil as the panels grow', () => {
    const root = { x: 0.012, chord: 0.028, thickness: 0.0028, leadingEdgeY: 0.008, z: 0.001 };
    const tip = { x: 0.092, chord: 0.014, thickness: 0.001, leadingEdgeY: 0.001, z: -0.002 };
    const exact = volumeOf({ shape: 'airfoilLoft', root, tip } satisfies AirfoilLoft);
    const polygonal = (panels: number) => {
      const end = ({ x, chord, thickness, leadingEdgeY, z }: typeof root) => {
        const section = { thickness: thickness / chord, camber: 0, position: 0.4 };
        const corners = fourDigitOutline(section, panels).map((value, i) =>
          i % 2 === 0 ? leadingEdgeY - chord * value : z + chord * value,
        );
        return { x, corners };
      };
      return volumeOf({ shape: 'sectionLoft', root: end(root), tip: end(tip) });
    };
    // Fourth order but for the trailing edge: measured 5e-6, 3e-7, 9e-8 of the natural size of each moment.
    expect(momentsDeviation(polygonal(24), exact)).toBeLessThan(2e-5);
    expect(momentsDeviation(polygonal(48), exact)).toBeLessThan(1e-6);
    expect(momentsDeviation(polygonal(200), exact)).toBeLessThan(2e-7);
  });
});

describe('the drawn loft', () => {
  function drawn(shape: SectionLoft, density: number, segmentsPerTurn: number) {
    return weldedMeshes([{ name: 'loft', density, shape }], { segmentsPerTurn })[0];
  }

  test('is closed, and faces inward where its density is negative', () => {
    for (const shape of [loftOf(ROOT, TIP), loftOf(TIP.toReversed(), ROOT.toReversed(), 5, 2)]) {
      for (const density of [1, -1]) {
        const mesh = drawn(shape, density, 48);
        const faults = inspectMesh(mesh);
        expect(isWatertight(faults) && faults.degenerateTriangles === 0).toBe(true);
        expect(Math.sign(meshVolumeMoments(mesh, createMoments())[M])).toBe(density);
      }
    }
  });

  test('of plane panels is exact', () => {
    const shape = loftOf(
      ROOT,
      ROOT.map(([y, z]) => [0.4 * y + 1, 0.4 * z - 0.2] as const),
    );
    const mesh = meshVolumeMoments(drawn(shape, 1, 24), createMoments());
    // Some hundred triangles, each rounding its share.
    expect(momentsDeviation(mesh, volumeOf(shape))).toBeLessThan(1e-14);
  });

  test('of twisted panels comes four times closer with twice the resolution', () => {
    const shape = loftOf(ROOT, TIP);
    const exact = volumeOf(shape);
    const error = (segments: number, k: number) =>
      Math.abs(meshVolumeMoments(drawn(shape, 1, segments), createMoments())[k] - exact[k]);
    for (const k of [M, JXX, JYY, JZZ]) {
      const [coarse, fine] = [error(192, k), error(384, k)];
      if (coarse < 1e-12 * exact[k]) continue;
      expect(coarse / fine, `${k}`).toBeGreaterThan(3.4);
      expect(coarse / fine, `${k}`).toBeLessThan(4.7);
    }
  });

  // Green's theorem: a cap's share of the volume does not depend on how it is cut, even where it is not convex.
  test('of a section that no strip fits is closed all the same', () => {
    const star: Quad = [
      [1, 0],
      [0.3, 0.2],
      [0.2, 1],
      [-0.1, 0.3],
      [-1, 0.4],
      [-0.3, -0.2],
      [0, -1],
      [0.25, -0.25],
    ];
    const shape = loftOf(
      star,
      star.map(([y, z]) => [0.5 * y, 0.5 * z] as const),
    );
    const mesh = drawn(shape, 1, 12);
    expect(isWatertight(inspectMesh(mesh))).toBe(true);
    expect(
      momentsDeviation(meshVolumeMoments(mesh, createMoments()), volumeOf(shape)),
    ).toBeLessThan(1e-14);
  });
});
