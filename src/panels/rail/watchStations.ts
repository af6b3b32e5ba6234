import type { Session } from '../../state/session';
import { byStation } from './railNumbers';

/**
 * Calls `told` with the ids of the parts from the shaft outward, now and whenever that order is another; of a drag at its end alone.
 * Returns the way to stop.
 */
export function watchStations(
  { live, store }: Pick<Session, 'live' | 'store'>,
  told: (ids: readonly string[]) => void,
): () => void {
  let known: string | null = null;

  function look(): void {
    if (store.getState().gesture) return;
    const sorted = byStation(live.reading, live.reading.order);
    const text = sorted.join('\n');
    if (text === known) return;
    known = text;
    told(sorted);
  }

  look();
  const stops = [
    live.subscribe(look),
    // A hand that has rested before it let go has left nothing to tell but this.
    store.subscribe((state, before) => {
      if (!before.gesture || state.gesture) return;
      live.flush();
      look();
    }),
  ];
  return () => {
    for (const stop of stops) stop();
  };
}
