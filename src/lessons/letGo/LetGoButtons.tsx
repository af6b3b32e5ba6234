import { useState } from 'react';
import { t } from '../../messages';
import { SLOWNESSES } from '../../state/storedLetGo';
import { slownessText } from '../../state/words/letGoShort';
import { Press } from '../../ui/Press';
import { useAppState, useSession } from '../../ui/session';
import { useLetGo, useLetGoState } from './useLetGo';

const AUTO = 'auto';

/** What can be done with a run, and how slowly it is shown. */
export function LetGoButtons() {
  const { letGo } = useSession();
  const status = useLetGoState((state) => state.status);
  // There is a run to be shown again: renders when that changes, not with its frames.
  const [kept, setKept] = useState(letGo.run !== null);
  useLetGo((_, desk) => setKept(desk.run !== null));
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
        <Press
          off={!loose}
          testId="letgo-pause"
          onPress={status === 'paused' ? letGo.goOn : letGo.pause}
        >
          {t(status === 'paused' ? 'letGo.goOn' : 'letGo.pause')}
        </Press>
        <Press
          off={status !== 'paused'}
          quick
          title={t('letGo.stepHelp')}
          testId="letgo-step"
          onPress={letGo.step}
        >
          {t('letGo.step')}
        </Press>
        <Press off={!loose} title={t('letGo.toEndHelp')} testId="letgo-end" onPress={letGo.toEnd}>
          {t('letGo.toEnd')}
        </Press>
        <Press
          off={!kept}
          title={t('letGo.replayHelp')}
          testId="letgo-again"
          onPress={letGo.replay}
        >
          {t('letGo.replay')}
        </Press>
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
