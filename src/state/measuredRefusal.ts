import { faultMessage } from '../design/faultText';
import type { Result } from '../engine/result';
import { t } from '../messages';
import { phrase } from '../messages/phrases';
import type { Refusal } from './refusal';
import { refusalText } from './refusalText';
import type { Session } from './session';

/** Why measured values were not taken on, in words; null where they were. */
export function measuredRefusal(
  { store }: Session,
  partId: string,
  outcome: Result<unknown, Refusal>,
): string | null {
  if (outcome.ok) return null;
  const { fault } = outcome.error;
  if (fault?.reason.code === 'measuredImpossible') {
    return t('measured.impossible', { detail: phrase(fault.reason.detail) });
  }
  if (fault && outcome.error.rule === 'notAllowed') {
    return t('fields.notAllowed', {
      field: t('phrase.measured'),
      reason: faultMessage(fault.reason),
    });
  }
  const { design, settings } = store.getState();
  return refusalText(outcome.error, design, partId, settings.units);
}
