import fc from 'fast-check';
import { Vector3 } from 'three';
import { describe, expect, it } from 'vitest';
import { partType } from '../../src/parts/registry';
import { weldedMeshes } from '../../src/parts/tessellate';
import { surfaceDeviation } from '../../src/parts/tessellation/deviation';
import { BruteMesh } from '../engine/clearance/bruteForce';
import { validValues } from './sample';

/** Sixteen times as many steps: 256 times nearer to the true surface. */
const FINER = 16;

describe('how far triangles lie from the true surface', () => {
  it.each(['bolt', 'nut', 'washer', 'weight', 'grip', 'pitchArm', 'pitchLink', 'bearing', 'blade'])(
    'is no more than is said, at any corner of a far finer mesh: %s (nearest points by three-mesh-bvh)',
    (kind) => {
      let compared = 0;
      for (const values of fc.sample(validValues(kind), { seed: 3, numRuns: 4 })) {
        for (const solid of partType(kind).solids(values as never)) {
          if (!('density' in solid) || solid.density < 0) continue;
          const segmentsPerTurn = 24;
          const said = surfaceDeviation(solid, segmentsPerTurn);
          const [coarse] = weldedMeshes([solid], { segmentsPerTurn });
          const fine = weldedMeshes([solid], { segmentsPerTurn: FINER * segmentsPerTurn })[0];
          const mesh = new BruteMesh(coarse);
          const point = new Vector3();
          let most = 0;
          const step = 3 * Math.max(1, Math.floor(fine.positions.length / 3 / 1500));
          for (let i = 0; i < fine.positions.length; i += step) {
            point.fromArray(fine.positions, i);
            most = Math.max(most, mesh.bvh.closestPointToPoint(point)?.distance ?? 0);
          }
          // Boxes of the other hand are kept in single precision.
          expect(most, `${kind} ${solid.name}`).toBeLessThanOrEqual(
            said + 1e-9 + 2e-7 * point.length(),
          );
          compared++;
        }
      }
      expect(compared).toBeGreaterThan(3);
    },
  );
});
