import { useEffect, useRef, useState } from 'react';
import type { HeadClearance } from '../../design/clearance/clearanceTypes';
import { clearanceWatch } from '../../state/clearanceWatch';
import { useSession } from '../../ui/session';
import { useClearance } from '../../ui/useClearance';

/** A table follows a drag at this pace, ms. */
const FOLLOW_EVERY = 100;

/** The gaps as they were last found; the table that shows them is rendered anew at most ten times a second. */
export function useFoundClearance(): HeadClearance {
  const session = useSession();
  const [, setSeen] = useState(0);
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  useClearance(() => {
    timer.current ??= setTimeout(
      () => {
        timer.current = undefined;
        setSeen((count) => count + 1);
      },
      session.store.getState().gesture ? FOLLOW_EVERY : 0,
    );
  });
  useEffect(
    () => () => {
      clearTimeout(timer.current);
      timer.current = undefined;
    },
    [],
  );
  return clearanceWatch(session).found ?? session.live.reading.clearance();
}
