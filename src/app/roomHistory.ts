import type { Session } from '../state/session';
import { ROOMS, type RoomName } from '../state/settings';

/** What of the window is needed: its history, and word of Back and Forward. */
export interface HistoryWindow {
  readonly history: Pick<History, 'state' | 'pushState' | 'replaceState'>;
  addEventListener(type: 'popstate', listener: (event: PopStateEvent) => void): void;
  removeEventListener(type: 'popstate', listener: (event: PopStateEvent) => void): void;
}

/**
 * The browser's Back and Forward go through the rooms that were gone through, instead of leaving the page. The address
 * stays the same: a room is no part of a link. Returns the way to stop.
 */
export function keepRoomsInHistory(
  { store, actions }: Pick<Session, 'store' | 'actions'>,
  page: HistoryWindow = window,
): () => void {
  const { history } = page;
  const stateOf = (room: RoomName) => ({ ...(history.state as object | null), room });
  history.replaceState(stateOf(store.getState().settings.room), '');

  const stop = store.subscribe(({ settings: { room } }, before) => {
    if (room === before.settings.room || room === roomIn(history.state)) return;
    history.pushState(stateOf(room), '');
  });
  const follow = ({ state }: PopStateEvent) => {
    const room = roomIn(state);
    if (room !== null && room !== store.getState().settings.room) actions.setSettings({ room });
  };
  page.addEventListener('popstate', follow);
  return () => {
    stop();
    page.removeEventListener('popstate', follow);
  };
}

/** Null for a place in the history that another made: a link, or the jump to the dial. */
function roomIn(state: unknown): RoomName | null {
  const room = (state as { readonly room?: unknown } | null)?.room;
  return ROOMS.find((name) => name === room) ?? null;
}
