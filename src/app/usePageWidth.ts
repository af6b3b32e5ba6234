import { useSyncExternalStore } from 'react';

/** How much fits side by side: everything; stage, dial and chart with drawers; or one column. */
export type PageWidth = 'wide' | 'middle' | 'narrow';

const WIDE = '(min-width: 1101px)';
const NARROW = '(max-width: 720px)';

export function usePageWidth(): PageWidth {
  return useSyncExternalStore(subscribe, widthNow);
}

function widthNow(): PageWidth {
  if (matchMedia(WIDE).matches) return 'wide';
  return matchMedia(NARROW).matches ? 'narrow' : 'middle';
}

function subscribe(changed: () => void): () => void {
  const queries = [matchMedia(WIDE), matchMedia(NARROW)];
  for (const query of queries) query.addEventListener('change', changed);
  return () => {
    for (const query of queries) query.removeEventListener('change', changed);
  };
}
