import { crc32 } from 'node:zlib';
import { strToU8, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { faultOf } from '../../../src/meshes/readers/signal';
import { packageName, unpackEntry, zipEntries } from '../../../src/meshes/readers/zip';

/**
 * An archive put together byte by byte from PKWARE APPNOTE 6.3, sections 4.3.7 (local header), 4.3.12 (central header) and
 * 4.3.16 (end record); nothing is packed. Every number can be said otherwise.
 */
interface Said {
  readonly name: string;
  readonly data?: Uint8Array;
  /** Behind the name of the local header, of the central one, and behind that. */
  readonly localExtra?: number;
  readonly extra?: readonly number[];
  readonly comment?: number;
  /** Claims of the central header. */
  readonly size?: number;
  readonly packedSize?: number;
  readonly headerAt?: number;
  readonly flags?: number;
}

function u16(value: number): number[] {
  return [value & 255, value >> 8];
}
function u32(value: number): number[] {
  return [0, 8, 16, 24].map((bits) => Math.floor(value / 2 ** bits) % 256);
}
function u64(value: number): number[] {
  return [...u32(value % 2 ** 32), ...u32(Math.floor(value / 2 ** 32))];
}

interface Plan {
  readonly count?: number;
  readonly start?: number;
  /** Bytes between table and end record, and behind that. */
  readonly between?: (tableAt: number, tableEnd: number) => readonly number[];
  readonly comment?: number;
}

function archiveOf(entries: readonly Said[], plan: Plan = {}): Uint8Array {
  const bytes: number[] = [];
  const table: number[] = [];
  for (const said of entries) {
    const name = [...strToU8(said.name)];
    const data = said.data ?? new Uint8Array(0);
    const at = bytes.length;
    const sizes = [...u32(crc32(data)), ...u32(data.length), ...u32(data.length)];
    const fixed = [...u16(20), ...u16(said.flags ?? 0), ...u16(0), ...u32(0)];
    bytes.push(...u32(0x04034b50), ...fixed, ...sizes, ...u16(name.length));
    bytes.push(...u16(said.localExtra ?? 0), ...name);
    bytes.push(...Array(said.localExtra ?? 0).fill(7), ...data);
    const extra = said.extra ?? [];
    table.push(...u32(0x02014b50), ...u16(20), ...fixed, ...u32(crc32(data)));
    table.push(...u32(said.packedSize ?? data.length), ...u32(said.size ?? data.length));
    table.push(...u16(name.length), ...u16(extra.length), ...u16(said.comment ?? 0));
    table.push(...u16(0), ...u16(0), ...u32(0), ...u32(said.headerAt ?? at));
    table.push(...name, ...extra, ...Array(said.comment ?? 0).fill(9));
  }
  const start = bytes.length;
  bytes.push(...table);
  bytes.push(...(plan.between?.(start, bytes.length) ?? []));
  const count = plan.count ?? entries.length;
  bytes.push(...u32(0x06054b50), ...u16(0), ...u16(0), ...u16(count), ...u16(count));
  bytes.push(...u32(table.length), ...u32(plan.start ?? start), ...u16(plan.comment ?? 0));
  bytes.push(...Array(plan.comment ?? 0).fill(1));
  return Uint8Array.from(bytes);
}

const text = strToU8('one two three');
const more = strToU8('four');

function unpacked(bytes: Uint8Array, name: string): Uint8Array {
  const entry = zipEntries(bytes).get(name);
  if (!entry) throw new Error(name);
  const pieces: number[] = [];
  unpackEntry(bytes, entry, { bytes: 0 }, (piece) => pieces.push(...piece));
  return Uint8Array.from(pieces);
}
function faultIn(call: () => unknown) {
  try {
    call();
  } catch (thrown) {
    return faultOf(thrown);
  }
  return undefined;
}
const told = (detail: string) => ({ kind: 'malformed', format: '3mf', detail });
const TABLE = told('is a ZIP package without its table of contents, as if cut short');

describe('an archive put together by hand', () => {
  it('is read with extra fields and comments of any length', () => {
    const bytes = archiveOf(
      [
        { name: 'a', data: text, localExtra: 300, comment: 300, extra: [1, 0x70, 2, 0, 8, 8] },
        { name: '/B', data: more, localExtra: 5, comment: 2 },
      ],
      { comment: 300 },
    );
    expect([...zipEntries(bytes).keys()]).toEqual(['a', 'b']);
    expect(unpacked(bytes, 'a')).toEqual(text);
    expect(unpacked(bytes, 'b')).toEqual(more);
    expect([packageName('//Dir/X'), packageName('a/B')]).toEqual(['dir/x', 'a/b']);
  });

  it('of more than four million bytes is unpacked where they were not packed tight', () => {
    const data = new Uint8Array(4_100_000);
    const bytes = zipSync({ a: data }, { level: 0 });
    const entry = zipEntries(bytes).get('a');
    let count = 0;
    if (entry) unpackEntry(bytes, entry, { bytes: 0 }, (piece) => (count += piece.length));
    expect(count).toBe(data.length);
  });

  it('with a wide size that would stand behind its very end is told, not given up', () => {
    const wide = 0xffffffff;
    const claims = { size: wide, packedSize: wide, headerAt: wide };
    const bytes = archiveOf([{ name: 'a', data: text, extra: [1, 0, 0, 0], ...claims }]);
    expect(faultIn(() => unpacked(bytes, 'a'))).toEqual(
      told('holds an entry that is not where it should be (a)'),
    );
  });

  it('may be empty, or begin with a table of nothing', () => {
    expect(zipEntries(archiveOf([])).size).toBe(0);
    expect(faultIn(() => zipEntries(new Uint8Array(21)))).toEqual(TABLE);
    expect(faultIn(() => zipEntries(new Uint8Array(0)))).toEqual(TABLE);
  });

  it('has its end record within 64 kB of its end', () => {
    const bytes = archiveOf([{ name: 'a', data: text }], { comment: 0xffff });
    expect(unpacked(bytes, 'a')).toEqual(text);
    const longer = Uint8Array.from([...bytes, 0]);
    expect(faultIn(() => zipEntries(longer))).toEqual(TABLE);
  });

  it('that claims more entries than it has, or ends inside one, says at which', () => {
    expect(faultIn(() => zipEntries(archiveOf([{ name: 'a' }], { count: 2 })))).toEqual(
      told('has a broken table of contents at entry 2 of 2'),
    );
    const whole = archiveOf([{ name: 'a', data: text }]);
    const tableAt = whole.length - 22 - 47;
    for (const start of [tableAt + 1, whole.length - 10, whole.length, 0xfffffff0]) {
      expect(faultIn(() => zipEntries(archiveOf([{ name: 'a', data: text }], { start })))).toEqual(
        told('has a broken table of contents at entry 1 of 1'),
      );
    }
    // The last entry may end with the file: here its comment runs through the end record, to the byte or one past it.
    const running = (comment: number) => {
      const bytes = archiveOf([{ name: 'a', data: text }]);
      new DataView(bytes.buffer).setUint16(tableAt + 32, comment, true);
      return faultIn(() => zipEntries(bytes));
    };
    expect(running(22)).toBeUndefined();
    expect(running(23)).toEqual(told('ends inside its table of contents'));
  });

  it('of ten thousand entries is read and of one more is not', () => {
    const refused = (count: number) => faultIn(() => zipEntries(archiveOf([], { count })));
    expect(refused(10_000)).toEqual(told('has a broken table of contents at entry 1 of 10000'));
    expect(refused(10_001)).toEqual({
      kind: 'unpacksTooLarge',
      format: '3mf',
      what: 'entries',
      limit: 10_000,
    });
  });

  it('with a name twice says which, and with encryption that', () => {
    const long = `x${'y'.repeat(60)}`;
    expect(
      faultIn(() => zipEntries(archiveOf([{ name: long }, { name: long.toUpperCase() }]))),
    ).toEqual(told(`has two entries of one name (${long.slice(0, 40)})`));
    expect(faultIn(() => zipEntries(archiveOf([{ name: 'a', flags: 9 }])))).toEqual({
      kind: 'unsupported',
      format: '3mf',
      name: 'encryption',
    });
    expect(zipEntries(archiveOf([{ name: 'a', flags: 8 }])).size).toBe(1);
  });
});

describe('entries of an archive', () => {
  const OVER = told('holds entries that lie over one another');

  it('lie apart, in whatever order the table names them', () => {
    const two = [
      { name: 'a', data: text },
      { name: 'b', data: more },
    ];
    expect(zipEntries(archiveOf(two)).size).toBe(2);
    // The table turned round: b first.
    const turned = archiveOf([
      { name: 'b', data: more, headerAt: 31 + more.length },
      { name: 'a', data: more, headerAt: 0 },
    ]);
    expect(faultIn(() => zipEntries(turned))).toBeUndefined();
  });

  it('may not share their bytes, wholly or in part', () => {
    const same = archiveOf([
      { name: 'a', data: text },
      { name: 'b', data: text, headerAt: 0 },
    ]);
    expect(faultIn(() => zipEntries(same))).toEqual(OVER);
    // The first claims a byte of the second's header; as many as lie between are fine.
    const claims = (packedSize: number) =>
      faultIn(() =>
        zipEntries(
          archiveOf([
            { name: 'a', data: text, packedSize },
            { name: 'b', data: more },
          ]),
        ),
      );
    expect(claims(text.length)).toBeUndefined();
    expect(claims(text.length + 1)).toEqual(OVER);
    // A long one before a short one inside it, then a third inside the long one alone.
    const nested = archiveOf([
      { name: 'a', data: text, packedSize: 100 },
      { name: 'b', data: more },
      { name: 'c', data: more },
    ]);
    expect(faultIn(() => zipEntries(nested))).toEqual(OVER);
    // Behind a local header with an extra field the bytes begin later.
    const shifted = (packedSize: number) =>
      faultIn(() =>
        zipEntries(
          archiveOf([
            { name: 'a', data: text, localExtra: 300, packedSize },
            { name: 'b', data: more },
          ]),
        ),
      );
    expect(shifted(text.length)).toBeUndefined();
    expect(shifted(text.length + 1)).toEqual(OVER);
  });

  it('that are not where they should be, or end past the file, are told when they are unpacked', () => {
    const lost = (headerAt: number) =>
      faultIn(() => unpacked(archiveOf([{ name: 'a', data: text, headerAt }]), 'a'));
    const size = archiveOf([{ name: 'a', data: text }]).length;
    for (const at of [1, 30, size - 30, size - 29, size - 4, size, 0xfffffff0]) {
      expect(lost(at)).toEqual(told('holds an entry that is not where it should be (a)'));
    }
    const claims = (packedSize: number) =>
      faultIn(() => unpacked(archiveOf([{ name: 'a', data: text, packedSize }]), 'a'));
    // 31 bytes of header and name before them.
    expect(claims(size - 31)).toEqual(told('holds a damaged entry (a)'));
    expect(claims(size - 30)).toEqual(told('ends inside an entry (a)'));
  });

  it('of a wrong size, or packed by no known method, are told by the first letters of their name', () => {
    const name = 'n'.repeat(70);
    const bytes = archiveOf([{ name, data: text, size: text.length + 1 }]);
    expect(faultIn(() => unpacked(bytes, name))).toEqual(
      told(`holds a damaged entry (${'n'.repeat(60)})`),
    );
    const none = archiveOf([{ name, data: text, headerAt: 3 }]);
    expect(faultIn(() => unpacked(none, name))).toEqual(
      told(`holds an entry that is not where it should be (${'n'.repeat(60)})`),
    );
  });

  it('that are deflated and then damaged are told', () => {
    const random = Uint8Array.from({ length: 5000 }, (_, k) => (k * k * 31) >> 3);
    const bytes = zipSync({ a: random });
    const fault = (at: number, value: number) => {
      const bent = bytes.slice();
      bent[at] = value;
      return faultIn(() => unpacked(bent, 'a'));
    };
    // A block type that does not exist (RFC 1951, 3.2.3), and a bit inside.
    expect(fault(31, 0xff)).toEqual(told('holds a damaged entry (a)'));
    expect(fault(600, bytes[600] ^ 1)).toEqual(told('holds a damaged entry (a)'));
  });
});

describe('ZIP64', () => {
  const ONES = 0xffffffff;
  // Section 4.5.3: size, packed size, place; each only where the record has all ones.
  it.each([
    ['the size', { size: ONES }, [text.length]],
    ['the packed size', { packedSize: ONES }, [text.length]],
    ['the place', { headerAt: ONES }, [0]],
    ['size and packed size', { size: ONES, packedSize: ONES }, [text.length, text.length]],
    ['size and place', { size: ONES, headerAt: ONES }, [text.length, 0]],
    ['packed size and place', { packedSize: ONES, headerAt: ONES }, [text.length, 0]],
  ] as const)('gives %s where the record has all ones', (_, said, values) => {
    const field = [...u16(1), ...u16(8 * values.length), ...values.flatMap((one) => u64(one))];
    const bytes = archiveOf([{ name: 'a', data: text, ...said, extra: field }]);
    expect(unpacked(bytes, 'a')).toEqual(text);
    // A field that claims what the record says itself is not asked.
    const other = archiveOf([
      { name: 'a', data: text, extra: [...u16(1), ...u16(24), ...[9, 9, 9].flatMap(u64)] },
    ]);
    expect(unpacked(other, 'a')).toEqual(text);
  });

  it('gives sizes beyond 32 bits as they are, and none beyond its own end', () => {
    const field = [...u16(1), ...u16(8), ...u64(5 * 2 ** 32 + 7)];
    const entry = zipEntries(archiveOf([{ name: 'a', size: ONES, extra: field }])).get('a');
    expect(entry?.size).toBe(5 * 2 ** 32 + 7);
    // Other fields before it, and a rest too short for a field behind it.
    const padded = [...u16(0x5455), ...u16(1), 3, ...field, 1, 0, 9];
    const second = zipEntries(archiveOf([{ name: 'a', size: ONES, extra: padded }])).get('a');
    expect(second?.size).toBe(5 * 2 ** 32 + 7);
    const none = zipEntries(archiveOf([{ name: 'a', size: ONES }])).get('a');
    expect(none?.size).toBe(ONES);
  });

  /** Section 4.3.14 and 4.3.15: the wide end record and its locator. */
  const wide =
    (say: { count?: number; start?: number; at?: number; mark?: number; locator?: number } = {}) =>
    (tableAt: number, tableEnd: number) => [
      ...u32(say.mark ?? 0x06064b50),
      ...u64(44),
      ...u32(0),
      ...u64(0),
      ...u64(0),
      ...u64(say.count ?? 1),
      ...u64(0),
      ...u64(say.start ?? tableAt),
      ...u32(say.locator ?? 0x07064b50),
      ...u32(0),
      ...u64(say.at ?? tableEnd),
      ...u32(1),
    ];
  const one = [{ name: 'a', data: text }];

  it('gives count and place of the table where either has all ones', () => {
    for (const ones of [{ count: 0xffff }, { start: ONES }, { count: 0xffff, start: ONES }]) {
      const bytes = archiveOf(one, { ...ones, between: wide() });
      expect(unpacked(bytes, 'a')).toEqual(text);
    }
    // Where neither has, the wide record is not asked.
    expect(unpacked(archiveOf(one, { between: wide({ count: 7, start: 3 }) }), 'a')).toEqual(text);
  });

  it('without a locator means what it says', () => {
    const bytes = archiveOf(one, { count: 0xffff, between: wide({ locator: 7 }) });
    expect(faultIn(() => zipEntries(bytes))).toMatchObject({ what: 'entries' });
    expect(faultIn(() => zipEntries(archiveOf([], { count: 0xffff })))).toMatchObject({
      what: 'entries',
    });
    expect(faultIn(() => zipEntries(archiveOf([], { count: 0, start: ONES })))).toBeUndefined();
  });

  it('whose record is not where the locator says has no table', () => {
    const size = archiveOf(one, { between: wide() }).length;
    for (const say of [
      { mark: 7 },
      { at: size - 55 },
      { at: size },
      { at: 2 ** 40 },
      { at: 2 ** 32 * 3 },
    ]) {
      const bytes = archiveOf(one, { count: 0xffff, between: wide(say) });
      expect(faultIn(() => zipEntries(bytes))).toEqual(TABLE);
    }
    const far = archiveOf(one, { count: 0xffff, between: wide({ start: 2 ** 33 }) });
    expect(faultIn(() => zipEntries(far))).toEqual(
      told('has a broken table of contents at entry 1 of 1'),
    );
  });
});
