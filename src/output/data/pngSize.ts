import { crc32 } from '../share/crc32';

/** Length, type, nine bytes and check sum of the chunk. */
const CHUNK = 21;
/** Signature and IHDR, which comes first. */
const HEAD = 33;

/**
 * The PNG with its size on paper in it (chunk pHYs, PNG specification 11.3.5.3): pixels a metre, both ways. What browsers
 * write has none. Bytes that are no PNG come back as they are.
 */
export function withDensity(png: Uint8Array, pixelsPerMetre: number): Uint8Array {
  if (png.length < HEAD || png[1] !== 0x50 || png[2] !== 0x4e || png[3] !== 0x47) return png;
  const out = new Uint8Array(png.length + CHUNK);
  out.set(png.subarray(0, HEAD));
  out.set(png.subarray(HEAD), HEAD + CHUNK);
  const view = new DataView(out.buffer);
  view.setUint32(HEAD, 9);
  out.set([0x70, 0x48, 0x59, 0x73], HEAD + 4);
  view.setUint32(HEAD + 8, Math.round(pixelsPerMetre));
  view.setUint32(HEAD + 12, Math.round(pixelsPerMetre));
  out[HEAD + 16] = 1;
  view.setUint32(HEAD + 17, crc32(out.subarray(HEAD + 4, HEAD + 17)));
  return out;
}
