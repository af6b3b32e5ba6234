import { inTime } from '../inTime';
import { type Outcome, saveDesign } from './designs';
import { failed, slowed, succeeded } from './failures';
import { type Keeping, prune, show, slotsOf } from './keeping';
import type { WorkState } from './ports';
import { rescueKey } from './rescue';
import { leave, split } from './rights';
import { isBehind, ownStamps, type Slot, stampOf } from './slot';
import { tidy } from './tidy';
import { SilentError, troubleOf } from './trouble';

/** How far the store may be behind, with what a write takes: a second. Writes do not follow closer than this, ms. */
const SAVE_WITHIN = 400;
/** After a pause a change is stored as soon as it has been drawn, ms. */
const SAVE_SOON = 30;
/** Old designs are let go when the new one has long been stored, ms. */
const TIDY_AFTER = 5000;
/** A write that takes longer is said, and after this again given up, ms. */
const SLOW = 2500;
const GIVEN_UP = 20_000;

/** Stores what is behind when that is due; where nobody sees the page at once, for timers sleep there. */
export function flushSoon(keeping: Keeping): void {
  const { ports, pump } = keeping;
  if (ports.hidden()) return void flush(keeping);
  // The clock may have been set back meanwhile.
  const since = Math.max(0, ports.now() - pump.lastRun);
  const due = Math.max(SAVE_SOON, SAVE_WITHIN - since);
  pump.stopTimer ??= ports.later(due, () => void flush(keeping));
}

/** Stores what is behind, as far as this tab may; resolves when that is done or has failed. */
export function flush(keeping: Keeping): Promise<void> {
  const { pump } = keeping;
  pump.stopTimer?.();
  pump.stopTimer = null;
  pump.again = true;
  pump.lastRun = keeping.ports.now();
  pump.running ??= run(keeping).finally(() => {
    pump.running = null;
    prune(keeping);
    show(keeping);
  });
  return pump.running;
}

/** Each slot once, and again only where it was asked for meanwhile: a drag does not write without a pause. */
async function run(keeping: Keeping): Promise<void> {
  const { pump } = keeping;
  do {
    pump.again = false;
    for (const next of shortFirst(keeping, slotsOf(keeping).filter(mayStore))) {
      if (keeping.stopped || !(await storeOne(keeping, next))) return;
    }
  } while (pump.again);
}

/** One that finds no room must not keep a shorter one from what room there is. */
function shortFirst({ work }: Keeping, slots: readonly Slot[]): readonly Slot[] {
  if (slots.length < 2) return slots;
  return slots.toSorted((a, b) => work.textOf(a.wanted).length - work.textOf(b.wanted).length);
}

function mayStore(one: Slot): boolean {
  return isBehind(one) && one.right !== 'asked';
}

/** False where the browser would not. */
async function storeOne(keeping: Keeping, one: Slot): Promise<boolean> {
  if (one.right === 'elsewhere') split(keeping, one, 'elsewhere');
  const { room } = keeping;
  const state = one.wanted;
  const { id } = one;
  const stamp = stampOf(one, keeping.ports.newId);
  let outcome: Outcome;
  try {
    outcome = await write(keeping, one, state, stamp);
  } catch (error) {
    const why = troubleOf(error);
    if (why === 'full' && (await room.made())) return storeOne(keeping, one);
    keeping.store.drop();
    failed(keeping, why);
    return false;
  }
  room.say();
  // While it was written another tab took over, and this became a copy.
  if (one.id !== id) return true;
  if (outcome.kind !== 'saved') {
    split(keeping, one, outcome.kind);
    return storeOne(keeping, one);
  }
  stored(keeping, one, state, outcome.revision);
  return true;
}

async function write(
  keeping: Keeping,
  one: Slot,
  state: WorkState,
  stamp: string,
): Promise<Outcome> {
  const { ports, store } = keeping;
  const stopSlow = ports.later(SLOW, () => slowed(keeping));
  try {
    const writing = store.opened().then((target) => {
      const mine = [...ownStamps(one)];
      if (!one.mine.includes(stamp)) one.mine.push(stamp);
      return saveDesign(target, { ...saving(keeping, one, state), stamp, mine });
    });
    return await inTime(writing, GIVEN_UP, () => new SilentError(), ports.later);
  } finally {
    stopSlow();
  }
}

function saving({ work, writer }: Keeping, one: Slot, state: WorkState) {
  return {
    id: one.id,
    revision: one.revision,
    writer,
    name: state.design.name,
    text: work.textOf(state),
    savedAt: one.changedAt,
    edited: one.edited,
    copyOf: one.copyOf,
    jump: one.kept !== null && one.kept.opening !== state.opening,
  };
}

function stored(keeping: Keeping, one: Slot, state: WorkState, revision: number): void {
  const { ports, pump, writer } = keeping;
  const isNew = one.revision === 0;
  Object.assign(one, { revision, kept: state, mine: [], claim: null });
  if (!isBehind(one)) one.notes.push(rescueKey({ writer, id: one.id }));
  for (const key of isBehind(one) ? [] : one.notes.splice(0)) ports.notes.remove(key);
  // Written where it is not there: a write to the local notes takes longer than a look.
  if (!ports.canary.read()) ports.canary.write(String(ports.now()));
  if (one !== keeping.slot && !isBehind(one)) leave(one);
  succeeded(keeping, one);
  if (isNew) pump.stopTidy ??= ports.later(TIDY_AFTER, () => void tidyUp(keeping));
}

async function tidyUp(keeping: Keeping): Promise<void> {
  const { ports, pump, store } = keeping;
  pump.stopTidy = null;
  const ids = new Set(slotsOf(keeping).map(({ id }) => id));
  await store
    .opened()
    .then((target) => tidy(target, ports.now(), ids))
    .catch(() => undefined);
}
