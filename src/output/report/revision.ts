import type { Design } from '../../design/design';
import { serializeDesign } from '../../design/file';

/**
 * Eight hexadecimal digits worked out from a design's file text: FNV-1a of 32 bits (its published
 * constants, from memory; the tests hold it to the published value of "a"). Two states of a design have the same mark by chance once in 4 thousand million; it proves nothing against
 * ill will.
 */
export function revisionMark(design: Design): string {
  return fnv1a(serializeDesign(design));
}

export function fnv1a(text: string): string {
  let hash = 0x811c9dc5;
  for (const byte of new TextEncoder().encode(text)) {
    hash = Math.imul(hash ^ byte, 0x01000193) >>> 0;
  }
  return hash.toString(16).padStart(8, '0');
}
