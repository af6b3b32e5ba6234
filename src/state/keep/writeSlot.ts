import { type Outcome, saveDesign } from './designs';
import { inTime, type KeepPorts, type Work, type WorkState } from './ports';
import type { RecordStore } from './recordStore';
import { ownStamps, type Slot } from './slot';
import { SilentError } from './trouble';

/** A write that takes longer is said, and after this again given up, ms. */
const SLOW = 2500;
const GIVEN_UP = 20_000;

export interface SlotWrite {
  readonly state: WorkState;
  readonly stamp: string;
  /** Of this tab. */
  readonly writer: string;
  readonly store: () => Promise<RecordStore>;
}

/**
 * Writes a state of a slot into the store, once. The stamp is noted in `slot.mine` before the write begins: where its answer
 * never comes, it may have been made. Rejects where the store will not, or does not answer in time.
 */
export async function writeSlot(
  slot: Slot,
  { state, stamp, writer, store }: SlotWrite,
  work: Work,
  ports: KeepPorts,
): Promise<Outcome> {
  const stopSlow = ports.later(SLOW, () => ports.tell({ kind: 'slow' }));
  try {
    const writing = store().then((target) => {
      const mine = [...ownStamps(slot)];
      if (!slot.mine.includes(stamp)) slot.mine.push(stamp);
      return saveDesign(target, {
        id: slot.id,
        revision: slot.revision,
        stamp,
        mine,
        writer,
        name: state.design.name,
        text: work.textOf(state),
        savedAt: slot.changedAt,
        edited: slot.edited,
        copyOf: slot.copyOf,
        jump: slot.kept !== null && slot.kept.opening !== state.opening,
      });
    });
    return await inTime(writing, GIVEN_UP, () => new SilentError(), ports.later);
  } finally {
    stopSlow();
  }
}
