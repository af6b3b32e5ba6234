import { SaxesParser } from 'saxes';
import { MAX_TRIANGLES, type MeshNote } from '../types';
import { type Affine, addPlaced, compose } from './affine';
import { GrowingIndices } from './growing';
import { PointPool } from './pointPool';
import {
  checkCoordinate,
  checkPlacedCount,
  checkTriangleCount,
  malformed,
  reader,
  type ShareDone,
} from './signal';
import { createModelReader, type ModelObject, type ModelPart, type ModelUse } from './threeMfModel';
import { packageName, type UnpackBudget, unpackEntry, type ZipEntry, zipEntries } from './zip';

const MODEL_RELATION = 'http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel';
const MOST_PARTS = 1000;
const DEEPEST = 64;

/**
 * 3MF (core specification 1.3, ISO/IEC 25422): the package's relationship names the model; its build items place
 * objects, which are meshes or components of other objects. Only the parts that are named are unpacked. Supports are
 * left out and counted. Other parts' objects (production extension) are read where a component names them.
 */
export const read3mf = reader((bytes, progress) => {
  const shelf = new Package(bytes, progress);
  const root = shelf.rootPath();
  const model = shelf.model(root);
  const loads = countLoads(shelf, root, model.items);
  checkTriangleCount(loads.triangles, '3mf');
  checkPlacedCount(loads.triangles, bytes.length, '3mf');
  if (loads.points > 3 * MAX_TRIANGLES) {
    malformed('3mf', `comes to ${loads.points} points for ${loads.triangles} triangles`);
  }
  const pool = new PointPool();
  const triangles = new GrowingIndices();
  const check = (value: number) => checkCoordinate(value, '3mf', () => 'a placed object');
  let supports = 0;
  visitUses(shelf, root, model.items, loads.known, (object, place) => {
    if (isSupport(object)) supports++;
    else addPlaced(place, object.positions, object.triangles, pool, triangles, check);
  });
  checkTriangleCount(triangles.length / 3, '3mf');
  const notes: MeshNote[] =
    supports > 0 ? [{ kind: 'leftOut', what: 'supports', count: supports }] : [];
  return {
    positions: pool.toArray(),
    triangles: triangles.toArray(),
    unitInFile: model.unit,
    notes,
  };
});

function isSupport(object: ModelObject): boolean {
  return object.type === 'support' || object.type === 'solidsupport';
}

/** The package's entries, and its model parts as they are asked for. */
class Package {
  private readonly entries: Map<string, ZipEntry>;
  private readonly models = new Map<string, ModelPart>();
  private readonly budget: UnpackBudget = { bytes: 0 };

  constructor(
    private readonly bytes: Uint8Array,
    private readonly progress: ShareDone,
  ) {
    this.entries = zipEntries(bytes);
  }

  /** Where the relationships say that the model is. */
  rootPath(): string {
    if (!this.entries.has('_rels/.rels')) malformed('3mf', 'is a ZIP package, but not a 3MF one');
    let target: string | undefined;
    const parser = new SaxesParser({ position: false });
    parser.on('error', (error) => malformed('3mf', `has broken relationships: ${error.message}`));
    parser.on('doctype', () => malformed('3mf', 'has relationships with a document type'));
    parser.on('opentag', ({ name, attributes }) => {
      if (name.replace(/^.*:/, '') === 'Relationship' && attributes.Type === MODEL_RELATION) {
        target ??= String(attributes.Target ?? '');
      }
    });
    this.unpackText('_rels/.rels', (text) => parser.write(text));
    parser.close();
    if (!target) malformed('3mf', 'does not say where its model is');
    return packageName(target);
  }

  model(path: string): ModelPart {
    const known = this.models.get(path);
    if (known) return known;
    if (this.models.size >= MOST_PARTS) malformed('3mf', `has more than ${MOST_PARTS} models`);
    const read = createModelReader();
    this.unpackText(path, (text) => read.write(text));
    const part = read.end();
    if (part.triangleCount > MAX_TRIANGLES) checkTriangleCount(part.triangleCount, '3mf');
    checkUnit(part, this.models);
    this.models.set(path, part);
    return part;
  }

  private unpackText(path: string, take: (text: string) => void): void {
    const entry = this.entries.get(path);
    if (!entry) malformed('3mf', `lacks a part that it names (${path.slice(0, 60)})`);
    const decoder = new TextDecoder('utf-8', { fatal: true });
    const decode = (piece?: Uint8Array) => {
      try {
        return piece ? decoder.decode(piece, { stream: true }) : decoder.decode();
      } catch {
        return malformed('3mf', `has a part that is not UTF-8 text (${path.slice(0, 60)})`);
      }
    };
    let done = 0;
    unpackEntry(this.bytes, entry, this.budget, (piece) => {
      done += piece.length;
      this.progress(Math.min(1, done / Math.max(1, entry.size)));
      take(decode(piece));
    });
    take(decode());
  }
}

function checkUnit(part: ModelPart, others: ReadonlyMap<string, ModelPart>): void {
  const [first] = others.values();
  if (first && first.unit !== part.unit) {
    malformed('3mf', `has models in different units (${first.unit} and ${part.unit})`);
  }
}

function resolve(
  shelf: Package,
  path: string,
  use: ModelUse,
): { path: string; object: ModelObject } {
  const at = use.path === undefined ? path : packageName(use.path);
  const object = shelf.model(at).objects.get(use.objectId);
  if (!object)
    malformed('3mf', `places the object ${use.objectId.slice(0, 20)}, which is not there`);
  return { path: at, object };
}

interface Load {
  readonly triangles: number;
  readonly points: number;
}

/**
 * What the build comes to, each object counted once however often it is used: components that double and double again
 * are told before they are built. Ends at cycles and at `DEEPEST` levels.
 */
function countLoads(shelf: Package, root: string, items: readonly ModelUse[]) {
  const known = new Map<ModelObject, Load>();
  const open = new Set<ModelObject>();
  function count(path: string, use: ModelUse): Load {
    const { path: at, object } = resolve(shelf, path, use);
    const before = known.get(object);
    if (before) return before;
    if (open.has(object)) malformed('3mf', 'has an object that is a component of itself');
    if (open.size >= DEEPEST) malformed('3mf', `has components nested more than ${DEEPEST} deep`);
    open.add(object);
    let triangles = object.triangles.length / 3;
    let points = object.positions.length / 3;
    for (const component of object.components) {
      const load = count(at, component);
      triangles += load.triangles;
      points += load.points;
    }
    open.delete(object);
    known.set(object, { triangles, points });
    return { triangles, points };
  }
  let triangles = 0;
  let points = 0;
  for (const item of items) {
    const load = count(root, item);
    triangles += load.triangles;
    points += load.points;
  }
  return { triangles, points, known };
}

/** Visits every placed object that comes to any triangles; empty ones could be nested without end. */
function visitUses(
  shelf: Package,
  root: string,
  items: readonly ModelUse[],
  loads: ReadonlyMap<ModelObject, Load>,
  visit: (object: ModelObject, place: Affine) => void,
): void {
  function descend(path: string, use: ModelUse, outer: Affine | undefined): void {
    const { path: at, object } = resolve(shelf, path, use);
    if (!loads.get(object)?.triangles) return;
    const place = outer ? compose(outer, use.place) : use.place;
    if (object.triangles.length > 0) visit(object, place);
    for (const component of object.components) descend(at, component, place);
  }
  for (const item of items) descend(root, item, undefined);
}
