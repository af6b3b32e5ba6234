import { useState } from 'react';
import type { Part } from '../../design/design';
import { useAppState } from '../../ui/session';

/** What a row of the rail shows that a drag does not change. */
export interface RailItem {
  readonly id: string;
  readonly kind: Part['kind'];
  readonly name: string;
  readonly hidden: boolean;
}

/** The parts in list order. The same array as long as no part came, went, moved, or changed name or hiding. */
export function useRailItems(): readonly RailItem[] {
  const [select] = useState(createSelector);
  return useAppState((state) => select(state.design.parts));
}

function createSelector(): (parts: readonly Part[]) => readonly RailItem[] {
  let seen: readonly Part[] = [];
  let items: readonly RailItem[] = [];
  return (parts) => {
    if (parts === seen) return items;
    seen = parts;
    const same = parts.length === items.length && parts.every((part, i) => shows(items[i], part));
    if (!same) items = parts.map(itemOf);
    return items;
  };
}

function itemOf(part: Part): RailItem {
  return { id: part.id, kind: part.kind, name: part.name, hidden: part.hidden === true };
}

function shows(item: RailItem, part: Part): boolean {
  return (
    item.id === part.id &&
    item.name === part.name &&
    item.hidden === (part.hidden === true) &&
    item.kind === part.kind
  );
}
