import { useEffect, useRef, useState } from 'react';
import { useSession } from '../../ui/session';
import { useLive } from '../../ui/useLive';

/** A room follows a drag at this pace, ms: fast enough to read, far from a render per pointer event. */
const FOLLOW_EVERY = 100;
/** A text beside what is dragged, which seldom becomes another, ms. */
const READ_EVERY = 250;

/**
 * Calls `follow` after the design changed (or the pitch, where it is told to): at once, but during a gesture, and while the
 * pitch is dragged, not before `every` ms have gone by, the last time after its end.
 */
export function useFollowing(follow: () => void, pitchToo = false, every = FOLLOW_EVERY): void {
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
      store.getState().gesture || pitched ? every : 0,
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

/** Calls `follow` after the design changed, and in a gesture when it is over: what a frame must not pay for. */
export function useRested(follow: () => void): void {
  const { store } = useSession();
  const stale = useRef(false);
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const latest = useRef(follow);
  useEffect(() => {
    latest.current = follow;
  });
  useEffect(() => {
    const stop = store.subscribe((state, before) => {
      if (!before.gesture || state.gesture || !stale.current) return;
      stale.current = false;
      latest.current();
    });
    return () => {
      stop();
      clearTimeout(timer.current);
      timer.current = undefined;
    };
  }, [store]);
  useLive((_, changes) => {
    if (!changes.design) return;
    if (store.getState().gesture) {
      stale.current = true;
      return;
    }
    timer.current ??= setTimeout(() => {
      timer.current = undefined;
      latest.current();
    }, 0);
  });
}

/** What `read` gives of the design, followed at that pace. Rendered anew only when the text is another. */
export function useFollowed(read: () => string): string {
  const [seen, setSeen] = useState(read);
  useFollowing(() => setSeen(read()), false, READ_EVERY);
  return seen;
}
