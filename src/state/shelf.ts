import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Part } from '../design/design';
import { type DesignFault, fault } from '../design/fault';
import { MAX_NAME } from '../design/limits';
import type { Materials } from '../design/resolve';
import { fail, type Result, succeed } from '../engine/result';
import type { ShelfDatabase } from './shelfDatabase';
import { MAX_ITEMS } from './shelfFile';
import { itemFrom, itemOf, type ShelfItem } from './shelfItem';

/** 'browser': kept between visits. 'page': the browser keeps nothing here, so that the shelf goes with the page. */
export type ShelfHome = 'opening' | 'browser' | 'page';

export interface ShelfState {
  /** Latest first. */
  readonly items: readonly ShelfItem[];
  readonly home: ShelfHome;
  /** Records that were found and could not be read; they are left where they are. */
  readonly unreadable: number;
}

export interface Imported {
  readonly added: number;
  /** Of those added: under another name, since theirs was taken. */
  readonly renamed: number;
  /** Here already, the same in everything. */
  readonly known: number;
}

/**
 * The maker's own parts. What happens to an item is in `state` at once and in the database soon after; where that
 * fails, `home` says so and the item stays for as long as the page does. Nothing here touches the open design.
 */
export interface Shelf {
  readonly state: StoreApi<ShelfState>;
  /** Reads the shelf; again where another tab may have changed it. */
  load(): Promise<void>;
  keep(part: Part, materials: Materials): Promise<Result<ShelfItem, DesignFault>>;
  /** Name and note; a name that is taken gets a number. */
  describe(id: string, change: Partial<Pick<ShelfItem, 'name' | 'note'>>): Promise<void>;
  /** Takes an item off and gives it, so that `restore` can put it back. */
  remove(id: string): Promise<ShelfItem | null>;
  restore(item: ShelfItem): Promise<void>;
  /** All of a file's items or, where the shelf would overflow, none. Nothing that is here is ever replaced. */
  takeIn(items: readonly ShelfItem[]): Promise<Result<Imported, DesignFault>>;
}

export interface ShelfPorts {
  readonly database: () => Promise<ShelfDatabase>;
  readonly now: () => number;
  readonly newId: () => string;
}

export function createShelf(ports: ShelfPorts): Shelf {
  const state = createStore<ShelfState>(() => ({ items: [], home: 'opening', unreadable: 0 }));
  let database: ShelfDatabase | null = null;
  let reading: Promise<void> | null = null;

  async function readAll(): Promise<void> {
    try {
      database ??= await ports.database();
      const found = (await database.readAll()).map((record) => itemFrom(record, 'item'));
      const items = found.flatMap((read) => (read.ok ? [read.value] : []));
      // What could not be written before stays in sight.
      const { home, items: held } = state.getState();
      const unwritten =
        home === 'page' ? held.filter((one) => !items.some(({ id }) => id === one.id)) : [];
      const unreadable = found.length - items.length;
      state.setState({ items: sorted([...items, ...unwritten]), home: 'browser', unreadable });
      for (const item of unwritten) await write((target) => target.put(item));
    } catch {
      failed();
    }
  }

  /** The next reading opens it anew. */
  function failed(): void {
    database?.close();
    database = null;
    state.setState({ home: 'page' });
  }

  function load(): Promise<void> {
    reading ??= readAll().finally(() => {
      reading = null;
    });
    return reading;
  }

  /** Before anything is put in: what lies there decides on names. */
  async function ready(): Promise<void> {
    await (state.getState().home === 'opening' ? load() : reading);
  }

  async function write(act: (target: ShelfDatabase) => Promise<void>): Promise<void> {
    if (!database) return;
    try {
      await act(database);
    } catch {
      failed();
    }
  }

  function show(items: readonly ShelfItem[]): void {
    state.setState({ items: sorted(items) });
  }

  const others = (id: string) => state.getState().items.filter((item) => item.id !== id);

  async function put(item: ShelfItem): Promise<void> {
    show([...others(item.id), item]);
    await write((target) => target.put(item));
  }

  function overflow(added: number): DesignFault | null {
    const count = state.getState().items.length + added;
    return count > MAX_ITEMS ? fault('items', { code: 'tooMany', count, limit: MAX_ITEMS }) : null;
  }

  return {
    state,
    load,
    async keep(part, materials) {
      await ready();
      const full = overflow(1);
      if (full) return fail(full);
      const name = freeName(part.name, state.getState().items);
      const item = itemOf(part, materials, { id: ports.newId(), savedAt: ports.now(), name });
      await put(item);
      return succeed(item);
    },
    async describe(id, change) {
      await ready();
      const item = state.getState().items.find((one) => one.id === id);
      if (!item) return;
      const { note: _, ...rest } = item;
      const note = change.note ?? item.note ?? '';
      const name = change.name === undefined ? item.name : freeName(change.name, others(id));
      if (name === item.name && note === (item.note ?? '')) return;
      await put({ ...rest, name, ...(note === '' ? {} : { note }) });
    },
    async remove(id) {
      await ready();
      const item = state.getState().items.find((one) => one.id === id) ?? null;
      if (!item) return null;
      show(others(id));
      await write((target) => target.remove(id));
      return item;
    },
    restore: put,
    async takeIn(items) {
      await ready();
      const strangers = items.filter((item) => !state.getState().items.some(sameAs(item)));
      const full = overflow(strangers.length);
      if (full) return fail(full);
      let renamed = 0;
      for (const item of strangers) {
        const held = state.getState().items;
        const name = freeName(item.name, held);
        if (name !== item.name) renamed++;
        const taken = held.some((one) => one.id === item.id);
        await put({ ...item, name, ...(taken ? { id: ports.newId() } : {}) });
      }
      const added = strangers.length;
      return succeed({ added, renamed, known: items.length - added });
    },
  };
}

/** The same part, kept at the same time: only its name or id may have been changed by an earlier import. */
function sameAs(item: ShelfItem) {
  const content = ({ savedAt, note, kind, part, materials }: ShelfItem) =>
    JSON.stringify([savedAt, note ?? '', kind, sortedKeys(part), materials.map(sortedKeys)]);
  const wanted = content(item);
  return (one: ShelfItem) => content(one) === wanted;
}

function sortedKeys(value: object): unknown {
  return Object.entries(value).toSorted(([a], [b]) => (a < b ? -1 : 1));
}

function sorted(items: readonly ShelfItem[]): readonly ShelfItem[] {
  return items.toSorted((a, b) => b.savedAt - a.savedAt);
}

/** The name itself where no item has it, else with the first free number: "Long bolt (2)". */
function freeName(name: string, items: readonly ShelfItem[]): string {
  const taken = new Set(items.map((item) => item.name));
  if (!taken.has(name)) return name;
  const stem = name.replace(/ \(\d+\)$/, '');
  for (let n = 2; ; n++) {
    const ending = ` (${n})`;
    const next = stem.slice(0, MAX_NAME - ending.length) + ending;
    if (!taken.has(next)) return next;
  }
}
