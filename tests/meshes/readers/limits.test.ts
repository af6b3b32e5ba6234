import { strToU8, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { readObj } from '../../../src/meshes/readers/obj';
import {
  checkCoordinate,
  checkPlacedCount,
  checkTriangleCount,
  faultOf,
  reader,
  refuse,
} from '../../../src/meshes/readers/signal';
import { readStlBinary } from '../../../src/meshes/readers/stlBinary';
import { readStlText } from '../../../src/meshes/readers/stlText';
import { read3mf } from '../../../src/meshes/readers/threeMf';
import { unpackEntry, zipEntries } from '../../../src/meshes/readers/zip';
import { ALWAYS_PLACED, MAX_COORDINATE, MAX_TRIANGLES } from '../../../src/meshes/types';
import { modelXml, package3mf } from '../files';

const quiet = () => {};
const REFUSED = { kind: 'malformed', format: '3mf' };

/** The fault that a call ends in, or undefined. */
function faultOfCall(call: () => unknown) {
  try {
    call();
    return undefined;
  } catch (thrown) {
    return faultOf(thrown);
  }
}

describe('the limits that all readers share', () => {
  it('on triangles: none is too few, five million are not too many, one more is', () => {
    expect(faultOfCall(() => checkTriangleCount(0, 'obj'))).toEqual({
      kind: 'noTriangles',
      format: 'obj',
    });
    expect(faultOfCall(() => checkTriangleCount(1, 'obj'))).toBeUndefined();
    expect(faultOfCall(() => checkTriangleCount(MAX_TRIANGLES, 'obj'))).toBeUndefined();
    expect(faultOfCall(() => checkTriangleCount(MAX_TRIANGLES + 1, 'obj'))).toEqual({
      kind: 'tooManyTriangles',
      count: MAX_TRIANGLES + 1,
      limit: MAX_TRIANGLES,
    });
  });

  it('on what is placed: fifty thousand triangles always, else as many as there are bytes', () => {
    const refused = (count: number, bytes: number) =>
      faultOfCall(() => checkPlacedCount(count, bytes, 'glb'));
    expect(refused(ALWAYS_PLACED, 1)).toBeUndefined();
    expect(refused(ALWAYS_PLACED + 1, 1)).toEqual({
      kind: 'malformed',
      format: 'glb',
      detail: 'places more than 50000 triangles with 1 bytes',
    });
    expect(refused(70_000, 70_000)).toBeUndefined();
    expect(refused(70_001, 70_000)).toMatchObject({ kind: 'malformed' });
  });

  it('on coordinates: a thousand million either way, and nothing that is no number', () => {
    const of = (value: number) => checkCoordinate(value, 'obj', () => 'line 7');
    expect([of(MAX_COORDINATE), of(-MAX_COORDINATE), of(0)]).toEqual([1e9, -1e9, 0]);
    expect(faultOfCall(() => of(1.1e9))).toMatchObject({
      kind: 'malformed',
      format: 'obj',
      detail: 'has a coordinate of 1100000000 in line 7, beyond 1000000000',
    });
    for (const value of [NaN, Infinity, -Infinity]) {
      expect(faultOfCall(() => of(value))).toMatchObject({
        detail: 'has a coordinate that is not a number in line 7',
      });
    }
  });

  it('whatever a reader throws comes out as a fault', () => {
    const thrown = (value: unknown) =>
      reader(() => {
        throw value;
      })(new Uint8Array(0), quiet);
    expect(thrown(new RangeError('Invalid array length'))).toEqual({
      ok: false,
      error: { kind: 'readerFailed', detail: 'Invalid array length' },
    });
    expect(thrown('no memory')).toEqual({
      ok: false,
      error: { kind: 'readerFailed', detail: 'no memory' },
    });
    const own = { kind: 'noTriangles', format: 'glb' } as const;
    expect(reader(() => refuse(own))(new Uint8Array(0), quiet)).toEqual({ ok: false, error: own });
  });
});

describe('the limits of a 3MF', () => {
  const points = (count: number) =>
    '<vertex x="0" y="0" z="0"/><vertex x="1" y="0" z="0"/><vertex x="0" y="1" z="0"/>'.padEnd(
      81 + 27 * (count - 3),
      '<vertex x="0" y="0" z="0"/>',
    );
  const mesh = (triangles: number, corners = 3) =>
    `<mesh><vertices>${points(corners)}</vertices><triangles>${'<triangle v1="0" v2="1" v3="2"/>'.repeat(triangles)}</triangles></mesh>`;
  const body = (triangles: number, corners = 3) =>
    `<object id="0">${mesh(triangles, corners)}</object>`;
  const held = (id: number, ...parts: number[]) =>
    `<object id="${id}"><components>${parts.map((part) => `<component objectid="${part}"/>`).join('')}</components></object>`;
  const item = (id: number) => `<item objectid="${id}"/>`;
  const fault = (objects: string, items: string) => {
    const result = read3mf(package3mf(modelXml(objects, items)), quiet);
    return result.ok ? undefined : result.error;
  };

  it('on what it places stands between fifty bodies of a thousand triangles and fifty-one', () => {
    expect(fault(body(1000), item(0).repeat(50))).toBeUndefined();
    expect(fault(body(1000), item(0).repeat(51))).toMatchObject(REFUSED);
  });

  it('on components: an object is no part of itself, directly or by another', () => {
    expect(fault(held(0, 0), item(0))).toMatchObject(REFUSED);
    expect(fault(held(0, 1) + held(1, 0), item(0))).toMatchObject(REFUSED);
    // Twice beside each other is no cycle.
    expect(fault(body(1) + held(1, 0, 0) + held(2, 1, 0, 1), item(2))).toBeUndefined();
  });

  it('on components: sixty-four inside one another and no more', () => {
    const chain = (length: number) =>
      body(1) + Array.from({ length: length - 1 }, (_, k) => held(k + 1, k)).join('');
    expect(fault(chain(64), item(63))).toBeUndefined();
    expect(fault(chain(65), item(64))).toMatchObject(REFUSED);
  });

  it('on doubling is told before anything is built, with the number that it comes to', () => {
    const doubles = Array.from({ length: 40 }, (_, k) => held(k + 1, k, k)).join('');
    expect(fault(body(1) + doubles, item(40))).toEqual({
      kind: 'tooManyTriangles',
      count: 2 ** 40,
      limit: MAX_TRIANGLES,
    });
    // Nothing forty times doubled is nothing, and is not walked through.
    expect(fault(`<object id="0"/>${doubles}`, item(40))).toEqual({
      kind: 'noTriangles',
      format: '3mf',
    });
    // Few triangles of many points: 2^15 times 460 is more than three for each allowed triangle.
    const fifteen = Array.from({ length: 15 }, (_, k) => held(k + 1, k, k)).join('');
    expect(fault(body(1, 460) + fifteen, item(15))).toMatchObject(REFUSED);
  });

  it('where an object has triangles and components, both count and both are placed', () => {
    const both = `<object id="1">${mesh(2)}<components><component objectid="0" transform="1 0 0 0 1 0 0 0 1 7 0 0"/></components></object>`;
    const result = read3mf(package3mf(modelXml(body(3) + both, item(1) + item(0))), quiet);
    if (!result.ok) throw new Error(JSON.stringify(result.error));
    expect(result.value.triangles.length / 3).toBe(2 + 3 + 3);
    expect(result.value.positions.length / 3).toBe(6);
  });

  it('supports alone leave nothing', () => {
    const support = `<object id="0" type="support">${mesh(1)}</object>`;
    expect(fault(support, item(0))).toEqual({ kind: 'noTriangles', format: '3mf' });
  });

  it('on extensions: those that are known, by prefix or by name', () => {
    const model = (more: string) => {
      const bytes = package3mf(modelXml(body(1), item(0), more));
      const result = read3mf(bytes, quiet);
      return result.ok ? undefined : result.error;
    };
    const known = 'http://schemas.microsoft.com/3dmanufacturing/';
    for (const name of ['material/2015/02', 'trianglesets/2021/07', 'production/2015/06']) {
      expect(model(`xmlns:k="${known}${name}" requiredextensions="k"`)).toBeUndefined();
    }
    expect(model(`requiredextensions="  "`)).toBeUndefined();
    for (const more of [
      'xmlns:k="urn:slices" requiredextensions="k"',
      `xmlns:m="${known}material/2015/02" xmlns:k="urn:slices" requiredextensions="m k"`,
      'requiredextensions="urn:slices"',
    ]) {
      expect(model(more)).toEqual({ kind: 'unsupported', format: '3mf', name: 'urn:slices' });
    }
    const long = `urn:${'x'.repeat(200)}`;
    expect(model(`requiredextensions="${long}"`)).toMatchObject({ name: long.slice(0, 120) });
  });

  it('on what unpacks: past four million bytes no more than two hundred times the package', () => {
    const unpacked = (size: number, budget = 0) => {
      const bytes = zipSync({ a: new Uint8Array(size) });
      const entry = zipEntries(bytes).get('a');
      if (!entry) throw new Error('a');
      return faultOfCall(() => unpackEntry(bytes, entry, { bytes: budget }, quiet));
    };
    const ratio = { kind: 'unpacksTooLarge', format: '3mf', what: 'ratio', limit: 200 };
    expect(unpacked(3_999_000)).toBeUndefined();
    expect(unpacked(4_001_000)).toEqual(ratio);
    // All entries together: what others have unpacked counts.
    expect(unpacked(1000, 4_000_000)).toEqual(ratio);
    expect(unpacked(1000, 1_000_000_000)).toEqual({
      kind: 'unpacksTooLarge',
      format: '3mf',
      what: 'bytes',
      limit: 1_000_000_000,
    });
  });

  it('a relationship without a target, or relationships that are none, name no model', () => {
    const type = 'http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel';
    for (const text of [
      `<a><Relationship Type="${type}"/></a>`,
      `<a><Relation Type="${type}" Target="/a.model"/></a>`,
      `<a><xRelationship Type="${type}" Target="/a.model"/></a>`,
    ]) {
      const bytes = zipSync({
        '_rels/.rels': strToU8(text),
        'a.model': strToU8(modelXml(body(1), item(0))),
      });
      expect(read3mf(bytes, quiet)).toMatchObject({ error: REFUSED });
    }
  });
});

describe('what is told of the progress', () => {
  const shares = (read: typeof readObj, bytes: Uint8Array) => {
    const told: number[] = [];
    read(bytes, (share) => told.push(share));
    return told;
  };
  const facets = (count: number) =>
    'facet normal 0 0 1 outer loop vertex 0 0 0 vertex 1 0 0 vertex 0 1 0 endloop endfacet\n'.repeat(
      count,
    );

  it('begins at the beginning and grows', () => {
    // A binary STL tells every 65,536 triangles.
    const many = new Uint8Array(84 + 50 * 65_537);
    new DataView(many.buffer).setUint32(80, 65_537, true);
    expect(shares(readStlBinary, many)).toEqual([0, 65_536 / 65_537]);
    expect(shares(readStlText, strToU8(`solid\n${facets(2)}endsolid`))).toEqual([
      6 / (6 + 2 * facets(1).length + 8),
    ]);
    // An OBJ tells every 4 MB.
    const obj = strToU8(`v 0 0 0\nv 1 0 0\nv 0 1 0\nf 1 2 3\n#${' '.repeat(5_000_000)}\nf 1 2 3\n`);
    expect(shares(readObj, obj)).toEqual([0, expect.closeTo(1, 4)]);
  });
});
