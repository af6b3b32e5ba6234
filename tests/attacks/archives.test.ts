import { deflateRawSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { importMesh } from '../../src/meshes/importMesh';
import { unpackEntry, zipEntries } from '../../src/meshes/readers/zip';
import { readShareLink } from '../../src/output/share/shareLink';
import { carriedDesign } from '../../src/state/carried/carriedDesign';
import { archives, zipOf } from './archives';
import { linkWith } from './fuzz/packed';

describe('a hostile package', () => {
  it.each(archives())('is read or refused at once: $name', async ({ bytes, must }) => {
    expect(bytes.length).toBeLessThan(100_000);
    const before = process.cpuUsage();
    const read = await importMesh('a.3mf', bytes, () => {});
    const { user, system } = process.cpuUsage(before);
    expect(read.ok ? 'read' : 'refuse').toBe(must);
    if (!read.ok) expect(read.error.kind).not.toBe('readerFailed');
    // 250 ms of processor time are meant; four times that leaves room for the first run of the code.
    expect((user + system) / 1000).toBeLessThan(1000);
  });

  it('of 1032 to 1 is stopped by the bytes that come out, whatever it says of its size', () => {
    for (const size of [undefined, 10, 0xfffffffe]) {
      const text = new Uint8Array(60_000_000);
      const bytes = zipOf([{ name: 'a', text, ...(size === undefined ? {} : { size }) }]);
      const [entry] = zipEntries(bytes).values();
      // Deflate's greatest ratio (RFC 1951: 258 bytes from two bits).
      expect(text.length / entry.packedSize).toBeGreaterThan(1000);
      const budget = { bytes: 0 };
      expect(() => unpackEntry(bytes, entry, budget, () => {})).toThrow('unpacksTooLarge');
      // 200 times the package, and one piece of 2 kB at 1032 to 1 beyond.
      expect(budget.bytes).toBeLessThan(200 * bytes.length + 2048 * 1032);
    }
  });

  it('in place of a design that rides in a 3MF is refused', () => {
    const name = 'Metadata/stillgrip-design.json';
    const bomb = zipOf([{ name, text: ' '.repeat(70_000_000) }]);
    expect(carriedDesign(bomb)).toMatchObject({ ok: false, error: { kind: 'tooLarge' } });
    const lying = zipOf([{ name, text: ' '.repeat(70_000_000), size: 3 }]);
    expect(carriedDesign(lying).ok).toBe(false);
  });

  it('in a link is refused', () => {
    // As much as 8000 letters can hold: 6 kB, which come to 6 MB.
    const link = linkWith(' '.repeat(5_000_000));
    expect(link.length).toBeLessThan(8000);
    expect(readShareLink(link)).toMatchObject({ error: { kind: 'unpacksTooLarge' } });
    const twice = deflateRawSync(deflateRawSync(Buffer.alloc(5_000_000)));
    expect(readShareLink(`#d=${twice.toString('base64url')}`).ok).toBe(false);
  });
});
