import { ChevronLeft, ChevronRight } from 'lucide-react';
import { shownTryOut, tryOutsOf } from '../design/tryOuts';
import { t } from '../messages';
import { useAppState, useSession } from '../ui/session';

/** Which try-out is on the stage, beside the design's name; only where there are several. */
export function TryOutChooser() {
  const { actions } = useSession();
  const entries = tryOutsOf({ tryOuts: useAppState((state) => state.design.tryOuts) });
  if (entries.length < 2) return null;
  return (
    <div className="app-try-outs" role="group" aria-label={t('tryOuts.title')}>
      <button
        type="button"
        className="ui-button ui-button-bare ui-button-icon"
        aria-label={t('tryOuts.previous')}
        title={t('tryOuts.previous')}
        data-testid="try-out-previous"
        onClick={() => actions.tryOuts.step(-1)}
      >
        <ChevronLeft aria-hidden="true" />
      </button>
      <select
        className="ui-select app-try-out"
        aria-label={t('tryOuts.choose')}
        title={t('tryOuts.choose')}
        data-testid="try-out-choose"
        value={shownTryOut({ tryOuts: entries })?.id}
        onChange={(event) => actions.tryOuts.show(event.target.value)}
      >
        {entries.map(({ id, name, adopted }) => (
          <option key={id} value={id}>
            {adopted ? t('tryOuts.optionAdopted', { name }) : name}
          </option>
        ))}
      </select>
      <button
        type="button"
        className="ui-button ui-button-bare ui-button-icon"
        aria-label={t('tryOuts.next')}
        title={t('tryOuts.next')}
        data-testid="try-out-next"
        onClick={() => actions.tryOuts.step(1)}
      >
        <ChevronRight aria-hidden="true" />
      </button>
    </div>
  );
}
