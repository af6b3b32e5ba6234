import type { Live } from './live';
import type { AppState, AppStore } from './store';

/** What React follows of a store. */
export type SteadyStore = Pick<AppStore, 'getState' | 'getInitialState' | 'subscribe'>;

/**
 * The store for whoever need not hear of every step of a drag: while one is under way a change of the design alone is told with the
 * page's turn, anything else at once. Nobody is left behind: the end of a drag is told at once, and a hand that rests tells all turns.
 */
export function createSteadyStore(store: AppStore, live: Pick<Live, 'subscribe'>): SteadyStore {
  type Listener = Parameters<AppStore['subscribe']>[0];
  const listeners = new Set<Listener>();
  let told = store.getState();

  function tell(): void {
    const state = store.getState();
    const before = told;
    if (state === before) return;
    told = state;
    for (const listener of listeners) listener(state, before);
  }

  store.subscribe((state, before) => {
    if (!(before.gesture && state.gesture && differsInDesignAlone(state, before))) tell();
  });
  live.subscribe(tell, 'page');
  return {
    getState: store.getState,
    getInitialState: store.getInitialState,
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}

function differsInDesignAlone(state: AppState, before: AppState): boolean {
  for (const key in state) {
    const name = key as keyof AppState;
    if (name !== 'design' && state[name] !== before[name]) return false;
  }
  return true;
}
