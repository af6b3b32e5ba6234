import { behindOf, type Keeping, RETRY, show } from './keeping';
import { noteOf, type Slot, stampOf } from './slot';
import type { Trouble } from './trouble';

/** A write that failed: noted, said once, and tried again. */
export function failed(keeping: Keeping, why: Trouble): void {
  const { ports, retry } = keeping;
  keeping.trouble = why;
  keeping.room.say();
  writeNotes(keeping);
  show(keeping);
  if (retry.said !== why) ports.tell({ kind: 'trouble', trouble: why });
  retry.said = why;
  retry.stop?.();
  retry.stop = ports.later(retry.after, () => void keeping.flush());
  retry.after = Math.min(2 * retry.after, RETRY[1]);
}

/** A write takes long: said, until one is made. */
export function slowed({ ports, retry }: Keeping): void {
  retry.slow = true;
  ports.tell({ kind: 'slow' });
}

/** The write of a slot was made; says so where one before failed or was long, and no other slot still waits. */
export function succeeded(keeping: Keeping, slot: Slot): void {
  const { retry } = keeping;
  if (keeping.trouble === null && !retry.slow) return;
  if (behindOf(keeping).some((one) => one !== slot)) return;
  retry.stop?.();
  keeping.trouble = null;
  Object.assign(retry, { said: null, after: RETRY[0], stop: null, slow: false });
  keeping.ports.tell({ kind: 'recovered' });
}

/** Notes what is behind, at once. False where something would be lost if the page were gone now. */
export function writeNotes(keeping: Keeping): boolean {
  const { work, ports, writer } = keeping;
  return behindOf(keeping)
    .map((one) => {
      const stamp = stampOf(one, ports.newId);
      const text = work.textOf(one.wanted);
      return ports.notes.write(noteOf(one, { writer, stamp, text }));
    })
    .every((written) => written);
}
