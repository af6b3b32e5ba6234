import { refusalText } from '../../state/refusalText';
import type { Session } from '../../state/session';
import { shownText, shownUnit } from '../../state/shownUnits';
import type { HandleSpec } from './handleSpec';
import { reach } from './reach';

/** Where a value ended up, and why it did not go on. */
export interface Moved {
  readonly value: number;
  readonly reason: string | null;
}

/**
 * Moves a handle's value toward `wanted`, as far as it is taken, and says in words why it stopped short. `last` is the
 * value as it stands.
 */
export function moveValue(
  session: Session,
  spec: HandleSpec,
  last: number,
  wanted: number,
  step: number,
): Moved {
  const { value, refused } = reach(last, wanted, step, spec.write, (refusal) =>
    refusal.field === spec.parameter && refusal.part === undefined ? (refusal.limit ?? null) : null,
  );
  if (!refused) return { value, reason: null };
  const { design, settings } = session.store.getState();
  return { value, reason: refusalText(refused, design, spec.partId, settings.units) };
}

/** "5.2 mm", in the units on screen. */
export function valueText(session: Session, spec: HandleSpec, value: number): string {
  return shownText(value, shownUnit(spec.unit, session.store.getState().settings.units));
}
