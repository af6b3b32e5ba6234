import { Share2 } from 'lucide-react';
import { type ComponentType, useState } from 'react';
import { t } from '../../messages';
import { Dialog } from '../../ui/Dialog';
import { lazyRoom } from '../../ui/lazyRoom';

/** What packs a link is fetched when a link is wanted. */
const LazyLink: ComponentType = lazyRoom(
  () => import('./ShareLink').then(({ ShareLink }) => ShareLink),
  () => <p className="app-loading">{t('lower.loading')}</p>,
);

/** Opens a dialog with a link that holds the whole design. */
export function ShareButton() {
  const [open, setOpen] = useState(false);
  return (
    <>
      <button
        type="button"
        className="ui-button ui-button-bare app-tool"
        aria-label={t('share.title')}
        title={t('share.title')}
        aria-haspopup="dialog"
        data-testid="share"
        onClick={() => setOpen(true)}
      >
        <Share2 aria-hidden="true" />
        <span className="app-tool-text">{t('share.button')}</span>
      </button>
      <Dialog open={open} title={t('share.title')} onClose={() => setOpen(false)}>
        <LazyLink />
      </Dialog>
    </>
  );
}
