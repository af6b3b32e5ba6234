import { useEffect, useState } from 'react';
import type { Design } from '../../design/design';
import type { HeadReading } from '../../state/reading';
import type { Session } from '../../state/session';
import type { AppState } from '../../state/store';
import { useSession } from '../../ui/session';

/** What a file is of. */
export interface Head {
  readonly reading: HeadReading;
  readonly design: Design;
  readonly pitchDeg: number;
}

/** The head as it is in this very moment: for what is saved. */
export function headNow({ live, store }: Session): Head {
  live.flush();
  return headOf(live.reading, store.getState());
}

const STILL = 250;

/** The design and the pitch as they are at rest: nothing of the room is drawn anew while something is dragged. */
export function useRestingHead(): Head {
  const { store, live } = useSession();
  const { reading } = live;
  const [head, setHead] = useState(() => headOf(reading, store.getState()));
  useEffect(() => {
    let timer: ReturnType<typeof setTimeout> | undefined;
    function settle(): void {
      const state = store.getState();
      if (!state.gesture) setHead((old) => (isSame(old, state) ? old : headOf(reading, state)));
    }
    const stop = store.subscribe((now, before) => {
      if (isSame(now, before) && now.gesture === before.gesture) return;
      clearTimeout(timer);
      timer = setTimeout(settle, STILL);
    });
    settle();
    return () => {
      clearTimeout(timer);
      stop();
    };
  }, [store, reading]);
  return head;
}

function headOf(reading: HeadReading, { design, pitchDeg }: AppState): Head {
  return { reading, design, pitchDeg };
}

function isSame(
  a: Pick<Head, 'design' | 'pitchDeg'>,
  b: Pick<Head, 'design' | 'pitchDeg'>,
): boolean {
  return a.design === b.design && a.pitchDeg === b.pitchDeg;
}
