import { useRef } from 'react';
import { t } from '../../messages';
import { SLOWNESSES } from '../../state/storedLetGo';
import { slownessText } from '../../state/words/letGoShort';
import { useAppState, useSession } from '../../ui/session';
import { useLetGo, useLetGoState } from './useLetGo';

const AUTO = 'auto';

/** What can be done with a run, and how slowly it is shown. */
export function LetGoButtons() {
  const { letGo } = useSession();
  const status = useLetGoState((state) => state.status);
  const again = useRef<HTMLButtonElement>(null);
  useLetGo((_, desk) => {
    if (again.current) again.current.disabled = desk.run === null;
  });
  const loose = status === 'running' || status === 'paused';
  return (
    <div className="lower-head letgo-head" role="toolbar" aria-label={t('letGo.controls')}>
      <span className="letgo-buttons">
        {loose ? (
          <button
            type="button"
            className="ui-button ui-button-main"
            title={t('letGo.takeHoldHelp')}
            data-testid="letgo-hold"
            onClick={letGo.stop}
          >
            {t('letGo.takeHold')}
          </button>
        ) : (
          <button
            type="button"
            className="ui-button ui-button-main"
            title={t('letGo.letGoHelp')}
            data-testid="letgo-go"
            onClick={letGo.letGo}
          >
            {t('letGo.letGo')}
          </button>
        )}
        <button
          type="button"
          className="ui-button"
          disabled={!loose}
          data-testid="letgo-pause"
          onClick={status === 'paused' ? letGo.goOn : letGo.pause}
        >
          {t(status === 'paused' ? 'letGo.goOn' : 'letGo.pause')}
        </button>
        <button
          type="button"
          className="ui-button"
          disabled={status !== 'paused'}
          title={t('letGo.stepHelp')}
          data-testid="letgo-step"
          onClick={letGo.step}
        >
          {t('letGo.step')}
        </button>
        <button
          type="button"
          className="ui-button"
          disabled={!loose}
          title={t('letGo.toEndHelp')}
          data-testid="letgo-end"
          onClick={letGo.toEnd}
        >
          {t('letGo.toEnd')}
        </button>
        <button
          type="button"
          className="ui-button"
          ref={again}
          title={t('letGo.replayHelp')}
          data-testid="letgo-again"
          onClick={letGo.replay}
        >
          {t('letGo.replay')}
        </button>
      </span>
      <SlownessChoice />
    </div>
  );
}

function SlownessChoice() {
  const { letGo } = useSession();
  const chosen = useLetGoState((state) => state.choices.slowness);
  const shown = useLetGoState((state) => state.slowness);
  const status = useLetGoState((state) => state.status);
  // Follows the page's language and units like everything else.
  useAppState((state) => state.settings.units);
  const known = chosen === null && status !== 'held' && status !== 'starting';
  return (
    <label className="letgo-slowness">
      {t('letGo.slowed')}
      <select
        className="ui-select"
        data-testid="letgo-slowness"
        value={chosen ?? AUTO}
        onChange={({ target }) =>
          letGo.choose({ slowness: target.value === AUTO ? null : Number(target.value) })
        }
      >
        <option value={AUTO}>
          {known ? `${slownessText(shown)} (${t('letGo.slowedAuto')})` : t('letGo.slowedAuto')}
        </option>
        {SLOWNESSES.map((times) => (
          <option key={times} value={times}>
            {slownessText(times)}
          </option>
        ))}
      </select>
    </label>
  );
}
