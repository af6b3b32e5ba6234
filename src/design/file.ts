import { fail, type Result, requireFinite, succeed } from '../engine/result';
import { partType } from '../parts/registry';
import { checkDesign } from './checkDesign';
import { wrongType } from './checkNumber';
import { DESIGN_FORMAT, type Design, type Part, type TryOut } from './design';
import { type DesignFault, fault } from './fault';
import { parseJson } from './jsonText';
import { type JsonObject, MIGRATIONS, type Migration, migrate } from './migrations';
import { materialKeyOf } from './resolve';
import { designSchema } from './schema';
import { schemaFault } from './schemaFault';
import { SECTION_NAMES, SECTIONS } from './sections';
import type { OtherGrip } from './sections/grips';
import type { OwnTolerance } from './sections/tolerance';

/**
 * The design in a file's text, or the first fault in it. Never throws on any text; a design that is returned passes
 * every rule, so nothing is ever half loaded. Numbers are kept as typed.
 */
export function parseDesign(
  text: string,
  migrations: readonly Migration[] = MIGRATIONS,
): Result<Design, DesignFault> {
  const json = parseJson(text);
  return json.ok ? designFrom(json.value, migrations) : json;
}

/** The same for a value that has been read already (a design kept in the browser). */
export function designFrom(
  value: unknown,
  migrations: readonly Migration[] = MIGRATIONS,
): Result<Design, DesignFault> {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    return fail(fault('', wrongType('object', value)));
  }
  const { format } = value as JsonObject;
  if (format !== DESIGN_FORMAT) {
    const found = format === undefined ? '' : String(JSON.stringify(format)).slice(0, 60);
    return fail(fault('format', { code: 'wrongFormat', found, expected: DESIGN_FORMAT }));
  }
  const document = migrate(value as JsonObject, migrations);
  if (!document.ok) return fail(fault('version', document.error));
  const read = designSchema.safeParse(document.value);
  if (!read.success) return fail(schemaFault(read.error.issues[0], document.value));
  const design = read.data as unknown as Design;
  const found = checkDesign(design);
  return found ? fail(found) : succeed(design);
}

/**
 * A design as a file's text: keys in one fixed order, two spaces, one line for a list of numbers, a line feed at the
 * end. `parseDesign` gives back an equal design, every number to the last bit (a negative zero becomes zero).
 */
export function serializeDesign(design: Design): string {
  const ordered = {
    ...pick(design, ['format', 'version', 'name', 'note']),
    ...orderedSections(design),
    ...pick(design, ['materials', 'weighedTotal']),
    ...(design.otherGrips ? { otherGrips: design.otherGrips.map(orderedGrip) } : {}),
    ...(design.tryOuts ? { tryOuts: design.tryOuts.map(orderedTryOut) } : {}),
    ...(design.bench ? { bench: orderedBench(design.bench) } : {}),
    parts: design.parts.map(partText),
  };
  return `${write(ordered, '')}\n`;
}

/** A text that stands in a file as it is. */
class Written {
  constructor(readonly text: string) {}
}

/** Of each part as it stands in a design's list. Parts are replaced and never changed in place: one text an object. */
const partTexts = new WeakMap<Part, Written>();

function partText(part: Part): Written {
  const known = partTexts.get(part);
  if (known) return known;
  const made = new Written(write(orderedPart(part), '    '));
  partTexts.set(part, made);
  return made;
}

/** Runs as they stand: tables and rows keep the order of their own writers. */
function orderedBench(bench: NonNullable<Design['bench']>): JsonObject {
  return pick(bench, [
    'place',
    'pullsAlong',
    'gaugeStepN',
    'gaugeLimitN',
    'gaugeNoiseN',
    'calibration',
    'fit',
    'plan',
    'runs',
  ]);
}

function orderedSections(design: Design): JsonObject {
  const sections: Record<string, JsonObject> = {};
  for (const name of SECTION_NAMES) {
    const written = design[name];
    if (!written) continue;
    const section = pick(written, [...Object.keys(SECTIONS[name]), 'drag', 'polar']);
    const { own } = written as { readonly own?: readonly OwnTolerance[] };
    sections[name] = own ? { ...section, own: own.map(orderedTolerance) } : section;
  }
  return sections;
}

function orderedTolerance(row: OwnTolerance): JsonObject {
  return pick(row, ['part', 'field', 'component', 'plusMinus']);
}

function orderedGrip(grip: OtherGrip): JsonObject {
  const base = pick(grip, ['name', 'massGrams', 'stationMm', 'partMassesGrams']);
  return grip.parts ? { ...base, parts: grip.parts.map(orderedPart) } : base;
}

function orderedTryOut(tryOut: TryOut): JsonObject {
  const base = pick(tryOut, ['id', 'name', 'note', 'adopted']);
  return tryOut.parts ? { ...base, parts: tryOut.parts.map(orderedPart) } : base;
}

function orderedPart(part: Part): JsonObject {
  const { parameters } = partType(part.kind);
  const base = pick(part, ['id', 'kind', 'name', 'hidden', 'catalogue']);
  const materials = Object.values(parameters).map((spec) => materialKeyOf(spec) ?? '');
  const values = pick(part, [...materials, ...Object.keys(parameters)]);
  const place: Record<string, unknown> = {};
  if (part.pose) place.pose = pick(part.pose, ['positionMm', 'rotationDeg']);
  if (part.socket) place.socket = pick(part.socket, ['part', 'name', 'offsetMm', 'turnDeg']);
  return { ...base, ...values, ...pick(part, ['measured']), ...place };
}

function pick(source: object, keys: readonly string[]): JsonObject {
  const from = source as JsonObject;
  return Object.fromEntries(
    keys.filter((key) => from[key] !== undefined).map((key) => [key, from[key]]),
  );
}

function write(value: unknown, indent: string): string {
  if (typeof value === 'number') return String(requireFinite(value, 'serializeDesign(): number'));
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  if (value instanceof Written) return value.text;
  const inner = `${indent}  `;
  if (Array.isArray(value)) {
    if (value.every((item) => typeof item === 'number')) {
      return `[${value.map((item) => write(item, '')).join(', ')}]`;
    }
    const items = value.map((item) => inner + write(item, inner));
    return `[\n${items.join(',\n')}\n${indent}]`;
  }
  const entries = Object.entries(value).map(
    ([key, item]) => `${inner}${JSON.stringify(key)}: ${write(item, inner)}`,
  );
  return `{\n${entries.join(',\n')}\n${indent}}`;
}
