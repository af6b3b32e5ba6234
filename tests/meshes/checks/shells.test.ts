import { describe, expect, it } from 'vitest';
import { meshVolumeMoments } from '../../../src/engine/mass/mesh';
import { createMoments, M } from '../../../src/engine/mass/moments';
import type { TriangleMesh } from '../../../src/engine/mass/solid';
import { translation } from '../../../src/engine/math/pose';
import type { Vec3 } from '../../../src/engine/math/vector';
import { cleanMesh } from '../../../src/meshes/checks/clean';
import { buildEdges } from '../../../src/meshes/checks/edges';
import { orientMesh } from '../../../src/meshes/checks/shells';
import { boxMesh, joinedMesh, movedMesh } from '../../support/meshes';

function oriented(mesh: TriangleMesh) {
  const table = buildEdges(mesh.triangles, mesh.positions.length / 3);
  const found = orientMesh(mesh.positions, mesh.triangles, table);
  const turned = { ...mesh, triangles: found.triangles };
  const volume = meshVolumeMoments(turned, createMoments())[M];
  // The table that goes with what was turned, whatever was given.
  expect(found.edges).toEqual(buildEdges(found.triangles, mesh.positions.length / 3));
  return { ...found, volume };
}
function at(mesh: TriangleMesh, x: number, y = 0, z = 0): TriangleMesh {
  return movedMesh(mesh, translation(x, y, z));
}
/** Some of the triangles of a mesh turned over. */
function over(mesh: TriangleMesh, which: (t: number) => boolean = () => true): TriangleMesh {
  const triangles = mesh.triangles.map((v, i, all) => {
    const t = Math.floor(i / 3);
    return which(t) && i % 3 > 0 ? all[3 * t + 3 - (i % 3)] : v;
  });
  return { ...mesh, triangles };
}

const cube = boxMesh(10, 10, 10);
const small = boxMesh(2, 2, 2);

describe('triangles are turned to agree', () => {
  it.each([1, 2, 3, 4, 5, 6])('the lesser number of them: %d of twelve', (count) => {
    for (const first of [0, 4, 12 - count]) {
      const found = oriented(over(at(cube, 3, 4, 5), (t) => t >= first && t < first + count));
      expect(found.flippedTriangles).toBe(count);
      expect(found.volume).toBeCloseTo(1000, 9);
      expect(found.edges.unorientedEdges).toBe(0);
      // Six of twelve: which half is right only the volume tells.
      expect(found.turnedInsideOut).toBe(count === 6 && found.turnedInsideOut);
    }
  });

  it('of more than a half the others are turned, and then all', () => {
    const found = oriented(over(cube, (t) => t > 3));
    expect(found).toMatchObject({ flippedTriangles: 4, turnedInsideOut: true, shellsTurned: 0 });
    expect(found.volume).toBeCloseTo(1000, 9);
  });

  it('shell by shell, and what agrees is left as it was', () => {
    const found = oriented(
      joinedMesh(
        cube,
        over(at(cube, 20), (t) => t === 5),
        over(at(cube, 40), (t) => t < 2),
      ),
    );
    expect(found).toMatchObject({
      flippedTriangles: 3,
      shells: 3,
      shellsTurned: 0,
      turnedInsideOut: false,
    });
    expect(found.volume).toBeCloseTo(3000, 9);
    const table = buildEdges(cube.triangles, 8);
    const same = orientMesh(cube.positions, cube.triangles, table);
    expect(same.triangles).toEqual(cube.triangles);
    expect(same.triangles).not.toBe(cube.triangles);
    expect(same.edges).toBe(table);
  });

  it('an open surface too, for what its edges tell', () => {
    const half = { ...cube, triangles: cube.triangles.slice(0, 18) };
    const found = oriented(over(half, (t) => t === 2));
    expect(found.flippedTriangles).toBe(1);
    expect(found.edges.unorientedEdges).toBe(0);
  });
});

describe('shells are turned outward', () => {
  it('all, where the whole is inside out, wherever it lies', () => {
    for (const far of [0, 1, -1]) {
      const found = oriented(over(at(cube, 30 * far, 40 * far, 50 * far)));
      expect(found).toMatchObject({
        turnedInsideOut: true,
        shellsTurned: 0,
        shells: 1,
        flippedTriangles: 0,
      });
      expect(found.volume).toBeCloseTo(1000, 9);
    }
  });

  it('one alone, where no other encloses it', () => {
    const found = oriented(joinedMesh(cube, over(at(small, 20))));
    expect(found).toMatchObject({
      turnedInsideOut: false,
      shellsTurned: 1,
      cavities: 0,
      shells: 2,
    });
    expect(found.volume).toBeCloseTo(1008, 9);
    const first = oriented(joinedMesh(over(at(small, 20)), cube));
    expect(first).toMatchObject({ turnedInsideOut: false, shellsTurned: 1, cavities: 0 });
    expect(first.volume).toBeCloseTo(1008, 9);
  });

  it('and one that is right in a surface that is inside out', () => {
    const found = oriented(joinedMesh(over(cube), at(small, 20)));
    expect(found).toMatchObject({ turnedInsideOut: true, shellsTurned: 1, cavities: 0, shells: 2 });
    expect(found.volume).toBeCloseTo(1008, 9);
  });

  it('but a cavity stays one, in a surface either way round', () => {
    const hollow = joinedMesh(cube, over(at(small, 1, 2, 3)));
    for (const mesh of [hollow, joinedMesh(over(at(small, 1, 2, 3)), cube)]) {
      const found = oriented(mesh);
      expect(found).toMatchObject({
        turnedInsideOut: false,
        cavities: 1,
        shellsTurned: 0,
        shells: 2,
      });
      expect(found.volume).toBeCloseTo(992, 9);
    }
    const inside = oriented(over(hollow));
    expect(inside).toMatchObject({ turnedInsideOut: true, cavities: 1, shellsTurned: 0 });
    expect(inside.volume).toBeCloseTo(992, 9);
  });

  const BEYOND: readonly Vec3[] = [
    [4.5, 1, 2],
    [-4.5, -1, 2],
    [1, 9.5, -2],
    [1, -9.5, 2],
    [-1, 2, 14.5],
    [1, 2, -14.5],
  ];
  it.each(BEYOND)('what reaches beyond the box of the other is no cavity: %d %d %d', (...place) => {
    const outer = boxMesh(10, 20, 30);
    const found = oriented(joinedMesh(outer, over(at(small, ...place))));
    expect(found).toMatchObject({ cavities: 0, shellsTurned: 1 });
    const [x, y, z] = place.map((value) => value - Math.sign(value) * (value % 1 === 0 ? 0 : 0.5));
    expect(oriented(joinedMesh(outer, over(at(small, x, y, z))))).toMatchObject({
      cavities: 1,
      shellsTurned: 0,
    });
  });

  it('a cavity may lie where a single corner of the body reaches', () => {
    const peak = {
      positions: Float64Array.of(0, 0, 0, 20, 0, 0, 0, 0, 20, 5, 30, 5),
      triangles: Uint32Array.of(0, 1, 2, 0, 3, 1, 1, 3, 2, 2, 3, 0),
    };
    const found = oriented(joinedMesh(peak, over(at(small, 5, 10, 5))));
    expect(found).toMatchObject({ cavities: 1, shellsTurned: 0, turnedInsideOut: false });
  });

  it('a cavity is found in the largest of a hundred bodies, whichever comes first', () => {
    const bodies = Array.from({ length: 100 }, (_, k) => at(small, 40 + 3 * k));
    const hollow = [cube, over(boxMesh(1, 1, 1))];
    for (const meshes of [
      [...bodies, ...hollow],
      [...hollow, ...bodies],
    ]) {
      expect(oriented(joinedMesh(...meshes))).toMatchObject({ cavities: 1, shellsTurned: 0 });
      expect(oriented(over(joinedMesh(...meshes)))).toMatchObject({ cavities: 1, shellsTurned: 0 });
    }
  });

  it('a cavity may lie in any of many bodies, not in another cavity', () => {
    const bodies = Array.from({ length: 5 }, (_, k) => at(boxMesh(10 - k, 10 - k, 10 - k), 20 * k));
    const found = oriented(joinedMesh(...bodies, ...bodies.map((_, k) => over(at(small, 20 * k)))));
    expect(found).toMatchObject({ cavities: 5, shellsTurned: 0, shells: 10 });
    const nested = oriented(joinedMesh(cube, over(at(boxMesh(4, 4, 4), 20)), over(at(small, 20))));
    expect(nested).toMatchObject({ cavities: 0, shellsTurned: 2 });
    const flat = oriented(joinedMesh(cube, at(boxMesh(1, 1, 0), 20)));
    expect(flat).toMatchObject({ cavities: 0, shellsTurned: 0, shells: 2 });
  });

  it('pieces that meet in crowded edges are one shell, in whatever order they come', () => {
    // With points of the same place made one, each two share an edge of four triangles.
    const { positions, triangles } = cleanMesh(
      joinedMesh(cube, at(cube, 10, 10), at(cube, 20, 20)),
    );
    const found = oriented({ positions, triangles });
    expect(found).toMatchObject({ shells: 1, flippedTriangles: 0, shellsTurned: 0 });
    expect(found.edges.crowdedEdges).toBe(2);
    expect(found.volume).toBeCloseTo(3000, 9);
    const reordered = Uint32Array.of(...triangles.slice(72), ...triangles.slice(0, 72));
    const apart = joinedMesh({ positions, triangles: reordered }, at(small, 99));
    expect(oriented(apart)).toMatchObject({ shells: 2, shellsTurned: 0 });
  });

  it('triangles of one shell may lie anywhere among those of others', () => {
    const { positions, triangles } = joinedMesh(cube, at(small, 20), at(small, 30));
    const last = Uint32Array.of(...triangles.slice(3), ...triangles.slice(0, 3));
    const mixed = oriented(over({ positions, triangles: last }, (t) => t < 11 || t === 35));
    expect(mixed).toMatchObject({ shells: 3, turnedInsideOut: true, shellsTurned: 2, cavities: 0 });
    expect(mixed.volume).toBeCloseTo(1016, 9);
  });

  it('a surface with one side only stays as it is', () => {
    // Five triangles with one half twist: the least that a Moebius band can have.
    const triangles = Uint32Array.of(0, 1, 2, 1, 2, 3, 2, 3, 4, 3, 4, 0, 4, 0, 1);
    const positions = Float64Array.from({ length: 15 }, (_, i) => 10 * Math.sin(i * i + 1));
    expect(oriented({ positions, triangles }).edges.unorientedEdges).toBeGreaterThan(0);
  });

  it('without triangles there is no shell', () => {
    expect(
      oriented({ positions: new Float64Array(0), triangles: new Uint32Array(0) }),
    ).toMatchObject({
      shells: 0,
      cavities: 0,
      turnedInsideOut: false,
    });
  });
});
