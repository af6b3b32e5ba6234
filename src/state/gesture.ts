import type { Design } from '../design/design';
import { type AppState, type AppStore, HISTORY_LIMIT } from './store';

/** One gesture in the hands of whoever began it. Once it is over, by whatever way, its calls do nothing. */
export interface Hold {
  /** False after `end` and `cancel`, and when an undo or another gesture has taken its place: stop writing then. */
  readonly alive: boolean;
  end(): void;
  /** True where there was something to cancel. */
  cancel(): boolean;
}

/**
 * A gesture (a drag, a held arrow key) is one undo step however many values it passes through: history stands still
 * from `begin` on, and its end records the design as it stood before, unless it is the same again. Cancelling puts
 * that design back. There is one gesture at a time: beginning another ends the first.
 */
export interface Gesture {
  begin(): Hold;
  /** Ends the gesture under way, whoever holds it. */
  end(): void;
  /** Cancels the gesture under way, whoever holds it; true where there was one. */
  cancel(): boolean;
}

export function createGesture(store: AppStore): Gesture {
  let current: { readonly base: Design } | null = null;

  function record(before: Design): void {
    const past = [...store.temporal.getState().pastStates, { design: before }];
    store.temporal.setState({ pastStates: past.slice(-HISTORY_LIMIT), futureStates: [] });
  }

  /** Writes the last state of a gesture while history stands still, and lets history go on whatever happens. */
  function close(state: Partial<AppState>): void {
    try {
      store.setState(state);
    } finally {
      store.temporal.getState().resume();
    }
  }

  function end(): void {
    if (current === null) return;
    const { base } = current;
    current = null;
    const { design } = store.getState();
    if (sameDesign(base, design)) {
      close({ design: base, gesture: false });
    } else {
      record(base);
      close({ gesture: false });
    }
  }

  function cancel(): boolean {
    if (current === null) return false;
    const { base } = current;
    current = null;
    close({ design: base, gesture: false, notice: null });
    return true;
  }

  return {
    begin() {
      end();
      const own = { base: store.getState().design };
      current = own;
      store.temporal.getState().pause();
      store.setState({ gesture: true, notice: null });
      return {
        get alive() {
          return current === own;
        },
        end() {
          if (current === own) end();
        },
        cancel: () => current === own && cancel(),
      };
    },
    end,
    cancel,
  };
}

/** Whether two designs hold the same values; parts that are the same objects are not looked into. */
function sameDesign(a: Design, b: Design): boolean {
  if (a === b) return true;
  if (a.parts.length !== b.parts.length) return false;
  for (let i = 0; i < a.parts.length; i++) {
    if (a.parts[i] !== b.parts[i] && !sameJson(a.parts[i], b.parts[i])) return false;
  }
  // Sections, try-outs and the rest are mostly the same objects: what differs is compared by value.
  const keys = new Set([...Object.keys(a), ...Object.keys(b)] as (keyof Design)[]);
  keys.delete('parts');
  return [...keys].every((key) => a[key] === b[key] || sameJson(a[key], b[key]));
}

function sameJson(a: unknown, b: unknown): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}
