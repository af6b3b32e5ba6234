import { useState } from 'react';
import type { Part } from '../../design/design';
import { materialKeyOf } from '../../design/resolve';
import { valueOf } from '../../design/values';
import { partType } from '../../parts/registry';
import { useAppState } from '../../ui/session';

/**
 * A number that grows when other fields may be needed: parts came, went, got other names or other seats. A drag that
 * changes dimensions leaves it as it is.
 */
export function useShape(): number {
  return useChanges(sameSeat);
}

/**
 * A number that grows when values come from somewhere else: another row, another material, a value written or let go.
 * A drag that changes a value leaves it as it is, after the first write.
 */
export function useSources(): number {
  return useChanges(sameSources);
}

type Same = (a: Part, b: Part) => boolean;

function useChanges(same: Same): number {
  const [select] = useState(() => createSelector(same));
  return useAppState((state) => select(state.design.parts));
}

function createSelector(alike: Same): (parts: readonly Part[]) => number {
  let seen: readonly Part[] = [];
  let shape = 0;
  return (parts) => {
    if (parts === seen) return shape;
    const same = parts.length === seen.length && parts.every((part, i) => alike(part, seen[i]));
    seen = parts;
    if (!same) shape++;
    return shape;
  };
}

function sameSeat(a: Part, b: Part): boolean {
  return (
    a === b ||
    (a.id === b.id &&
      a.name === b.name &&
      a.socket?.part === b.socket?.part &&
      a.socket?.name === b.socket?.name)
  );
}

/** The length of a row is a value like any other: it is left out, since a drag changes it. */
function sameSources(a: Part, b: Part): boolean {
  if (a === b) return true;
  const keys = Object.keys(a);
  return (
    a.id === b.id &&
    a.catalogue?.standard === b.catalogue?.standard &&
    a.catalogue?.size === b.catalogue?.size &&
    keys.length === Object.keys(b).length &&
    keys.every((key) => Object.hasOwn(b, key)) &&
    materialKeysOf(a.kind).every((key) => valueOf(a, key) === valueOf(b, key))
  );
}

function materialKeysOf(kind: string): string[] {
  return Object.values(partType(kind).parameters).flatMap((one) => materialKeyOf(one) ?? []);
}
