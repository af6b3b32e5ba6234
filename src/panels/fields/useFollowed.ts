import { useEffect, useRef, useState } from 'react';
import { useSession } from '../../ui/session';
import { useLive } from '../../ui/useLive';

/** Fields follow a drag at this pace, ms: fast enough to read, far from a render per pointer event. */
const FOLLOW_EVERY = 100;

/**
 * Calls `follow` after the design changed (or the pitch, where it is told to): at once, but during a gesture, and while the
 * pitch is dragged, ten times a second and at its end.
 */
export function useFollowing(follow: () => void, pitchToo = false): void {
  const { store } = useSession();
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const latest = useRef(follow);
  useEffect(() => {
    latest.current = follow;
  });
  useLive((_, changes) => {
    const pitched = pitchToo && changes.pitch;
    if (!changes.design && !pitched) return;
    timer.current ??= setTimeout(
      () => {
        timer.current = undefined;
        latest.current();
      },
      store.getState().gesture || pitched ? FOLLOW_EVERY : 0,
    );
  });
  useEffect(
    () => () => {
      clearTimeout(timer.current);
      timer.current = undefined;
    },
    [],
  );
}

/** What `read` gives of the design, followed at that pace. Rendered anew only when the text is another. */
export function useFollowed(read: () => string): string {
  const [seen, setSeen] = useState(read);
  useFollowing(() => setSeen(read()));
  return seen;
}
