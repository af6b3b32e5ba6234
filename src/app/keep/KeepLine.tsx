import { useStore } from 'zustand';
import { t } from '../../messages';
import { useServices } from '../AppContext';
import './keep.css';

/** Stands under the bar as long as the design is not kept by this tab, with what can be done about it. */
export function KeepLine() {
  const { keeper, desk } = useServices();
  const trouble = useStore(keeper.status, (now) => now.trouble);
  // Kept or about to be is one and the same here.
  const state = useStore(keeper.status, (now) => (now.state === 'keeping' ? 'kept' : now.state));
  const saveFile = (
    <button
      type="button"
      className="ui-button"
      data-testid="keep-save-file"
      onClick={() => void desk.save()}
    >
      {t('keep.saveFile')}
    </button>
  );
  if (state === 'failed' && trouble !== null) {
    return (
      <div className="keep-line" role="alert" data-testid="keep-line">
        <p>{t(`keep.trouble.${trouble}`)}</p>
        {saveFile}
      </div>
    );
  }
  if (state !== 'otherTab') return null;
  return (
    <div className="keep-line" role="status" data-testid="keep-line">
      <p>{t('keep.otherTab')}</p>
      <button
        type="button"
        className="ui-button"
        data-testid="keep-take-over"
        onClick={() => keeper.takeOver()}
      >
        {t('keep.takeOver')}
      </button>
      <button
        type="button"
        className="ui-button"
        data-testid="keep-copy"
        onClick={() => void keeper.workOnCopy()}
      >
        {t('keep.copy')}
      </button>
    </div>
  );
}
