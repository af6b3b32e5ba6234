import { useEffect, useRef, useState } from 'react';
import { helpHead } from '../../state/help/helpHead';
import { shownTerm } from '../../state/help/shownWork';
import { TOPIC_IDS, TOPICS, type TopicId } from '../../state/help/topics';
import type { Session } from '../../state/session';
import { useSession } from '../../ui/session';
import { useLive } from '../../ui/useLive';

type ShownValues = Partial<Readonly<Record<TopicId, string>>>;

/** Quiet time after the last change before all values are worked out anew, ms. */
const SETTLED = 250;

/** What every quantity comes to for the head, once it has come to rest: the result that has its symbol, or of its last formula. */
export function useShownValues(): ShownValues {
  const session = useSession();
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const [values, setValues] = useState(() => shownValues(session));
  useLive((_, changes) => {
    if (!changes.design && !changes.pitch && !changes.selection && !changes.settings) return;
    clearTimeout(timer.current);
    timer.current = setTimeout(() => setValues(shownValues(session)), SETTLED);
  });
  useEffect(() => () => clearTimeout(timer.current), []);
  return values;
}

function shownValues(session: Session): ShownValues {
  const head = helpHead(session);
  const { units } = session.store.getState().settings;
  const values: Partial<Record<TopicId, string>> = {};
  for (const id of TOPIC_IDS) {
    const found = TOPICS[id].work?.(head);
    if (found?.kind !== 'worked') continue;
    const own = found.lines.find(({ result }) => result.symbol === TOPICS[id].symbol);
    const shown = own ?? found.lines.at(-1);
    if (shown) values[id] = shownTerm(shown.result, units);
  }
  return values;
}
