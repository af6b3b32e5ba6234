import { deflateSync, Inflate } from 'fflate';
import type { Design } from '../../design/design';
import type { DesignFault } from '../../design/fault';
import { parseDesign, serializeDesign } from '../../design/file';
import { fail, type Result, succeed } from '../../engine/result';
import { crc32 } from '../../state/carried/crc32';
import { fromBase64Url, toBase64Url } from './base64url';

/**
 * A whole design in the fragment of an address, which no browser sends to a server: "#d=" and, in base64url, a version
 * byte, the CRC-32 of the text (big-endian) and the text itself, deflated. The text is that of a design file without
 * blanks; it comes back through `parseDesign`, so nothing that a file may not hold comes in by a link.
 */
export const LINK_MARK = '#d=';
const LINK_VERSION = 1;
const HEAD = 5;

/** Longest link, characters, the page's own address with it: letters and chats cut off longer ones. */
export const LONGEST_LINK = 8000;
/** What a link may unpack to, bytes: many times what fits into one of `LONGEST_LINK` in earnest. */
export const MOST_UNPACKED = 1_000_000;
/** Fed to the inflater at a time, bytes; at the greatest ratio 264 kB come out at once. */
const PIECE = 256;

export interface TooLong {
  readonly length: number;
  readonly limit: number;
}

export type LinkFault =
  /** There is no design in it. */
  | { readonly kind: 'none' }
  | { readonly kind: 'tooLong'; readonly length: number; readonly limit: number }
  /** Letters that a link cannot hold, or too few of them. */
  | { readonly kind: 'malformed' }
  /** Made by a later version. */
  | { readonly kind: 'version'; readonly found: number }
  /** Cut off or altered on its way. */
  | { readonly kind: 'damaged' }
  | { readonly kind: 'unpacksTooLarge'; readonly limit: number }
  /** It came whole, and what it holds is no sound design. */
  | { readonly kind: 'design'; readonly fault: DesignFault };

/** The link to a design; `page` is the address that it is put behind, without a fragment. */
export function shareLink(design: Design, page = ''): Result<string, TooLong> {
  const text = new TextEncoder().encode(JSON.stringify(JSON.parse(serializeDesign(design))));
  const packed = deflateSync(text, { level: 9 });
  const bytes = new Uint8Array(HEAD + packed.length);
  const view = new DataView(bytes.buffer);
  view.setUint8(0, LINK_VERSION);
  view.setUint32(1, crc32(text));
  bytes.set(packed, HEAD);
  const link = `${page}${LINK_MARK}${toBase64Url(bytes)}`;
  if (link.length > LONGEST_LINK) return fail({ length: link.length, limit: LONGEST_LINK });
  return succeed(link);
}

/** The design in a fragment ("#d=..."; "#d%3D..." as some programs write it). Never throws, whatever the text. */
export function readShareLink(fragment: string): Result<Design, LinkFault> {
  const mark = /^#d(?:=|%3[Dd])/.exec(fragment)?.[0];
  if (mark === undefined) return fail({ kind: 'none' });
  const letters = withoutTail(fragment.slice(mark.length));
  const length = LINK_MARK.length + letters.length;
  if (length > LONGEST_LINK) return fail({ kind: 'tooLong', length, limit: LONGEST_LINK });
  const bytes = fromBase64Url(letters);
  if (!bytes || bytes.length === 0) return fail({ kind: 'malformed' });
  const view = new DataView(bytes.buffer);
  const version = view.getUint8(0);
  if (version !== LINK_VERSION) return fail({ kind: 'version', found: version });
  if (bytes.length <= HEAD) return fail({ kind: 'damaged' });
  const text = unpack(bytes.subarray(HEAD));
  if (!text.ok) return text;
  if (crc32(text.value) !== view.getUint32(1)) return fail({ kind: 'damaged' });
  const file = utf8(text.value);
  if (file === null) return fail({ kind: 'damaged' });
  const read = parseDesign(file);
  return read.ok ? read : fail({ kind: 'design', fault: read.error });
}

/**
 * Without what programs put behind a link: the point that ends the sentence, a bracket, "%20", "&source=...". Whether what
 * is left came whole, its CRC-32 tells.
 */
function withoutTail(letters: string): string {
  return letters.replace(/[.,;:!?'")\]>\s%&/#*][\s\S]*$/, '');
}

/** Inflates piece by piece and stops where more comes out than a design can be. */
function unpack(packed: Uint8Array): Result<Uint8Array, LinkFault> {
  const pieces: Uint8Array[] = [];
  let size = 0;
  let ended = false;
  const stream = new Inflate((piece, final) => {
    pieces.push(piece);
    size += piece.length;
    ended ||= final;
  });
  for (let at = 0; at < packed.length; at += PIECE) {
    try {
      stream.push(packed.subarray(at, at + PIECE), at + PIECE >= packed.length);
    } catch {
      return fail({ kind: 'damaged' });
    }
    if (size > MOST_UNPACKED) return fail({ kind: 'unpacksTooLarge', limit: MOST_UNPACKED });
  }
  if (!ended) return fail({ kind: 'damaged' });
  const whole = new Uint8Array(size);
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return succeed(whole);
}

function utf8(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
}
