import type { Design } from '../design/design';
import { createActions } from './actions';
import { createLive, type Schedule } from './live';
import type { Session } from './session';
import { createAppStore } from './store';

/** Before the next picture; by a timer while the page is hidden, when no pictures come. */
function nextFrame(callback: () => void): void {
  if (typeof requestAnimationFrame === 'function' && !document.hidden)
    requestAnimationFrame(callback);
  else setTimeout(callback, 0);
}

/** A session on a sound design (one that `parseDesign` accepted), or on an empty one. */
export function createSession(design?: Design, schedule: Schedule = nextFrame): Session {
  const store = createAppStore(design);
  const live = createLive(store, schedule);
  return { store, live, actions: createActions(store, live) };
}
