import { useMemo, useRef, useState } from 'react';
import { t } from '../../messages';
import { combinationCount } from '../../neutralise/request';
import { requestOf } from '../../state/plan';
import { faultText } from '../../state/words/planText';
import { useAppState, useRestingDesign, useSession } from '../../ui/session';
import { usePlan, useSearch } from './usePlan';

/** Begins the search, says how far it is, ends it. */
export function FindBar() {
  const { plan: desk, actions } = useSession();
  const plan = usePlan();
  const search = useSearch();
  const design = useRestingDesign();
  const units = useAppState((state) => state.settings.units);
  const request = useMemo(() => requestOf(plan, design), [plan, design]);
  const [refused, setRefused] = useState<{ readonly text: string; readonly of: unknown } | null>(
    null,
  );
  const findButton = useRef<HTMLButtonElement>(null);
  const count = combinationCount(request);

  function find(): void {
    const fault = desk.find();
    setRefused(fault && { text: faultText(fault, design, request.knobs, units), of: request });
    if (!fault) actions.setSettings({ neutraliseView: 'answers' });
  }

  return (
    <div className="goal-find">
      {refused?.of === request && (
        <p className="goal-fault" role="alert" data-testid="goal-fault">
          {refused.text}
        </p>
      )}
      {search.kind === 'running' ? (
        <>
          <progress
            className="goal-progress"
            aria-label={t('goal.find')}
            max={Math.max(1, search.progress.total)}
            value={search.progress.done}
          />
          <div className="goal-head">
            <span data-testid="goal-progress">{t('goal.running', { ...search.progress })}</span>
            <button
              type="button"
              className="ui-button"
              data-testid="goal-cancel"
              onClick={() => {
                desk.search.cancel();
                requestAnimationFrame(() => findButton.current?.focus());
              }}
            >
              {t('goal.cancel')}
            </button>
          </div>
        </>
      ) : (
        <div className="goal-head">
          <span>{count === 1 ? t('goal.countOne') : t('goal.count', { count })}</span>
          <button
            type="button"
            className="ui-button ui-button-main"
            ref={findButton}
            data-testid="goal-find"
            onClick={find}
          >
            {t('goal.find')}
          </button>
        </div>
      )}
      <p className="goal-help" role="status" data-testid="goal-said">
        {search.kind === 'cancelled' && t('goal.cancelled', { ...search.progress })}
        {search.kind === 'failed' && t('goal.failed', { reason: search.reason })}
        {search.kind === 'done' &&
          t('goal.done', { count: search.result.answers.length, looked: search.result.looked })}
      </p>
    </div>
  );
}
