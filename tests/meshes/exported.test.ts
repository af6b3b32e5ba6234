import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { meshVolumeMoments } from '../../src/engine/mass/mesh';
import { accumulate, createMoments, JXX, M } from '../../src/engine/mass/moments';
import { solidMoments } from '../../src/engine/mass/weigh';
import { writeStl } from '../../src/meshes/writeStl';
import { partType } from '../../src/parts/registry';
import { weldedMeshes } from '../../src/parts/tessellate';
import { defaults } from '../parts/sample';
import { importOf } from './files';

const folder = new URL('../../assets/designs/', import.meta.url);
const files = readdirSync(folder).filter((file) => /^\d.*\.json$/.test(file));
const SEGMENTS = 48;

type PartJson = { readonly kind: string; readonly name?: string };

function partsOf(file: string): readonly PartJson[] {
  return JSON.parse(readFileSync(new URL(file, folder), 'utf8')).parts;
}

describe('the parts of the demo designs, written as STL and read in again', () => {
  it('were found', () => {
    expect(files.length).toBeGreaterThanOrEqual(5);
  });

  it.each(files)('%s: have the moments that are weighed', async (file) => {
    for (const part of partsOf(file)) {
      const values = { ...defaults(part.kind), ...part };
      const solids = partType(part.kind).solids(values as never);
      const meshes = weldedMeshes(solids, { segmentsPerTurn: SEGMENTS });
      if (meshes.some((mesh) => mesh.symbolic)) continue;
      const drawn = createMoments();
      const exact = createMoments();
      const one = createMoments();
      solids.forEach((solid, i) => {
        accumulate(drawn, meshVolumeMoments(meshes[i], one));
        const density = 'density' in solid ? Math.abs(solid.density) : 1;
        accumulate(exact, solidMoments(solid, one), 1 / density);
      });
      const { report, volumeMoments } = await importOf('part.stl', writeStl(meshes, 1000, 'part'));
      expect(report.weighable, part.kind).toBe(true);
      const back = (volumeMoments as number[]).map(
        (value, k) => value * 1e-3 ** (k === M ? 3 : k < JXX ? 4 : 5),
      );
      const reach = Math.hypot(
        ...report.low.map((low, k) => Math.max(Math.abs(low), Math.abs(report.high[k])) / 1000),
      );
      let area = 0;
      for (const mesh of meshes) area += areaOf(mesh);
      // float32 moves every point by up to 2^-24 of its distance, each face with it.
      const moved = area * reach * 2 ** -23;
      // A circle of n chords loses (2 pi / n)^2 / 6 of its area; bores lose as much the other way.
      const loss = ((2 * Math.PI) / SEGMENTS) ** 2 / 6;
      const chords = 2 * loss * meshes.reduce((sum, mesh) => sum + areaOf(mesh) * reach, 0);
      for (let k = 0; k < back.length; k++) {
        const arm = k === M ? 1 : k < JXX ? reach : reach * reach;
        const name = `${part.kind} ${k}`;
        expect(Math.abs(back[k] - drawn[k]), name).toBeLessThanOrEqual(3 * moved * arm);
        expect(Math.abs(back[k] - exact[k]), name).toBeLessThanOrEqual((chords + 3 * moved) * arm);
      }
      // The mass itself, tightly: bodies of the demos are round or plane.
      expect(Math.abs(back[M] / exact[M] - 1), part.kind).toBeLessThan(2.5 * loss);
    }
  });
});

function areaOf({ positions: p, triangles }: { positions: Float64Array; triangles: Uint32Array }) {
  let area = 0;
  for (let t = 0; t < triangles.length; t += 3) {
    const [i, j, k] = [3 * triangles[t], 3 * triangles[t + 1], 3 * triangles[t + 2]];
    const u = [0, 1, 2].map((n) => p[j + n] - p[i + n]);
    const v = [0, 1, 2].map((n) => p[k + n] - p[i + n]);
    area +=
      Math.hypot(u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]) /
      2;
  }
  return area;
}
