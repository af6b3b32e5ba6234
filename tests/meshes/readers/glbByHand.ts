/** A GLB file put together byte by byte from its description (glTF 2.0, section 4.4), without any library. */
export function glbOf(json: object | string, bin?: Uint8Array, version = 2): Uint8Array {
  const text = new TextEncoder().encode(typeof json === 'string' ? json : JSON.stringify(json));
  const head = Math.ceil(text.length / 4) * 4;
  const body = bin ? 8 + bin.length : 0;
  const bytes = new Uint8Array(20 + head + body).fill(32, 20, 20 + head);
  const view = new DataView(bytes.buffer);
  bytes.set(new TextEncoder().encode('glTF'));
  view.setUint32(4, version, true);
  view.setUint32(8, bytes.length, true);
  view.setUint32(12, head, true);
  bytes.set(new TextEncoder().encode('JSON'), 16);
  bytes.set(text, 20);
  if (bin) {
    view.setUint32(20 + head, bin.length, true);
    bytes.set([0x42, 0x49, 0x4e, 0], 24 + head);
    bytes.set(bin, 28 + head);
  }
  return bytes;
}

/** Numbers as little-endian bytes. */
export function packed(
  write: 'setFloat32' | 'setUint16' | 'setInt16' | 'setUint32' | 'setUint8' | 'setInt8',
  numbers: readonly number[],
): number[] {
  const size = Number(write.replace(/\D/g, '')) / 8;
  const bytes = new Uint8Array(size * numbers.length);
  const view = new DataView(bytes.buffer);
  for (const [k, one] of numbers.entries()) view[write](size * k, one, true);
  return [...bytes];
}
