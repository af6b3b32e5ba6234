import { type Keeping, remember, show } from './keeping';
import type { WorkState } from './ports';
import { ask, leave } from './rights';
import { createSlot, isBehind, newOrigin, type Slot } from './slot';
import { flushSoon } from './storing';

/** Follows a change of the work: what stands on the stage now is to be stored. */
export function follow(keeping: Keeping, now: WorkState, before: WorkState): void {
  const { ports } = keeping;
  // The latest is what the next visit opens, also where the clock was set back or two come in one moment.
  keeping.lastChange = Math.max(ports.now(), keeping.lastChange + 1);
  if (now.opening !== before.opening) enter(keeping, now);
  else if (now.design === before.design) return;
  const { slot } = keeping;
  slot.wanted = now;
  slot.changedAt = keeping.lastChange;
  if (now.design !== slot.opened.design) slot.edited = true;
  if (!keeping.askedToStay && slot.edited) {
    keeping.askedToStay = true;
    ports.askToStay();
  }
  show(keeping);
  flushSoon(keeping);
}

/** Another design has come onto the stage. */
function enter(keeping: Keeping, state: WorkState): void {
  const before = keeping.slot;
  const slot = slotFor(keeping, state);
  keeping.slot = slot;
  keeping.slots.set(state.opening, slot);
  if (before !== slot && !isBehind(before)) leave(before);
  // One that is still being stored holds its right, or stands in line for it.
  if (before !== slot && slot.ticket === null) ask(keeping, slot);
  remember(keeping);
}

function slotFor({ slots, opening, ports, lastChange }: Keeping, state: WorkState): Slot {
  const known = slots.get(state.opening);
  if (known) return known;
  if (opening && 'slot' in opening) return opening.slot;
  return createSlot(opening?.origin ?? newOrigin(ports.newId()), state, lastChange);
}
