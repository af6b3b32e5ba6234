import { useState } from 'react';
import type { SwingAxis } from '../../design/measured';
import { t } from '../../messages';
import type { Session } from '../../state/session';
import { useAppState, useSession } from '../../ui/session';
import { measuredNow, measuredRefusal } from './measuredFields';
import {
  completed,
  draftOf,
  type SwingDraft,
  type SwingNumber,
  swingAbout,
  withSwing,
} from './swingDraft';

/** Half-filled timings of a page, by part and axis: closing the sheet or choosing another part loses none. */
const halfFilled = new WeakMap<Session, Map<string, SwingDraft>>();

function draftsOf(session: Session): Map<string, SwingDraft> {
  const known = halfFilled.get(session) ?? new Map<string, SwingDraft>();
  halfFilled.set(session, known);
  return known;
}

export interface SwingEntry {
  readonly numbers: SwingDraft;
  /** Why the timing as it stands was not taken on; null where it was, or is not whole yet. */
  readonly fault: string | null;
  set(name: SwingNumber, value: number | undefined): null;
  remove(): void;
}

/**
 * One timing as it is filled in. It becomes part of the design when its last required number is there, and leaves it
 * when one is cleared; a refused one stays in the sheet while the design keeps what it had.
 */
export function useSwing(partId: string, about: SwingAxis): SwingEntry {
  const session = useSession();
  const held = useAppState((state) =>
    swingAbout(state.design.parts.find((part) => part.id === partId)?.measured, about),
  );
  const drafts = draftsOf(session);
  const key = `${about} ${partId}`;
  const [draft, setDraft] = useState(drafts.get(key) ?? null);
  const [fault, setFault] = useState<string | null>(null);

  function keep(next: SwingDraft | null): void {
    if (next) drafts.set(key, next);
    else drafts.delete(key);
    setDraft(next);
  }

  // A timing that came back by undo takes the place of a half-filled one.
  const [known, setKnown] = useState(held);
  if (known !== held) {
    setKnown(held);
    if (held && draft) {
      drafts.delete(key);
      setDraft(null);
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
