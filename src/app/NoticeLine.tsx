import { X } from 'lucide-react';
import { useEffect } from 'react';
import { t } from '../messages';
import { useAppState, useSession } from '../ui/session';

/** A plain notice goes by itself after this time, ms; a warning stays until it is dismissed. */
const PLAIN_STAYS = 8000;

/** The last thing the page has to say. */
export function NoticeLine() {
  const { store, actions } = useSession();
  const notice = useAppState((state) => state.notice);
  useEffect(() => {
    if (notice?.tone !== 'plain') return;
    const timer = setTimeout(() => {
      if (store.getState().notice === notice) actions.notify(null);
    }, PLAIN_STAYS);
    return () => clearTimeout(timer);
  }, [notice, store, actions]);

  if (!notice) return null;
  return (
    <div
      className="app-notice"
      data-tone={notice.tone}
      role={notice.tone === 'warning' ? 'alert' : 'status'}
      data-testid="notice"
    >
      <p>{notice.text}</p>
      <button
        type="button"
        className="ui-button ui-button-icon ui-button-bare"
        aria-label={t('app.dismiss')}
        title={t('app.dismiss')}
        onClick={() => actions.notify(null)}
      >
        <X aria-hidden="true" />
      </button>
    </div>
  );
}
