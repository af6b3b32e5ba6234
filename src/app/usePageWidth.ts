import { useSyncExternalStore } from 'react';

/** How much fits side by side: everything; stage, dial and chart with drawers; or one column. */
export type PageWidth = 'wide' | 'middle' | 'narrow';

const WIDE = '(min-width: 1101px)';
const NARROW = '(max-width: 720px)';

export function usePageWidth(): PageWidth {
  return useSyncExternalStore(subscribe, widthNow);
}

let onScreen: PageWidth | null = null;

/** Paper is narrower than the window: printing must not lay the page out anew, which would close the room that is printed. */
function widthNow(): PageWidth {
  if (onScreen !== null && matchMedia('print').matches) return onScreen;
  onScreen = widthOfWindow();
  return onScreen;
}

function widthOfWindow(): PageWidth {
  if (matchMedia(WIDE).matches) return 'wide';
  return matchMedia(NARROW).matches ? 'narrow' : 'middle';
}

function subscribe(changed: () => void): () => void {
  const queries = [matchMedia(WIDE), matchMedia(NARROW), matchMedia('print')];
  for (const query of queries) query.addEventListener('change', changed);
  return () => {
    for (const query of queries) query.removeEventListener('change', changed);
  };
}
