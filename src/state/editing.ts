import type { Result } from '../engine/result';
import { type MessageKey, t } from '../messages';
import { withCarried } from './places';
import type { Refusal } from './refusal';
import { refusalText } from './refusalText';
import type { Session } from './session';

/**
 * Removes a part with what it carries, says so when that is more than one, and selects the part after it in `order`
 * (ids as listed on screen), so that the keyboard stays where it was.
 */
export function removeAndSelectNext(
  { store, actions }: Session,
  id: string,
  order: readonly string[] = store.getState().design.parts.map((part) => part.id),
): void {
  const { parts } = store.getState().design;
  const part = parts.find((one) => one.id === id);
  if (!part) return;
  const gone = withCarried(parts, id);
  const at = order.indexOf(id);
  const next =
    order.slice(at + 1).find((other) => !gone.has(other)) ??
    order.slice(0, at).findLast((other) => !gone.has(other)) ??
    null;
  actions.removePart(id);
  actions.select(next);
  if (gone.size > 1) {
    const key: MessageKey = gone.size === 2 ? 'app.removedWithOne' : 'app.removedWithMany';
    actions.notify({ tone: 'plain', text: t(key, { name: part.name, count: gone.size - 1 }) });
  }
}

/** Says why something was not done, where it was refused. */
export function tellRefusal(
  { store, actions }: Session,
  outcome: Result<unknown, Refusal>,
  partId: string | null,
): void {
  if (outcome.ok) return;
  const { design, settings } = store.getState();
  const reason = refusalText(outcome.error, design, partId, settings.units);
  actions.notify({ tone: 'warning', text: t('app.actionRefused', { reason }) });
}
