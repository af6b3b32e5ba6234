import { countOf, type GltfJson, itemOf } from './glbContainer';
import { malformed, refuse } from './signal';

/** Bytes of one component by glTF's numbers for types. */
const SIZES: Readonly<Record<number, number>> = {
  5120: 1,
  5121: 1,
  5122: 2,
  5123: 2,
  5125: 4,
  5126: 4,
};
/** Divisor of normalised integers (glTF 2.0, section 3.6.2.2). */
const NORMS: Readonly<Record<number, number>> = { 5120: 127, 5121: 255, 5122: 32767, 5123: 65535 };

/** A list of numbers in the binary chunk, read one by one; its extent was checked against the chunk. */
export interface Accessor {
  readonly count: number;
  read(item: number, component: number): number;
}

/** Accessor `index`, of `type` ("VEC3", "SCALAR"); sparse ones are refused. */
export function openAccessor(
  json: GltfJson,
  bin: Uint8Array,
  index: unknown,
  type: 'VEC3' | 'SCALAR',
): Accessor {
  const accessor = itemOf(json.accessors, index, 'accessor');
  if (accessor.type !== type) malformed('glb', `has an accessor that is not a ${type}`);
  if (accessor.sparse !== undefined || accessor.bufferView === undefined) {
    refuse({ kind: 'unsupported', format: 'glb', name: 'sparse accessors' });
  }
  const view = itemOf(json.bufferViews, accessor.bufferView, 'buffer view');
  const buffer = itemOf(json.buffers, view.buffer, 'buffer');
  if (buffer.uri !== undefined || view.buffer !== 0) {
    refuse({ kind: 'unsupported', format: 'glb', name: 'buffers outside the file' });
  }
  const component = countOf(accessor.componentType, undefined, 'a component type');
  const size = SIZES[component] ?? malformed('glb', `has the component type ${component}`);
  const items = type === 'VEC3' ? 3 : 1;
  const count = countOf(accessor.count, undefined, 'the length of an accessor');
  const viewStart = countOf(view.byteOffset, 0, 'the start of a buffer view');
  const viewSize = countOf(view.byteLength, undefined, 'the length of a buffer view');
  const offset = countOf(accessor.byteOffset, 0, 'the start of an accessor');
  const stride = countOf(view.byteStride, size * items, 'a stride');
  const needed = count === 0 ? 0 : offset + stride * (count - 1) + size * items;
  if (viewStart + viewSize > bin.length || needed > viewSize || stride < size * items) {
    malformed('glb', `claims ${count} numbers where there is no room for them`);
  }
  const data = new DataView(bin.buffer, bin.byteOffset + viewStart, viewSize);
  const norm = accessor.normalized === true ? NORMS[component] : undefined;
  const readOne = READERS[component];
  return {
    count,
    read(item, k) {
      const value = readOne(data, offset + stride * item + size * k);
      return norm === undefined ? value : Math.max(-1, value / norm);
    },
  };
}

const READERS: Readonly<Record<number, (data: DataView, at: number) => number>> = {
  5120: (data, at) => data.getInt8(at),
  5121: (data, at) => data.getUint8(at),
  5122: (data, at) => data.getInt16(at, true),
  5123: (data, at) => data.getUint16(at, true),
  5125: (data, at) => data.getUint32(at, true),
  5126: (data, at) => data.getFloat32(at, true),
};
