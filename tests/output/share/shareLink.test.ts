import { readdirSync, readFileSync } from 'node:fs';
import { deflateRawSync, inflateRawSync, crc32 as nodeCrc32 } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Design } from '../../../src/design/design';
import { parseDesign } from '../../../src/design/file';
import { fromBase64Url, toBase64Url } from '../../../src/output/share/base64url';
import {
  LONGEST_LINK,
  MOST_UNPACKED,
  readShareLink,
  shareLink,
} from '../../../src/output/share/shareLink';
import { crc32 } from '../../../src/state/carried/crc32';

const FOLDER = new URL('../../../assets/designs/', import.meta.url);
const DEMOS = readdirSync(FOLDER).filter((file) => /^\d.*\.json$/.test(file));

function demo(file: string): Design {
  const read = parseDesign(readFileSync(new URL(file, FOLDER), 'utf8'));
  if (!read.ok) throw new Error(file);
  return read.value;
}

function linkOf(design: Design, page?: string): string {
  const link = shareLink(design, page);
  if (!link.ok) throw new Error(`too long: ${link.error.length}`);
  return link.value;
}

/** A link made by hand from any text, packed by Node's zlib and not by the writer under test. */
function linkAround(text: string | Uint8Array, version = 1, sum?: number): string {
  const raw = Buffer.from(text);
  const head = Buffer.alloc(5);
  head.writeUInt8(version, 0);
  head.writeUInt32BE(sum ?? nodeCrc32(raw), 1);
  return `#d=${Buffer.concat([head, deflateRawSync(raw)]).toString('base64url')}`;
}

describe('a link that holds a whole design', () => {
  it.each(DEMOS)('%s comes back exactly as it was', (file) => {
    const design = demo(file);
    const link = linkOf(design);
    expect(readShareLink(link)).toEqual({ ok: true, value: design });
    expect(link.length).toBeLessThan(4000);
  });

  it('is text that other programs unpack too: version, CRC-32 and raw deflate (Node zlib)', () => {
    const design = demo(DEMOS[0]);
    const bytes = Buffer.from(linkOf(design).slice(3), 'base64url');
    const text = inflateRawSync(bytes.subarray(5));
    expect(bytes[0]).toBe(1);
    expect(bytes.readUInt32BE(1)).toBe(nodeCrc32(text));
    expect(JSON.parse(text.toString('utf8'))).toEqual(design);
  });

  it('holds only letters that an address takes as they are (RFC 3986, unreserved)', () => {
    for (const file of DEMOS) expect(linkOf(demo(file))).toMatch(/^#d=[A-Za-z0-9_-]+$/);
  });

  it('keeps letters of every script, and numbers to the last bit', () => {
    const name = 'Ø 5,3 \u2014 \u03b1\u03b2 \u6f22\u5b57 \ud83d\ude81 "quoted" <b>';
    const demoDesign = demo(DEMOS[1]);
    const design = { ...demoDesign, name, rotor: { ...demoDesign.rotor, speedRpm: 1000.1 + 0.2 } };
    expect(readShareLink(linkOf(design))).toEqual({ ok: true, value: design });
  });

  it('says how long it would be where it is too long, the page counted in', () => {
    const design = demo(DEMOS[0]);
    const length = linkOf(design).length;
    const page = `https://example.org/${'x'.repeat(LONGEST_LINK)}`.slice(0, LONGEST_LINK - length);
    expect(linkOf(design, page)).toHaveLength(LONGEST_LINK);
    const over = shareLink(design, `${page}x`);
    expect(over).toEqual({ ok: false, error: { length: LONGEST_LINK + 1, limit: LONGEST_LINK } });
  });
});

describe('a link that was mangled', () => {
  const design = demo(DEMOS[1]);
  const link = linkOf(design);

  it('cut at any letter gives a fault and never a design', () => {
    for (let end = 0; end < link.length; end++) {
      expect(readShareLink(link.slice(0, end)).ok, `cut at ${end}`).toBe(false);
    }
  }, 60_000);

  it('with any byte flipped gives a fault, or the same design where the bit means nothing', () => {
    const bytes = Buffer.from(link.slice(3), 'base64url');
    let faults = 0;
    for (let i = 0; i < bytes.length; i++) {
      for (const mask of [0x01, 0x80, 0xff]) {
        const bent = Buffer.from(bytes);
        bent[i] ^= mask;
        const read = readShareLink(`#d=${bent.toString('base64url')}`);
        if (read.ok) expect(read.value).toEqual(design);
        else faults++;
      }
    }
    // Only the last byte has bits of no meaning (deflate fills its last byte up).
    expect(faults).toBeGreaterThanOrEqual(3 * (bytes.length - 1));
  }, 60_000);

  it('of a later version says which', () => {
    expect(readShareLink(linkAround('{}', 2))).toEqual({
      ok: false,
      error: { kind: 'version', found: 2 },
    });
  });

  it('with a design of a newer schema gives the fault of its file', () => {
    const newer = JSON.stringify({ ...design, version: 999 });
    const read = readShareLink(linkAround(newer));
    expect(read).toMatchObject({
      ok: false,
      error: { kind: 'design', fault: { path: 'version' } },
    });
  });

  it('with text that is no design gives the fault of its file', () => {
    for (const text of ['', 'null', '[]', '{}', '{"format":"stillgrip-design"', '1e999']) {
      expect(readShareLink(linkAround(text))).toMatchObject({
        ok: false,
        error: { kind: 'design' },
      });
    }
  });

  it('with bytes that are no UTF-8 is damaged', () => {
    const read = readShareLink(linkAround(Uint8Array.of(0x22, 0xc3, 0x28, 0x22)));
    expect(read).toEqual({ ok: false, error: { kind: 'damaged' } });
  });

  it('that unpacks without end is stopped at the limit', () => {
    const bomb = linkAround(new Uint8Array(5_000_000));
    expect(bomb.length).toBeLessThan(LONGEST_LINK);
    expect(readShareLink(bomb)).toEqual({
      ok: false,
      error: { kind: 'unpacksTooLarge', limit: MOST_UNPACKED },
    });
  });

  it('too long for any link is not even unpacked', () => {
    const read = readShareLink(`#d=${'A'.repeat(LONGEST_LINK)}`);
    expect(read).toMatchObject({ ok: false, error: { kind: 'tooLong' } });
  });

  it('never throws, whatever the letters', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.base64String()), (text) => {
        expect(readShareLink(`#d=${text}`).ok).toBe(false);
      }),
      { seed: 6, numRuns: 2000 },
    );
  });

  it('still opens with what programs put around one, and mangled in its middle it does not', () => {
    // Common practice: the end of a sentence, brackets and blanks are taken into a link; trackers add fields of their own.
    for (const tail of ['.', ',', '%20', ')', '&utm_source=mail', '?x=1', ' and more', '%0A']) {
      expect(readShareLink(`${link}${tail}`), tail).toEqual({ ok: true, value: design });
    }
    expect(readShareLink(link.replace('=', '%3D'))).toEqual({ ok: true, value: design });
    const half = link.length >> 1;
    for (const sign of ['.', '&', '%20']) {
      const bent = `${link.slice(0, half)}${sign}${link.slice(half)}`;
      expect(readShareLink(bent).ok, sign).toBe(false);
    }
  });

  it('of another page is none', () => {
    for (const text of ['', '#', '#dial', '#D=', 'd=abc']) {
      expect(readShareLink(text)).toEqual({ ok: false, error: { kind: 'none' } });
    }
  });
});

describe('the letters and the check sum', () => {
  it('agree with Node on any bytes', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
        expect(toBase64Url(bytes)).toBe(Buffer.from(bytes).toString('base64url'));
        expect(fromBase64Url(toBase64Url(bytes))).toEqual(Uint8Array.from(bytes));
        expect(crc32(bytes)).toBe(nodeCrc32(bytes));
      }),
      { seed: 6, numRuns: 500 },
    );
  });

  it('give 0xcbf43926 for "123456789" (ITU-T V.42, memory)', () => {
    expect(crc32(new TextEncoder().encode('123456789'))).toBe(0xcbf43926);
  });
});
