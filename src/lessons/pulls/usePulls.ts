import { useEffect, useRef } from 'react';
import { useSession } from '../../ui/session';
import { useLive } from '../../ui/useLive';

/**
 * Calls `update` at once, when what is shown of the pulls has changed (`pulls` true), and at everything that `useLive` tells
 * of, outside React.
 */
export function usePulls(update: (pulls: boolean) => void): void {
  const { pullsShow } = useSession();
  const latest = useRef(update);
  useEffect(() => {
    latest.current = update;
  });
  useEffect(() => {
    latest.current(true);
    return pullsShow.subscribe(() => latest.current(true));
  }, [pullsShow]);
  useLive(() => latest.current(false));
}
