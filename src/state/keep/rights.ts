import { inTime } from '../inTime';
import { claimDesign, readKept } from './designs';
import { type Keeping, openAs, RETRY, remember, show } from './keeping';
import { designKey, type Kept } from './records';
import { rescueKey } from './rescue';
import { isBehind, type Slot } from './slot';
import { SilentError } from './trouble';

// Who may write a design.

/** How long a store may take to say what it has, ms. */
const PATIENCE = 2500;

/** Stands in line for the right to write it, anew where it stands there already; with `steal` at once. */
export function ask(keeping: Keeping, one: Slot, steal = false): void {
  const { ports } = keeping;
  const ticket = {};
  one.release();
  one.ticket = ticket;
  if (one.right !== 'mine') one.right = 'asked';
  const current = () => one.ticket === ticket && !keeping.stopped;
  const told = {
    granted: () => void (current() && granted(keeping, one, current)),
    waiting() {
      // A design that was new here and is stored may have been opened in another tab before this one was granted it.
      if (current() && (one.right !== 'mine' || one.revision > 0)) elsewhere(keeping, one);
    },
    lost() {
      if (!current()) return;
      one.ticket = null;
      elsewhere(keeping, one);
    },
  };
  one.release = ports.locks.take(one.id, told, steal);
}

function elsewhere(keeping: Keeping, one: Slot): void {
  one.right = 'elsewhere';
  show(keeping);
  keeping.ports.tell({ kind: 'otherTab' });
  void keeping.flush();
}

/** Before the right is used: what another tab has stored meanwhile is what goes on. */
async function granted(keeping: Keeping, one: Slot, current: () => boolean): Promise<void> {
  const { ports } = keeping;
  if (one.right !== 'mine' && one.revision > 0 && !isBehind(one)) {
    const kept = await claimed(keeping, one);
    if (!current()) return;
    if (kept === 'unread') {
      keeping.store.drop();
      ports.later(RETRY[0], () => void (current() && granted(keeping, one, current)));
      return;
    }
    const isMarked = kept !== null && kept.card.stamp === one.claim;
    if (isMarked) Object.assign(one, { revision: kept.card.revision, claim: null });
    else if (!isBehind(one) && one === keeping.slot) {
      catchUp(keeping, one, kept);
      if (ports.locks.real) return granted(keeping, one, current);
    }
  }
  one.right = 'mine';
  show(keeping);
  void keeping.flush();
}

/** What is stored, marked as this tab's where the browser has locks and nobody else has written. */
async function claimed({ ports, store }: Keeping, one: Slot): Promise<Kept | null | 'unread'> {
  const { id, revision, changedAt: openedAt } = one;
  if (ports.locks.real) one.claim ??= ports.newId();
  const stamp = one.claim;
  const read = store
    .opened()
    .then((target) =>
      stamp === null
        ? readKept(target, designKey(id))
        : claimDesign(target, { id, revision, stamp, openedAt }),
    );
  return inTime(read, PATIENCE, () => new SilentError(), ports.later).catch(() => 'unread');
}

/** Takes what is stored onto the stage; what the stage shows is kept as a copy where it is gone, older or unreadable. */
function catchUp(keeping: Keeping, one: Slot, kept: Kept | null): void {
  if (kept?.card.revision === one.revision) return;
  const isOther = kept !== null && kept.text !== keeping.work.textOf(one.wanted);
  if (
    kept === null ||
    kept.card.revision < one.revision ||
    (isOther && !openAs(keeping, kept.text, { slot: one }))
  ) {
    one.kept = null;
    return;
  }
  Object.assign(one, { revision: kept.card.revision, claim: null });
  if (!isOther) return;
  Object.assign(one, { kept: one.wanted, mine: [] });
  one.opened.design = one.wanted.design;
  keeping.ports.tell({ kind: 'caughtUp' });
}

/** From now on it is a design of its own. */
export function split(keeping: Keeping, one: Slot, why: 'elsewhere' | 'conflict' | 'newer'): void {
  const { ports, writer } = keeping;
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
  ask(keeping, one);
  if (one !== keeping.slot) return;
  remember(keeping);
  ports.tell({ kind: 'copied', why });
}

/** Lets others have it: another design is on the stage, and all of this one is stored. */
export function leave(one: Slot): void {
  one.release();
  Object.assign(one, { release: () => undefined, right: 'left', ticket: null });
}
