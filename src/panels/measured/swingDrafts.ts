import type { SwingAxis } from '../../design/measured';
import type { Session } from '../../state/session';
import type { SwingDraft } from './swingDraft';

/**
 * Half-filled timings of a page, by opened design, part and axis: closing the sheet or choosing another part loses
 * none, and none shows in another design whose part has the same id.
 */
const halfFilled = new WeakMap<Session, Map<string, SwingDraft>>();

/** The half-filled timing of a part of the design that is open now; null where there is none. */
export function keptDraft(session: Session, partId: string, about: SwingAxis): SwingDraft | null {
  return halfFilled.get(session)?.get(keyOf(session, partId, about)) ?? null;
}

/** Keeps a half-filled timing for the design that is open now, or, for null, forgets it. */
export function keepDraft(
  session: Session,
  partId: string,
  about: SwingAxis,
  draft: SwingDraft | null,
): void {
  const drafts = halfFilled.get(session) ?? new Map<string, SwingDraft>();
  halfFilled.set(session, drafts);
  const key = keyOf(session, partId, about);
  if (draft) drafts.set(key, draft);
  else drafts.delete(key);
}

function keyOf({ store }: Session, partId: string, about: SwingAxis): string {
  return `${store.getState().opening} ${about} ${partId}`;
}
