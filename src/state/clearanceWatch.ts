import type { HeadClearance } from '../design/clearance/clearanceTypes';
import type { Session } from './session';

/** The clearance for everybody who shows it. */
export interface ClearanceWatch {
  /** What was found last; null before anybody has asked. */
  readonly found: HeadClearance | null;
  /** Told after every new finding, and once at the start. */
  subscribe(listener: (found: HeadClearance) => void): () => void;
}

/** A search that took longer than this waits while something is dragged, ms. */
const QUICK = 8;
/** And comes this often then, ms: as tables do. */
const PACE = 100;
/** Or seldom enough to leave the drag most of the time: the search waits for so many times what it took. */
const REST = 2;

const watches = new WeakMap<Session, ClearanceWatch>();

/** The one watch of a session: works as long as somebody listens, in step with the frames where it is quick enough. */
export function clearanceWatch(session: Session): ClearanceWatch {
  let watch = watches.get(session);
  if (!watch) {
    watch = createWatch(session);
    watches.set(session, watch);
  }
  return watch;
}

function createWatch({ live, store }: Session): ClearanceWatch {
  const listeners = new Set<(found: HeadClearance) => void>();
  let found: HeadClearance | null = null;
  let took = 0;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let stop: (() => void) | null = null;

  function look(): void {
    clearTimeout(timer);
    timer = undefined;
    const start = performance.now();
    found = live.reading.clearance();
    took = performance.now() - start;
    for (const listener of listeners) listener(found);
  }

  function changed(): void {
    if (took <= QUICK || !store.getState().gesture) look();
    else timer ??= setTimeout(look, Math.max(PACE, REST * took));
  }

  return {
    get found() {
      return found;
    },
    subscribe(listener) {
      listeners.add(listener);
      stop ??= live.subscribe((changes) => {
        if (changes.design) changed();
      }, 'verdict');
      if (found && timer === undefined && listeners.size > 1) listener(found);
      else look();
      return () => {
        listeners.delete(listener);
        if (listeners.size > 0) return;
        clearTimeout(timer);
        timer = undefined;
        stop?.();
        stop = null;
      };
    },
  };
}
