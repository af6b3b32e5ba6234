import { useEffect, useRef } from 'react';
import type { HeadClearance } from '../design/clearance/clearanceTypes';
import { clearanceWatch } from '../state/clearanceWatch';
import { useSession } from './session';

/**
 * Calls `update` once after mounting and then whenever the gaps have been looked at anew, outside React: with the frames of a
 * drag, or ten times a second where the search takes longer.
 */
export function useClearance(update: (found: HeadClearance) => void): void {
  const session = useSession();
  const latest = useRef(update);
  useEffect(() => {
    latest.current = update;
  });
  useEffect(() => clearanceWatch(session).subscribe((found) => latest.current(found)), [session]);
}
