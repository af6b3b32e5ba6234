import type { TriangleMesh } from '../../engine/mass/solid';
import { fail, type Result, succeed } from '../../engine/result';

/**
 * The picture of a mesh as text for a design file: base64 of, little-endian, "SGP1", point count and triangle count
 * (uint32), 4 bytes of zero, the middle of the box (3 x float64), points from there (float32 triples), corners
 * (uint16 triples: there are at most 60000 points). Points are rounded by at most 2^-24 of their distance from the
 * middle.
 */
export const MAX_PICTURE_TRIANGLES = 20_000;
/** Three points to a triangle at most: 40 + 60000 x 12 + 20000 x 6 bytes in base64. */
export const MAX_PICTURE_TEXT = 1_120_060;

const MAGIC = 0x31504753;
const HEAD = 40;

/** Throws when there are too many triangles: a programmer's fault. */
export function packPicture({ positions, triangles }: TriangleMesh): string {
  const points = positions.length / 3;
  const count = triangles.length / 3;
  if (count > MAX_PICTURE_TRIANGLES || points > 3 * MAX_PICTURE_TRIANGLES) {
    throw new RangeError(`packPicture(): has too many triangles: ${count}`);
  }
  const middle = middleOf(positions);
  const indexAt = HEAD + 12 * points;
  const bytes = new Uint8Array(indexAt + 6 * count);
  const view = new DataView(bytes.buffer);
  view.setUint32(0, MAGIC, true);
  view.setUint32(4, points, true);
  view.setUint32(8, count, true);
  for (let k = 0; k < 3; k++) view.setFloat64(16 + 8 * k, middle[k], true);
  positions.forEach((value, i) => view.setFloat32(HEAD + 4 * i, value - middle[i % 3], true));
  triangles.forEach((value, i) => view.setUint16(indexAt + 2 * i, value, true));
  let text = '';
  for (let at = 0; at < bytes.length; at += 8192) {
    text += String.fromCharCode(...bytes.subarray(at, at + 8192));
  }
  return btoa(text);
}

function middleOf(positions: Float64Array): [number, number, number] {
  const low = [Infinity, Infinity, Infinity];
  const high = [-Infinity, -Infinity, -Infinity];
  positions.forEach((value, i) => {
    if (value < low[i % 3]) low[i % 3] = value;
    if (value > high[i % 3]) high[i % 3] = value;
  });
  return [(low[0] + high[0]) / 2, (low[1] + high[1]) / 2, (low[2] + high[2]) / 2];
}

/** The mesh of a packed picture, in file units; else what is wrong, completing "because it ...". */
export function unpackPicture(text: string): Result<TriangleMesh, string> {
  if (text.length > MAX_PICTURE_TEXT) return fail(`is longer than ${MAX_PICTURE_TEXT} letters`);
  const bytes = decode(text);
  if (!bytes) return fail('is not base64 text');
  const view = new DataView(bytes.buffer);
  if (bytes.length < HEAD || view.getUint32(0, true) !== MAGIC) {
    return fail('is not a packed picture of a mesh');
  }
  const points = view.getUint32(4, true);
  const count = view.getUint32(8, true);
  if (count === 0 || count > MAX_PICTURE_TRIANGLES) return fail(`has ${count} triangles`);
  const size = HEAD + 12 * points + 6 * count;
  if (points > 3 * MAX_PICTURE_TRIANGLES || bytes.length !== size) {
    return fail(`has ${bytes.length} bytes where ${size} are needed`);
  }
  const middle = [0, 1, 2].map((k) => view.getFloat64(16 + 8 * k, true));
  const positions = new Float64Array(3 * points);
  for (let i = 0; i < positions.length; i++) {
    positions[i] = middle[i % 3] + view.getFloat32(HEAD + 4 * i, true);
    if (!Number.isFinite(positions[i])) return fail('has a point that is not a number');
  }
  const triangles = new Uint32Array(3 * count);
  for (let i = 0; i < triangles.length; i++) {
    triangles[i] = view.getUint16(HEAD + 12 * points + 2 * i, true);
    if (triangles[i] >= points) return fail(`names point ${triangles[i]} of ${points}`);
  }
  return succeed({ positions, triangles });
}

function decode(text: string): Uint8Array | null {
  if (text.length % 4 !== 0 || /[^A-Za-z0-9+/=]/.test(text)) return null;
  let letters: string;
  try {
    letters = atob(text);
  } catch {
    return null;
  }
  return Uint8Array.from(letters, (letter) => letter.charCodeAt(0));
}
