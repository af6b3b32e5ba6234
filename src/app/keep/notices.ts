import { t } from '../../messages';
import type { Message } from '../../state/keep/ports';
import type { Found } from '../../state/keep/restore';
import type { Freed } from '../../state/keep/room';
import type { Notice } from '../../state/store';

/** What is said once when the page opens; null where there is nothing to say. */
export function foundNotice(found: Found): Notice | null {
  switch (found.kind) {
    case 'lost':
      return warning(t('keep.lost'));
    case 'unread':
      return warning(t('keep.unread'));
    case 'damaged':
      return warning(t('keep.damaged', { reason: found.reason }));
    case 'newer':
      return warning(t('keep.newer'));
    default:
      return null;
  }
}

const COPIED = {
  elsewhere: 'keep.copiedElsewhere',
  conflict: 'keep.copiedConflict',
  newer: 'keep.copiedNewer',
} as const;

/** What is said when it happens; null for what stands in the line under the bar as long as it is so. */
export function messageNotice(message: Message): Notice | null {
  switch (message.kind) {
    case 'slow':
      return warning(t('keep.slow'));
    case 'recovered':
      return { tone: 'plain', text: t('keep.recovered') };
    case 'thinned':
      return warning(t(thinnedKey(message.freed), { ...message.freed }));
    case 'copied':
      return warning(t(COPIED[message.why]));
    case 'caughtUp':
      return { tone: 'plain', text: t('keep.caughtUp') };
    default:
      return null;
  }
}

function thinnedKey({ states, removed }: Freed) {
  if (removed === 0) return 'keep.thinned';
  return states === 0 ? 'keep.thinnedRemoved' : 'keep.thinnedBoth';
}

function warning(text: string): Notice {
  return { tone: 'warning', text };
}
