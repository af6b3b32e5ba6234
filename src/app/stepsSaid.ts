import { useEffect, useState } from 'react';
import { t } from '../messages';
import type { Session } from '../state/session';
import { useSession } from '../ui/session';

/** Calls `say` with what was done by Undo or Redo, for the ear, and with nothing after any other change. Returns the way to stop. */
export function tellSteps({ store }: Pick<Session, 'store'>, say: (text: string) => void) {
  // The history changes its own lists: what they held before is noted here.
  const look = () => {
    const { pastStates, futureStates } = store.temporal.getState();
    return { past: pastStates.length, future: futureStates.length, next: futureStates.at(-1) };
  };
  let before = look();
  return store.temporal.subscribe(() => {
    const now = look();
    const isAgain = now.future === before.future - 1 && now.past === before.past + 1;
    if (now.future > before.future) say(t('app.undone', { count: now.past }));
    else if (isAgain && before.next?.design === store.getState().design) {
      say(t('app.redone', { count: now.future }));
    } else say('');
    before = now;
  });
}

/** What was done last by Undo or Redo; empty after any other change. */
export function useStepsSaid(): string {
  const session = useSession();
  const [said, setSaid] = useState('');
  useEffect(() => tellSteps(session, setSaid), [session]);
  return said;
}
