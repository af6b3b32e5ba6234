import { malformed, refuse } from './signal';

/** The parts of glTF 2.0 that say where triangles are; everything in it is a claim of the file. */
export interface GltfJson {
  readonly asset?: { readonly version?: unknown };
  readonly extensionsRequired?: unknown;
  readonly extensionsUsed?: unknown;
  readonly scene?: unknown;
  readonly scenes?: unknown;
  readonly nodes?: unknown;
  readonly meshes?: unknown;
  readonly accessors?: unknown;
  readonly bufferViews?: unknown;
  readonly buffers?: unknown;
}

const JSON_CHUNK = 0x4e4f534a;
const BIN_CHUNK = 0x004e4942;
const LONGEST_JSON = 100_000_000;

/** The two chunks of a GLB file (glTF 2.0, section 4.4); `bin` is empty where there is none. */
export function openGlb(bytes: Uint8Array): { json: GltfJson; bin: Uint8Array } {
  if (bytes.length < 20) malformed('glb', `has ${bytes.length} bytes, less than a GLB header`);
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const version = view.getUint32(4, true);
  if (version !== 2) refuse({ kind: 'unsupported', format: 'glb', name: `version ${version}` });
  const total = view.getUint32(8, true);
  if (total !== bytes.length) {
    malformed('glb', `claims ${total} bytes but has ${bytes.length}`);
  }
  const jsonSize = view.getUint32(12, true);
  if (view.getUint32(16, true) !== JSON_CHUNK || 20 + jsonSize > total) {
    malformed('glb', 'does not begin with a whole JSON chunk');
  }
  if (jsonSize > LONGEST_JSON) malformed('glb', `has ${jsonSize} bytes of JSON`);
  const json = parseJson(bytes.subarray(20, 20 + jsonSize));
  for (let at = 20 + jsonSize; at < total; ) {
    if (at + 8 > total) malformed('glb', 'ends inside the head of a chunk');
    const size = view.getUint32(at, true);
    if (at + 8 + size > total)
      malformed('glb', `has a chunk of ${size} bytes that runs past the end`);
    if (view.getUint32(at + 4, true) === BIN_CHUNK) {
      return { json, bin: bytes.subarray(at + 8, at + 8 + size) };
    }
    at += 8 + size;
  }
  return { json, bin: bytes.subarray(0, 0) };
}

function parseJson(bytes: Uint8Array): GltfJson {
  let value: unknown;
  try {
    value = JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  } catch {
    malformed('glb', 'has a JSON chunk that is not JSON');
  }
  if (!isRecord(value)) malformed('glb', 'has a JSON chunk that is not an object');
  return value;
}

export function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** Item `index` of a list that the file claims to have, as a record. */
export function itemOf(
  list: unknown,
  index: unknown,
  what: string,
): Readonly<Record<string, unknown>> {
  const item: unknown = Array.isArray(list) && isCount(index) ? list[index] : undefined;
  return isRecord(item)
    ? item
    : malformed('glb', `names the ${what} ${shown(index)}, which is not there`);
}

export function isCount(value: unknown): value is number {
  return typeof value === 'number' && Number.isSafeInteger(value) && value >= 0;
}

/** A whole number from 0 on; `standard` where it is left out. */
export function countOf(value: unknown, standard: number | undefined, what: string): number {
  if (value === undefined && standard !== undefined) return standard;
  return isCount(value) ? value : malformed('glb', `has ${shown(value)} for ${what}`);
}

function shown(value: unknown): string {
  return typeof value === 'number' ? String(value) : JSON.stringify(value ?? null).slice(0, 30);
}
