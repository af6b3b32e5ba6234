import { type Keeper, startKeeper } from '../../../src/state/keep/keeper';
import type { LockTold } from '../../../src/state/keep/locks';
import type { KeepPorts, Message, Work, WorkState } from '../../../src/state/keep/ports';
import type { RecordAccess, RecordStore } from '../../../src/state/keep/recordStore';
import type { Card } from '../../../src/state/keep/records';
import { rescueNotes } from '../../../src/state/keep/rescue';
import { type Reader, type Restored, restoreWork } from '../../../src/state/keep/restore';
import { seeded } from '../../support/seeded';

/**
 * A browser for the keeper: one store, one set of local notes and one lock manager for all its tabs, a clock, and a
 * scheduler that decides which of the things under way happens next. As the IndexedDB standard has it (W3C Indexed
 * Database API 3.0, sections 2.7 and 5): transactions that write run one after another in the order they were asked for,
 * a request may be answered at any time, an error or the death of the page gives the whole transaction up, and a commit
 * happens whole or not at all; its answer may be lost, and a full storage refuses it (section 5.4: QuotaExceededError). As the Web Locks standard has it (W3C Web Locks API): one holder a
 * name, a line in order, given back when the page dies, and stealing rejects the holder's request.
 */
export interface World {
  readonly cards: Map<string, unknown>;
  readonly texts: Map<string, string>;
  readonly notes: Map<string, string>;
  clock: number;
  /** Connections to the store that are open, of tabs that live. */
  connections(): number;
  /** Counts the storage operations (requests, commits, openings). */
  operations: number;
  /** Decides for each whether it fails: before it, or, of a commit, after it (the answer is lost). */
  fault: (operation: number, kind: Operation) => FaultKind;
  /** How long the store takes to answer a request, ms. */
  delay: number;
  notesFull: boolean;
  /** Characters of text that the store takes in all; what only takes away is let through when it is full. */
  capacity: number;
  /** A browser without locks: everybody is let in. */
  lockless: boolean;
  openTab(): Promise<Tab>;
  /** Lets one of the things under way happen. False where nothing is. */
  step(): Promise<boolean>;
  /** Lets everything happen that comes within so many ms. */
  pass(ms: number): Promise<void>;
  /** Called at every commit with what it changed. */
  onCommit: (tab: Tab, before: ReadonlyMap<string, string>) => void;
}
export type Operation = 'open' | 'request' | 'commit';
/** `never`: no answer comes. `after`: it happens, and the answer says that it did not. */
export type FaultKind = null | 'never' | { readonly error: string; readonly after?: boolean };

export interface Tab {
  readonly number: number;
  readonly keeper: Keeper;
  readonly restored: Restored<string>;
  readonly messages: Message[];
  /** The text on the stage. */
  text(): string;
  /** The object that is the design on the stage. */
  design(): object;
  edit(text: string): void;
  /** Another design in place of this one. */
  openNew(text: string): void;
  undo(): void;
  /** The page is left in an orderly way, as far as a browser lets it: notes, then nothing. */
  close(): void;
  /** The page is gone. */
  kill(): void;
  hidden: boolean;
  alive: boolean;
  /** The texts that stood on this tab's stage, one after another. */
  readonly seen: readonly string[];
}

interface Task {
  readonly tab: number;
  /** Not before this time. */
  readonly at: number;
  readonly run: () => void;
}

export function createWorld(seed: number, startAt = 1_000_000): World {
  const random = seeded(seed);
  let tasks: Task[] = [];
  let tabs = 0;
  let ids = 0;
  const dead = new Set<number>();
  /** Which tab each open connection is of. */
  const connected = new Map<object, number>();
  /** The transaction that writes now, and those in line. */
  const line: { readonly tab: number; readonly begin: () => void }[] = [];
  let busy: number | null = null;
  const holders = new Map<string, { tab: number; told: LockTold }>();
  const waiting = new Map<string, { tab: number; told: LockTold }[]>();

  const world: World = {
    cards: new Map(),
    texts: new Map(),
    notes: new Map(),
    clock: startAt,
    operations: 0,
    fault: () => null,
    delay: 0,
    notesFull: false,
    capacity: Number.POSITIVE_INFINITY,
    lockless: false,
    connections: () => [...connected.values()].filter((tab) => !dead.has(tab)).length,
    openTab,
    step,
    pass,
    onCommit: () => undefined,
  };

  function later(tab: number, ms: number, run: () => void): () => void {
    const task = { tab, at: world.clock + ms, run };
    tasks.push(task);
    return () => {
      tasks = tasks.filter((one) => one !== task);
    };
  }

  /** Resolves when the scheduler lets it. */
  function answer<T>(tab: number, kind: Operation, act: () => T): Promise<T> {
    const number = ++world.operations;
    return new Promise((resolve, reject) => {
      later(tab, world.delay, () => {
        const fault = world.fault(number, kind);
        if (fault === 'never') return;
        try {
          if (fault && !fault.after) throw new DOMException('injected', fault.error);
          const result = act();
          if (fault) throw new DOMException('injected', fault.error);
          resolve(result);
        } catch (error) {
          reject(error);
        }
      });
    });
  }

  function nextInLine(): void {
    busy = null;
    while (line.length > 0) {
      const first = line.shift();
      if (!first || dead.has(first.tab)) continue;
      busy = first.tab;
      first.begin();
      return;
    }
  }

  function storeFor(number: number, tab: () => Tab): RecordStore {
    const connection = {};
    connected.set(connection, number);
    async function transact<T>(work: (access: RecordAccess) => Promise<T>): Promise<T> {
      if (!connected.has(connection)) throw new DOMException('closed', 'InvalidStateError');
      await new Promise<void>((begin) => {
        line.push({ tab: number, begin });
        if (busy === null) nextInLine();
      });
      const cards = new Map(world.cards);
      const texts = new Map(world.texts);
      const request = <R>(act: () => R) => answer(number, 'request', act);
      const access: RecordAccess = {
        card: (key) => request(() => structuredClone(cards.get(key))),
        cards: (prefix) =>
          request(() =>
            [...cards.keys()]
              .filter((key) => key.startsWith(prefix))
              .toSorted()
              .map((key) => structuredClone(cards.get(key))),
          ),
        text: (key) => request(() => texts.get(key) ?? null),
        put: (card, text) =>
          request(() => {
            cards.set(card.key, structuredClone(card));
            texts.set(card.key, text);
          }),
        putCard: (card) => request(() => void cards.set(card.key, structuredClone(card))),
        remove: (key) =>
          request(() => {
            cards.delete(key);
            texts.delete(key);
          }),
      };
      try {
        const result = await work(access);
        await answer(number, 'commit', () => {
          if (lengthOf(texts) > Math.max(world.capacity, lengthOf(world.texts))) {
            throw new DOMException('no room', 'QuotaExceededError');
          }
          const before = new Map(world.texts);
          replace(world.cards, cards);
          replace(world.texts, texts);
          world.onCommit(tab(), before);
        });
        return result;
      } finally {
        if (!dead.has(number)) nextInLine();
      }
    }
    return { read: transact, change: transact, close: () => void connected.delete(connection) };
  }

  function releaseLock(name: string, tab: number): void {
    const after = (waiting.get(name) ?? []).filter((one) => one.tab !== tab);
    waiting.set(name, after);
    if (holders.get(name)?.tab !== tab) return;
    holders.delete(name);
    const next = after.shift();
    if (!next) return;
    holders.set(name, next);
    later(next.tab, 0, next.told.granted);
  }

  function takeLock(tab: number, name: string, given: LockTold, steal = false): () => void {
    if (world.lockless) {
      given.granted();
      return () => undefined;
    }
    let over = false;
    let has = false;
    const told: LockTold = {
      granted() {
        has = true;
        if (!over) given.granted();
      },
      lost: () => void (over || given.lost()),
      waiting: () => void (over || has || given.waiting()),
    };
    const held = holders.get(name);
    if (!held || steal) {
      if (held) later(held.tab, 0, held.told.lost);
      holders.set(name, { tab, told });
      later(tab, 0, told.granted);
    } else {
      waiting.set(name, [...(waiting.get(name) ?? []), { tab, told }]);
      later(tab, 500, told.waiting);
    }
    return () => {
      over = true;
      if (holders.get(name)?.told === told || !has) releaseLock(name, tab);
    };
  }

  function kill(number: number): void {
    dead.add(number);
    tasks = tasks.filter((task) => task.tab !== number);
    for (const name of new Set([...holders.keys(), ...waiting.keys()])) releaseLock(name, number);
    if (busy === number) nextInLine();
  }

  function storage(): Storage {
    return {
      get length() {
        return world.notes.size;
      },
      key: (i: number) => [...world.notes.keys()][i] ?? null,
      getItem: (key: string) => world.notes.get(key) ?? null,
      setItem(key: string, value: string) {
        if (world.notesFull) throw new DOMException('injected', 'QuotaExceededError');
        world.notes.set(key, value);
      },
      removeItem: (key: string) => void world.notes.delete(key),
    } as unknown as Storage;
  }

  function portsFor(number: number, self: () => Tab, messages: Message[]): KeepPorts {
    const slip = (name: string) => ({
      read: () => world.notes.get(name) ?? null,
      write: (text: string) => void world.notes.set(name, text),
    });
    return {
      store: () => answer(number, 'open', () => storeFor(number, self)),
      locks: {
        real: !world.lockless,
        take: (id, told, steal) => takeLock(number, id, told, steal),
      },
      notes: rescueNotes(storage),
      canary: slip('canary'),
      lastOpen: { read: () => null, write: () => undefined },
      now: () => world.clock,
      newId: () => `id${++ids}`,
      later: (ms, act) => later(number, ms, act),
      hidden: () => self().hidden,
      askToStay: () => undefined,
      tell: (message) => void messages.push(message),
    };
  }

  async function openTab(): Promise<Tab> {
    const number = ++tabs;
    const messages: Message[] = [];
    let tab: Tab | null = null;
    const self = () => tab as Tab;
    const ports = portsFor(number, self, messages);
    const restored = await driven(restoreWork(ports, readText), () => step());
    const work = createWork(restored.design ?? 'fresh');
    tab = {
      number,
      restored,
      messages,
      keeper: startKeeper(work, ports, restored),
      text: () => work.state().design.name,
      design: () => work.state().design,
      edit: (text) => work.edit(text),
      openNew: (text) => void work.open(text),
      undo: work.undo,
      hidden: false,
      alive: true,
      seen: work.seen,
      close() {
        self().hidden = true;
        self().keeper.rescue();
        self().kill();
      },
      kill() {
        self().alive = false;
        self().keeper.stop();
        kill(number);
      },
    };
    return tab;
  }

  /** Of what is due now any one; else the clock goes on to the first. */
  async function step(): Promise<boolean> {
    if (tasks.length === 0) return false;
    let due = tasks.filter((task) => task.at <= world.clock);
    if (due.length === 0) {
      world.clock = Math.min(...tasks.map((task) => task.at));
      due = tasks.filter((task) => task.at <= world.clock);
    }
    const task = random.pick(due);
    tasks = tasks.filter((one) => one !== task);
    task.run();
    await settle();
    return true;
  }

  async function pass(ms: number): Promise<void> {
    const until = world.clock + ms;
    await settle();
    while (tasks.some((task) => task.at <= until)) await step();
    world.clock = Math.max(world.clock, until);
  }
  return world;
}

function lengthOf(texts: ReadonlyMap<string, string>): number {
  return [...texts.values()].reduce((sum, text) => sum + text.length, 0);
}

/** Lets promises that are settled run on. */
function settle(): Promise<void> {
  return new Promise((resolve) => setImmediate(resolve));
}

async function driven<T>(work: Promise<T>, step: () => Promise<boolean>): Promise<T> {
  const over = { done: false };
  const watched = work.finally(() => {
    over.done = true;
  });
  watched.catch(() => undefined);
  await settle();
  while (!over.done) if (!(await step())) await settle();
  return watched;
}

function replace<V>(target: Map<string, V>, source: ReadonlyMap<string, V>): void {
  target.clear();
  for (const [key, value] of source) target.set(key, value);
}

/** Texts that begin with "bad" are damaged ones, with "newer" those of a later page. */
export const readText: Reader<string> = (text) => {
  if (text.startsWith('bad')) return { ok: false, newer: false, reason: 'cut off' };
  if (text.startsWith('newer')) return { ok: false, newer: true, reason: 'newer' };
  return { ok: true, design: text };
};

/** How many steps the stage can take back. */
export const UNDO_STEPS = 200;

/** A stage with undo, as the session's. */
function createWork(text: string) {
  let state: WorkState = { design: { name: text }, opening: 0 };
  let openings = 0;
  const past: WorkState[] = [];
  const seen = [text];
  const listeners = new Set<(now: WorkState, before: WorkState) => void>();
  function record(): void {
    past.push(state);
    if (past.length > UNDO_STEPS) past.shift();
  }
  function set(next: WorkState): void {
    const before = state;
    state = next;
    seen.push(next.design.name);
    for (const listener of listeners) listener(next, before);
  }
  return {
    state: () => state,
    subscribe(listener: (now: WorkState, before: WorkState) => void) {
      listeners.add(listener);
      return () => void listeners.delete(listener);
    },
    textOf: ({ design }: WorkState) => design.name,
    openings: () => new Set([...past, state].map(({ opening }) => opening)),
    open(next: string) {
      if (!readText(next).ok) return false;
      record();
      set({ design: { name: next }, opening: ++openings });
      return true;
    },
    edit(next: string) {
      record();
      set({ design: { name: next }, opening: state.opening });
    },
    undo() {
      const before = past.pop();
      if (before) set(before);
    },
    seen,
  } satisfies Work & { edit(next: string): void; undo(): void; seen: string[] };
}

/** Whether a text lies anywhere in the browser: as a design, in a history, set aside or in a note. */
export function isSomewhere(world: World, text: string): boolean {
  if ([...world.texts.values()].includes(text)) return true;
  return [...world.notes.values()].some((note) => note.includes(JSON.stringify(text)));
}

/** Lets the world go on until the promise is settled. */
export async function answered<T>(world: World, work: Promise<T>): Promise<T> {
  const over = { done: false };
  work
    .finally(() => {
      over.done = true;
    })
    .catch(() => undefined);
  while (!over.done) await world.pass(1);
  return work;
}

/** Cards whose text is missing, of another length, or no card at all. */
export function torn(world: World): string[] {
  return [...world.cards].flatMap(([key, value]) => {
    const card = value as Card;
    return card.length === world.texts.get(key)?.length ? [] : [key];
  });
}
