import { ALWAYS_PLACED, type MeshNote } from '../types';
import { AFFINE_IDENTITY, type Affine, compose, determinant } from './affine';
import { shownWord } from './decimal';
import { type Accessor, openAccessor } from './glbAccessor';
import { countOf, type GltfJson, isRecord, itemOf, openGlb } from './glbContainer';
import { GrowingIndices } from './growing';
import { PointPool } from './pointPool';
import {
  checkCoordinate,
  checkPlacedCount,
  checkTriangleCount,
  malformed,
  reader,
  refuse,
} from './signal';

/** Required extensions that change nothing about the shape, or that are understood (quantised numbers). */
const KNOWN_EXTENSIONS =
  /^(KHR_mesh_quantization|KHR_materials_\w+|KHR_texture_\w+|EXT_texture_\w+|KHR_lights_punctual|KHR_xmp_json_ld)$/;
/** Not required by any file, yet it changes the shape where it is used. */
const INSTANCING = 'EXT_mesh_gpu_instancing';

type Item = Readonly<Record<string, unknown>>;

/** One primitive where a node puts it. */
interface Placed {
  readonly place: Affine;
  readonly points: Accessor;
  /** Absent: the points in order. */
  readonly indices: Accessor | undefined;
  readonly mode: number;
  readonly triangleCount: number;
}

/**
 * GLB, the binary form of glTF 2.0 (ISO/IEC 12113): the default scene with the transforms of its nodes, in metres, y
 * up as the file has it. Triangles, strips and fans; whole and quantised numbers. Skins and morphs are left at rest.
 * The reader is our own since a general loader takes memory by what a file claims before it looks what is there.
 */
export const readGlb = reader((bytes, progress) => {
  const { json, bin } = openGlb(bytes);
  checkExtensions(json);
  const notes: MeshNote[] = [];
  const { placed, count } = placedPrimitives(json, bin, bytes.length, notes);
  checkTriangleCount(count, 'glb');
  const pool = new PointPool();
  const triangles = new GrowingIndices();
  for (const one of placed) {
    addPrimitive(one, pool, triangles);
    progress(triangles.length / 3 / count);
  }
  return { positions: pool.toArray(), triangles: triangles.toArray(), unitInFile: 'm', notes };
});

function checkExtensions(json: GltfJson): void {
  const used = Array.isArray(json.extensionsUsed) ? json.extensionsUsed : [];
  const required = Array.isArray(json.extensionsRequired) ? json.extensionsRequired : [];
  const names = [...required, ...used.filter((name) => name === INSTANCING)].map(String);
  const unknown = names.find((name) => !KNOWN_EXTENSIONS.test(name));
  if (unknown !== undefined) {
    refuse({ kind: 'unsupported', format: 'glb', name: shownWord(unknown) });
  }
}

/** What the scene places, and how many triangles that comes to; refused as soon as it is too much for the file's length. */
function placedPrimitives(json: GltfJson, bin: Uint8Array, size: number, notes: MeshNote[]) {
  const placed: Placed[] = [];
  const mostPrimitives = Math.max(ALWAYS_PLACED, size);
  let count = 0;
  const visited = new Set<unknown>();
  let lines = 0;
  let skins = 0;
  let primitives = 0;
  const open: { node: unknown; outer: Affine }[] = rootNodes(json).map((node) => ({
    node,
    outer: AFFINE_IDENTITY,
  }));
  for (let next = open.pop(); next; next = open.pop()) {
    const node = itemOf(json.nodes, next.node, 'node');
    if (visited.has(next.node)) malformed('glb', 'has a node in two places of its tree');
    visited.add(next.node);
    const place = compose(next.outer, placeOf(node));
    for (const child of listOf(node.children)) open.push({ node: child, outer: place });
    if (node.skin !== undefined) skins++;
    if (node.mesh === undefined) continue;
    for (const primitive of listOf(itemOf(json.meshes, node.mesh, 'mesh').primitives)) {
      const one = isRecord(primitive) ? openPrimitive(json, bin, primitive, place) : undefined;
      if (!one) lines++;
      else if (one.triangleCount > 0) placed.push(one);
      count += one?.triangleCount ?? 0;
      checkPlacedCount(count, size, 'glb');
      if (++primitives > mostPrimitives) {
        malformed('glb', `places more than ${mostPrimitives} primitives`);
      }
    }
  }
  if (lines > 0) notes.push({ kind: 'leftOut', what: 'lines', count: lines });
  if (skins > 0) notes.push({ kind: 'leftOut', what: 'skins', count: skins });
  return { placed, count };
}

function listOf(value: unknown): readonly unknown[] {
  return Array.isArray(value) ? value : [];
}

/** The default scene's nodes; without scenes, every node that is nobody's child. */
function rootNodes(json: GltfJson): readonly unknown[] {
  if (listOf(json.scenes).length > 0) {
    return listOf(itemOf(json.scenes, json.scene ?? 0, 'scene').nodes);
  }
  const nodes = listOf(json.nodes);
  const children = new Set(nodes.flatMap((node) => (isRecord(node) ? listOf(node.children) : [])));
  return nodes.map((_, i) => i).filter((i) => !children.has(i));
}

function openPrimitive(
  json: GltfJson,
  bin: Uint8Array,
  primitive: Item,
  place: Affine,
): Placed | undefined {
  const mode = countOf(primitive.mode, 4, 'the mode of a primitive');
  if (mode < 4) return undefined;
  if (mode > 6) malformed('glb', `has a primitive of mode ${mode}`);
  const position = isRecord(primitive.attributes) ? primitive.attributes.POSITION : undefined;
  if (position === undefined) malformed('glb', 'has a primitive without positions');
  const points = openAccessor(json, bin, position, 'VEC3');
  const indices =
    primitive.indices === undefined
      ? undefined
      : openAccessor(json, bin, primitive.indices, 'SCALAR');
  const corners = indices?.count ?? points.count;
  const triangleCount = mode === 4 ? Math.floor(corners / 3) : Math.max(0, corners - 2);
  return { place, points, indices, mode, triangleCount };
}

function addPrimitive(one: Placed, pool: PointPool, triangles: GrowingIndices): void {
  const { place, points, indices, mode, triangleCount } = one;
  const [a, b, c, x, d, e, f, y, g, h, i, z] = place;
  const check = (value: number) => checkCoordinate(value, 'glb', () => 'a placed mesh');
  const corner = (n: number) => {
    const v = indices ? indices.read(n, 0) : n;
    if (v >= points.count)
      malformed('glb', `has a triangle that names point ${v} of ${points.count}`);
    const px = points.read(v, 0);
    const py = points.read(v, 1);
    const pz = points.read(v, 2);
    return pool.add(
      check(a * px + b * py + c * pz + x),
      check(d * px + e * py + f * pz + y),
      check(g * px + h * py + i * pz + z),
    );
  };
  const mirrored = determinant(place) < 0;
  for (let t = 0; t < triangleCount; t++) {
    let [p, q, r] = [3 * t, 3 * t + 1, 3 * t + 2];
    if (mode === 5) [p, q, r] = t % 2 === 0 ? [t, t + 1, t + 2] : [t + 1, t, t + 2];
    else if (mode === 6) [p, q, r] = [0, t + 1, t + 2];
    if (mirrored) [q, r] = [r, q];
    triangles.push3(corner(p), corner(q), corner(r));
  }
}

/** A node's matrix (by columns) or its scale, turn (quaternion x y z w) and shift. */
function placeOf(node: Item): Affine {
  if (node.matrix !== undefined) {
    const m = numbersOf(node.matrix, 16, []);
    return [m[0], m[4], m[8], m[12], m[1], m[5], m[9], m[13], m[2], m[6], m[10], m[14]];
  }
  const [x, y, z, w] = numbersOf(node.rotation, 4, [0, 0, 0, 1]);
  const [sx, sy, sz] = numbersOf(node.scale, 3, [1, 1, 1]);
  const [tx, ty, tz] = numbersOf(node.translation, 3, [0, 0, 0]);
  return [
    (1 - 2 * (y * y + z * z)) * sx,
    2 * (x * y - z * w) * sy,
    2 * (x * z + y * w) * sz,
    tx,
    2 * (x * y + z * w) * sx,
    (1 - 2 * (x * x + z * z)) * sy,
    2 * (y * z - x * w) * sz,
    ty,
    2 * (x * z - y * w) * sx,
    2 * (y * z + x * w) * sy,
    (1 - 2 * (x * x + y * y)) * sz,
    tz,
  ];
}

function numbersOf(value: unknown, count: number, standard: readonly number[]): readonly number[] {
  if (value === undefined) return standard;
  if (Array.isArray(value) && value.length === count && value.every(Number.isFinite)) return value;
  return malformed('glb', `has a transform of other than ${count} numbers`);
}
