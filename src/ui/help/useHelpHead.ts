import { useEffect, useRef, useState } from 'react';
import { type HelpHead, helpHead } from '../../state/help/helpHead';
import { useSession } from '../session';
import { useLive } from '../useLive';

/** Numbers in formulas follow a drag at this pace, ms: fast enough to read, far from a render per pointer event. */
const FOLLOW_EVERY = 100;

/** The head as it stands, for formulas: followed ten times a second while something moves, and at its end. */
export function useHelpHead(): HelpHead {
  const session = useSession();
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const [head, setHead] = useState(() => helpHead(session));
  useLive((_, changes) => {
    if (!changes.design && !changes.pitch && !changes.selection) return;
    timer.current ??= setTimeout(() => {
      timer.current = undefined;
      setHead(helpHead(session));
    }, FOLLOW_EVERY);
  });
  useEffect(
    () => () => {
      clearTimeout(timer.current);
      timer.current = undefined;
    },
    [],
  );
  return head;
}
