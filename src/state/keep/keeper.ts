import type { StoreApi } from 'zustand/vanilla';
import { writeNotes } from './failures';
import {
  type Begun,
  behindOf,
  createKeeping,
  type KeepStatus,
  openAs,
  remember,
  show,
} from './keeping';
import type { KeepPorts, Work } from './ports';
import type { RecordStore } from './recordStore';
import { ask, split } from './rights';
import type { Origin } from './slot';
import { follow } from './stage';
import { flush } from './storing';

/** Nothing that was done is lost by closing the page; see the file's functions. */
export interface Keeper {
  readonly status: StoreApi<KeepStatus>;
  /** Stores what is behind, as far as this tab may; resolves when that is done or has failed. */
  flush(): Promise<void>;
  /** Writes what is behind into local notes, at once, and begins to store it: the page may be gone any moment. */
  rescue(): void;
  /** True while leaving the page would lose something; what can be noted is noted for that. */
  atRisk(): boolean;
  /** Takes the right to write from the other tab, and what it has stored onto the stage. */
  takeOver(): void;
  /** Where another tab has the right to write: from now on a design of its own, whatever other tabs do. */
  workOnCopy(): Promise<void>;
  /** Opens a text as the design that `origin` says, or, with null, as a new state of the one on the stage. */
  open(text: string, origin: Origin | null): boolean;
  store(): Promise<RecordStore>;
  stop(): void;
}

/** Keeps the work from now on. `begun`: what was found, with the design on the stage. */
export function startKeeper(work: Work, ports: KeepPorts, begun: Begun): Keeper {
  const keeping = createKeeping(work, ports, begun, flush);
  const unsubscribe = work.subscribe((now, before) => follow(keeping, now, before));
  remember(keeping);
  ask(keeping, keeping.slot);
  void flush(keeping);

  return {
    status: keeping.status,
    flush: keeping.flush,
    rescue() {
      if (behindOf(keeping).length === 0) return;
      writeNotes(keeping);
      void flush(keeping);
    },
    atRisk: () => !writeNotes(keeping),
    takeOver() {
      if (keeping.slot.right === 'elsewhere') ask(keeping, keeping.slot, true);
    },
    async workOnCopy() {
      if (keeping.slot.right !== 'elsewhere') return;
      split(keeping, keeping.slot, 'elsewhere');
      show(keeping);
      await flush(keeping);
    },
    open: (text, from) => openAs(keeping, text, from ? { origin: from } : { slot: keeping.slot }),
    store: keeping.store.opened,
    stop() {
      keeping.stopped = true;
      unsubscribe();
      for (const stop of [keeping.pump.stopTimer, keeping.pump.stopTidy, keeping.retry.stop])
        stop?.();
      for (const one of keeping.slots.values()) one.release();
    },
  };
}
