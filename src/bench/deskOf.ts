import { shownTryOut } from '../design/tryOuts';
import { localNotes } from '../state/localNotes';
import type { Session } from '../state/session';
import { createBenchDesk } from './desk';
import type { BenchDesk } from './deskTypes';
import { keepBench } from './keepBench';
import { startOfferWorker } from './startOfferWorker';

const desks = new WeakMap<Session, BenchDesk>();

/** The page's one bench: it stays while other rooms are looked at, and its runs are the open design's. */
export function benchDeskOf(session: Session): BenchDesk {
  const found = desks.get(session);
  if (found) return found;
  let made = 0;
  const desk = createBenchDesk({
    reader: startOfferWorker,
    notes: localNotes(),
    newId: () => `run-${++made}`,
    tryOut: () => shownTryOut(session.store.getState().design)?.id,
  });
  desks.set(session, desk);
  keepBench(session, desk);
  return desk;
}
