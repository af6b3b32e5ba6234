import type { Socket } from '../parts/contract';
import { partType } from '../parts/registry';
import { checkMount, checkPart } from './check';
import type { Part } from './design';
import { type DesignFault, fault, within } from './fault';
import { MAX_PARTS, MAX_TEXT } from './limits';
import { type Materials, valuesOf } from './resolve';
import { valueOf } from './values';

/**
 * The first fault of a list of parts, or null: their number, limits, rules between parameters, ids, mounts and circles
 * of mounts. Parts that `trusted` vouches for have been checked before and are only looked at again where their
 * parent changed.
 */
export function checkParts(
  parts: readonly Part[],
  materials: Materials,
  trusted: (part: Part) => boolean = () => false,
): DesignFault | null {
  if (parts.length > MAX_PARTS) {
    return fault('parts', { code: 'tooManyParts', count: parts.length, limit: MAX_PARTS });
  }
  const length = longTexts(parts);
  if (length > MAX_LONG_TEXT) {
    return fault('parts', { code: 'tooLong', length, limit: MAX_LONG_TEXT });
  }
  const repeated = checkIds(parts);
  if (repeated) return repeated;
  for (let i = 0; i < parts.length; i++) {
    const found = trusted(parts[i]) ? null : checkPart(parts[i], materials);
    if (found) return within(partPath(i), found);
  }
  return checkMounts(parts, materials, trusted);
}

/** Pictures and lists may fill this much of a file, UTF-16 units: what is left holds the numbers of every part. */
export const MAX_LONG_TEXT = MAX_TEXT - 8_000_000;

/** Length of the texts from files that parts hold: a design that is kept must open again. */
export function longTexts(parts: readonly Part[]): number {
  let length = 0;
  for (const part of parts) {
    for (const name of textParameters(part.kind))
      length += String(valueOf(part, name) ?? '').length;
  }
  return length;
}

const textNames = new Map<string, readonly string[]>();

function textParameters(kind: string): readonly string[] {
  const known = textNames.get(kind);
  if (known) return known;
  const { parameters } = partType(kind);
  const names = Object.keys(parameters).filter((name) => parameters[name].type === 'text');
  textNames.set(kind, names);
  return names;
}

export function partPath(index: number): string {
  return `parts[${index}]`;
}

function checkIds(parts: readonly Part[]): DesignFault | null {
  const first = new Map<string, number>();
  for (let i = 0; i < parts.length; i++) {
    const { id } = parts[i];
    const before = first.get(id);
    if (before !== undefined) {
      return fault(`${partPath(i)}.id`, { code: 'repeatedId', id, first: before });
    }
    first.set(id, i);
  }
  return null;
}

function checkMounts(
  parts: readonly Part[],
  materials: Materials,
  trusted: (part: Part) => boolean,
): DesignFault | null {
  const byId = new Map<string, Part>(parts.map((part) => [part.id, part]));
  const open = (part: Part): boolean => {
    if (!part.socket) return false;
    const parent = byId.get(part.socket.part);
    return !(parent && trusted(part) && trusted(parent));
  };
  if (!parts.some(open)) return null;
  // A circle is the better thing to be told of than the misfit that closes it.
  const found = checkCircles(parts, byId);
  if (found) return found;
  const sockets = new Map<Part, readonly Socket[]>();
  for (let i = 0; i < parts.length; i++) {
    const part = parts[i];
    const parent = part.socket && byId.get(part.socket.part);
    if (!open(part)) continue;
    if (parent && !sockets.has(parent)) {
      sockets.set(parent, partType(parent.kind).sockets(valuesOf(parent, materials)));
    }
    const wrong = checkMount(part, (parent && sockets.get(parent)) ?? null);
    if (wrong) return within(partPath(i), wrong);
  }
  return null;
}

/** Walks up from every part; each is left behind as settled, so the whole costs one visit per part. */
function checkCircles(parts: readonly Part[], byId: ReadonlyMap<string, Part>): DesignFault | null {
  const settled = new Set<Part>();
  for (let i = 0; i < parts.length; i++) {
    const climb = new Set<Part>();
    let part: Part | undefined = parts[i];
    while (part && !settled.has(part)) {
      if (climb.has(part)) return circle(parts, climb, part);
      climb.add(part);
      part = part.socket && byId.get(part.socket.part);
    }
    for (const one of climb) settled.add(one);
  }
  return null;
}

/** The fault of a circle closed at `start`, told at its first part in list order. */
function circle(parts: readonly Part[], climb: ReadonlySet<Part>, start: Part): DesignFault {
  const all = [...climb];
  const ring = all.slice(all.indexOf(start));
  const indices = ring.map((part) => parts.indexOf(part));
  const first = indices.indexOf(Math.min(...indices));
  const ids = [...ring.slice(first), ...ring.slice(0, first)].map((part) => part.id);
  return fault(`${partPath(indices[first])}.socket.part`, { code: 'cycle', ids });
}
