import { inTime } from '../inTime';
import { newestFirst, readable } from './cards';
import { dropOrphans } from './pasts';
import type { KeepPorts } from './ports';
import type { RecordStore } from './recordStore';
import { ALL_ASIDE, ALL_PASTS, type Card } from './records';
import { SilentError } from './trouble';

/** What was let go because the storage is full. */
export interface Freed {
  /** Past states without a name, of whatever design. */
  readonly states: number;
  /** Removed designs that were set aside. */
  readonly removed: number;
}

/**
 * Lets half of the past states without a name go, the oldest first; where there are none left, half of the removed designs
 * with their histories. Designs, named states of designs that are there, and damaged records stay. Null where nothing of
 * the kind is left.
 */
export function makeRoom(store: RecordStore): Promise<Freed | null> {
  return store.change(async (access) => {
    const pasts = readable(await access.cards(ALL_PASTS));
    const states = olderHalf(pasts.filter((card) => card.title === undefined));
    for (const { key } of states) await access.remove(key);
    if (states.length > 0) return { states: states.length, removed: 0 };
    const aside = readable(await access.cards(ALL_ASIDE));
    const removed = olderHalf(aside.filter((card) => card.reason === 'removed'));
    for (const { key, id } of removed) {
      await access.remove(key);
      await dropOrphans(access, id);
    }
    return removed.length > 0 ? { states: 0, removed: removed.length } : null;
  });
}

/** How long a full storage may take to let something go, ms. */
const PATIENCE = 2500;

export interface RoomMaker {
  /** False where there is nothing that may be let go, or the browser would not even do that. */
  made(): Promise<boolean>;
  /** Says what was let go since it was last said. */
  say(): void;
}

/** Makes room while the storage is full, and says once what was let go for that. */
export function roomMaker(
  store: () => Promise<RecordStore>,
  ports: Pick<KeepPorts, 'later' | 'tell'>,
): RoomMaker {
  let freed: Freed | null = null;
  return {
    async made() {
      const making = store().then(makeRoom);
      const made = await inTime(making, PATIENCE, () => new SilentError(), ports.later).catch(
        () => null,
      );
      if (made === null) return false;
      const { states, removed } = freed ?? { states: 0, removed: 0 };
      freed = { states: states + made.states, removed: removed + made.removed };
      return true;
    },
    say() {
      if (freed) ports.tell({ kind: 'thinned', freed });
      freed = null;
    },
  };
}

/** At least one, where there is one. */
function olderHalf(cards: readonly Card[]): readonly Card[] {
  return newestFirst(cards).slice(Math.floor(cards.length / 2));
}
