import { readFileSync } from 'node:fs';
import { strToU8, zipSync } from 'fflate';
import { describe, expect, it, vi } from 'vitest';
import { importMesh } from '../../src/meshes/importMesh';
import { writeStl } from '../../src/meshes/writeStl';
import { boxMesh } from '../support/meshes';
import { seeded } from '../support/seeded';
import {
  faultOfFile,
  glb,
  meshXml,
  modelXml,
  objText,
  package3mf,
  stlText,
  TONON,
  threeMf,
} from './files';

// Thousands of files; seconds on a quiet machine.
vi.setConfig({ testTimeout: 60_000 });

const EXTENSIONS = ['stl', 'obj', '3mf', 'glb', 'step', ''];
/** Starts that lead to each reader. */
const STARTS: Readonly<Record<string, string>> = {
  stlBinary: '',
  stlText: 'solid x\nfacet normal 0 0 1\nouter loop\nvertex ',
  obj: 'v 0 0 0\nv 1 0 0\nf 1 2 ',
  '3mf': 'PK\x03\x04',
  glb: 'glTF\x02\0\0\0',
};

/** Settles with a fault or with a mesh that is not weighed; never throws, never takes long. */
async function endsWell(name: string, bytes: Uint8Array): Promise<string> {
  const start = performance.now();
  const result = await importMesh(name, bytes, () => {});
  expect(performance.now() - start).toBeLessThan(2000);
  if (!result.ok) {
    expect(result.error.kind).not.toBe('readerFailed');
    return result.error.kind;
  }
  return result.value.report.verdict;
}

describe('a hostile file', () => {
  it('of no byte or of one ends in a fault under every extension', async () => {
    for (const extension of EXTENSIONS.filter((one) => one !== 'step')) {
      expect(await faultOfFile(`a.${extension}`, new Uint8Array(0))).toEqual({ kind: 'empty' });
      expect(await faultOfFile(`a.${extension}`, Uint8Array.of(65))).toBeDefined();
    }
    expect(await faultOfFile('a.txt', strToU8('hello'))).toEqual({
      kind: 'unknownFormat',
      extension: 'txt',
    });
  });

  it.each(Object.entries(STARTS))(
    'of noise ends in a fault, 2000 times in the reader of %s',
    async (kind, start) => {
      const { unit } = seeded(4711);
      const counts: Record<string, number> = {};
      for (let n = 0; n < 2000; n++) {
        const size = Math.floor(unit() * 2000);
        const noise = Uint8Array.from({ length: size }, () => Math.floor(unit() * 256));
        // Text readers get noise that is mostly text.
        const text = kind === 'stlText' || kind === 'obj';
        const bytes = new Uint8Array([
          ...strToU8(start, true),
          ...(text
            ? noise.map((byte) => [32, 10, 46, 45, 101][byte % 9] ?? 48 + (byte % 10))
            : noise),
        ]);
        if (kind === 'glb' && bytes.length > 20) {
          new DataView(bytes.buffer).setUint32(8, bytes.length, true);
        }
        const end = await endsWell(kind.startsWith('stl') ? 'a.stl' : `a.${kind}`, bytes);
        counts[end] = (counts[end] ?? 0) + 1;
      }
      expect(counts.sound ?? 0).toBe(0);
      expect(counts.malformed ?? 0).toBeGreaterThan(1000);
    },
  );

  it('cut short at any byte ends in a fault or an open surface', async () => {
    const files: readonly [string, Uint8Array, string[]][] = [
      ['a.stl', writeStl([TONON], 1, 'x'), []],
      ['a.3mf', threeMf(TONON), []],
      ['a.glb', await glb(TONON), []],
      // The last number, name or line of a text may be cut and it is a text all the same.
      ['b.stl', stlText(TONON), ['sound']],
      ['a.obj', objText(TONON), ['cracked', 'sound']],
    ];
    for (const [name, bytes, also] of files) {
      const ends = new Map<string, number>();
      for (let size = 0; size < bytes.length; size++) {
        const end = await endsWell(name, bytes.slice(0, size));
        ends.set(end, (ends.get(end) ?? 0) + 1);
      }
      for (const end of ends.keys()) {
        expect(['empty', 'malformed', 'unknownFormat', 'noTriangles', ...also]).toContain(end);
      }
      // "endsolid NAME" cut within the name; a line's end after the last face.
      expect(ends.get('sound') ?? 0).toBeLessThan(20);
    }
  });

  it('of one kind under the name of another is read as what it is, and that is said', async () => {
    const result = await importMesh('grip.stl', await glb(TONON), () => {});
    expect(result).toMatchObject({
      ok: true,
      value: { report: { format: 'glb', notes: [{ kind: 'extensionDiffers', extension: 'stl' }] } },
    });
  });

  it('that claims 4294967295 triangles takes no memory for them', async () => {
    const bytes = writeStl([TONON], 1, 'x');
    new DataView(bytes.buffer).setUint32(80, 0xffffffff, true);
    expect(await faultOfFile('a.stl', bytes)).toEqual({
      kind: 'malformed',
      format: 'stlBinary',
      detail: 'claims 4294967295 triangles but ends after 4',
    });
  });

  it('of more than five million triangles is refused with their number', async () => {
    const count = 5_000_001;
    const bytes = new Uint8Array(84 + 50 * count);
    new DataView(bytes.buffer).setUint32(80, count, true);
    expect(await faultOfFile('a.stl', bytes)).toEqual({
      kind: 'tooManyTriangles',
      count,
      limit: 5_000_000,
    });
  });

  it.each([NaN, Infinity, -Infinity, 1e308])(
    'with the coordinate %s ends in a fault',
    async (value) => {
      const bad = { ...TONON, positions: TONON.positions.with(4, value) };
      for (const [name, bytes] of [
        ['a.stl', writeStl([bad], 1, 'x')],
        ['b.stl', stlText(bad)],
        ['a.obj', objText(bad)],
        ['a.3mf', threeMf(bad)],
        ['a.glb', await glb(bad)],
      ] as const) {
        expect((await faultOfFile(name, bytes))?.kind, name).toBe('malformed');
      }
    },
  );

  it('with decimal commas ends in a fault that shows the number', async () => {
    const bytes = strToU8('v 1,5 0 0\nv 0 1 0\nv 0 0 1\nf 1 2 3\n');
    expect(await faultOfFile('a.obj', bytes)).toMatchObject({
      detail: 'has "1,5" for a coordinate in line 1',
    });
  });
});

describe('a hostile 3MF', () => {
  it('that unpacks a thousandfold is stopped on the way', async () => {
    // Deflate's greatest ratio is 1032.
    const bomb = package3mf(`<model>${' '.repeat(30_000_000)}</model>`);
    expect(bomb.length).toBeLessThan(33_000);
    expect(await faultOfFile('a.3mf', bomb)).toMatchObject({ kind: 'malformed' });
    const open = modelXml('', '').replace('<build>', `${' '.repeat(30_000_000)}<build>`);
    expect(await faultOfFile('a.3mf', package3mf(open))).toMatchObject({
      kind: 'unpacksTooLarge',
      what: 'ratio',
    });
  });
  it('of twenty thousand entries is refused', async () => {
    const files: Record<string, Uint8Array> = {};
    for (let i = 0; i < 20_000; i++) files[`a${i}`] = new Uint8Array(0);
    expect(await faultOfFile('a.3mf', zipSync(files))).toMatchObject({
      kind: 'unpacksTooLarge',
      what: 'entries',
    });
  });
  it('that is a ZIP of ZIPs is not a 3MF', async () => {
    const bytes = zipSync({ 'a.zip': zipSync({ 'b.zip': zipSync({ c: new Uint8Array(9) }) }) });
    expect(await faultOfFile('a.3mf', bytes)).toMatchObject({ kind: 'malformed' });
  });
  it('whose model expands entities is refused before any is expanded', async () => {
    const laughs = `<!DOCTYPE lolz [<!ENTITY a "ha"><!ENTITY b "&a;&a;&a;&a;&a;&a;">]>`;
    const model = modelXml('', '').replace('<model', `${laughs}<model`);
    expect(await faultOfFile('a.3mf', package3mf(model))).toMatchObject({
      detail: 'has a model with a document type, which 3MF forbids',
    });
  });
  it('whose component contains itself, or nests without end, is refused', async () => {
    const self = '<object id="1"><components><component objectid="1"/></components></object>';
    const model = modelXml(self, '<item objectid="1"/>');
    expect(await faultOfFile('a.3mf', package3mf(model))).toMatchObject({
      detail: 'has an object that is a component of itself',
    });
    const chain = Array.from(
      { length: 5000 },
      (_, i) =>
        `<object id="${i}"><components><component objectid="${i + 1}"/></components></object>`,
    ).join('');
    const deep = modelXml(chain, '<item objectid="0"/>');
    expect(await faultOfFile('a.3mf', package3mf(deep))).toMatchObject({ kind: 'malformed' });
  });
  it('whose components double forty times is refused with the number they come to', async () => {
    const doubles = Array.from(
      { length: 40 },
      (_, i) =>
        `<object id="${i + 1}"><components><component objectid="${i}"/><component objectid="${i}"/></components></object>`,
    ).join('');
    const base = `<object id="0">${meshXml(boxMesh(1, 1, 1))}</object>`;
    const full = package3mf(modelXml(base + doubles, '<item objectid="40"/>'));
    expect(await faultOfFile('a.3mf', full)).toEqual({
      kind: 'tooManyTriangles',
      count: 12 * 2 ** 40,
      limit: 5_000_000,
    });
    const empty = package3mf(modelXml('<object id="0"/>' + doubles, '<item objectid="40"/>'));
    expect(await faultOfFile('a.3mf', empty)).toMatchObject({ kind: 'noTriangles' });
  });
  it('of a few kilobytes that places a body over and over is refused by what it comes to', async () => {
    const base = `<object id="0">${meshXml(boxMesh(1, 1, 1))}</object>`;
    const many = package3mf(modelXml(base, '<item objectid="0"/>'.repeat(5000)));
    expect(many.length).toBeLessThan(4000);
    expect(await faultOfFile('a.3mf', many)).toMatchObject({
      kind: 'malformed',
      detail: expect.stringMatching(/^places more than 50000 triangles with/),
    });
  });
  it('that names a part or an object that is not there is refused', async () => {
    const bytes = package3mf(modelXml('', '<item objectid="9"/>'));
    expect(await faultOfFile('a.3mf', bytes)).toMatchObject({ kind: 'malformed' });
    const lost = zipSync({ '_rels/.rels': strToU8('<Relationships/>') });
    expect(await faultOfFile('a.3mf', lost)).toMatchObject({
      detail: 'does not say where its model is',
    });
  });
  it('with a flipped bit anywhere does not pass for sound', async () => {
    const bytes = threeMf(boxMesh(1, 2, 3));
    let same = 0;
    for (let at = 0; at < bytes.length; at++) {
      const bent = bytes.slice();
      bent[at] ^= 4;
      const end = await endsWell('a.3mf', bent);
      // Dates, attributes and the local copies of names mean nothing.
      if (end === 'sound') same++;
    }
    expect(same).toBeLessThan(0.4 * bytes.length);
  });
});

describe('a hostile GLB', () => {
  const lies: readonly [string, (json: Record<string, never>) => void, string][] = [
    [
      'an accessor longer than its view',
      (json) => set(json, 'accessors', 0, 'count', 2 ** 31),
      'malformed',
    ],
    [
      'a view longer than the file',
      (json) => set(json, 'bufferViews', 0, 'byteLength', 2 ** 40),
      'malformed',
    ],
    ['a negative start', (json) => set(json, 'bufferViews', 0, 'byteOffset', -4), 'malformed'],
    ['a node that is its own child', (json) => set(json, 'nodes', 0, 'children', [0]), 'malformed'],
    ['a buffer elsewhere', (json) => set(json, 'buffers', 0, 'uri', 'http://a/b'), 'unsupported'],
    [
      'a sparse accessor of any length',
      (json) => set(json, 'accessors', 0, 'sparse', {}),
      'unsupported',
    ],
    [
      'an accessor that is not there',
      (json) => set(json, 'meshes', 0, 'primitives', [{ attributes: { POSITION: 99 } }]),
      'malformed',
    ],
    [
      'lists that are numbers',
      (json) => Object.assign(json, { nodes: 5, meshes: 'x' }),
      'malformed',
    ],
  ];
  function set(json: Record<string, never>, list: string, at: number, key: string, value: unknown) {
    (json[list] as Record<string, unknown>[])[at][key] = value;
  }
  it.each(lies)('with %s is refused', async (_, lie, kind) => {
    const bytes = await glb(TONON);
    const size = new DataView(bytes.buffer, bytes.byteOffset).getUint32(12, true);
    const json = JSON.parse(new TextDecoder().decode(bytes.subarray(20, 20 + size)));
    lie(json);
    expect((await faultOfFile('a.glb', rebuilt(json, bytes.subarray(20 + size))))?.kind).toBe(kind);
  });
  it('of 64 kB that places a body over and over is refused before a triangle is built', async () => {
    const bytes = await glb(TONON);
    const size = new DataView(bytes.buffer, bytes.byteOffset).getUint32(12, true);
    const json = JSON.parse(new TextDecoder().decode(bytes.subarray(20, 20 + size)));
    const placing = (primitives: number, nodes: number) => {
      json.meshes[0].primitives = Array(primitives).fill(json.meshes[0].primitives[0]);
      json.nodes = Array.from({ length: nodes }, (_, k) => ({ mesh: 0, translation: [k, 0, 0] }));
      json.scenes = [{ nodes: [...json.nodes.keys()] }];
      return rebuilt(json, bytes.subarray(20 + size));
    };
    const many = placing(500, 1000);
    expect(many.length).toBeLessThan(65_536);
    const limit = Math.max(50_000, many.length);
    const detail = `places more than ${limit} triangles with ${many.length} bytes`;
    // The time of all doors for 64 kB, the best of three; two million triangles took four seconds.
    let best = Infinity;
    for (let k = 0; k < 3; k++) {
      const start = process.cpuUsage();
      const fault = await faultOfFile('a.glb', many);
      const { user, system } = process.cpuUsage(start);
      best = Math.min(best, (user + system) / 1000);
      expect(fault).toEqual({ kind: 'malformed', format: 'glb', detail });
    }
    expect(best).toBeLessThan(250);
    // As many as are always allowed are not refused for their number, one body more is.
    expect((await faultOfFile('a.glb', placing(1, 50)))?.kind).toBeUndefined();
    const most = placing(50, 250);
    expect(most.length).toBeLessThan(50_000);
    expect((await faultOfFile('a.glb', most))?.kind).toBeUndefined();
    expect(await faultOfFile('a.glb', placing(50, 251))).toMatchObject({
      detail: expect.stringMatching(/^places more than 50000 triangles/),
    });
  });
  it('that requires an unknown extension is refused by its name', async () => {
    const json = { asset: { version: '2.0' }, extensionsRequired: ['KHR_draco_mesh_compression'] };
    expect(await faultOfFile('a.glb', rebuilt(json, new Uint8Array(0)))).toEqual({
      kind: 'unsupported',
      format: 'glb',
      name: 'KHR_draco_mesh_compression',
    });
  });
  function rebuilt(json: unknown, rest: Uint8Array): Uint8Array {
    let text = JSON.stringify(json);
    while (text.length % 4 !== 0) text += ' ';
    const bytes = new Uint8Array(20 + text.length + rest.length);
    const view = new DataView(bytes.buffer);
    bytes.set(strToU8('glTF'));
    view.setUint32(4, 2, true);
    view.setUint32(8, bytes.length, true);
    view.setUint32(12, text.length, true);
    bytes.set(strToU8('JSON'), 16);
    bytes.set(strToU8(text), 20);
    bytes.set(rest, 20 + text.length);
    return bytes;
  }
});

describe('a hostile STEP file', () => {
  it('ends in a fault, and the kernel is there for the next file', async () => {
    for (const text of [
      'ISO-10303-21;',
      'ISO-10303-21;\nHEADER;\nENDSEC;\nDATA;\n#1=X(#1);\nENDSEC;\n',
    ]) {
      expect(await faultOfFile('a.step', strToU8(text))).toBeDefined();
    }
  });

  it('cut short or bent ends in a fault or a mesh, never in a throw', async () => {
    const bytes = readFileSync(new URL('./block.step', import.meta.url));
    const { whole } = seeded(21);
    for (let n = 0; n < 20; n++) {
      const bent = new Uint8Array(bytes);
      for (let k = 0; k < 5; k++) bent[whole(100, bent.length - 1)] = whole(33, 126);
      const cut = n % 2 === 0 ? bent : bent.slice(0, whole(100, bent.length));
      const result = await importMesh('a.step', cut, () => {});
      if (!result.ok)
        expect(['malformed', 'noTriangles', 'readerFailed']).toContain(result.error.kind);
    }
  });
});
