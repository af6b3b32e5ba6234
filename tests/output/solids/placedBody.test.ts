import { WebIO } from '@gltf-transform/core';
import { describe, expect, it } from 'vitest';
import { rotationAboutZ } from '../../../src/engine/math/pose';
import { radiansFromDegrees } from '../../../src/engine/units';
import { glbFile } from '../../../src/output/solids/glbFile';
import { stlFile } from '../../../src/output/solids/stlFile';
import { bodyOf } from './heads';

const BOX = bodyOf('block', { sizeMm: [30, 20, 10] });

/** Corners of a STL's triangles and their stated normals, read from the bytes by the format's own description. */
function facetsOf(bytes: Uint8Array) {
  const view = new DataView(bytes.buffer, bytes.byteOffset);
  const triple = (at: number) => [0, 4, 8].map((k) => view.getFloat32(at + k, true));
  return Array.from({ length: view.getUint32(80, true) }, (_, t) => ({
    normal: triple(84 + 50 * t),
    corners: [12, 24, 36].map((k) => triple(84 + 50 * t + k)),
  }));
}

describe('a box in a file', () => {
  // The STL description: facet normals point outward, and the corners go round them by the right-hand rule.
  it('has outward unit normals in STL that agree with its corners', () => {
    const facets = facetsOf(stlFile([BOX], 'box', 'mm', 24));
    expect(facets.length).toBe(12);
    for (const { normal, corners } of facets) {
      const [a, b, c] = corners;
      const u = b.map((one, k) => one - a[k]);
      const v = c.map((one, k) => one - a[k]);
      const across = [
        u[1] * v[2] - u[2] * v[1],
        u[2] * v[0] - u[0] * v[2],
        u[0] * v[1] - u[1] * v[0],
      ];
      const size = Math.hypot(...across);
      across.forEach((one, k) => expect(one / size).toBeCloseTo(normal[k], 6));
      // The box lies about its middle, so every corner is on the outer side.
      const middle = [0, 1, 2].map((k) => facets.reduce((sum, one) => sum + one.corners[0][k], 0));
      const outward = a.reduce((sum, one, k) => sum + (one - middle[k] / 12) * normal[k], 0);
      expect(outward).toBeGreaterThan(0);
    }
  });

  // Turned by +30 degrees about z, x leans toward y: the corner at (+15, 0) of the long side goes to (13.0, +7.5).
  it('that is turned and moved is turned and moved that way in GLB, with Y up', async () => {
    const turn = rotationAboutZ(radiansFromDegrees(30));
    const pose = { rotation: turn, translation: [0.1, 0.02, 0.003] } as const;
    const document = await new WebIO().readBinary(glbFile([{ ...BOX, pose }], 'box', 24));
    const node = document
      .getRoot()
      .listNodes()
      .find((one) => one.getMesh());
    const m = node?.getWorldMatrix() ?? [];
    // Part axes in the file's world, where (x, y, z) stands at (x, z, -y): columns of the matrix.
    const half = 0.5;
    const root = Math.sqrt(3) / 2;
    const wanted = [root, 0, -half, 0, -half, 0, -root, 0, 0, 1, 0, 0, 0.1, 0.003, -0.02, 1];
    wanted.forEach((one, k) => expect(m[k]).toBeCloseTo(one, 12));
  });
});
