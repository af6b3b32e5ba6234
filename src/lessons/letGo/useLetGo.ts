import { useEffect, useRef } from 'react';
import { useStore } from 'zustand';
import type { Changes } from '../../state/changes';
import type { LetGoDesk, LetGoState } from '../../state/letGoTypes';
import type { HeadReading } from '../../state/reading';
import { useSession } from '../../ui/session';
import { useLive } from '../../ui/useLive';

/** Re-renders when `select` gives another value of the desk's state. */
export function useLetGoState<T>(select: (state: LetGoState) => T): T {
  return useStore(useSession().letGo.store, select);
}

/**
 * Calls `update` on every frame of a run, every change of the desk and everything that `useLive` tells of, outside React.
 * `head` is true where more than pitch and run have changed.
 */
export function useLetGo(
  update: (reading: HeadReading, desk: LetGoDesk, head: boolean) => void,
): void {
  const { live, letGo } = useSession();
  const latest = useRef(update);
  useEffect(() => {
    latest.current = update;
  });
  useLive((reading, changes: Changes) => {
    latest.current(reading, letGo, changes.design || changes.settings);
  });
  useEffect(() => letGo.subscribe(() => latest.current(live.reading, letGo, false)), [live, letGo]);
}
