import type { TriangleMesh } from '../engine/mass/solid';

/**
 * Binary STL of triangle surfaces, one after another: `scale` times their coordinates, as float32, with the normal of
 * each triangle. The header is 80 characters of ASCII and does not begin with "solid", which some readers take for
 * text. Surfaces that touch are not joined.
 */
export function writeStl(
  meshes: readonly TriangleMesh[],
  scale: number,
  title: string,
): Uint8Array {
  const count = meshes.reduce((sum, mesh) => sum + mesh.triangles.length / 3, 0);
  const bytes = new Uint8Array(84 + 50 * count);
  const view = new DataView(bytes.buffer);
  const header = `STL ${title.replace(/[^ -~]/g, '?')}`.slice(0, 80);
  for (let i = 0; i < 80; i++) bytes[i] = i < header.length ? header.charCodeAt(i) : 32;
  view.setUint32(80, count, true);
  let at = 84;
  for (const { positions: p, triangles } of meshes) {
    for (let t = 0; t < triangles.length; t += 3) {
      const corners = [3 * triangles[t], 3 * triangles[t + 1], 3 * triangles[t + 2]];
      const normal = unitNormal(p, corners);
      for (let k = 0; k < 3; k++) view.setFloat32(at + 4 * k, normal[k], true);
      corners.forEach((corner, c) => {
        for (let k = 0; k < 3; k++) {
          view.setFloat32(at + 12 + 12 * c + 4 * k, scale * p[corner + k], true);
        }
      });
      at += 50;
    }
  }
  return bytes;
}

function unitNormal(p: Float64Array, [i, j, k]: readonly number[]): readonly number[] {
  const [ux, uy, uz] = [p[j] - p[i], p[j + 1] - p[i + 1], p[j + 2] - p[i + 2]];
  const [vx, vy, vz] = [p[k] - p[i], p[k + 1] - p[i + 1], p[k + 2] - p[i + 2]];
  const n = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
  const size = Math.hypot(n[0], n[1], n[2]) || 1;
  return n.map((value) => value / size);
}
