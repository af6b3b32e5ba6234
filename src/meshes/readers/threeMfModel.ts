import { SaxesParser } from 'saxes';
import { type FileUnit, MAX_TRIANGLES } from '../types';
import { AFFINE_IDENTITY, type Affine } from './affine';
import { decimalOf, shownWord } from './decimal';
import { GrowingFloats, GrowingIndices } from './growing';
import { checkCoordinate, malformed, refuse } from './signal';

/** One .model part of a 3MF package as it stands, before the build places its objects. */
export interface ModelPart {
  unit: FileUnit;
  readonly objects: Map<string, ModelObject>;
  readonly items: ModelUse[];
  /** All triangles written in this part, also those beyond the limit that were only counted. */
  triangleCount: number;
}
export interface ModelObject {
  readonly type: string;
  readonly positions: GrowingFloats;
  readonly triangles: GrowingIndices;
  readonly components: ModelUse[];
}
/** An object placed by a component or a build item; `path` names another .model part (production extension). */
export interface ModelUse {
  readonly objectId: string;
  readonly path: string | undefined;
  readonly place: Affine;
}

const CORE = 'http://schemas.microsoft.com/3dmanufacturing/core/2015/02';
/** Extensions that change nothing about the shape, or that are understood (production). */
const KNOWN_EXTENSIONS = new Set([
  CORE,
  'http://schemas.microsoft.com/3dmanufacturing/production/2015/06',
  'http://schemas.microsoft.com/3dmanufacturing/material/2015/02',
  'http://schemas.microsoft.com/3dmanufacturing/trianglesets/2021/07',
]);
const DEEPEST = 64;

type Attributes = Readonly<Record<string, string>>;

/**
 * Reads one .model part: text in pieces through `write`, the result from `end`. Core specification 1.3: unit, objects
 * with meshes or components, build items. A document type is refused, so there are no entities to expand.
 */
export function createModelReader(): { write(text: string): void; end(): ModelPart } {
  const part: ModelPart = { unit: 'mm', objects: new Map(), items: [], triangleCount: 0 };
  const parser = new SaxesParser({ position: false });
  let depth = 0;
  let core: string | undefined;
  let object: ModelObject | undefined;
  parser.on('error', (error) => malformed('3mf', `has a model that is not XML: ${error.message}`));
  parser.on('doctype', () =>
    malformed('3mf', 'has a model with a document type, which 3MF forbids'),
  );
  parser.on('opentag', (tag) => {
    if (++depth > DEEPEST) malformed('3mf', `has elements nested more than ${DEEPEST} deep`);
    const attributes = tag.attributes as Attributes;
    if (core === undefined) {
      core = openModel(tag.name, attributes, part);
      return;
    }
    if (!tag.name.startsWith(core)) return;
    switch (tag.name.slice(core.length)) {
      case 'object':
        object = openObject(attributes, part);
        break;
      case 'vertex':
        if (object) addVertex(object, attributes);
        break;
      case 'triangle':
        if (object) addTriangle(object, attributes, part);
        break;
      case 'component':
        object?.components.push(useOf(attributes));
        break;
      case 'item':
        part.items.push(useOf(attributes));
    }
  });
  parser.on('closetag', () => {
    depth--;
  });
  return {
    write(text) {
      parser.write(text);
    },
    end() {
      parser.close();
      for (const one of part.objects.values()) checkIndices(one);
      return part;
    },
  };
}

/** Checks the root element and gives the prefix of the core namespace, with its colon. */
function openModel(name: string, attributes: Attributes, part: ModelPart): string {
  const prefix = name.slice(0, name.indexOf(':') + 1);
  const namespace = attributes[prefix === '' ? 'xmlns' : `xmlns:${prefix.slice(0, -1)}`];
  if (name.slice(prefix.length) !== 'model' || namespace !== CORE) {
    malformed('3mf', `has a model that begins with <${shownWord(name)}> of another kind`);
  }
  for (const required of (attributes.requiredextensions ?? '').split(/\s+/)) {
    if (required === '') continue;
    const extension = attributes[`xmlns:${required}`] ?? required;
    if (!KNOWN_EXTENSIONS.has(extension)) {
      refuse({ kind: 'unsupported', format: '3mf', name: extension.slice(0, 120) });
    }
  }
  const unit = attributes.unit ?? 'millimeter';
  part.unit = UNITS[unit] ?? malformed('3mf', `has the unit "${shownWord(unit)}"`);
  return prefix;
}

const UNITS: Readonly<Record<string, FileUnit>> = Object.assign(Object.create(null), {
  micron: 'micron',
  millimeter: 'mm',
  centimeter: 'cm',
  inch: 'in',
  foot: 'ft',
  meter: 'm',
});

function openObject(attributes: Attributes, part: ModelPart): ModelObject {
  const id = attributes.id;
  if (id === undefined || part.objects.has(id)) {
    malformed('3mf', `has an object ${id === undefined ? 'without' : 'with a repeated'} id`);
  }
  const object: ModelObject = {
    type: attributes.type ?? 'model',
    positions: new GrowingFloats(),
    triangles: new GrowingIndices(),
    components: [],
  };
  part.objects.set(id, object);
  return object;
}

function addVertex({ positions }: ModelObject, attributes: Attributes): void {
  const where = () => `point ${positions.length / 3 + 1}`;
  const x = checkCoordinate(decimalOf(attributes.x), '3mf', where);
  const y = checkCoordinate(decimalOf(attributes.y), '3mf', where);
  positions.push3(x, y, checkCoordinate(decimalOf(attributes.z), '3mf', where));
}

function addTriangle(object: ModelObject, attributes: Attributes, part: ModelPart): void {
  const a = indexOf(attributes.v1);
  const b = indexOf(attributes.v2);
  const c = indexOf(attributes.v3);
  // Beyond the limit triangles are only counted, for the number in the message.
  if (++part.triangleCount <= MAX_TRIANGLES) object.triangles.push3(a, b, c);
}

function indexOf(text: string | undefined): number {
  const index = text !== undefined && /^\d{1,9}$/.test(text) ? Number(text) : NaN;
  return Number.isNaN(index)
    ? malformed('3mf', `has a triangle with the corner "${shownWord(text ?? '')}"`)
    : index;
}

function checkIndices({ positions, triangles }: ModelObject): void {
  const count = positions.length / 3;
  for (let i = 0; i < triangles.length; i++) {
    if (triangles.at(i) >= count) {
      malformed('3mf', `has a triangle that names point ${triangles.at(i)} of ${count}`);
    }
  }
}

function useOf(attributes: Attributes): ModelUse {
  const objectId = attributes.objectid ?? malformed('3mf', 'places an object without naming it');
  const pathKey = Object.keys(attributes).find((key) => key.endsWith(':path'));
  return {
    objectId,
    path: pathKey === undefined ? undefined : attributes[pathKey],
    place: placeOf(attributes.transform),
  };
}

/** "m00 m01 m02 m10 ... m32" multiplies row vectors from the right: the columns of it are the rows here. */
function placeOf(text: string | undefined): Affine {
  if (text === undefined) return AFFINE_IDENTITY;
  const m = text.trim().split(/\s+/, 13).map(decimalOf);
  if (m.length !== 12 || m.some((value) => !Number.isFinite(value))) {
    malformed('3mf', `has a transform of other than twelve numbers ("${shownWord(text)}")`);
  }
  return [m[0], m[3], m[6], m[9], m[1], m[4], m[7], m[10], m[2], m[5], m[8], m[11]];
}
