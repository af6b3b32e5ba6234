import { useState } from 'react';
import type { SwingAxis } from '../../design/measured';
import { t } from '../../messages';
import { measuredRefusal } from '../../state/measuredRefusal';
import { useAppState, useSession } from '../../ui/session';
import { measuredNow } from './measuredFields';
import {
  completed,
  draftOf,
  type SwingDraft,
  type SwingNumber,
  swingAbout,
  withSwing,
} from './swingDraft';
import { keepDraft, keptDraft } from './swingDrafts';

export interface SwingEntry {
  readonly numbers: SwingDraft;
  /** Why the timing as it stands was not taken on; null where it was, or is not whole yet. */
  readonly fault: string | null;
  set(name: SwingNumber, value: number | undefined): null;
  remove(): void;
}

/**
 * One timing as it is filled in. It becomes part of the design when its last required number is there, and leaves it
 * when one is cleared; a refused one stays in the sheet while the design keeps what it had. To be made anew (by its
 * key) when another design is opened.
 */
export function useSwing(partId: string, about: SwingAxis): SwingEntry {
  const session = useSession();
  const held = useAppState((state) =>
    swingAbout(state.design.parts.find((part) => part.id === partId)?.measured, about),
  );
  const [draft, setDraft] = useState(() => keptDraft(session, partId, about));
  const [fault, setFault] = useState<string | null>(null);

  function keep(next: SwingDraft | null): void {
    keepDraft(session, partId, about, next);
    setDraft(next);
  }

  // A timing that came back by undo takes the place of a half-filled one.
  const [known, setKnown] = useState(held);
  if (known !== held) {
    setKnown(held);
    if (held && draft) {
      keep(null);
      setFault(null);
    }
  }

  const numbers = draft ?? (held ? draftOf(held) : {});

  return {
    numbers,
    fault,
    set(name, value) {
      const next = { ...numbers, [name]: value };
      const swing = completed(about, next);
      const measured = withSwing(measuredNow(session, partId), about, swing);
      const refusal =
        swing || held
          ? measuredRefusal(session, partId, session.actions.setMeasured(partId, measured))
          : null;
      setFault(refusal && t('measured.refused', { reason: refusal }));
      keep(swing && refusal === null ? null : next);
      return null;
    },
    remove() {
      const measured = withSwing(measuredNow(session, partId), about, null);
      const refusal = held
        ? measuredRefusal(session, partId, session.actions.setMeasured(partId, measured))
        : null;
      setFault(refusal && t('measured.refused', { reason: refusal }));
      if (refusal === null) keep(null);
    },
  };
}
