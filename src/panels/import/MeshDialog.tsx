import { t } from '../../messages';
import { Dialog } from '../../ui/Dialog';
import { MeshChoices } from './MeshChoices';
import type { MeshDesk, MeshJob } from './meshDesk';
import { meshFaultText, type ReportLine, reportLines } from './meshReportText';
import { ReportList } from './ReportList';
import './import.css';

/** A file on its way in: how far it is, what was found, and what it shall be in the design. */
export function MeshDialog(props: { readonly desk: MeshDesk; readonly job: MeshJob }) {
  const { desk, job } = props;
  const { outcome } = job;
  return (
    <Dialog open title={t('import.title', { file: job.file })} onClose={desk.next}>
      <div className="import" data-testid="import-dialog">
        {job.waiting > 0 && <p>{t('import.waiting', { count: job.waiting })}</p>}
        {!outcome && <Reading desk={desk} job={job} />}
        {outcome && !outcome.ok && (
          <Refused desk={desk} lines={[{ tone: 'fault', text: meshFaultText(outcome.error) }]} />
        )}
        {outcome?.ok && !outcome.value.report.weighable && (
          <Refused desk={desk} lines={reportLines(outcome.value.report)} />
        )}
        {outcome?.ok && outcome.value.report.weighable && (
          <MeshChoices key={job.file} desk={desk} read={outcome.value} role={job.role ?? 'part'} />
        )}
      </div>
    </Dialog>
  );
}

function Reading(props: { readonly desk: MeshDesk; readonly job: MeshJob }) {
  const { step, share } = props.job.progress;
  return (
    <>
      <p role="status">{t(`import.step.${step}`)}</p>
      <progress className="import-progress" aria-label={t(`import.step.${step}`)} value={share} />
      <div className="import-tools">
        <button type="button" className="ui-button" onClick={props.desk.next}>
          {t('import.cancel')}
        </button>
      </div>
    </>
  );
}

function Refused(props: { readonly desk: MeshDesk; readonly lines: readonly ReportLine[] }) {
  return (
    <>
      <ReportList lines={props.lines} />
      <p>{t('import.refused')}</p>
      <div className="import-tools">
        <button type="button" className="ui-button" onClick={props.desk.next}>
          {t('import.close')}
        </button>
      </div>
    </>
  );
}
