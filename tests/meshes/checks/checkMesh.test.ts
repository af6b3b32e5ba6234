import { describe, expect, it } from 'vitest';
import type { TriangleMesh } from '../../../src/engine/mass/solid';
import { translation } from '../../../src/engine/math/pose';
import { checkMesh } from '../../../src/meshes/checkMesh';
import type { MeshProgress, RawMesh } from '../../../src/meshes/types';
import { boxMesh, joinedMesh, movedMesh } from '../../support/meshes';

async function checked(mesh: TriangleMesh, more: Partial<RawMesh> = {}) {
  const steps: MeshProgress[] = [];
  let rests = 0;
  const found = await checkMesh(
    { ...mesh, notes: [], ...more },
    'obj',
    (step) => steps.push(step),
    async () => {
      rests++;
    },
  );
  return { ...found, steps, rests };
}
function over(mesh: TriangleMesh): TriangleMesh {
  return { ...mesh, triangles: mesh.triangles.toReversed() };
}
const block = boxMesh(2, 10, 6);
const along = (mesh: TriangleMesh, x: number) => movedMesh(mesh, translation(x, 0, 0));

describe('the report of a mesh', () => {
  it('says everything of a sound one', async () => {
    const notes = [{ kind: 'trailingBytes', bytes: 3 }] as const;
    const { report, mesh, moments, steps, rests } = await checked(block, {
      notes,
      unitInFile: 'in',
    });
    expect(report).toEqual({
      format: 'obj',
      notes,
      verdict: 'sound',
      weighable: true,
      trianglesInFile: 12,
      triangles: 12,
      points: 8,
      degenerateTriangles: 0,
      repeatedTriangles: 0,
      flippedTriangles: 0,
      turnedInsideOut: false,
      shellsTurned: 0,
      joinedPoints: 0,
      weldTolerance: 0,
      shells: 1,
      cavities: 0,
      openEdges: 0,
      crowdedEdges: 0,
      unorientedEdges: 0,
      crossing: { pairs: 0, finished: true, countedTwice: 0, countedNegative: 0 },
      low: [-1, -5, -3],
      high: [1, 5, 3],
      unit: expect.objectContaining({ unit: 'in', because: 'stated' }),
      volume: expect.closeTo(120, 9),
    });
    // The longest side is the second.
    expect(report.unit.readings.find(({ unit }) => unit === 'mm')?.sizeMm).toBe(10);
    expect(mesh.triangles).toHaveLength(36);
    expect(moments?.[0]).toBeCloseTo(120, 9);
    expect(steps).toEqual([
      { step: 'check', share: 0 },
      { step: 'check', share: 0.5 },
      { step: 'crossings' },
    ]);
    expect(rests).toBeGreaterThanOrEqual(3);
  });

  it('weighs nothing that does not close, is turned against itself or has no volume', async () => {
    const open = await checked({ ...block, triangles: block.triangles.slice(3) });
    expect(open.report).toMatchObject({
      verdict: 'cracked',
      weighable: false,
      volume: null,
      openEdges: 3,
    });
    expect(open.moments).toBeNull();
    // Two triangles back to back close, and hold nothing.
    const flat = await checked({ ...block, triangles: Uint32Array.of(0, 1, 2, 0, 2, 1) });
    expect(flat.report).toMatchObject({
      verdict: 'cracked',
      weighable: false,
      volume: null,
      openEdges: 0,
    });
    const none = await checked({ ...block, triangles: Uint32Array.of(0, 0, 1) });
    expect(none.report).toMatchObject({
      verdict: 'cracked',
      triangles: 0,
      crossing: { pairs: 0, finished: true, countedTwice: 0, countedNegative: 0 },
    });
    expect(none.moments).toBeNull();
  });

  it('counts the points that are left, those joined across a crack taken off', async () => {
    const split = {
      positions: Float64Array.of(...block.positions, -1 + 1e-6, -5, -3),
      triangles: block.triangles.with(block.triangles.indexOf(0), 8),
    };
    expect((await checked(split)).report).toMatchObject({
      points: 8,
      joinedPoints: 1,
      verdict: 'sound',
    });
  });

  it('calls crossing what is counted twice or negatively, and tells how much', async () => {
    const twice = await checked(joinedMesh(block, along(boxMesh(1, 2, 2), 0.25)));
    expect(twice.report).toMatchObject({
      verdict: 'crossing',
      weighable: true,
      crossing: { pairs: 0 },
    });
    // Inner walls at whole rays of the grid or beside them: to a spacing of its outline.
    expect(Math.abs((twice.report.crossing.countedTwice ?? 0) / 4 - 1)).toBeLessThan(
      10 / 256 / 2 + 6 / 256 / 2,
    );
    const through = await checked(joinedMesh(block, along(block, 0.5)));
    expect(through.report.verdict).toBe('crossing');
    expect(through.report.crossing.countedTwice).toBeCloseTo(90, 9);
    // A cavity in a cavity.
    const negative = await checked(
      joinedMesh(boxMesh(20, 20, 20), over(boxMesh(6, 6, 6)), over(boxMesh(4, 4, 4))),
    );
    expect(negative.report).toMatchObject({
      verdict: 'crossing',
      cavities: 2,
      crossing: { pairs: 0 },
    });
    expect((negative.report.crossing.countedNegative ?? 0) / 64).toBeCloseTo(1, 1);
  });

  it('calls sound what only touches, and a cavity', async () => {
    const touching = await checked(joinedMesh(block, along(block, 2)));
    expect(touching.report).toMatchObject({
      verdict: 'sound',
      volume: expect.closeTo(240, 9),
      shells: 1,
    });
    const hollow = await checked(joinedMesh(block, over(boxMesh(1, 1, 1))));
    expect(hollow.report).toMatchObject({
      verdict: 'sound',
      cavities: 1,
      volume: expect.closeTo(119, 9),
    });
  });
});
