import { createStore, type StoreApi } from 'zustand/vanilla';
import type { KeepPorts, Work } from './ports';
import type { RecordStore } from './recordStore';
import { type RoomMaker, roomMaker } from './room';
import { createSlot, isBehind, newOrigin, type Origin, type Slot } from './slot';
import type { Trouble } from './trouble';

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

/** What the parts of the keeper share: who may write (rights), storing and its failures, and the stage. */
export interface Keeping {
  readonly work: Work;
  readonly ports: KeepPorts;
  /** Names this tab in what it writes. */
  readonly writer: string;
  readonly status: StoreApi<KeepStatus>;
  readonly store: StoreDoor;
  readonly room: RoomMaker;
  /** The slot of each opening that undo can bring back, and of each that is not stored yet. */
  readonly slots: Map<number, Slot>;
  /** Of the design on the stage. */
  slot: Slot;
  /** When the work was last changed, ms since 1970; later each time. */
  lastChange: number;
  /** What the opening under way is: a slot that goes on, or where a new one begins. */
  opening: { readonly slot: Slot } | { readonly origin: Origin } | null;
  /** Whether the browser was asked to let what is kept stay. */
  askedToStay: boolean;
  readonly pump: Pump;
  readonly retry: Retry;
  /** Why the last write failed; null where it did not. */
  trouble: Trouble | null;
  stopped: boolean;
  /** See storing.ts. */
  flush(): Promise<void>;
}

/** What is under way of storing. */
interface Pump {
  running: Promise<void> | null;
  /** Whether it is to go round once more. */
  again: boolean;
  lastRun: number;
  stopTimer: (() => void) | null;
  stopTidy: (() => void) | null;
}

/** Of trying again after a failure. */
interface Retry {
  /** Before the next time, ms. */
  after: number;
  stop: (() => void) | null;
  /** What was said of it last. */
  said: Trouble | null;
  /** Whether it was said that a write takes long, and not yet that it was made. */
  slow: boolean;
}

/** The first and the longest time before a failed write is tried again, ms: doubled each time. */
export const RETRY = [1000, 30_000] as const;

/** What the last visit has left. */
export interface Begun {
  /** Where the design on the stage comes from; null for one that is new here. */
  readonly origin: Origin | null;
  /** See `Restored`. */
  readonly latest: number;
}

/** A clock that was set back by more is not followed, ms: all that is kept would bear times that are to come. */
const SET_BACK = 24 * 3600 * 1000;

/** Now, or just after the latest of what was kept where the clock has been set back since: it tells which design opens next. */
function after(latest: number, now: number): number {
  return latest >= now && latest - now < SET_BACK ? latest + 1 : now;
}

/** Of the stage as it is at the start of the page. */
export function createKeeping(
  work: Work,
  ports: KeepPorts,
  { origin, latest }: Begun,
  flush: (keeping: Keeping) => Promise<void>,
): Keeping {
  const writer = ports.newId();
  const lastChange = after(latest, ports.now());
  const begun = origin ?? { ...newOrigin(ports.newId()), stored: true };
  const slot = createSlot(begun, work.state(), lastChange);
  const store = storeDoor(ports.store);
  const keeping: Keeping = {
    work,
    ports,
    writer,
    status: createStore<KeepStatus>(() => ({ state: 'starting', trouble: null, id: slot.id })),
    store,
    room: roomMaker(store.opened, ports),
    slots: new Map([[work.state().opening, slot]]),
    slot,
    lastChange,
    opening: null,
    askedToStay: false,
    pump: {
      running: null,
      again: false,
      lastRun: Number.NEGATIVE_INFINITY,
      stopTimer: null,
      stopTidy: null,
    },
    retry: { after: RETRY[0], stop: null, said: null, slow: false },
    trouble: null,
    stopped: false,
    flush: () => flush(keeping),
  };
  return keeping;
}

interface StoreDoor {
  /** Opens it when it is first asked for. */
  opened(): Promise<RecordStore>;
  /** Closes one that fails: the next to ask opens another. */
  drop(): void;
}

function storeDoor(open: () => Promise<RecordStore>): StoreDoor {
  let store: Promise<RecordStore> | null = null;
  return {
    opened() {
      store ??= open();
      return store;
    },
    drop() {
      store?.then((held) => held.close()).catch(() => undefined);
      store = null;
    },
  };
}

export function slotsOf({ slots }: Keeping): readonly Slot[] {
  return [...new Set(slots.values())];
}

export function behindOf(keeping: Keeping): readonly Slot[] {
  return slotsOf(keeping).filter(isBehind);
}

/** Forgets what is stored and left and beyond undo: a slot holds whole designs. */
export function prune({ work, slots, slot: here }: Keeping): void {
  const near = work.openings();
  for (const [opening, slot] of slots) {
    if (!near.has(opening) && (slot === here || slot.right === 'left')) slots.delete(opening);
  }
}

/** Opens a text as what `as` says; false where it cannot be read. */
export function openAs(
  keeping: Keeping,
  text: string,
  as: NonNullable<Keeping['opening']>,
): boolean {
  keeping.opening = as;
  try {
    return keeping.work.open(text);
  } finally {
    keeping.opening = null;
  }
}

/** For the reload of this tab. */
export function remember({ ports, slot }: Keeping): void {
  ports.lastOpen.write(slot.id);
}

/** Says how things stand, where that has changed. */
export function show(keeping: Keeping): void {
  const { status, slot, trouble } = keeping;
  const behind = behindOf(keeping).length > 0;
  let state: KeepState = 'kept';
  if (trouble !== null && behind) state = 'failed';
  else if (slot.right === 'elsewhere') state = 'otherTab';
  else if (behind) state = 'keeping';
  else if (slot.right === 'asked') state = 'starting';
  const now = status.getState();
  if (now.state === state && now.trouble === trouble && now.id === slot.id) return;
  status.setState({ state, trouble, id: slot.id });
}
