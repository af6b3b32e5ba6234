import { createStore, type StoreApi } from 'zustand/vanilla';
import { type Outcome, tidy } from './designs';
import type { KeepPorts, Work, WorkState } from './ports';
import type { RecordStore } from './recordStore';
import { rescueKey } from './rescue';
import { rightsAsker } from './rights';
import { roomMaker } from './room';
import { createSlot, isBehind, newOrigin, noteOf, type Origin, type Slot, stampOf } from './slot';
import { type Trouble, troubleOf } from './trouble';
import { writeSlot } from './writeSlot';

/**
 * `kept`: the store has all that was done. `keeping`: it will within a moment. `otherTab`: another tab may write this
 * design. `failed`: the browser does not keep it; what was done is in memory, and in a local note where that is let.
 */
export type KeepState = 'starting' | 'kept' | 'keeping' | 'otherTab' | 'failed';

export interface KeepStatus {
  readonly state: KeepState;
  readonly trouble: Trouble | null;
  /** The design on the stage. */
  readonly id: string;
}

/** Nothing that was done is lost by closing the page; see the file's functions. */
export interface Keeper {
  readonly status: StoreApi<KeepStatus>;
  /** Stores what is behind, as far as this tab may; resolves when that is done or has failed. */
  flush(): Promise<void>;
  /** Writes what is behind into local notes, at once, and begins to store it: the page may be gone any moment. */
  rescue(): void;
  /** True while leaving the page would lose something. */
  atRisk(): boolean;
  /** Takes the right to write from the other tab, and what it has stored onto the stage. */
  takeOver(): void;
  /** From now on a design of its own, whatever other tabs do. */
  workOnCopy(): Promise<void>;
  /** Opens a text as the design that `origin` says, or, with null, as a new state of the one on the stage. */
  open(text: string, origin: Origin | null): boolean;
  store(): Promise<RecordStore>;
  stop(): void;
}

/** How far the store may be behind, with what a write takes: a second. Writes do not follow closer than this, ms. */
const SAVE_WITHIN = 400;
/** After a pause a change is stored as soon as it has been drawn, ms. */
const SAVE_SOON = 30;
/** Old designs are let go when the new one has long been stored, ms. */
const TIDY_AFTER = 5000;
/** Before trying again, ms: doubled each time up to the last. */
const RETRY = [1000, 30_000] as const;

/** Keeps the work from now on. `origin` is where the design on the stage comes from; null for one that is new here. */
export function startKeeper(work: Work, ports: KeepPorts, origin: Origin | null): Keeper {
  const writer = ports.newId();
  const slots = new Map<number, Slot>();
  let lastChange = ports.now();
  let slot = createSlot(
    origin ?? { ...newOrigin(ports.newId()), stored: true },
    work.state(),
    lastChange,
  );
  slots.set(work.state().opening, slot);
  const status = createStore<KeepStatus>(() => ({ state: 'starting', trouble: null, id: slot.id }));
  let store: Promise<RecordStore> | null = null;
  let running: Promise<void> | null = null;
  let again = false;
  let stopTimer: (() => void) | null = null;
  let lastRun = Number.NEGATIVE_INFINITY;
  let stopTidy: (() => void) | null = null;
  let stopRetry: (() => void) | null = null;
  let retryAfter: number = RETRY[0];
  let trouble: Trouble | null = null;
  let saidTrouble: Trouble | null = null;
  let asked = false;
  const room = roomMaker(openedStore, ports);
  let stopped = false;
  /** What the next opening is: a slot that goes on, or where a new one begins. */
  let opening: { readonly slot: Slot } | { readonly origin: Origin } | null = null;

  // Who may write: see rights.ts.

  const ask = rightsAsker(work, ports, {
    current: () => slot,
    stopped: () => stopped,
    store: openedStore,
    storeAnew() {
      store = null;
    },
    openInto: (one, text) => openAs(text, { slot: one }),
    show,
    flush: () => void flush(),
  });

  function split(one: Slot, why: 'elsewhere' | 'conflict' | 'newer'): void {
    one.release();
    one.notes.push(rescueKey({ writer, id: one.id }));
    Object.assign(one, {
      copyOf: one.id,
      id: ports.newId(),
      revision: 0,
      mine: [],
      claim: null,
      kept: null,
      right: 'mine',
      next: null,
      edited: true,
    });
    if (one === slot) {
      remember();
      ask(one);
      ports.tell({ kind: 'copied', why });
    }
  }

  // Storing.

  function openedStore(): Promise<RecordStore> {
    store ??= ports.store();
    return store;
  }

  function mayStore(one: Slot): boolean {
    return isBehind(one) && one.right !== 'asked';
  }

  /** Each slot once, and again only where it was asked for meanwhile: a drag does not write without a pause. */
  async function run(): Promise<void> {
    do {
      again = false;
      for (const next of [...new Set(slots.values())].filter(mayStore)) {
        if (stopped || !(await storeOne(next))) return;
      }
    } while (again);
  }

  function flush(): Promise<void> {
    stopTimer?.();
    stopTimer = null;
    again = true;
    lastRun = ports.now();
    running ??= run().finally(() => {
      running = null;
      show();
    });
    return running;
  }

  /** False where the browser would not. */
  async function storeOne(one: Slot): Promise<boolean> {
    if (one.right === 'elsewhere') split(one, 'elsewhere');
    const state = one.wanted;
    const { id } = one;
    const stamp = stampOf(one, ports.newId);
    let outcome: Outcome;
    try {
      outcome = await writeSlot(one, { state, stamp, writer, store: openedStore }, work, ports);
    } catch (error) {
      const why = troubleOf(error);
      if (why === 'full' && (await room.made())) return storeOne(one);
      store = null;
      failed(why);
      return false;
    }
    room.say();
    // While it was written another tab took over, and this became a copy.
    if (one.id !== id) return true;
    if (outcome.kind !== 'saved') {
      split(one, outcome.kind);
      return storeOne(one);
    }
    stored(one, state, outcome.revision);
    return true;
  }

  function stored(one: Slot, state: WorkState, revision: number): void {
    const isNew = one.revision === 0;
    Object.assign(one, { revision, kept: state, mine: [], claim: null });
    if (!isBehind(one)) one.notes.push(rescueKey({ writer, id: one.id }));
    for (const key of isBehind(one) ? [] : one.notes.splice(0)) ports.notes.remove(key);
    ports.canary.write(String(ports.now()));
    if (one !== slot && !isBehind(one)) leave(one);
    if (trouble !== null) recovered();
    if (isNew) stopTidy ??= ports.later(TIDY_AFTER, () => void tidyUp());
  }

  function tidyUp(): Promise<void> {
    stopTidy = null;
    const ids = new Set([...slots.values()].map(({ id }) => id));
    return openedStore()
      .then((target) => tidy(target, ports.now(), ids))
      .catch(() => undefined);
  }

  function failed(why: Trouble): void {
    trouble = why;
    room.say();
    writeNotes();
    show();
    if (saidTrouble !== why) ports.tell({ kind: 'trouble', trouble: why });
    saidTrouble = why;
    stopRetry?.();
    stopRetry = ports.later(retryAfter, () => void flush());
    retryAfter = Math.min(2 * retryAfter, RETRY[1]);
  }

  function recovered(): void {
    trouble = null;
    saidTrouble = null;
    retryAfter = RETRY[0];
    stopRetry?.();
    stopRetry = null;
    ports.tell({ kind: 'recovered' });
  }

  /** False where something would be lost if the page were gone now. */
  function writeNotes(): boolean {
    const behind = [...slots.values()].filter(isBehind);
    return behind
      .map((one) => {
        const stamp = stampOf(one, ports.newId);
        const text = work.textOf(one.wanted);
        return ports.notes.write(noteOf(one, { writer, stamp, text }));
      })
      .every((written) => written);
  }

  // What is on the stage.

  function leave(one: Slot): void {
    one.release();
    one.release = () => undefined;
    one.right = 'left';
  }

  function enter(state: WorkState): void {
    const before = slot;
    const known = slots.get(state.opening);
    if (known) slot = known;
    else if (opening && 'slot' in opening) slot = opening.slot;
    else slot = createSlot(opening?.origin ?? newOrigin(ports.newId()), state, lastChange);
    slots.set(state.opening, slot);
    if (before !== slot && !isBehind(before)) leave(before);
    if (before !== slot) ask(slot);
    remember();
  }

  function openAs(text: string, as: NonNullable<typeof opening>): boolean {
    opening = as;
    try {
      return work.open(text);
    } finally {
      opening = null;
    }
  }

  function remember(): void {
    ports.lastOpen.write(slot.id);
  }

  function show(): void {
    const behind = [...slots.values()].some(isBehind);
    let state: KeepState = 'kept';
    if (trouble !== null && behind) state = 'failed';
    else if (slot.right === 'elsewhere') state = 'otherTab';
    else if (behind) state = 'keeping';
    else if (slot.right === 'asked') state = 'starting';
    const now = status.getState();
    if (now.state === state && now.trouble === trouble && now.id === slot.id) return;
    status.setState({ state, trouble, id: slot.id });
  }

  /** The clock may have been set back meanwhile. */
  function untilNext(): number {
    const since = Math.max(0, ports.now() - lastRun);
    return Math.max(SAVE_SOON, SAVE_WITHIN - since);
  }

  const unsubscribe = work.subscribe((now, before) => {
    // The latest is what the next visit opens, also where the clock was set back or two come in one moment.
    lastChange = Math.max(ports.now(), lastChange + 1);
    if (now.opening !== before.opening) enter(now);
    else if (now.design === before.design) return;
    slot.wanted = now;
    slot.changedAt = lastChange;
    if (now.design !== slot.opened.design) slot.edited = true;
    if (!asked && slot.edited) {
      asked = true;
      ports.askToStay();
    }
    show();
    if (ports.hidden()) void flush();
    else stopTimer ??= ports.later(untilNext(), () => void flush());
  });

  remember();
  ask(slot);
  void flush();

  return {
    status,
    flush,
    rescue() {
      if (![...slots.values()].some(isBehind)) return;
      writeNotes();
      void flush();
    },
    atRisk: () => trouble !== null && !writeNotes(),
    takeOver() {
      if (slot.right === 'elsewhere') ask(slot, true);
    },
    async workOnCopy() {
      split(slot, 'elsewhere');
      show();
      await flush();
    },
    open: (text, from) => openAs(text, from ? { origin: from } : { slot }),
    store: openedStore,
    stop() {
      stopped = true;
      unsubscribe();
      stopTimer?.();
      stopTidy?.();
      stopRetry?.();
      for (const one of slots.values()) one.release();
    },
  };
}
