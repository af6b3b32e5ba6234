import { describe, expect, it } from 'vitest';
import { readGlb } from '../../../src/meshes/readers/glb';
import { glbOf, packed } from './glbByHand';

/** Four corners of a square, in metres (binary fractions, so that float32 keeps them). */
const SQUARE = [0, 0, 0, 1, 0, 0, 1, 1, 0, 0, 1, 0];
const FLOAT = 5126;

interface Plan {
  readonly positions?: Uint8Array;
  readonly accessor?: object;
  readonly view?: object;
  readonly indices?: { readonly bytes: readonly number[]; readonly type: number; count: number };
  readonly primitive?: object;
  readonly node?: object;
  readonly more?: object;
}

/** One primitive of the square's points on one node; every part of it can be changed. */
function squareFile(plan: Plan = {}): Uint8Array {
  const points = plan.positions ?? Uint8Array.from(packed('setFloat32', SQUARE));
  const { indices } = plan;
  const bin = Uint8Array.from([...points, ...(indices?.bytes ?? [])]);
  return glbOf(
    {
      asset: { version: '2.0' },
      scene: 0,
      scenes: [{ nodes: [0] }],
      nodes: [{ mesh: 0, ...plan.node }],
      meshes: [
        {
          primitives: [
            {
              attributes: { POSITION: 0 },
              ...(indices ? { indices: 1 } : {}),
              ...plan.primitive,
            },
          ],
        },
      ],
      accessors: [
        { bufferView: 0, componentType: FLOAT, type: 'VEC3', count: 4, ...plan.accessor },
        { bufferView: 1, componentType: indices?.type, type: 'SCALAR', count: indices?.count },
      ],
      bufferViews: [
        { buffer: 0, byteLength: points.length, ...plan.view },
        { buffer: 0, byteOffset: points.length, byteLength: indices?.bytes.length },
      ],
      buffers: [{ byteLength: bin.length }],
      ...plan.more,
    },
    bin,
  );
}

function read(bytes: Uint8Array) {
  const result = readGlb(bytes, () => {});
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  const { positions, triangles } = result.value;
  const corners = Array.from(triangles, (v) => [...positions.subarray(3 * v, 3 * v + 3)]);
  return { ...result.value, corners, count: triangles.length / 3 };
}

function fault(bytes: Uint8Array) {
  const result = readGlb(bytes, () => {});
  return result.ok ? undefined : result.error;
}

/** The corners by their numbers in the square. */
function numbered(corners: readonly number[][]): number[] {
  return corners.map((corner) =>
    [0, 1, 2, 3].findIndex((k) => corner.every((one, axis) => one === SQUARE[3 * k + axis])),
  );
}

describe('the primitives of a GLB', () => {
  // glTF 2.0, section 3.7.2.1: triangles i = {3i, 3i+1, 3i+2}; strip {i, i + (1 + i % 2), i + (2 - i % 2)};
  // fan {i + 1, i + 2, 0}, which is {0, i + 1, i + 2} turned round.
  it('are triangles, strips and fans, in the order of the standard', () => {
    const indices = { bytes: packed('setUint16', [0, 1, 2, 0, 2, 3]), type: 5123, count: 6 };
    expect(numbered(read(squareFile({ indices })).corners)).toEqual([0, 1, 2, 0, 2, 3]);
    const strip = read(squareFile({ primitive: { mode: 5 } })).corners;
    expect(numbered(strip)).toEqual([0, 1, 2, 2, 1, 3]);
    const fan = read(squareFile({ primitive: { mode: 6 } })).corners;
    expect(numbered(fan)).toEqual([0, 1, 2, 0, 2, 3]);
    // Without indices the points come as they are; a rest that is no triangle is left.
    expect(numbered(read(squareFile()).corners)).toEqual([0, 1, 2]);
  });

  it.each([
    [5121, 'setUint8'],
    [5123, 'setUint16'],
    [5125, 'setUint32'],
  ] as const)('have indices of the component type %d', (type, write) => {
    const indices = { bytes: packed(write, [3, 2, 1]), type, count: 3 };
    expect(numbered(read(squareFile({ indices })).corners)).toEqual([3, 2, 1]);
  });

  it('may lie between other numbers, and begin anywhere', () => {
    const row = (k: number) => [7, 7, ...SQUARE.slice(3 * k, 3 * k + 3)];
    const positions = Uint8Array.from(packed('setFloat32', [9, ...[0, 1, 2, 3].flatMap(row)]));
    const bytes = squareFile({
      positions,
      view: { byteOffset: 4, byteLength: positions.length - 4, byteStride: 20 },
      accessor: { byteOffset: 8 },
    });
    expect(numbered(read(bytes).corners)).toEqual([0, 1, 2]);
  });

  // KHR_mesh_quantization and glTF 2.0, 3.6.2.2: normalised c / 127, c / 255, c / 32767, c / 65535, at least -1.
  it.each([
    ['setInt8', 5120, [127, -128, 0], [1, -1, 0]],
    ['setUint8', 5121, [255, 51, 0], [1, 0.2, 0]],
    ['setInt16', 5122, [32767, -32768, 0], [1, -1, 0]],
    ['setUint16', 5123, [65535, 13107, 0], [1, 0.2, 0]],
  ] as const)('may be normalised whole numbers: %s', (write, componentType, first, wanted) => {
    const positions = Uint8Array.from(packed(write, [...first, 1, 2, 3, 4, 5, 6, 0, 0, 0]));
    const byCount = { componentType, normalized: true };
    const { corners } = read(squareFile({ positions, accessor: byCount }));
    expect(corners[0]).toEqual(wanted);
    const plain = read(squareFile({ positions, accessor: { componentType } }));
    expect(plain.corners[0]).toEqual(first);
  });

  it('that are lines or points are left out and told', () => {
    const primitives = [
      { attributes: { POSITION: 0 } },
      { attributes: { POSITION: 0 }, mode: 1 },
      { attributes: { POSITION: 0 }, mode: 0 },
    ];
    const file = squareFile({ node: { skin: 0 }, more: { meshes: [{ primitives }] } });
    expect(read(file).notes).toEqual([
      { kind: 'leftOut', what: 'lines', count: 2 },
      { kind: 'leftOut', what: 'skins', count: 1 },
    ]);
    expect(read(squareFile()).notes).toEqual([]);
    expect(fault(squareFile({ primitive: { mode: 3 } }))).toEqual({
      kind: 'noTriangles',
      format: 'glb',
    });
  });
});

describe('the nodes of a GLB', () => {
  const cornerOf = (node: object, more: object = {}) => read(squareFile({ node, more })).corners;

  // Column-major (glTF 2.0, 3.5.3): x goes to 2 y, y to 3 z, z to 5 x, then moved by 10, 20, 30.
  it('place by a matrix that is written by columns', () => {
    const matrix = [0, 2, 0, 0, 0, 0, 3, 0, 5, 0, 0, 0, 10, 20, 30, 1];
    expect(cornerOf({ matrix })).toEqual([
      [10, 20, 30],
      [10, 22, 30],
      [10, 22, 33],
    ]);
  });

  // Scale first, then turn, then move (glTF 2.0, 3.5.3). A quarter turn about x takes y to z.
  it.each([
    [
      [1, 0, 0],
      [4, 5, 6],
      [2, 0, 0],
      [2, 0, 3],
    ],
    [
      [0, 1, 0],
      [4, 5, 6],
      [0, 0, -2],
      [0, 3, -2],
    ],
    [
      [0, 0, 1],
      [4, 5, 6],
      [0, 2, 0],
      [-3, 2, 0],
    ],
  ])('place by scale, a quarter turn about %o and a move', (axis, translation, first, second) => {
    const rotation = [...axis.map((one) => one * Math.SQRT1_2), Math.SQRT1_2];
    const corners = cornerOf({ rotation, translation, scale: [2, 3, 7] });
    const moved = (way: readonly number[]) =>
      way.map((one, k) => expect.closeTo(one + translation[k], 12));
    expect(corners[0]).toEqual(moved([0, 0, 0]));
    expect(corners[1]).toEqual(moved(first));
    expect(corners[2]).toEqual(moved(second));
  });

  it('stand inside one another, the outer one last', () => {
    const more = {
      nodes: [
        { children: [1], scale: [2, 2, 2], translation: [0, 0, 1] },
        { mesh: 0, translation: [10, 0, 0] },
      ],
    };
    expect(cornerOf({}, more)[1]).toEqual([22, 0, 1]);
  });

  it('that mirror turn their triangles round, so that outside stays outside', () => {
    const indices = { bytes: packed('setUint16', [0, 1, 2]), type: 5123, count: 3 };
    const { corners } = read(squareFile({ indices, node: { scale: [-1, 1, 1] } }));
    expect(corners).toEqual([
      [0, 0, 0],
      [-1, 1, 0],
      [-1, 0, 0],
    ]);
  });

  it('of the scene asked for are read, and without scenes those that no other holds', () => {
    const nodes = [{ mesh: 0, translation: [5, 0, 0] }, { mesh: 0 }];
    const scenes = [{ nodes: [0] }, { nodes: [1] }];
    expect(cornerOf({}, { nodes, scenes, scene: 1 })[0]).toEqual([0, 0, 0]);
    expect(cornerOf({}, { nodes, scenes, scene: undefined })[0]).toEqual([5, 0, 0]);
    const tree = [{ mesh: 0 }, { children: [0], translation: [7, 0, 0] }];
    const file = squareFile({ more: { nodes: tree, scenes: undefined, scene: undefined } });
    expect(read(file).corners.map(([x]) => x)).toEqual([7, 8, 8]);
  });

  it('name a transform of other than its count of numbers, a child that is not there, or stand twice: refused', () => {
    const broken = [
      { matrix: [1, 0] },
      { rotation: [0, 0, 1] },
      { scale: [1, 1, '1'] },
      { children: [9] },
      { children: [0] },
      { mesh: 3 },
      { mesh: -1 },
    ];
    for (const node of broken) {
      expect(fault(squareFile({ node }))).toMatchObject({ kind: 'malformed', format: 'glb' });
    }
  });
});

describe('a GLB that claims what it does not hold', () => {
  const refused = (plan: Plan) => fault(squareFile(plan));

  it('is refused as a GLB, whatever the claim', () => {
    const claims: Plan[] = [
      { accessor: { count: 5 } },
      { accessor: { byteOffset: 1 } },
      { accessor: { count: 1.5 } },
      { accessor: { count: undefined } },
      { accessor: { type: 'VEC2' } },
      { accessor: { componentType: 5124 } },
      { accessor: { componentType: undefined } },
      { accessor: { bufferView: 7 } },
      { view: { byteStride: 11 } },
      { view: { byteLength: 47 } },
      { view: { byteOffset: 1, byteLength: 48 } },
      { view: { byteLength: undefined } },
      { primitive: { mode: 7 } },
      { primitive: { mode: 'x' } },
      { primitive: { attributes: {} } },
      { primitive: { attributes: 5 } },
      { indices: { bytes: packed('setUint16', [0, 1, 4]), type: 5123, count: 3 } },
      { more: { buffers: [] } },
      { more: { scenes: [{ nodes: [4] }] } },
      { more: { scene: 2 } },
    ];
    for (const plan of claims)
      expect(refused(plan)).toMatchObject({ kind: 'malformed', format: 'glb' });
    // An accessor of nothing needs no room.
    expect(refused({ accessor: { count: 0 } })).toEqual({ kind: 'noTriangles', format: 'glb' });
  });

  it('is refused by its name where it holds what is not read', () => {
    const sparse = { kind: 'unsupported', format: 'glb', name: 'sparse accessors' };
    expect(refused({ accessor: { sparse: {} } })).toEqual(sparse);
    expect(refused({ accessor: { bufferView: undefined } })).toEqual(sparse);
    const outside = { kind: 'unsupported', format: 'glb', name: 'buffers outside the file' };
    expect(refused({ more: { buffers: [{ uri: 'a.bin', byteLength: 48 }] } })).toMatchObject(
      outside,
    );
    const two = { more: { buffers: [{}, {}] }, view: { buffer: 1 } };
    expect(refused(two)).toMatchObject(outside);
    const draco = 'KHR_draco_mesh_compression';
    expect(refused({ more: { extensionsRequired: [draco] } })).toEqual({
      kind: 'unsupported',
      format: 'glb',
      name: draco,
    });
    const many = 'EXT_mesh_gpu_instancing';
    expect(refused({ more: { extensionsUsed: [many] } })).toMatchObject({ name: many });
    const fine = {
      extensionsRequired: ['KHR_mesh_quantization', 'KHR_texture_transform'],
      extensionsUsed: ['KHR_materials_unlit', 'VENDOR_any'],
    };
    expect(refused({ more: fine })).toBeUndefined();
    for (const almost of ['xKHR_mesh_quantization', 'KHR_mesh_quantizationx']) {
      expect(refused({ more: { extensionsRequired: [almost] } })).toMatchObject({ name: almost });
    }
  });
});

describe('the frame of a GLB file', () => {
  const whole = squareFile();
  const changed = (at: number, value: number) => {
    const bytes = whole.slice();
    new DataView(bytes.buffer).setUint32(at, value, true);
    return fault(bytes);
  };

  it('has a version, its length and a JSON chunk', () => {
    expect(changed(4, 1)).toEqual({ kind: 'unsupported', format: 'glb', name: 'version 1' });
    expect(changed(8, whole.length + 1)).toMatchObject({ kind: 'malformed', format: 'glb' });
    expect(changed(12, whole.length)).toMatchObject({ kind: 'malformed', format: 'glb' });
    expect(changed(16, 0)).toMatchObject({ kind: 'malformed', format: 'glb' });
    expect(fault(whole.slice(0, 19))).toMatchObject({ kind: 'malformed', format: 'glb' });
    expect(fault(glbOf('{'))).toMatchObject({ kind: 'malformed', format: 'glb' });
    expect(fault(glbOf('[]'))).toMatchObject({ kind: 'malformed', format: 'glb' });
    expect(fault(glbOf('null'))).toMatchObject({ kind: 'malformed', format: 'glb' });
    expect(fault(glbOf('{}'))).toEqual({ kind: 'noTriangles', format: 'glb' });
  });

  it('may have other chunks before that of numbers, and must hold each whole', () => {
    const jsonEnd = 20 + new DataView(whole.buffer).getUint32(12, true);
    const between = [4, 0, 0, 0, 0x58, 0x58, 0x58, 0x58, 1, 2, 3, 4];
    const longer = Uint8Array.from([
      ...whole.slice(0, jsonEnd),
      ...between,
      ...whole.slice(jsonEnd),
    ]);
    new DataView(longer.buffer).setUint32(8, longer.length, true);
    expect(read(longer).count).toBe(1);
    for (const rest of [1, 7, 8 + 47]) {
      const cut = whole.slice(0, jsonEnd + rest);
      new DataView(cut.buffer).setUint32(8, cut.length, true);
      expect(fault(cut)).toMatchObject({ kind: 'malformed', format: 'glb' });
    }
  });
});
