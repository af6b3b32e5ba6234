import { useState } from 'react';
import type { Part } from '../../design/design';
import { useAppState } from '../../ui/session';

/**
 * A number that grows when other fields may be needed: parts came, went, got other names or other seats. A drag that
 * changes dimensions leaves it as it is.
 */
export function useShape(): number {
  const [select] = useState(createSelector);
  return useAppState((state) => select(state.design.parts));
}

function createSelector(): (parts: readonly Part[]) => number {
  let seen: readonly Part[] = [];
  let shape = 0;
  return (parts) => {
    if (parts === seen) return shape;
    const same = parts.length === seen.length && parts.every((part, i) => sameShape(part, seen[i]));
    seen = parts;
    if (!same) shape++;
    return shape;
  };
}

function sameShape(a: Part, b: Part): boolean {
  return (
    a === b ||
    (a.id === b.id &&
      a.name === b.name &&
      a.socket?.part === b.socket?.part &&
      a.socket?.name === b.socket?.name)
  );
}
