import { describe, expect, it } from 'vitest';
import { inspectMesh, isWatertight, meshVolumeMoments } from '../../src/engine/mass/mesh';
import { createMoments, M, SZ } from '../../src/engine/mass/moments';
import type { AirfoilLoft, Solid } from '../../src/engine/mass/solid';
import { volumeMoments } from '../../src/engine/mass/weigh';
import {
  POSE_IDENTITY,
  type Pose,
  rotationAboutX,
  transformPoint,
  translation,
} from '../../src/engine/math/pose';
import { cross, dot, subtract, type Vec3 } from '../../src/engine/math/vector';
import { radians, radiansFromDegrees } from '../../src/engine/units';
import {
  circle,
  facingOutboard,
  hexagon,
  prism,
  rectangle,
  revolution,
  sphereProfile,
  tubeProfile,
} from '../../src/parts/shapes';
import { convexHull, silhouettes } from '../../src/parts/silhouette';
import { type PartMesh, tessellate, weldedMeshes } from '../../src/parts/tessellate';
import { ballMesh, boxMesh } from '../support/meshes';

const pin = revolution('pin', 1, tubeProfile(0, 1, 0, 4));
const hexNut = prism('nut', 1, { outer: hexagon(5.5), holes: [circle(1.35)], from: 0, to: 2.4 });

function at(values: ArrayLike<number>, index: number): Vec3 {
  return [values[3 * index], values[3 * index + 1], values[3 * index + 2]];
}

/** Every corner: its position, its normal, and the normal of its flat triangle. */
function corners(mesh: PartMesh) {
  return Array.from(mesh.triangles, (vertex, i) => {
    const [a, b, c] = [0, 1, 2].map((k) =>
      at(mesh.positions, mesh.triangles[3 * Math.floor(i / 3) + k]),
    );
    const flat = cross(subtract(b, a), subtract(c, a));
    return { position: at(mesh.positions, vertex), normal: at(mesh.normals, vertex), flat };
  });
}

/** Ratio of the drawn to the exact volume of the only solid. */
function volumeRatio(solid: Solid, segmentsPerTurn: number): number {
  if (solid.shape.shape === 'point') throw new Error('no volume');
  const [mesh] = weldedMeshes([solid], { segmentsPerTurn });
  const exact = volumeMoments(solid.shape, createMoments())[M];
  return meshVolumeMoments(mesh, createMoments())[M] / exact;
}

describe('surfaces of solids', () => {
  it('a pin of n steps has the volume of its n-sided prism', () => {
    const n = 24;
    const expected = (n / (2 * Math.PI)) * Math.sin((2 * Math.PI) / n);
    expect(volumeRatio(pin, n)).toBeCloseTo(expected, 12);
  });

  it('a pin has radial normals on its wall and axial ones on its ends', () => {
    for (const { position, normal, flat } of corners(tessellate([pin]))) {
      if (Math.abs(flat[2]) > 1e-6) {
        expect(normal[2]).toBeCloseTo(Math.sign(flat[2]), 6);
      } else {
        expect(dot(normal, [position[0], position[1], 0])).toBeCloseTo(1, 6);
      }
    }
  });

  it('a nut has sharp edges at its corners and rims and none in its bore', () => {
    const n = 48;
    const { edges } = tessellate([hexNut], { segmentsPerTurn: n });
    // Six upright corners, two hexagons, two rims of the bore.
    expect(edges.length / 6).toBe(6 + 12 + 2 * n);
  });

  it('every normal is a unit vector that agrees with its triangles', () => {
    const ball = revolution('ball', 1, sphereProfile(2));
    for (const { normal, flat } of corners(tessellate([pin, hexNut, ball]))) {
      expect(Math.hypot(...normal)).toBeCloseTo(1, 6);
      expect(dot(normal, flat)).toBeGreaterThan(0.9 * Math.hypot(...flat));
    }
  });

  it('a sphere is shaded as a sphere, without an edge', () => {
    const mesh = tessellate([revolution('ball', 1, sphereProfile(2))]);
    expect(mesh.edges.length).toBe(0);
    for (const { position, normal } of corners(mesh)) {
      expect(dot(normal, position)).toBeGreaterThan(2 * 0.999);
    }
  });

  it('pieces cover all triangles, in the order of the solids', () => {
    const mesh = tessellate([pin, hexNut]);
    expect(mesh.pieces.map((piece) => piece.name)).toEqual(['pin', 'nut']);
    expect(mesh.pieces[0].firstTriangle).toBe(0);
    expect(mesh.pieces[1].firstTriangle).toBe(mesh.pieces[0].triangleCount);
    expect(3 * (mesh.pieces[0].triangleCount + mesh.pieces[1].triangleCount)).toBe(
      mesh.triangles.length,
    );
  });

  it('a point mass is drawn as the steel sphere of its mass, and marked as a symbol', () => {
    const point: Solid = { name: 'lump', shape: { shape: 'point', mass: 0.001 } };
    const [mesh] = weldedMeshes([point], { segmentsPerTurn: 192 });
    expect(mesh.symbolic).toBe(true);
    const volume = meshVolumeMoments(mesh, createMoments())[M];
    // Chords take 5/2 of (2 pi / n)^2 / 6 from a sphere.
    expect((volume * 7850) / 0.001).toBeCloseTo(1 - (2.5 * ((2 * Math.PI) / 192) ** 2) / 6, 5);
  });

  it('a hole given as a solid of negative density faces inward, so that volumes add up', () => {
    const hole = { ...revolution('hole', -1, tubeProfile(0, 0.5, 0, 4)) };
    const [solid, cavity] = weldedMeshes([pin, hole]).map(
      (mesh) => meshVolumeMoments(mesh, createMoments())[M],
    );
    expect(cavity / solid).toBeCloseTo(-0.25, 12);
  });

  it('points of an outline that lie on a line leave no crack between wall and cap', () => {
    const outer = [
      [0, 0],
      [1, 0],
      [2, 0],
      [4, 0],
      [4, 1],
      [4, 2],
      [2, 2],
      [1, 2],
      [0, 2],
      [0, 1],
    ] as const;
    const holes = [rectangle(0.5, 1, 0.5, 1), rectangle(2, 3, 0.5, 1), circle(0.25, 1.5, 1.5)];
    const [mesh] = weldedMeshes([prism('plate', 1, { outer, holes, from: 0, to: 1 })]);
    expect(isWatertight(inspectMesh(mesh))).toBe(true);
  });

  it('a blade whose thickness tapers otherwise than its chord still converges by four', () => {
    const shape: AirfoilLoft = {
      shape: 'airfoilLoft',
      root: { x: 0, chord: 30, thickness: 6, leadingEdgeY: 9, z: 0 },
      tip: { x: 90, chord: 15, thickness: 0.6, leadingEdgeY: 4, z: 1 },
    };
    const solid: Solid = { name: 'blade', density: 1, shape };
    const loss = [48, 96, 192].map((n) => 1 - volumeRatio(solid, n));
    expect(loss[0] / loss[1]).toBeCloseTo(4, 0);
    expect(loss[1] / loss[2]).toBeCloseTo(4, 0);
    expect(loss[1]).toBeGreaterThan(0);
  });

  it('a blade that is alike above and below is drawn alike', () => {
    const shape: AirfoilLoft = {
      shape: 'airfoilLoft',
      root: { x: 0, chord: 30, thickness: 6, leadingEdgeY: 9, z: 0 },
      tip: { x: 90, chord: 15, thickness: 0.6, leadingEdgeY: 4, z: 0 },
    };
    const [mesh] = weldedMeshes([{ name: 'blade', density: 1, shape }]);
    const moments = meshVolumeMoments(mesh, createMoments());
    expect(Math.abs(moments[SZ])).toBeLessThan(1e-12 * 6 * moments[M]);
  });

  it('a given mesh is drawn as it is: a cube in six faces with twelve edges', () => {
    const [cube] = weldedMeshes([
      prism('cube', 1, { outer: rectangle(0, 1, 0, 1), from: 0, to: 1 }),
    ]);
    const { positions, triangles } = cube;
    const solid: Solid = {
      name: 'scan',
      density: 1,
      shape: { shape: 'mesh', positions, triangles },
    };
    const mesh = tessellate([solid]);
    expect(mesh.edges.length / 6).toBe(12);
    expect(mesh.positions.length / 3).toBe(24);
  });

  it('a given mesh that was shaded before is drawn in its new place, and anew when its triangles are others', () => {
    const box = boxMesh(3, 2, 1);
    const drawn = (triangles: Uint32Array, pose: Pose = POSE_IDENTITY, density = 1) =>
      tessellate([{ name: 'box', density, shape: { shape: 'mesh', ...box, triangles }, pose }]);
    drawn(box.triangles);
    const quarter = {
      rotation: rotationAboutX(radians(Math.PI / 2)),
      translation: [5, 0, 0],
    } as const;
    const turned = corners(drawn(box.triangles, quarter));
    // A block of 3 x 2 x 1 rolled a quarter is 3 x 1 x 2; whole numbers and halves are exact in float32.
    for (const { position, normal, flat } of turned) {
      expect([Math.abs(position[0] - 5), Math.abs(position[1]), Math.abs(position[2])]).toEqual([
        1.5, 0.5, 1,
      ]);
      expect(dot(normal, flat)).toBeCloseTo(Math.hypot(...flat), 12);
    }
    expect(drawn(box.triangles.slice(0, 33)).triangles.length).toBe(33);
    // A hole of the same mesh faces inward: its enclosed volume is -6.
    const hole = drawn(box.triangles, undefined, -1);
    const inward = { ...hole, positions: Float64Array.from(hole.positions) };
    expect(meshVolumeMoments(inward, createMoments())[M]).toBeCloseTo(-6, 12);
  });

  it('too few segments are a programmer’s fault', () => {
    expect(() => tessellate([pin], { segmentsPerTurn: 8 })).toThrow(/segmentsPerTurn/);
    expect(() => tessellate([pin], { segmentsPerTurn: 24.5 })).toThrow(/segmentsPerTurn/);
  });
});

describe('silhouettes on the pitch dial', () => {
  it('a pin along z is a rectangle, along x a circle', () => {
    const upright = silhouettes([pin], translation(0, 3, 0))[0].outline;
    expect(upright.length).toBe(4);
    const width = upright.map(([y]) => y);
    expect([Math.min(...width), Math.max(...width)]).toEqual([2, 4]);
    const outboard = silhouettes([pin], facingOutboard(0, 0, 0))[0].outline;
    expect(outboard.length).toBe(32);
    for (const [y, z] of outboard) expect(Math.hypot(y, z)).toBeCloseTo(1, 12);
  });

  it('turns with the pitch', () => {
    const pitch = {
      rotation: rotationAboutX(radiansFromDegrees(30)),
      translation: [0, 0, 0],
    } as const;
    const [{ outline }] = silhouettes([pin], pitch);
    // The middle of the top of the pin: y = -4 sin 30, z = 4 cos 30; its rim reaches sin 30 higher.
    expect(Math.max(...outline.map(([, z]) => z))).toBeCloseTo(4 * Math.cos(Math.PI / 6) + 0.5, 12);
  });

  it('a given mesh throws the shadow of its own points, placed by the solid and then by the part', () => {
    const box = boxMesh(3, 2, 1);
    const tilt = radiansFromDegrees(30);
    const pose = translation(7, 4, 0);
    const inPart = { rotation: rotationAboutX(tilt), translation: [0, 1, 2] } as const;
    for (const shape of [
      { shape: 'mesh', ...box },
      { shape: 'known', picture: box, moments: createMoments() },
    ] as const) {
      const [{ outline }] = silhouettes([{ name: 'box', density: 1, shape, pose: inPart }], pose);
      // Plane geometry: a 2 x 1 rectangle tilted by 30 degrees about (5, 2).
      const wide = 2 * Math.cos(tilt) + Math.sin(tilt);
      const tall = 2 * Math.sin(tilt) + Math.cos(tilt);
      const ys = outline.map(([y]) => y);
      const zs = outline.map(([, z]) => z);
      expect(Math.min(...ys)).toBeCloseTo(5 - wide / 2, 12);
      expect(Math.max(...ys)).toBeCloseTo(5 + wide / 2, 12);
      expect(Math.min(...zs)).toBeCloseTo(2 - tall / 2, 12);
      expect(Math.max(...zs)).toBeCloseTo(2 + tall / 2, 12);
    }
  });

  it('the shadow of a given mesh reaches as far every way as its welded surface', () => {
    const shape = { shape: 'mesh', ...ballMesh(1, 40) } as const;
    const pose = {
      rotation: rotationAboutX(radiansFromDegrees(11)),
      translation: [1, 2, 3],
    } as const;
    const lying = facingOutboard(0.3, 0.2, 0.1);
    const solid: Solid = { name: 'ball', density: 1, shape, pose: lying };
    const [{ outline }] = silhouettes([solid], pose);
    const [{ positions }] = weldedMeshes([solid]);
    for (let k = 0; k < 64; k++) {
      const [c, s] = [Math.cos((k * Math.PI) / 32), Math.sin((k * Math.PI) / 32)];
      let furthest = -Infinity;
      for (let i = 0; i < positions.length / 3; i++) {
        const [, y, z] = transformPoint(pose, at(positions, i));
        furthest = Math.max(furthest, c * y + s * z);
      }
      const reach = Math.max(...outline.map(([y, z]) => c * y + s * z));
      // Lengths up to 5, a dozen roundings of 2^-53 each: below 1e-14.
      expect(Math.abs(reach - furthest)).toBeLessThan(1e-14);
    }
  });

  it('a hull keeps corners only, counter-clockwise', () => {
    const square = [
      [0, 0],
      [1, 0],
      [0.5, 0.5],
      [1, 1],
      [0, 1],
      [0.5, 0],
      [0, 0.5],
    ] as const;
    expect(convexHull(square)).toEqual([
      [0, 0],
      [1, 0],
      [1, 1],
      [0, 1],
    ]);
  });
});
