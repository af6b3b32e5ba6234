import { crc32, deflateSync } from 'node:zlib';

/** A chunk of a PNG: its type of four letters and what it holds. */
export type PngChunk = readonly [type: string, data: Uint8Array];

const SIGNATURE = Buffer.from('89504e470d0a1a0a', 'hex');

/** A PNG of chunks, with lengths and check sums (PNG specification, ISO/IEC 15948, 5.2 and 5.3) by Node's own zlib. */
export function png(chunks: readonly PngChunk[]): Uint8Array {
  const pieces = chunks.map(([type, data]) => {
    const body = Buffer.concat([Buffer.from(type, 'latin1'), data]);
    const [size, sum] = [Buffer.alloc(4), Buffer.alloc(4)];
    size.writeUInt32BE(data.length);
    sum.writeUInt32BE(crc32(body));
    return Buffer.concat([size, body, sum]);
  });
  return Uint8Array.from(Buffer.concat([SIGNATURE, ...pieces]));
}

/** One white pixel of eight bits of grey: IHDR, IDAT, IEND (11.2). */
export function pixelPng(): Uint8Array {
  return png([
    ['IHDR', Uint8Array.of(0, 0, 0, 1, 0, 0, 0, 1, 8, 0, 0, 0, 0)],
    ['IDAT', deflateSync(Uint8Array.of(0, 255))],
    ['IEND', new Uint8Array(0)],
  ]);
}

/** The chunks of a PNG. Throws where a length or a check sum is wrong by Node's own zlib. */
export function chunksOf(file: Uint8Array): PngChunk[] {
  const all = Buffer.from(file);
  const found: PngChunk[] = [];
  for (let at = SIGNATURE.length; at < all.length; ) {
    const size = all.readUInt32BE(at);
    const body = all.subarray(at + 4, at + 8 + size);
    if (body.length !== size + 4 || all.readUInt32BE(at + 8 + size) !== crc32(body)) {
      throw new Error(`chunksOf(): the chunk at ${at} is not whole`);
    }
    found.push([body.toString('latin1', 0, 4), body.subarray(4)]);
    at += 12 + size;
  }
  return found;
}
