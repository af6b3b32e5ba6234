import { claimDesign, readKept } from './designs';
import { inTime, type KeepPorts, type Work } from './ports';
import type { RecordStore } from './recordStore';
import { designKey, type Kept } from './records';
import { isBehind, type Slot } from './slot';
import { SilentError } from './trouble';

/** A store that does not answer for so long is asked anew, after a pause, ms. */
const SILENT = 2500;
const ASK_AGAIN = 1000;

/** What the rights need of the keeper. */
export interface RightsDesk {
  /** The slot of the design on the stage. */
  current(): Slot;
  stopped(): boolean;
  store(): Promise<RecordStore>;
  /** The next call of `store` opens it anew. */
  storeAnew(): void;
  /** Opens a text as the next state of a slot; false where it cannot be read. */
  openInto(slot: Slot, text: string): boolean;
  show(): void;
  flush(): void;
}

/**
 * Gives the function that asks the browser for the right to write a slot's design: one tab has it at a time. `steal` takes it
 * from the tab that has it. What comes of it stands in `slot.right`; before the right is used, what another tab has stored
 * meanwhile is taken onto the stage.
 */
export function rightsAsker(
  work: Work,
  ports: KeepPorts,
  desk: RightsDesk,
): (slot: Slot, steal?: boolean) => void {
  function ask(one: Slot, steal = false): void {
    const { id } = one;
    const ticket = {};
    one.release();
    one.ticket = ticket;
    if (one.right !== 'mine') one.right = 'asked';
    const current = () => one.ticket === ticket && one.right !== 'left' && !desk.stopped();
    one.release = ports.locks.take(
      id,
      {
        granted: () => void (current() && granted(one, current)),
        waiting() {
          if (!current() || one.right === 'mine') return;
          elsewhere(one);
        },
        lost() {
          if (!current()) return;
          one.ticket = null;
          elsewhere(one);
        },
      },
      steal,
    );
  }

  function elsewhere(one: Slot): void {
    one.right = 'elsewhere';
    desk.show();
    ports.tell({ kind: 'otherTab' });
    desk.flush();
  }

  async function granted(one: Slot, current: () => boolean): Promise<void> {
    if (one.right !== 'mine' && one.revision > 0 && !isBehind(one)) {
      const kept = await claimed(one);
      if (!current()) return;
      if (kept === 'unread') {
        desk.storeAnew();
        ports.later(ASK_AGAIN, () => void (current() && granted(one, current)));
        return;
      }
      const isMarked = kept !== null && kept.card.stamp === one.claim;
      if (isMarked) Object.assign(one, { revision: kept.card.revision, claim: null });
      else if (!isBehind(one) && one === desk.current()) {
        catchUp(one, kept);
        if (ports.locks.real) return granted(one, current);
      }
    }
    one.right = 'mine';
    desk.show();
    desk.flush();
  }

  /** What is stored, marked as this tab's where the browser has locks and nobody else has written. */
  async function claimed(one: Slot): Promise<Kept | null | 'unread'> {
    const { id, revision, changedAt: openedAt } = one;
    if (ports.locks.real) one.claim ??= ports.newId();
    const stamp = one.claim;
    const read = desk
      .store()
      .then((target) =>
        stamp === null
          ? readKept(target, designKey(id))
          : claimDesign(target, { id, revision, stamp, openedAt }),
      );
    return inTime(read, SILENT, () => new SilentError(), ports.later).catch(() => 'unread');
  }

  /** Takes what is stored onto the stage; what the stage shows is kept as a copy where it is gone, older or unreadable. */
  function catchUp(one: Slot, kept: Kept | null): void {
    if (kept?.card.revision === one.revision) return;
    const isOther = kept !== null && kept.text !== work.textOf(one.wanted);
    if (
      kept === null ||
      kept.card.revision < one.revision ||
      (isOther && !desk.openInto(one, kept.text))
    ) {
      one.kept = null;
      return;
    }
    Object.assign(one, { revision: kept.card.revision, claim: null });
    if (!isOther) return;
    Object.assign(one, { kept: one.wanted, mine: [] });
    one.opened.design = one.wanted.design;
    ports.tell({ kind: 'caughtUp' });
  }

  return ask;
}
