import { describe, expect, it } from 'vitest';
import { boxMesh } from '../../support/meshes';
import { checked } from './checked';

const block = boxMesh(2, 10, 6);

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

  it('is cracked by an edge that is open, and by one that too many triangles share', async () => {
    // Fins on a closed block: one on two of its edges, one on a single edge and out to a point of its own.
    const finned = {
      positions: Float64Array.of(...block.positions, 0, 0, 50),
      triangles: Uint32Array.of(...block.triangles, 1, 5, 4, 0, 2, 8),
    };
    const { report } = await checked(finned);
    expect(report).toMatchObject({ verdict: 'cracked', openEdges: 3, unorientedEdges: 3 });
    // A wall in it, all of whose edges are the block's: none is open.
    const walled = { ...block, triangles: Uint32Array.of(...block.triangles, 1, 5, 4, 4, 1, 0) };
    expect((await checked(walled)).report).toMatchObject({ verdict: 'cracked' });
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
});
