import { useEffect, useRef, useState } from 'react';
import { helpHead } from '../../state/help/helpHead';
import { shownTerm, symbolWords } from '../../state/help/shownWork';
import { TOPIC_IDS, TOPICS, type TopicId } from '../../state/help/topics';
import type { Topic } from '../../state/help/topicTypes';
import type { Term } from '../../state/help/worked';
import type { Session } from '../../state/session';
import type { DisplayUnits } from '../../state/settings';
import { signedDegrees } from '../../state/words/pitchText';
import { useSession } from '../../ui/session';
import { useLive } from '../../ui/useLive';

interface ShownValues {
  readonly of: Partial<Readonly<Record<TopicId, string>>>;
  /** The pitch that they are worked at: not the dial's while that stands at flat. */
  readonly pitch: string;
}

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

/** A name longer than this, of a part, has no place beside the entry's own. */
const LONGEST_SYMBOL = 9;

/** The value; where it is not that of the entry's own symbol, whose it is: "margin 33.7\u00b0". */
function shownValue(result: Term, own: boolean | undefined, units: DisplayUnits): string {
  const text = shownTerm(result, units);
  return own || result.symbol.length > LONGEST_SYMBOL
    ? text
    : `${symbolWords(result.symbol)} = ${text}`;
}

function shownValues(session: Session): ShownValues {
  const head = helpHead(session);
  const { units } = session.store.getState().settings;
  const values: Partial<Record<TopicId, string>> = {};
  for (const id of TOPIC_IDS) {
    const found = TOPICS[id].work?.(head);
    if (found?.kind !== 'worked') continue;
    const symbols = ((TOPICS[id] as Topic).symbol ?? '').split(', ');
    const own = found.lines.find(({ result }) => result.symbol === symbols[0]);
    const shown = own ?? found.lines.at(-1);
    if (shown) values[id] = shownValue(shown.result, own && symbols.length === 1, units);
  }
  return { of: values, pitch: signedDegrees(head.pitchDeg) };
}
