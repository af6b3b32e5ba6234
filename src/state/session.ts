import type { Actions } from './actions';
import type { Live } from './live';
import type { Shelf } from './shelf';
import type { AppStore } from './store';

/** One open page: the store, what is derived from it, and the only hands that write to it. */
export interface Session {
  readonly store: AppStore;
  readonly live: Live;
  readonly actions: Actions;
  /** Parts kept in this browser for any design; not part of the open one. */
  readonly shelf: Shelf;
}
