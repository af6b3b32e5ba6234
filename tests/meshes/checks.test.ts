import { describe, expect, it } from 'vitest';
import type { TriangleMesh } from '../../src/engine/mass/solid';
import { translation } from '../../src/engine/math/pose';
import { boxMesh, cylinderMesh, joinedMesh, movedMesh } from '../support/meshes';
import { importOf, objText } from './files';

const cube = boxMesh(10, 10, 10);

function reportOf(mesh: TriangleMesh) {
  return importOf('a.obj', objText(mesh)).then(({ report }) => report);
}
function moved(mesh: TriangleMesh, x: number, y = 0, z = 0): TriangleMesh {
  return movedMesh(mesh, translation(x, y, z));
}
function turned(mesh: TriangleMesh): TriangleMesh {
  return { ...mesh, triangles: mesh.triangles.toReversed() };
}

describe('the check of a mesh', () => {
  it('reports a cracked cube with the number of its open edges and does not weigh it', async () => {
    const cracked = { ...cube, triangles: cube.triangles.slice(3) };
    const { report, volumeMoments: moments } = await importOf('a.obj', objText(cracked));
    expect(report).toMatchObject({
      verdict: 'cracked',
      weighable: false,
      openEdges: 3,
      volume: null,
    });
    expect(moments).toBeNull();
  });

  it('turns a flipped neighbour over, says so, and then finds the exact volume', async () => {
    const [a, b, c, ...rest] = cube.triangles;
    const report = await reportOf({ ...cube, triangles: Uint32Array.of(a, c, b, ...rest) });
    expect(report).toMatchObject({
      verdict: 'sound',
      flippedTriangles: 1,
      openEdges: 0,
      volume: expect.closeTo(1000, 9),
    });
  });

  it('turns a surface that is inside out, as a whole or one shell of it', async () => {
    const inside = await reportOf(turned(cube));
    expect(inside).toMatchObject({
      verdict: 'sound',
      turnedInsideOut: true,
      volume: expect.closeTo(1000, 9),
    });
    const one = await reportOf(joinedMesh(boxMesh(20, 20, 20), turned(moved(cube, 50))));
    expect(one).toMatchObject({
      turnedInsideOut: false,
      shellsTurned: 1,
      cavities: 0,
      volume: expect.closeTo(9000, 9),
    });
  });

  it('leaves a cavity a cavity', async () => {
    const report = await reportOf(joinedMesh(boxMesh(20, 20, 20), turned(cube)));
    expect(report).toMatchObject({
      verdict: 'sound',
      shells: 2,
      cavities: 1,
      volume: expect.closeTo(7000, 9),
    });
  });

  it('finds that two cubes cross, and how much is counted twice', async () => {
    const report = await reportOf(joinedMesh(cube, moved(cube, 3, 4, 5)));
    expect(report).toMatchObject({
      verdict: 'crossing',
      weighable: true,
      volume: expect.closeTo(2000, 9),
      shells: 2,
    });
    expect(report.crossing.finished).toBe(true);
    expect(report.crossing.pairs).toBeGreaterThan(5);
    // The overlap is 7 x 6 x 5; rays stand 14 / 256 and 15 / 256 apart: half a spacing round its outline.
    const share = 14 / 256 / 6 + 15 / 256 / 5;
    expect(Math.abs((report.crossing.countedTwice as number) / 210 - 1)).toBeLessThan(share);
    expect(report.crossing.countedNegative).toBe(0);
  });

  it('finds a body within a body, which crosses nothing', async () => {
    const report = await reportOf(joinedMesh(boxMesh(20, 20, 20), cube));
    expect(report).toMatchObject({
      verdict: 'crossing',
      crossing: { pairs: 0 },
      volume: expect.closeTo(9000, 9),
    });
    expect((report.crossing.countedTwice as number) / 1000).toBeCloseTo(1, 1);
  });

  it('takes bodies that only touch, in a face or an edge, for sound', async () => {
    expect(await reportOf(joinedMesh(cube, moved(cube, 10)))).toMatchObject({
      verdict: 'sound',
      volume: expect.closeTo(2000, 9),
    });
    expect(await reportOf(joinedMesh(cube, moved(cube, 10, 10)))).toMatchObject({
      verdict: 'sound',
      crowdedEdges: 1,
      volume: expect.closeTo(2000, 9),
    });
  });

  // Found on an exported bolt: pieces between crowded edges were taken for shells and turned one by one.
  it('weighs a stack of bodies that share the whole rim of a face', async () => {
    const low = cylinderMesh(4, 10, 24);
    const top = moved(low, 0, 0, 10);
    const report = await reportOf(joinedMesh(low, top));
    const area = 24 * 0.5 * 16 * Math.sin((2 * Math.PI) / 24);
    expect(report).toMatchObject({
      verdict: 'sound',
      shells: 1,
      shellsTurned: 0,
      flippedTriangles: 0,
    });
    expect(report.volume).toBeCloseTo(area * 20, 9);
    expect(report.crowdedEdges).toBeGreaterThanOrEqual(24);
  });

  it('drops triangles without size and those written twice, and counts them', async () => {
    const extra = Uint32Array.of(...cube.triangles, 0, 0, 1, ...cube.triangles.slice(0, 3));
    const report = await reportOf({ ...cube, triangles: extra });
    expect(report).toMatchObject({
      verdict: 'sound',
      trianglesInFile: 14,
      triangles: 12,
      degenerateTriangles: 1,
      repeatedTriangles: 1,
    });
  });

  it('joins points over a crack of rounding, and no wider one', async () => {
    const split = (gap: number): TriangleMesh => {
      const corner = cube.triangles[0];
      const point = cube.positions.slice(3 * corner, 3 * corner + 3);
      return {
        positions: Float64Array.of(...cube.positions, point[0] + gap, point[1], point[2]),
        triangles: Uint32Array.of(8, ...cube.triangles.slice(1)),
      };
    };
    const hair = await reportOf(split(1e-5));
    expect(hair).toMatchObject({ verdict: 'sound', joinedPoints: 1, openEdges: 0 });
    expect(hair.weldTolerance).toBeGreaterThan(1e-5);
    expect(await reportOf(split(1e-3))).toMatchObject({ verdict: 'cracked', joinedPoints: 0 });
  });

  it('does not weigh a surface with one side only', async () => {
    // A band of five triangles with one half twist (the least a Moebius band can have), doubled shut is not possible.
    const positions = Float64Array.from({ length: 15 }, (_, i) => Math.sin(i * i + 1) * 10);
    const triangles = Uint32Array.of(0, 1, 2, 1, 2, 3, 2, 3, 4, 3, 4, 0, 4, 0, 1);
    const report = await reportOf({ positions, triangles });
    expect(report).toMatchObject({ verdict: 'cracked', openEdges: 5 });
    expect(report.unorientedEdges).toBeGreaterThan(0);
  });

  it('says that a grip of 30 m is probably one of 30 mm', async () => {
    const { importOf: read, glb } = await import('./files');
    const { report } = await read('grip.glb', await glb(boxMesh(30, 10, 5)));
    expect(report.unit.slip).toMatchObject({
      stated: { unit: 'm', sizeMm: 30_000 },
      likely: { unit: 'mm', sizeMm: 30 },
    });
    expect((await reportOf(boxMesh(0.03, 0.01, 0.005))).unit).toMatchObject({
      unit: 'm',
      because: 'size',
    });
  });
});
