import { History } from 'lucide-react';
import { type ComponentType, useState } from 'react';
import { t } from '../../messages';
import { Dialog } from '../../ui/Dialog';
import { lazyRoom } from '../../ui/lazyRoom';

/** The lists are fetched when they are first looked at. */
const LazyRoom: ComponentType<{ onDone: () => void }> = lazyRoom(
  () => import('./DesignsRoom').then(({ DesignsRoom }) => DesignsRoom),
  () => <p className="app-loading">{t('lower.loading')}</p>,
);

/** Opens the dialog with the designs and states that are kept in the browser. */
export function DesignsButton() {
  const [open, setOpen] = useState(false);
  return (
    <>
      <button
        type="button"
        className="ui-button ui-button-bare ui-button-icon"
        aria-label={t('keep.title')}
        title={t('keep.title')}
        aria-haspopup="dialog"
        data-testid="designs"
        onClick={() => setOpen(true)}
      >
        <History aria-hidden="true" />
      </button>
      <Dialog open={open} title={t('keep.title')} onClose={() => setOpen(false)}>
        <LazyRoom onDone={() => setOpen(false)} />
      </Dialog>
    </>
  );
}
