import { useStore } from 'zustand';
import { t } from '../../messages';
import { useServices } from '../AppContext';

/** Whether the page works without a network, and what it is made of. */
export function KeptNote() {
  const { offline } = useServices();
  const kept = useStore(offline.state, (now) => now.kept);
  return (
    <>
      <h3>{t('offline.title')}</h3>
      <p data-testid="offline-kept" data-kept={kept}>
        {t(`offline.kept.${kept}`)} {kept === 'yes' && t('offline.keptLater')}
      </p>
      <p>
        <a className="app-link" href="./licences.html" target="_blank" rel="noopener">
          {t('offline.licences')}
        </a>
      </p>
    </>
  );
}
