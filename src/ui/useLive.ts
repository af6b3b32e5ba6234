import { useEffect, useRef } from 'react';
import { type Changes, EVERYTHING } from '../state/changes';
import type { HeadReading } from '../state/reading';
import type { Turn } from '../state/turns';
import { useSession } from './session';

/**
 * Calls `update` once after mounting and then whenever something changed, at most once a frame, outside React: the
 * callback writes to the DOM or to three.js itself. During a drag of parts it may wait (`Turn`).
 */
export function useLive(
  update: (reading: HeadReading, changes: Changes) => void,
  turn: Turn = 'each',
): void {
  const { live } = useSession();
  const latest = useRef(update);
  useEffect(() => {
    latest.current = update;
  });
  useEffect(() => {
    latest.current(live.reading, EVERYTHING);
    return live.subscribe((changes) => latest.current(live.reading, changes), turn);
  }, [live, turn]);
}
