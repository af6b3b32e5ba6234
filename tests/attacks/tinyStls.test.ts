import { describe, expect, it } from 'vitest';
import { importMesh } from '../../src/meshes/importMesh';
import { meshFaultText } from '../../src/panels/import/meshReportText';
import { TINY_STLS } from './tinyStls';

/** Of the tetrahedron of F. Tonon, J. Math. Stat. 1(1), 2004: |det| of its edges / 6, by hand. */
function volumeByHand(): number {
  const [a, b, c, d] = [
    [8.3322, -11.86875, 0.93355],
    [0.75523, 5, 16.37072],
    [52.61236, 5, -5.3858],
    [2, 5, 3],
  ];
  const [u, v, w] = [b, c, d].map((p) => p.map((value, k) => value - a[k]));
  const cross = [v[1] * w[2] - v[2] * w[1], v[2] * w[0] - v[0] * w[2], v[0] * w[1] - v[1] * w[0]];
  return Math.abs(u[0] * cross[0] + u[1] * cross[1] + u[2] * cross[2]) / 6;
}

describe('a small STL of a kind that loaders stumble over', () => {
  it('is there in more than forty kinds', () => {
    expect(new Set(TINY_STLS.map(({ name }) => name)).size).toBe(TINY_STLS.length);
    expect(TINY_STLS.filter(({ must }) => must === 'read').length).toBeGreaterThanOrEqual(40);
  });

  it.each(TINY_STLS)('is read whole, or refused in words: $name', async ({ bytes, must }) => {
    const read = await importMesh('a.stl', bytes, () => {});
    if (must !== 'read') {
      expect(read.ok).toBe(false);
      if (!read.ok) expect(meshFaultText(read.error)).toMatch(must.refuse);
      return;
    }
    expect(read).toMatchObject({ ok: true, value: { report: { triangles: 4, verdict: 'sound' } } });
    // float32 keeps a coordinate to 2^-24 of itself: 1e-6 of the volume covers three of them and the sum.
    const { volume } = (read as Extract<typeof read, { ok: true }>).value.report;
    expect(Math.abs((volume as number) / volumeByHand() - 1)).toBeLessThan(1e-6);
  });
});
