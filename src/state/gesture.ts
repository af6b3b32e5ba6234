import type { Design } from '../design/design';
import { type AppStore, HISTORY_LIMIT } from './store';

/**
 * A gesture (a drag, a held arrow key) is one undo step however many values it passes through: history stands still
 * between `begin` and `end`, and `end` records the design as it stood before. `cancel` puts that design back.
 */
export interface Gesture {
  begin(): void;
  end(): void;
  /** True where there was a gesture to cancel. */
  cancel(): boolean;
}

export function createGesture(store: AppStore): Gesture {
  let base: Design | null = null;

  function finish(): Design | null {
    const before = base;
    base = null;
    store.temporal.getState().resume();
    return before;
  }

  return {
    begin() {
      if (base !== null) return;
      base = store.getState().design;
      store.temporal.getState().pause();
      store.setState({ gesture: true, notice: null });
    },
    end() {
      const before = finish();
      if (before !== null && before !== store.getState().design) {
        const past = [...store.temporal.getState().pastStates, { design: before }];
        store.temporal.setState({ pastStates: past.slice(-HISTORY_LIMIT), futureStates: [] });
      }
      store.setState({ gesture: false });
    },
    cancel() {
      if (base === null) return false;
      store.setState({ design: base });
      finish();
      store.setState({ gesture: false, notice: null });
      return true;
    },
  };
}
