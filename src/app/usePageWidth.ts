import { useCallback, useSyncExternalStore } from 'react';
import { useSession } from '../ui/session';

/** How much fits side by side: everything; stage, dial and chart with drawers; or one column. */
export type PageWidth = 'wide' | 'middle' | 'narrow';

const WIDE = '(min-width: 1101px)';
const NARROW = '(max-width: 720px)';

/** Follows the window, but not while something is dragged: another arrangement would take the handle out of the hand. */
export function usePageWidth(): PageWidth {
  const { store } = useSession();
  const subscribe = useCallback(
    (changed: () => void) => {
      const stop = watchWindow(changed);
      const stopGestures = store.subscribe((state, before) => {
        if (before.gesture && !state.gesture) changed();
      });
      return () => {
        stop();
        stopGestures();
      };
    },
    [store],
  );
  return useSyncExternalStore(subscribe, () => widthNow(store.getState().gesture));
}

let onScreen: PageWidth | null = null;

/** Paper is narrower than the window: printing must not lay the page out anew, which would close the room that is printed. */
function widthNow(held: boolean): PageWidth {
  if (onScreen !== null && (held || matchMedia('print').matches)) return onScreen;
  onScreen = widthOfWindow();
  return onScreen;
}

function widthOfWindow(): PageWidth {
  if (matchMedia(WIDE).matches) return 'wide';
  return matchMedia(NARROW).matches ? 'narrow' : 'middle';
}

function watchWindow(changed: () => void): () => void {
  const queries = [matchMedia(WIDE), matchMedia(NARROW), matchMedia('print')];
  for (const query of queries) query.addEventListener('change', changed);
  return () => {
    for (const query of queries) query.removeEventListener('change', changed);
  };
}
