import { crc32, deflateRawSync, inflateRawSync } from 'node:zlib';
import { unzipSync, zipSync } from 'fflate';
import { chunksOf, type PngChunk, png } from '../../support/png';
import type { Seeded } from '../../support/seeded';
import { joined } from './bytes';
import type { Form } from './door';
import { mutatedText } from './tokens';

/**
 * Changes what a package holds and packs it again with lengths and sums that are right: what is behind them is reached.
 * Null where the form packs nothing.
 */
export function mutatedInside(
  form: Form,
  good: Uint8Array,
  random: Seeded,
  other: string,
): Uint8Array | null {
  if (form === 'zip') return mutatedZip(good, random, other);
  if (form === 'glb') return mutatedGlb(good, random, other);
  if (form === 'png') return mutatedPng(good, random, other);
  return form === 'link' ? mutatedLink(good, random, other) : null;
}

function mutatedZip(good: Uint8Array, random: Seeded, other: string): Uint8Array {
  const entries = unzipSync(good);
  const name = random.pick(Object.keys(entries));
  const changed = mutatedText(new TextDecoder().decode(entries[name]), random, other);
  entries[name] = new TextEncoder().encode(changed);
  if (random.unit() < 0.05)
    entries[random.pick(['__proto__', '../a', 'a'.repeat(300)])] = entries[name];
  return zipSync(entries, { mtime: '2026-01-31T12:00:00', level: random.pick([0, 1]) });
}

const HEAD = 20;

function mutatedGlb(good: Uint8Array, random: Seeded, other: string): Uint8Array {
  const view = new DataView(good.buffer, good.byteOffset, good.byteLength);
  const size = view.getUint32(12, true);
  const json = new TextDecoder().decode(good.subarray(HEAD, HEAD + size));
  const text = new TextEncoder().encode(mutatedText(json, random, other));
  const head = good.slice(0, HEAD);
  const rest = good.subarray(HEAD + size);
  const heads = new DataView(head.buffer);
  heads.setUint32(8, HEAD + text.length + rest.length, true);
  heads.setUint32(12, text.length, true);
  return joined(head, text, rest);
}

/** Changes the text that a PNG carries, behind its keyword (chunk iTXt). */
function mutatedPng(good: Uint8Array, random: Seeded, other: string): Uint8Array {
  const chunks = chunksOf(good).map(([type, data]): PngChunk => {
    if (type !== 'iTXt') return [type, data];
    const start = data.indexOf(0) + TEXT_AFTER_KEYWORD;
    const text = new TextDecoder().decode(data.subarray(start));
    const changed = new TextEncoder().encode(mutatedText(text, random, other));
    return [type, joined(data.subarray(0, start), changed)];
  });
  return png(chunks);
}

/** The keyword's end, flag and method of compression, ends of the language and of the translated keyword. */
const TEXT_AFTER_KEYWORD = 5;

/** Version, sum and deflated text, in base64url behind the mark (`output/share/shareLink`). */
function mutatedLink(good: Uint8Array, random: Seeded, other: string): Uint8Array {
  const link = new TextDecoder().decode(good);
  const bytes = Buffer.from(link.slice('#d='.length), 'base64url');
  const text = inflateRawSync(bytes.subarray(5)).toString('utf8');
  return new TextEncoder().encode(linkWith(mutatedText(text, random, other)));
}

/** A link that holds a text, whatever it is. */
export function linkWith(text: string): string {
  const bytes = Buffer.from(text, 'utf8');
  const head = Buffer.alloc(5);
  head.writeUInt8(1, 0);
  head.writeUInt32BE(crc32(bytes), 1);
  return `#d=${Buffer.concat([head, deflateRawSync(bytes)]).toString('base64url')}`;
}
