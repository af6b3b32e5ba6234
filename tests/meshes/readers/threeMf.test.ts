import { crc32 } from 'node:zlib';
import { strToU8, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { faultOf as faultIn } from '../../../src/meshes/readers/signal';
import { read3mf } from '../../../src/meshes/readers/threeMf';
import { unpackEntry, zipEntries } from '../../../src/meshes/readers/zip';
import { modelXml, package3mf } from '../files';

const quiet = () => {};
const CORNERS = [
  [0, 0, 0],
  [1, 0, 0],
  [0, 1, 0],
];
const MESH = `<mesh><vertices>${CORNERS.map(([x, y, z]) => `<vertex x="${x}" y="${y}" z="${z}"/>`).join('')}</vertices><triangles><triangle v1="0" v2="1" v3="2"/></triangles></mesh>`;
const OBJECT = `<object id="1">${MESH}</object>`;
const ITEM = '<item objectid="1"/>';

function read(model: string, others: Record<string, string> = {}) {
  const result = read3mf(package3mf(model, others), quiet);
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  const { positions, triangles, ...rest } = result.value;
  const corners = Array.from(triangles, (v) => [...positions.subarray(3 * v, 3 * v + 3)]);
  return { ...rest, corners };
}
function faultOf(model: string, others: Record<string, string> = {}) {
  const result = read3mf(package3mf(model, others), quiet);
  return result.ok ? undefined : result.error;
}

const REFUSED = { kind: 'malformed', format: '3mf' };

/** The fault that a call ends in. */
function faultOfCall(call: () => unknown) {
  try {
    call();
  } catch (thrown) {
    return faultIn(thrown);
  }
  throw new Error('is not refused');
}

describe('the model of a 3MF', () => {
  // 3MF core specification 1.3, section 3.4: the units, millimetre where none is given (from memory).
  it.each([
    ['micron', 'micron'],
    ['millimeter', 'mm'],
    ['centimeter', 'cm'],
    ['inch', 'in'],
    ['foot', 'ft'],
    ['meter', 'm'],
  ])('in the unit %s is in %s', (written, unit) => {
    const model = modelXml(OBJECT, ITEM).replace('millimeter', written);
    expect(read(model)).toMatchObject({ unitInFile: unit, corners: CORNERS });
  });

  it('is in millimetres where it says nothing, and in a unit that is none refused', () => {
    expect(read(modelXml(OBJECT, ITEM).replace('unit="millimeter"', ''))).toMatchObject({
      unitInFile: 'mm',
    });
    for (const unit of ['furlong', 'constructor']) {
      expect(faultOf(modelXml(OBJECT, ITEM).replace('millimeter', unit))).toMatchObject({
        kind: 'malformed',
        format: '3mf',
        detail: expect.stringContaining(unit),
      });
    }
  });

  // Section 3.3: a row vector times the matrix, rows m00 m01 m02 to m30 m31 m32: x goes to the first row.
  it('places by a transform of four rows', () => {
    const place = (numbers: string) =>
      read(modelXml(OBJECT, `<item objectid="1" transform="${numbers}"/>`)).corners;
    expect(place(' 0 2 0  0 0 3 5 0 0 10 20 30 ')).toEqual([
      [10, 20, 30],
      [10, 22, 30],
      [10, 20, 33],
    ]);
    // A mirror turns the triangle round.
    expect(place('-1 0 0 0 1 0 0 0 1 0 0 0')).toEqual([
      [0, 0, 0],
      [0, 1, 0],
      [-1, 0, 0],
    ]);
  });

  it('places a component inside its object, the item last', () => {
    const inner = '<component objectid="1" transform="1 0 0 0 1 0 0 0 1 5 0 0"/>';
    const model = modelXml(
      `${OBJECT}<object id="2"><components>${inner}</components></object>`,
      '<item objectid="2" transform="2 0 0 0 2 0 0 0 2 0 0 1"/>',
    );
    expect(read(model).corners[1]).toEqual([12, 0, 1]);
  });

  it('may have a prefix of its own, and elements of other names, which are passed over', () => {
    const model = modelXml(`${OBJECT}<x:vertex xmlns:x="urn:other" x="9"/>`, ITEM);
    expect(read(model).corners).toEqual(CORNERS);
    const prefixed = modelXml(OBJECT, ITEM)
      .replace('xmlns=', 'xmlns:c=')
      .replaceAll(/<(\/?)(\w)/g, '<$1c:$2');
    expect(read(prefixed.replace('<?c:', '<?')).corners).toEqual(CORNERS);
  });

  it('leaves out supports and counts them', () => {
    for (const type of ['support', 'solidsupport']) {
      const more = `<object id="3" type="${type}">${MESH}</object>`;
      const model = modelXml(OBJECT + more, `${ITEM}<item objectid="3"/>`);
      expect(read(model)).toMatchObject({
        corners: CORNERS,
        notes: [{ kind: 'leftOut', what: 'supports', count: 1 }],
      });
    }
    expect(read(modelXml(OBJECT.replace('id', 'type="other" id'), ITEM)).notes).toEqual([]);
  });

  it.each([
    ['an object without id', modelXml(`<object>${MESH}</object>`, ITEM)],
    ['an id twice', modelXml(OBJECT + OBJECT, ITEM)],
    ['a corner of no number', modelXml(OBJECT.replace('y="1"', 'y="1,5"'), ITEM)],
    ['a corner without z', modelXml(OBJECT.replace(' z="0"', ''), ITEM)],
    ['a triangle of a point that is not there', modelXml(OBJECT.replace('v3="2"', 'v3="3"'), ITEM)],
    ['a triangle of a negative point', modelXml(OBJECT.replace('v1="0"', 'v1="-1"'), ITEM)],
    ['a triangle without a corner', modelXml(OBJECT.replace('v2="1"', ''), ITEM)],
    ['an item of nothing', modelXml(OBJECT, '<item/>')],
    ['an item of an object that is not there', modelXml(OBJECT, '<item objectid="2"/>')],
    ['eleven numbers', modelXml(OBJECT, '<item objectid="1" transform="1 0 0 0 1 0 0 0 1 0 0"/>')],
    ['thirteen', modelXml(OBJECT, '<item objectid="1" transform="1 0 0 0 1 0 0 0 1 0 0 0 0"/>')],
    ['a word', modelXml(OBJECT, '<item objectid="1" transform="1 0 0 0 1 0 0 0 1 0 0 x"/>')],
    ['another root', modelXml(OBJECT, ITEM).replaceAll('model', 'modal')],
    ['another namespace', modelXml(OBJECT, ITEM).replace('core/2015/02', 'core/2099/02')],
    ['no XML', 'model'],
    ['nothing', ' '],
  ])('with %s is refused as a 3MF', (_, model) => {
    expect(faultOf(model)).toMatchObject({ kind: 'malformed', format: '3mf' });
  });

  it('without a triangle is refused as such', () => {
    expect(faultOf(modelXml(OBJECT, ''))).toEqual({ kind: 'noTriangles', format: '3mf' });
  });

  it('nested sixty-four deep is read and one element deeper is not', () => {
    const deep = (levels: number) =>
      modelXml(OBJECT + '<a>'.repeat(levels) + '</a>'.repeat(levels), ITEM);
    expect(faultOf(deep(62))).toBeUndefined();
    expect(faultOf(deep(63))).toMatchObject({ kind: 'malformed', format: '3mf' });
  });

  it('in several parts must agree on the unit', () => {
    const production = 'http://schemas.microsoft.com/3dmanufacturing/production/2015/06';
    const model = modelXml(
      '<object id="7"><components><component objectid="1" p:path="/b.model"/></components></object>',
      '<item objectid="7"/>',
      `xmlns:p="${production}" requiredextensions=" p "`,
    );
    const part = modelXml(OBJECT, '');
    expect(read(model, { 'B.model': part }).corners).toEqual(CORNERS);
    const other = { 'b.model': part.replace('millimeter', 'inch') };
    expect(faultOf(model, other)).toMatchObject({ kind: 'malformed', format: '3mf' });
    expect(faultOf(model)).toMatchObject({ kind: 'malformed', format: '3mf' });
  });
});

describe('the package of a 3MF', () => {
  const whole = package3mf(modelXml(OBJECT, ITEM));

  it('says in its relationships where its model is', () => {
    const rels = (text: string) =>
      zipSync({ '_rels/.rels': strToU8(text), 'a.model': strToU8(modelXml(OBJECT, ITEM)) });
    const type = 'http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel';
    const link = (target: string, kind = type) =>
      `<r:Relationship Type="${kind}" Target="${target}"/>`;
    const page = (links: string) => rels(`<Relationships xmlns:r="x">${links}</Relationships>`);
    const of = (bytes: Uint8Array) => read3mf(bytes, quiet);
    expect(of(page(link('/none', 'other') + link('//A.model') + link('/none')))).toMatchObject({
      ok: true,
    });
    expect(of(page(link('/none')))).toMatchObject({ error: { kind: 'malformed', format: '3mf' } });
    expect(of(page(link('/a.model', 'other')))).toMatchObject({
      error: { kind: 'malformed', format: '3mf' },
    });
    expect(of(rels('<Relationships'))).toMatchObject({
      error: { kind: 'malformed', format: '3mf' },
    });
    expect(of(rels('<!DOCTYPE a><a/>'))).toMatchObject({
      error: { kind: 'malformed', format: '3mf' },
    });
    expect(of(zipSync({ a: strToU8('x') }))).toMatchObject({
      error: { kind: 'malformed', format: '3mf' },
    });
  });

  it('must be UTF-8 text', () => {
    const bytes = zipSync({ '_rels/.rels': Uint8Array.of(0x3c, 0xff, 0xfe) });
    expect(read3mf(bytes, quiet)).toMatchObject({ error: { kind: 'malformed', format: '3mf' } });
  });

  it('tells what share of it is read, from nothing to all', () => {
    const shares: number[] = [];
    read3mf(whole, (share) => shares.push(share));
    expect(shares.every((one) => one >= 0 && one <= 1)).toBe(true);
  });
});

describe('a ZIP archive', () => {
  const text = strToU8('a little text, a little text, a little text');
  const archive = zipSync({ 'Dir/One.txt': [text, { level: 0 }], two: [text, { level: 9 }] });

  function unpacked(bytes: Uint8Array, name: string): Uint8Array {
    const entry = zipEntries(bytes).get(name);
    if (!entry) throw new Error(name);
    const pieces: number[] = [];
    unpackEntry(bytes, entry, { bytes: 0 }, (piece) => pieces.push(...piece));
    return Uint8Array.from(pieces);
  }

  it('has stored and packed entries, their names in small letters', () => {
    expect([...zipEntries(archive).keys()]).toEqual(['dir/one.txt', 'two']);
    const [one, two] = [...zipEntries(archive).values()];
    expect(one).toMatchObject({ method: 0, size: text.length, packedSize: text.length });
    expect(two).toMatchObject({ method: 8, size: text.length });
    expect([one.crc, two.crc]).toEqual([crc32(text), crc32(text)]);
    expect(unpacked(archive, 'dir/one.txt')).toEqual(text);
    expect(unpacked(archive, 'two')).toEqual(text);
  });

  it('may have a comment at its end and bytes before its beginning are not looked at', () => {
    const commented = Uint8Array.from([...archive, 1, 2, 3]);
    new DataView(commented.buffer).setUint16(archive.length - 2, 3, true);
    expect(unpacked(commented, 'two')).toEqual(text);
  });

  /** The archive with one number changed, found from its end record. */
  function bent(place: 'end' | 'first', offset: number, size: 2 | 4, value: number): Uint8Array {
    const bytes = archive.slice();
    const view = new DataView(bytes.buffer);
    const end = bytes.length - 22;
    const at = (place === 'end' ? end : view.getUint32(end + 16, true)) + offset;
    if (size === 2) view.setUint16(at, value, true);
    else view.setUint32(at, value, true);
    return bytes;
  }

  // Offsets of the central directory header, PKWARE APPNOTE 6.3, section 4.3.12.
  it.each([
    ['an unknown signature', bent('first', 0, 4, 7)],
    ['a name past the end', bent('first', 28, 2, 0xffff)],
    ['more entries than it has', bent('end', 10, 2, 3)],
    ['a table past its end', bent('end', 16, 4, archive.length)],
    ['no table', archive.slice(0, -1)],
    ['encryption', bent('first', 8, 2, 1)],
    ['too many entries', bent('end', 10, 2, 10_001)],
  ])('with %s is refused as what it is', (_, bytes) => {
    const fault = faultOfCall(() => zipEntries(bytes));
    expect(['malformed', 'unsupported', 'unpacksTooLarge']).toContain(fault.kind);
    expect(fault).toMatchObject({ format: '3mf' });
  });

  it.each([
    ['another sum', bent('first', 16, 4, 1)],
    ['another size', bent('first', 24, 4, text.length - 1)],
    ['another packed size', bent('first', 20, 4, text.length - 1)],
    ['a packed size past the end', bent('first', 20, 4, 1 << 20)],
    ['another method', bent('first', 10, 2, 1)],
    ['another place', bent('first', 42, 4, 1)],
    ['a place past the end', bent('first', 42, 4, archive.length - 3)],
  ])('with %s is not unpacked', (_, bytes) => {
    const fault = faultOfCall(() => unpacked(bytes, 'dir/one.txt'));
    expect(['malformed', 'unsupported']).toContain(fault.kind);
    expect(fault).toMatchObject({ format: '3mf' });
  });

  it('of two entries of the same name, in whatever case, is refused', () => {
    expect(faultOfCall(() => zipEntries(zipSync({ a: text, A: text })))).toMatchObject(REFUSED);
  });

  // Section 4.5.3: a ZIP64 extra field holds, in this order, those sizes that are all ones in the record.
  it('takes sizes and places from a ZIP64 field', () => {
    const end = archive.length - 22;
    const view = new DataView(archive.buffer, archive.byteOffset);
    const start = view.getUint32(end + 16, true);
    const record = archive.slice(start, start + 46 + 'Dir/One.txt'.length);
    const own = new DataView(record.buffer);
    const values = [own.getUint32(24, true), own.getUint32(20, true), own.getUint32(42, true)];
    for (const at of [20, 24, 42]) own.setUint32(at, 0xffffffff, true);
    const extra = new Uint8Array(6 + 4 + 24);
    const field = new DataView(extra.buffer);
    // An unknown field before it is passed over.
    field.setUint16(0, 0x7777, true);
    field.setUint16(2, 2, true);
    field.setUint16(6, 1, true);
    field.setUint16(8, 24, true);
    for (const [k, value] of values.entries()) field.setUint32(10 + 8 * k, value, true);
    own.setUint16(30, extra.length, true);
    const bytes = Uint8Array.from([
      ...archive.slice(0, start),
      ...record,
      ...extra,
      ...archive.slice(start + record.length),
    ]);
    expect(unpacked(bytes, 'dir/one.txt')).toEqual(text);
    expect(unpacked(bytes, 'two')).toEqual(text);
  });

  // Section 4.3.14: an archive may defer its count and start to a ZIP64 end record, found by a locator before the end.
  it('takes the count and the place of its table from a ZIP64 end record', () => {
    const end = archive.length - 22;
    const view = new DataView(archive.buffer, archive.byteOffset);
    const wide = new Uint8Array(56);
    const record = new DataView(wide.buffer);
    record.setUint32(0, 0x06064b50, true);
    record.setUint32(32, view.getUint16(end + 10, true), true);
    record.setUint32(48, view.getUint32(end + 16, true), true);
    const locator = new Uint8Array(20);
    new DataView(locator.buffer).setUint32(0, 0x07064b50, true);
    new DataView(locator.buffer).setUint32(8, end, true);
    const last = archive.slice(end);
    new DataView(last.buffer).setUint16(10, 0xffff, true);
    new DataView(last.buffer).setUint32(16, 0xffffffff, true);
    const bytes = Uint8Array.from([...archive.slice(0, end), ...wide, ...locator, ...last]);
    expect(unpacked(bytes, 'two')).toEqual(text);
    // Without the record where the locator says it is, there is no table.
    const lost = bytes.slice();
    new DataView(lost.buffer).setUint32(end, 7, true);
    expect(faultOfCall(() => zipEntries(lost))).toMatchObject(REFUSED);
  });

  it('says for what it is refused', () => {
    const faultOfZip = (bytes: Uint8Array) => read3mf(bytes, quiet);
    expect(faultOfZip(bent('end', 10, 2, 10_001))).toMatchObject({
      error: { kind: 'unpacksTooLarge', format: '3mf', what: 'entries', limit: 10_000 },
    });
    expect(faultOfZip(bent('first', 8, 2, 1))).toEqual({
      ok: false,
      error: { kind: 'unsupported', format: '3mf', name: 'encryption' },
    });
    expect(faultOfZip(archive.slice(0, -1))).toMatchObject({
      error: { kind: 'malformed', format: '3mf' },
    });
    const rels = zipSync({ '_rels/.rels': [text, { level: 0 }] });
    const method = rels.slice();
    const view = new DataView(method.buffer);
    view.setUint16(view.getUint32(method.length - 6, true) + 10, 12, true);
    expect(faultOfZip(method)).toEqual({
      ok: false,
      error: { kind: 'unsupported', format: '3mf', name: 'ZIP method 12' },
    });
  });

  it('hands on nothing of an entry of no bytes, and all of one of many pieces', () => {
    const long = Uint8Array.from({ length: 1_200_000 }, (_, k) => (k * k) >> 7);
    const both = zipSync({ none: new Uint8Array(0), long, plain: [long, { level: 0 }] });
    expect(unpacked(both, 'none').length).toBe(0);
    const entry = zipEntries(both);
    for (const name of ['long', 'plain']) {
      const found = entry.get(name);
      if (!found) throw new Error(name);
      const budget = { bytes: 5 };
      let size = 0;
      unpackEntry(both, found, budget, (piece) => {
        expect(piece.length).toBeGreaterThan(0);
        size += piece.length;
      });
      expect([size, budget.bytes]).toEqual([long.length, long.length + 5]);
    }
  });
});
