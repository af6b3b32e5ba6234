import type { MeshNote } from '../types';
import { PointPool } from './pointPool';
import { checkCoordinate, checkTriangleCount, malformed, reader } from './signal';

const HEADER = 84;
const RECORD = 50;

/** Whether the length is to the byte what the claimed number of triangles takes. */
export function fitsBinaryStl(bytes: Uint8Array): boolean {
  return bytes.length >= HEADER && bytes.length === HEADER + RECORD * claimedTriangles(bytes);
}

function claimedTriangles(bytes: Uint8Array): number {
  return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength).getUint32(80, true);
}

/**
 * Binary STL (the layout is common practice; there is no standard): 80 bytes of header, the number of triangles as
 * uint32, then 50 bytes each: normal, three corners as float32, little-endian, and two bytes of attribute. Normals are
 * not read: the order of the corners says which way a triangle faces. Bytes after the last triangle are noted.
 */
export const readStlBinary = reader((bytes, progress) => {
  if (bytes.length < HEADER) {
    malformed('stlBinary', `has ${bytes.length} bytes, less than the ${HEADER} of an STL header`);
  }
  const count = claimedTriangles(bytes);
  const room = Math.floor((bytes.length - HEADER) / RECORD);
  if (count > room) {
    malformed('stlBinary', `claims ${count} triangles but ends after ${room}`);
  }
  checkTriangleCount(count, 'stlBinary');
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const pool = new PointPool();
  const triangles = new Uint32Array(3 * count);
  for (let t = 0; t < count; t++) {
    if ((t & 0xffff) === 0) progress(t / count);
    for (let k = 0; k < 3; k++) {
      const at = HEADER + RECORD * t + 12 + 12 * k;
      triangles[3 * t + k] = pool.add(
        coordinate(view, at, t),
        coordinate(view, at + 4, t),
        coordinate(view, at + 8, t),
      );
    }
  }
  const rest = bytes.length - HEADER - RECORD * count;
  const notes: MeshNote[] = rest > 0 ? [{ kind: 'trailingBytes', bytes: rest }] : [];
  return { positions: pool.toArray(), triangles, pooled: true, notes };
});

function coordinate(view: DataView, at: number, triangle: number): number {
  return checkCoordinate(view.getFloat32(at, true), 'stlBinary', () => `triangle ${triangle + 1}`);
}
