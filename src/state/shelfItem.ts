import { wrongType } from '../design/checkNumber';
import { DESIGN_FORMAT, DESIGN_VERSION, type Part } from '../design/design';
import { type DesignFault, fault } from '../design/fault';
import { designFrom } from '../design/file';
import { MAX_ID, MAX_NOTE } from '../design/limits';
import { type CarriedPart, ownMaterialsOf } from '../design/ownMaterials';
import { type Materials, NO_MATERIALS } from '../design/resolve';
import { fail, type Result, succeed } from '../engine/result';
import type { PartKind } from '../parts/registry';

/** A part kept for other heads: what it is, not where it sat. Immutable; the form in the browser and in a file. */
export interface ShelfItem {
  readonly id: string;
  /** When it was kept, ms since 1970. */
  readonly savedAt: number;
  readonly name: string;
  readonly note?: string;
  readonly kind: PartKind;
  /** Parameters, material keys, catalogue reference and measurements, as written in a design. */
  readonly part: Readonly<Record<string, unknown>>;
  /** The own materials it names. */
  readonly materials: Materials;
}

/** Where a shelf part stands while it is looked at by itself: its frame is the grip's. */
const AT_ORIGIN = { positionMm: [0, 0, 0], rotationDeg: [0, 0, 0] } as const;

/** Keys of a part that belong to the head it is in, or that the item has itself. */
const NOT_KEPT = ['id', 'name', 'kind', 'hidden', 'pose', 'socket'];

/** What is kept of a part, with the materials of its design that it names. */
export function itemOf(
  part: Part,
  materials: Materials,
  identity: Pick<ShelfItem, 'id' | 'savedAt' | 'name'>,
): ShelfItem {
  const kept = Object.entries(part).filter(([key]) => !NOT_KEPT.includes(key));
  const { id, savedAt, name } = identity;
  return {
    id,
    savedAt,
    name,
    kind: part.kind,
    part: Object.fromEntries(kept),
    materials: ownMaterialsOf(part, materials),
  };
}

/** The item as a part on its way into a design, for now at the origin. */
export function carriedPart(item: ShelfItem): CarriedPart {
  const { id, kind, name, part, materials } = item;
  return { part: { id, kind, name, ...part, pose: AT_ORIGIN } as unknown as Part, materials };
}

const KEYS = ['id', 'savedAt', 'name', 'note', 'kind', 'part', 'materials'];

/**
 * The item that a foreign value is, or its first fault with a path below `path` (`items[2].part.lengthMm`). The part is
 * checked as a design file's is, in a design of its own with the item's materials.
 */
export function itemFrom(value: unknown, path: string): Result<ShelfItem, DesignFault> {
  if (!isObject(value)) return fail(fault(path, wrongType('object', value)));
  const unknown = Object.keys(value).find((key) => !KEYS.includes(key));
  if (unknown !== undefined) return fail(fault(path, { code: 'unknownKey', key: unknown }));
  const own = ownFault(value, path);
  if (own) return fail(own);
  const {
    id,
    savedAt,
    name,
    note,
    kind,
    part,
    materials = NO_MATERIALS,
  } = value as unknown as ShelfItem;
  const checked = designFrom({
    format: DESIGN_FORMAT,
    version: DESIGN_VERSION,
    name: '',
    rotor: { speedRpm: 0, bladeCount: 1, torqueOffsetMm: 0, preconeDeg: 0 },
    materials,
    parts: [{ ...part, id, kind, name, pose: AT_ORIGIN }],
  });
  if (!checked.ok) return fail({ ...checked.error, path: itemPath(checked.error.path, path) });
  return succeed({
    id,
    savedAt,
    name,
    ...(note === undefined ? {} : { note }),
    kind,
    part,
    materials,
  });
}

/** The first fault of what the item has besides its part. */
function ownFault(value: Readonly<Record<string, unknown>>, path: string): DesignFault | null {
  const { id, savedAt, note, part } = value;
  if (typeof id !== 'string') return fault(`${path}.id`, missingOr('text', id));
  if (id === '') return fault(`${path}.id`, { code: 'emptyText' });
  if (id.length > MAX_ID) {
    return fault(`${path}.id`, { code: 'textTooLong', length: id.length, limit: MAX_ID });
  }
  if (typeof savedAt !== 'number') return fault(`${path}.savedAt`, missingOr('number', savedAt));
  if (!Number.isFinite(savedAt)) return fault(`${path}.savedAt`, { code: 'notFinite' });
  if (note !== undefined && typeof note !== 'string') {
    return fault(`${path}.note`, wrongType('text', note));
  }
  if (note !== undefined && note.length > MAX_NOTE) {
    return fault(`${path}.note`, { code: 'textTooLong', length: note.length, limit: MAX_NOTE });
  }
  if (!isObject(part)) return fault(`${path}.part`, missingOr('object', part));
  const misplaced = NOT_KEPT.find((key) => Object.hasOwn(part, key));
  return misplaced === undefined
    ? null
    : fault(`${path}.part`, { code: 'unknownKey', key: misplaced });
}

function missingOr(expected: string, value: unknown) {
  return value === undefined ? ({ code: 'missing' } as const) : wrongType(expected, value);
}

/** A path in the one-part design as one in the item. */
function itemPath(path: string, item: string): string {
  const own = /^parts\[0\]\.(id|name|kind)\b/.exec(path);
  if (own) return `${item}.${own[1]}`;
  return path.startsWith('parts[0]') ? `${item}.part${path.slice(8)}` : `${item}.${path}`;
}

export function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
