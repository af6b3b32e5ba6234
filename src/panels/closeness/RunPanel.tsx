import { sameHeadAndTolerances } from '../../state/closeness';
import { fixed, significant } from '../../state/quantities';
import { t } from '../../state/words/closenessText';
import { faultText } from '../../state/words/runText';
import { useRestingDesign, useSession } from '../../ui/session';
import { RunFields } from './RunFields';
import { RunResult } from './RunResult';
import { useToleranceRun } from './useCloseness';

/** A tolerance run: what it is to be, how far it is, what it found. */
export function RunPanel() {
  const job = useToleranceRun();
  return (
    <div className="closeness-side" data-testid="tolerance-run">
      <div className="lower-head">
        <strong>{t('closely.runTitle')}</strong>
        <RunButton />
        <Said />
      </div>
      <div className="lower-scroll" tabIndex={0} role="region" aria-label={t('closely.runTitle')}>
        <RunFields folded={job.kind === 'done'} />
        {job.kind === 'done' && job.result.outcome.ok ? (
          <RunResult result={job.result.outcome.value} design={job.request} />
        ) : (
          <p className="lower-quiet">{t('closely.idle')}</p>
        )}
        <p className="lower-quiet">{t('closely.runNote')}</p>
      </div>
    </div>
  );
}

function RunButton() {
  const { closeness: desk } = useSession();
  const job = useToleranceRun();
  if (job.kind !== 'running') {
    return (
      <button
        type="button"
        className="ui-button ui-button-main"
        data-testid="tolerance-start"
        onClick={() => desk.start()}
      >
        {t('closely.run')}
      </button>
    );
  }
  return (
    <>
      <progress
        className="closeness-progress"
        aria-label={t('closely.runTitle')}
        max={Math.max(1, job.progress.total)}
        value={job.progress.done}
      />
      <button
        type="button"
        className="ui-button"
        data-testid="tolerance-cancel"
        onClick={() => desk.run.cancel()}
      >
        {t('closely.cancel')}
      </button>
    </>
  );
}

/** How far it is, how long it took, whether it still holds. */
function Said() {
  const job = useToleranceRun();
  const open = useRestingDesign();
  switch (job.kind) {
    case 'running':
      return (
        <span data-testid="tolerance-progress">{t('closely.progress', { ...job.progress })}</span>
      );
    case 'cancelled':
      return <span role="status">{t('closely.cancelled', { ...job.progress })}</span>;
    case 'failed':
      return <span role="alert">{t('closely.failed', { reason: job.reason })}</span>;
    case 'done': {
      const { outcome, seconds } = job.result;
      if (!outcome.ok) {
        return <span role="alert">{faultText(outcome.error)}</span>;
      }
      const { samples, refused } = outcome.value;
      return (
        <span role="status" data-testid="tolerance-said">
          {t('closely.took', {
            samples: fixed(samples + refused, 0),
            seconds: significant(seconds, 2),
          })}{' '}
          {!sameHeadAndTolerances(open, job.request) && (
            <strong className="closeness-stale">{t('closely.stale')}</strong>
          )}
        </span>
      );
    }
    default:
      return null;
  }
}
