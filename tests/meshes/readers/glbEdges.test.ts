import { describe, expect, it } from 'vitest';
import { readGlb } from '../../../src/meshes/readers/glb';
import { countOf, isCount, itemOf, openGlb } from '../../../src/meshes/readers/glbContainer';
import { faultOf } from '../../../src/meshes/readers/signal';
import { seeded } from '../../support/seeded';
import { glbOf, packed } from './glbByHand';

const FLOAT = 5126;
const told = (detail: string) => ({ kind: 'malformed', format: 'glb', detail });

function faultIn(call: () => unknown) {
  try {
    call();
  } catch (thrown) {
    return faultOf(thrown);
  }
  return undefined;
}

/** Points as float32 in one mesh of one node; parts of the JSON can be said otherwise. */
function fileOf(points: readonly number[], said: Readonly<Record<string, unknown>> = {}) {
  const bin = Uint8Array.from(packed('setFloat32', points));
  return glbOf(
    {
      asset: { version: '2.0' },
      scenes: [{ nodes: [0] }],
      nodes: [{ mesh: 0 }],
      meshes: [{ primitives: [{ attributes: { POSITION: 0 } }] }],
      accessors: [{ bufferView: 0, componentType: FLOAT, type: 'VEC3', count: points.length / 3 }],
      bufferViews: [{ buffer: 0, byteLength: bin.length }],
      buffers: [{ byteLength: bin.length }],
      ...said,
    },
    bin,
  );
}
const TRIANGLE = [0, 0, 0, 1, 0, 0, 0, 1, 0];

function cornersOf(bytes: Uint8Array) {
  const result = readGlb(bytes, () => {});
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  const { positions, triangles } = result.value;
  return Array.from(triangles, (v) => [...positions.subarray(3 * v, 3 * v + 3)]);
}
function faultOfFile(bytes: Uint8Array) {
  const result = readGlb(bytes, () => {});
  return result.ok ? undefined : result.error;
}

describe('where a node puts its mesh', () => {
  const random = seeded(61);
  const numbers = (count: number) => Array.from({ length: count }, () => random.between(-2, 2));
  const points = numbers(9).map(Math.fround);

  // Column-major, glTF 2.0, 3.5.3: p'_r = sum over c of m[4 c + r] p_c, with 1 as the fourth.
  it('by any matrix is the product with it, and mirrored triangles are turned round', () => {
    for (let i = 0; i < 20; i++) {
      const m = numbers(16);
      const corners = cornersOf(fileOf(points, { nodes: [{ mesh: 0, matrix: m }] }));
      const hand = [0, 1, 2].map((v) =>
        [0, 1, 2].map(
          (r) =>
            m[r] * points[3 * v] +
            m[4 + r] * points[3 * v + 1] +
            m[8 + r] * points[3 * v + 2] +
            m[12 + r],
        ),
      );
      const volume =
        m[0] * (m[5] * m[10] - m[6] * m[9]) -
        m[4] * (m[1] * m[10] - m[2] * m[9]) +
        m[8] * (m[1] * m[6] - m[2] * m[5]);
      const order = volume < 0 ? [0, 2, 1] : [0, 1, 2];
      corners.forEach((corner, k) =>
        corner.forEach((one, axis) =>
          expect(Math.abs(one - hand[order[k]][axis])).toBeLessThan(1e-14),
        ),
      );
    }
  });

  // A unit quaternion (v, w) turns p into p + 2 v x (v x p + w p), after the scale.
  it('by any turn and scale is that of the quaternion by its cross products', () => {
    const cross = (a: readonly number[], b: readonly number[]) => [
      a[1] * b[2] - a[2] * b[1],
      a[2] * b[0] - a[0] * b[2],
      a[0] * b[1] - a[1] * b[0],
    ];
    for (let i = 0; i < 20; i++) {
      const raw = numbers(4);
      const size = Math.hypot(...raw);
      const rotation = raw.map((one) => one / size);
      const scale = [random.between(0.5, 2), random.between(0.5, 2), random.between(0.5, 2)];
      const translation = numbers(3);
      const node = { mesh: 0, rotation, scale, translation };
      const corners = cornersOf(fileOf(points, { nodes: [node] }));
      const v = rotation.slice(0, 3);
      corners.forEach((corner, k) => {
        const p = [0, 1, 2].map((axis) => scale[axis] * points[3 * k + axis]);
        const inner = cross(v, p).map((one, axis) => one + rotation[3] * p[axis]);
        const turn = cross(v, inner);
        corner.forEach((one, axis) =>
          expect(Math.abs(one - p[axis] - 2 * turn[axis] - translation[axis])).toBeLessThan(1e-14),
        );
      });
    }
  });

  it('is not known from a list of other than its count of numbers, or from what is no list', () => {
    const wrong = [
      ['matrix', Array(15).fill(1), 16],
      ['matrix', Array(17).fill(1), 16],
      ['matrix', 'x'.repeat(16), 16],
      ['matrix', { length: 16 }, 16],
      ['rotation', [0, 0, 0, 1, 0], 4],
      ['rotation', [0, 0, 0, null], 4],
      ['scale', [1, 1], 3],
      ['translation', [1, 1, '1'], 3],
      ['translation', 7, 3],
    ] as const;
    for (const [name, value, count] of wrong) {
      expect(faultOfFile(fileOf(TRIANGLE, { nodes: [{ mesh: 0, [name]: value }] }))).toEqual(
        told(`has a transform of other than ${count} numbers`),
      );
    }
  });
});

describe('the strips of a GLB', () => {
  // glTF 2.0, 3.7.2.1: triangle i of a strip is {i, i + (1 + i % 2), i + (2 - i % 2)}, turned here to begin with its middle one.
  it('turn every second triangle round, however long they are', () => {
    const zigzag = Array.from({ length: 7 }, (_, k) => [k, k % 2, 0]);
    const strip = { primitives: [{ attributes: { POSITION: 0 }, mode: 5 }] };
    const corners = cornersOf(fileOf(zigzag.flat(), { meshes: [strip] }));
    expect(corners).toHaveLength(15);
    for (let t = 0; t < 5; t++) {
      const three = corners.slice(3 * t, 3 * t + 3);
      expect(three.map(([x]) => x).toSorted((a, b) => a - b)).toEqual([t, t + 1, t + 2]);
      const [[ax, ay], [bx, by], [cx, cy]] = three;
      // All on one side: the first, (0, 0) (1, 1) (2, 0), is clockwise.
      expect((bx - ax) * (cy - ay) - (by - ay) * (cx - ax)).toBe(-2);
    }
  });
});

describe('what a GLB comes to', () => {
  const body = (count: number) => Array.from({ length: count }, () => TRIANGLE).flat();
  const nodes = (count: number) => ({
    nodes: Array.from({ length: count }, (_, k) => ({ mesh: 0, translation: [k, 0, 0] })),
    scenes: [{ nodes: Array.from({ length: count }, (_, k) => k) }],
  });

  it('is refused past fifty thousand triangles of a small file', () => {
    // 48 kB with a thousand triangles, fifty-one times; the very limit is tested with `checkPlacedCount`.
    const small = fileOf(body(1000), nodes(51));
    expect(small.length).toBeLessThan(50_000);
    expect(faultOfFile(small)).toMatchObject({
      kind: 'malformed',
      format: 'glb',
      detail: expect.stringMatching(/^places more than 50000 triangles/),
    });
  });

  it('is refused past fifty thousand primitives, also of no triangles', () => {
    const lines = (count: number) => {
      const line = () => ({ attributes: { POSITION: 0 }, mode: 1 });
      const primitives = Array.from({ length: 100 }, line);
      const said = {
        meshes: [
          { primitives: [...primitives] },
          { primitives: [{ attributes: { POSITION: 0 } }] },
        ],
        nodes: [...Array.from({ length: count }, () => ({ mesh: 0 })), { mesh: 1 }],
        scenes: [{ nodes: Array.from({ length: count + 1 }, (_, k) => k) }],
      };
      return fileOf(TRIANGLE, said);
    };
    expect(lines(500).length).toBeLessThan(50_000);
    expect(faultOfFile(lines(500))).toEqual(told('places more than 50000 primitives'));
    expect(faultOfFile(lines(499))).toBeUndefined();
  });

  it('is told while it is read, from the first primitive to the last', () => {
    const shares: number[] = [];
    readGlb(fileOf(body(2), nodes(4)), (share) => shares.push(share));
    expect(shares).toEqual([0.25, 0.5, 0.75, 1]);
  });

  it('is in metres, and without anything is nothing', () => {
    expect(readGlb(fileOf(TRIANGLE), () => {})).toMatchObject({ value: { unitInFile: 'm' } });
    const none = { kind: 'noTriangles', format: 'glb' };
    expect(faultOfFile(fileOf([0, 0, 0, 1, 0, 0]))).toEqual(none);
    expect(faultOfFile(fileOf(TRIANGLE, { scenes: [{}] }))).toEqual(none);
    expect(faultOfFile(fileOf(TRIANGLE, { meshes: [{}] }))).toEqual(none);
    expect(faultOfFile(fileOf(TRIANGLE, { meshes: [{ primitives: [5] }] }))).toEqual(none);
    expect(faultOfFile(fileOf(TRIANGLE, { scenes: undefined, nodes: [7, { mesh: 0 }] }))).toEqual(
      told('names the node 0, which is not there'),
    );
  });

  it('beside an empty primitive is the other one', () => {
    const primitives = [
      { attributes: { POSITION: 1 } },
      { attributes: { POSITION: 0 } },
      { attributes: { POSITION: 1 }, mode: 6 },
    ];
    const accessor = { bufferView: 0, componentType: FLOAT, type: 'VEC3' };
    const accessors = [
      { ...accessor, count: 3 },
      { ...accessor, count: 0 },
    ];
    const shares: number[] = [];
    const bytes = fileOf(TRIANGLE, { meshes: [{ primitives }], accessors });
    expect(cornersOf(bytes)).toHaveLength(3);
    readGlb(bytes, (share) => shares.push(share));
    expect(shares).toEqual([1]);
  });

  it.each([
    [[{ attributes: { POSITION: 0 }, mode: 7 }], 'has a primitive of mode 7'],
    [[{ attributes: { POSITION: 0 }, mode: -1 }], 'has -1 for the mode of a primitive'],
    [[{ attributes: { POSITION: 0 }, mode: 4.5 }], 'has 4.5 for the mode of a primitive'],
    [[{ attributes: { POSITION: 0 }, mode: 'x' }], 'has "x" for the mode of a primitive'],
    [[{ attributes: {} }], 'has a primitive without positions'],
    [[{}], 'has a primitive without positions'],
    [[{ attributes: { POSITION: 9 } }], 'names the accessor 9, which is not there'],
    [[{ attributes: { POSITION: null } }], 'names the accessor null, which is not there'],
  ])('with the primitives %j is refused', (primitives, detail) => {
    expect(faultOfFile(fileOf(TRIANGLE, { meshes: [{ primitives }] }))).toEqual(told(detail));
  });

  it('with a coordinate that is no place, or placed out of all bounds, is refused', () => {
    expect(faultOfFile(fileOf([...TRIANGLE.slice(0, 8), Number.NaN]))).toEqual(
      told('has a coordinate that is not a number in a placed mesh'),
    );
    expect(faultOfFile(fileOf(TRIANGLE, { nodes: [{ mesh: 0, scale: [2e9, 1, 1] }] }))).toEqual(
      told('has a coordinate of 2000000000 in a placed mesh, beyond 1000000000'),
    );
  });
});

describe('extensions that a GLB requires', () => {
  const required = (...names: unknown[]) =>
    faultOfFile(fileOf(TRIANGLE, { extensionsRequired: names }));

  it('are known where they change nothing about the shape', () => {
    for (const name of [
      'KHR_mesh_quantization',
      'KHR_materials_unlit',
      'KHR_materials_pbrSpecularGlossiness',
      'KHR_texture_transform',
      'EXT_texture_webp',
      'KHR_lights_punctual',
      'KHR_xmp_json_ld',
    ]) {
      expect(required(name)).toBeUndefined();
    }
    expect(
      faultOfFile(fileOf(TRIANGLE, { extensionsRequired: 'x', extensionsUsed: 5 })),
    ).toBeUndefined();
  });

  it('are else refused by name', () => {
    for (const name of [
      'KHR_materials_',
      'KHR_materials_a b',
      'EXT_texture_',
      'EXT_texture_!',
      'x',
    ]) {
      expect(required('KHR_lights_punctual', name)).toEqual({
        kind: 'unsupported',
        format: 'glb',
        name,
      });
    }
    expect(required(7)).toMatchObject({ name: '7' });
  });
});

describe('the container of a GLB', () => {
  const whole = fileOf(TRIANGLE);
  const changed = (at: number, value: number) => {
    const bytes = whole.slice();
    new DataView(bytes.buffer).setUint32(at, value, true);
    return faultOfFile(bytes);
  };

  it('has twenty bytes at least, and the length that it claims', () => {
    const least = glbOf('');
    expect(least.length).toBe(20);
    expect(faultOfFile(least)).toEqual(told('has a JSON chunk that is not JSON'));
    expect(faultOfFile(least.subarray(0, 19))).toEqual(
      told('has 19 bytes, less than a GLB header'),
    );
    expect(changed(8, whole.length - 1)).toEqual(
      told(`claims ${whole.length - 1} bytes but has ${whole.length}`),
    );
  });

  it('begins with a whole chunk of JSON', () => {
    const none = told('does not begin with a whole JSON chunk');
    expect(changed(16, 7)).toEqual(none);
    expect(changed(12, whole.length - 19)).toEqual(none);
    // To the very end of the file it is whole, but here the rest is no JSON.
    expect(changed(12, whole.length - 20)).toEqual(told('has a JSON chunk that is not JSON'));
    expect(openGlb(glbOf('{"a":1}'))).toEqual({ json: { a: 1 }, bin: new Uint8Array(0) });
  });

  it('has JSON in UTF-8 that is an object', () => {
    for (const text of ['5', '"x"', 'null', '[1]']) {
      expect(faultOfFile(glbOf(text))).toEqual(told('has a JSON chunk that is not an object'));
    }
    const bytes = glbOf('{"a":"xx"}');
    bytes[26] = 0xff;
    expect(faultOfFile(bytes)).toEqual(told('has a JSON chunk that is not JSON'));
  });

  it('has chunks that end with the file', () => {
    const json = glbOf('{}').length;
    const behind = (...bytes: number[]) => {
      const file = Uint8Array.from([...glbOf('{}'), ...bytes]);
      new DataView(file.buffer).setUint32(8, file.length, true);
      return faultIn(() => openGlb(file));
    };
    const BIN = [0x42, 0x49, 0x4e, 0];
    expect(json).toBe(24);
    expect(behind(0, 0, 0)).toEqual(told('ends inside the head of a chunk'));
    expect(behind(0, 0, 0, 0, ...BIN.slice(1))).toEqual(told('ends inside the head of a chunk'));
    expect(behind(0, 0, 0, 0, ...BIN)).toBeUndefined();
    expect(behind(0, 0, 0, 0, 1, 2, 3, 4)).toBeUndefined();
    expect(behind(2, 0, 0, 0, ...BIN, 1)).toEqual(
      told('has a chunk of 2 bytes that runs past the end'),
    );
    expect(behind(1, 0, 0, 0, 1, 2, 3, 4, 9, 1, 0, 0, 0, ...BIN, 1)).toBeUndefined();
    expect(behind(2, 0, 0, 0, 1, 2, 3, 4, 9)).toEqual(
      told('has a chunk of 2 bytes that runs past the end'),
    );
  });

  it('names items by whole numbers from nothing on', () => {
    const list = [{ a: 1 }, 5, null];
    expect(itemOf(list, 0, 'node')).toEqual({ a: 1 });
    for (const index of [1, 2, 3, -1, 0.5, '0', undefined, true]) {
      const fault = faultIn(() => itemOf(list, index, 'node'));
      const shown = typeof index === 'number' ? index : JSON.stringify(index ?? null);
      expect(fault).toEqual(told(`names the node ${shown}, which is not there`));
    }
    expect(faultIn(() => itemOf({ 0: { a: 1 } }, 0, 'mesh'))).toEqual(
      told('names the mesh 0, which is not there'),
    );
    const long = 'x'.repeat(50);
    expect(faultIn(() => itemOf(list, long, 'node'))).toEqual(
      told(`names the node "${'x'.repeat(29)}, which is not there`),
    );
    expect([0, 7, 2 ** 53 - 1].every(isCount)).toBe(true);
    expect([-1, 1.5, 2 ** 53, NaN, Infinity, '1', true, null].some(isCount)).toBe(false);
    expect([countOf(undefined, 4, 'x'), countOf(0, 4, 'x'), countOf(9, undefined, 'x')]).toEqual([
      4, 0, 9,
    ]);
    expect(faultIn(() => countOf(undefined, undefined, 'a stride'))).toEqual(
      told('has null for a stride'),
    );
  });
});
