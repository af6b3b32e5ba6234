import type { Pose } from '../../engine/math/pose';
import { tessellate } from '../../parts/tessellate';
import { linearColour } from './colours';
import type { FileBody } from './fileBodies';

/**
 * Binary glTF 2.0 (Khronos glTF 2.0, 4.4): metres, Y up as it demands; our z becomes its y. One node a part, named, with
 * its mesh in its own frame and its place as a matrix, all under one node named `title` that turns Z up into Y up.
 */
export function glbFile(
  bodies: readonly FileBody[],
  title: string,
  segmentsPerTurn: number,
): Uint8Array {
  const buffer = new BufferList();
  const materials = [...new Map(bodies.map((body) => [materialKey(body), body])).values()];
  const meshes = bodies.map((body) => ({
    name: body.name,
    primitives: [
      {
        ...primitive(body, segmentsPerTurn, buffer),
        material: materials.findIndex((one) => materialKey(one) === materialKey(body)),
      },
    ],
  }));
  const nodes = bodies.map((body, i) => ({
    name: body.name,
    mesh: i,
    matrix: columnMatrix(body.pose),
    extras: { kind: body.kind, material: body.material },
  }));
  const root = { name: title, matrix: Z_UP_TO_Y_UP, children: bodies.map((_, i) => i) };
  const json = {
    asset: { version: '2.0', generator: 'Stillgrip' },
    scene: 0,
    scenes: [{ name: title, nodes: [bodies.length] }],
    nodes: [...nodes, root],
    meshes,
    materials: materials.map(materialJson),
    ...buffer.json(),
  };
  return container(JSON.stringify(json), buffer.bytes());
}

/** (x, y, z) becomes (x, z, -y); columns in turn. */
const Z_UP_TO_Y_UP = [1, 0, 0, 0, 0, 0, -1, 0, 0, 1, 0, 0, 0, 0, 0, 1];

function columnMatrix({ rotation: r, translation: t }: Pose): number[] {
  return [r[0], r[3], r[6], 0, r[1], r[4], r[7], 0, r[2], r[5], r[8], 0, t[0], t[1], t[2], 1];
}

function materialKey({ material, finish }: FileBody): string {
  return `${finish} ${material}`;
}

function materialJson({ material, finish }: FileBody) {
  const metal = finish === 'metal';
  return {
    name: material,
    pbrMetallicRoughness: {
      baseColorFactor: [...linearColour(finish), 1],
      metallicFactor: metal ? 0.9 : 0,
      roughnessFactor: metal ? 0.45 : 0.7,
    },
  };
}

const FLOAT = 5126;
const UNSIGNED_INT = 5125;
const VERTICES = 34962;
const INDICES = 34963;

function primitive({ solids }: FileBody, segmentsPerTurn: number, buffer: BufferList) {
  const { positions, normals, triangles } = tessellate(solids, { segmentsPerTurn });
  return {
    attributes: {
      POSITION: buffer.add(positions, FLOAT, 'VEC3', VERTICES, bounds(positions)),
      NORMAL: buffer.add(normals, FLOAT, 'VEC3', VERTICES),
    },
    indices: buffer.add(triangles, UNSIGNED_INT, 'SCALAR', INDICES),
  };
}

/** Every reader may ask for the box of the positions. */
function bounds(positions: Float32Array) {
  const min = [Infinity, Infinity, Infinity];
  const max = [-Infinity, -Infinity, -Infinity];
  positions.forEach((value, i) => {
    min[i % 3] = Math.min(min[i % 3], value);
    max[i % 3] = Math.max(max[i % 3], value);
  });
  return { min, max };
}

/** The one binary buffer of the file; every array in it is a multiple of four bytes. */
class BufferList {
  private readonly views: object[] = [];
  private readonly accessors: object[] = [];
  private readonly pieces: Uint8Array[] = [];
  private size = 0;

  /** Returns the accessor's place. */
  add(
    array: Float32Array | Uint32Array,
    componentType: number,
    type: 'VEC3' | 'SCALAR',
    target: number,
    box: object = {},
  ): number {
    const piece = new Uint8Array(array.buffer, array.byteOffset, array.byteLength);
    const view = { buffer: 0, byteOffset: this.size, byteLength: piece.length, target };
    const count = type === 'VEC3' ? array.length / 3 : array.length;
    this.pieces.push(piece);
    this.size += piece.length;
    const bufferView = this.views.push(view) - 1;
    return this.accessors.push({ bufferView, componentType, type, count, ...box }) - 1;
  }

  json() {
    return {
      buffers: [{ byteLength: this.size }],
      bufferViews: this.views,
      accessors: this.accessors,
    };
  }

  bytes(): Uint8Array {
    const whole = new Uint8Array(this.size);
    let at = 0;
    for (const piece of this.pieces) {
      whole.set(piece, at);
      at += piece.length;
    }
    return whole;
  }
}

/** Header, JSON filled up with blanks, binary; each chunk a multiple of four bytes, little-endian. */
function container(json: string, binary: Uint8Array): Uint8Array {
  const text = new TextEncoder().encode(json);
  const textSize = Math.ceil(text.length / 4) * 4;
  const bytes = new Uint8Array(12 + 8 + textSize + 8 + binary.length);
  const view = new DataView(bytes.buffer);
  view.setUint32(0, 0x46546c67, true);
  view.setUint32(4, 2, true);
  view.setUint32(8, bytes.length, true);
  view.setUint32(12, textSize, true);
  view.setUint32(16, 0x4e4f534a, true);
  bytes.fill(32, 20, 20 + textSize);
  bytes.set(text, 20);
  view.setUint32(20 + textSize, binary.length, true);
  view.setUint32(24 + textSize, 0x004e4942, true);
  bytes.set(binary, 28 + textSize);
  return bytes;
}
