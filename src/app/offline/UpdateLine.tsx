import { useState } from 'react';
import { useStore } from 'zustand';
import { t } from '../../messages';
import { useServices } from '../AppContext';

/** Says that a newer version lies ready. It stays until a person takes it or waves it away. */
export function UpdateLine() {
  const { offline, keeper } = useServices();
  const update = useStore(offline.state, (now) => now.update);
  const keeps = useStore(keeper.status, (now) => now.state === 'kept' || now.state === 'keeping');
  const [waved, setWaved] = useState(false);
  if (update === 'none' || waved) return null;
  return (
    <div className="app-update" role="status" data-testid="update-line">
      <p>
        {t(update === 'ready' ? 'offline.update' : 'offline.updateTaken')}{' '}
        {t(keeps ? 'offline.updateKeeps' : 'offline.updateSaveFirst')}
      </p>
      <button
        type="button"
        className="ui-button"
        onClick={() => void offline.takeUpdate(keeper.flush)}
      >
        {t(keeps ? 'offline.take' : 'offline.takeAnyway')}
      </button>
      <button type="button" className="ui-button" onClick={() => setWaved(true)}>
        {t('offline.notNow')}
      </button>
    </div>
  );
}
