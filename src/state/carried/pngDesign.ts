import { fail } from '../../engine/result';
import { type CarriedText, MOST_CARRIED, PNG_KEYWORD, utf8 } from './carried';
import { crc32 } from './crc32';

/** Signature and IHDR, which comes first (PNG specification, ISO/IEC 15948, 5.2 and 11.2.2). */
const HEAD = 33;
const SIGNATURE = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];
/** Length, type and check sum of a chunk. */
const FRAME = 12;

/** Whether bytes begin as a PNG does. */
export function isPng(bytes: Uint8Array): boolean {
  return bytes.length >= HEAD && SIGNATURE.every((byte, k) => bytes[k] === byte);
}

/** The PNG with a chunk of any kind after its header. Bytes that are no PNG come back as they are. */
export function withChunk(png: Uint8Array, type: string, data: Uint8Array): Uint8Array {
  if (!isPng(png)) return png;
  const out = new Uint8Array(png.length + FRAME + data.length);
  out.set(png.subarray(0, HEAD));
  out.set(png.subarray(HEAD), HEAD + FRAME + data.length);
  const view = new DataView(out.buffer);
  view.setUint32(HEAD, data.length);
  out.set(new TextEncoder().encode(type), HEAD + 4);
  out.set(data, HEAD + 8);
  view.setUint32(HEAD + 8 + data.length, crc32(out.subarray(HEAD + 4, HEAD + 8 + data.length)));
  return out;
}

/** The PNG with a design's text in it (chunk iTXt, 11.3.3.4: keyword, not compressed, no language, UTF-8). */
export function pngWithDesign(png: Uint8Array, design: string): Uint8Array {
  const text = new TextEncoder().encode(design);
  const data = new Uint8Array(BEFORE_TEXT.length + text.length);
  data.set(BEFORE_TEXT);
  data.set(text, BEFORE_TEXT.length);
  return withChunk(png, 'iTXt', data);
}

/** Keyword, its end, "not compressed", method, ends of language and translated keyword. */
const BEFORE_TEXT = new TextEncoder().encode(`${PNG_KEYWORD}\0\0\0\0\0`);

/** Text of the design in a PNG: the first chunk of ours. Never throws; a damaged chunk is a damaged file. */
export function designInPng(bytes: Uint8Array): CarriedText {
  if (!isPng(bytes)) return fail({ kind: 'unreadable' });
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  for (let at = SIGNATURE.length; at + FRAME <= bytes.length; ) {
    const size = view.getUint32(at);
    const end = at + FRAME + size;
    if (end > bytes.length) return fail({ kind: 'unreadable' });
    const data = bytes.subarray(at + 8, at + 8 + size);
    if (view.getUint32(at + 4) === ITXT && BEFORE_TEXT.every((byte, k) => data[k] === byte)) {
      if (size > MOST_CARRIED) return fail({ kind: 'tooLarge', limit: MOST_CARRIED });
      const isSound = crc32(bytes.subarray(at + 4, at + 8 + size)) === view.getUint32(end - 4);
      return isSound ? utf8(data.subarray(BEFORE_TEXT.length)) : fail({ kind: 'unreadable' });
    }
    at = end;
  }
  return fail({ kind: 'noDesign' });
}

/** The letters "iTXt". */
const ITXT = 0x69545874;
