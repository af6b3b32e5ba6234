import { useCallback, useEffect, useState } from 'react';
import { createPortal } from 'react-dom';
import { t } from '../../messages';
import type { StagePicture } from '../../state/stageCamera';
import { fileStem } from '../../ui/fileStem';
import { useAppState, useSession } from '../../ui/session';
import { type ReportModel, SECTION_IDS, type SectionId } from './model';
import type { PaperName } from './pdf/reportPdf';
import { ReportPages } from './ReportPages';
import { reportModel } from './reportModel';
import { savePdf } from './savePdf';
import './report.css';

/** What is chosen for the report; it is no part of the design. */
interface Choice {
  readonly paper: PaperName;
  readonly sections: ReadonlySet<SectionId>;
  readonly revision: string;
  readonly remark: string;
}

const EVERYTHING: Choice = {
  paper: 'A4',
  sections: new Set(SECTION_IDS),
  revision: '',
  remark: '',
};

/** The report, as it will be printed, with what can be chosen beside it. */
export function ReportRoom() {
  const [choice, setChoice] = useState(EVERYTHING);
  const { picture, retake } = usePicture();
  const link = null;
  const report = useReport(choice, picture, link);
  return (
    <section className="report-room" aria-label={t('report.title')} data-testid="report-room">
      <div className="report-side">
        {report && <Buttons report={report} paper={choice.paper} />}
        <TitleFields choice={choice} onChange={setChoice} />
        <button type="button" className="ui-button" onClick={retake}>
          {t('report.retake')}
        </button>
        <SectionChoice choice={choice} onChange={setChoice} />
      </div>
      <div className="report-desk" tabIndex={0} role="region" aria-label={t('report.preview')}>
        {report && (
          <div className="report-sheet" data-paper={choice.paper} data-testid="report-sheet">
            <ReportPages report={report} />
          </div>
        )}
      </div>
      {report &&
        createPortal(
          <div className="report-print" data-paper={choice.paper}>
            <ReportPages report={report} />
          </div>,
          document.body,
        )}
    </section>
  );
}

/** Size of the picture, pixels: sharp on paper at the width it has there. */
const PICTURE = { width: 1600, height: 1000 } as const;

/** The first picture is taken when the room opens, or when the stage is there. */
function usePicture() {
  const { stageCamera } = useSession();
  const [picture, setPicture] = useState<StagePicture | null>(null);
  const retake = useCallback(
    () => setPicture(stageCamera.take(PICTURE.width, PICTURE.height)),
    [stageCamera],
  );
  useEffect(() => {
    retake();
    return stageCamera.subscribe(() => {
      if (stageCamera.ready()) retake();
    });
  }, [stageCamera, retake]);
  return { picture, retake };
}

/** A tenth of a second's work: made anew when the design has been still for this long, ms. */
const STILL = 250;

function useReport(
  choice: Choice,
  picture: StagePicture | null,
  link: string | null,
): ReportModel | null {
  const { store, live, closeness } = useSession();
  const design = useAppState((state) => state.design);
  const units = useAppState((state) => state.settings.units);
  const pitchDeg = useAppState((state) => state.pitchDeg);
  const [report, setReport] = useState<ReportModel | null>(null);
  useEffect(() => {
    const timer = setTimeout(
      () => {
        live.flush();
        const { job } = closeness.run.store.getState();
        const tolerance = job.kind === 'done' ? { design: job.request, answer: job.result } : null;
        setReport(
          reportModel({
            ...choice,
            design: store.getState().design,
            reading: live.reading,
            model: live.model,
            units,
            pitchDeg,
            date: today(),
            picture,
            tolerance,
            fileName: `${fileStem(design.name, 'head')}.json`,
            link,
          }),
        );
      },
      report === null ? 0 : STILL,
    );
    return () => clearTimeout(timer);
    // oxlint-disable-next-line react-hooks/exhaustive-deps -- whether there is a report yet only sets the wait
  }, [choice, picture, link, design, units, pitchDeg, store, live, closeness]);
  return report;
}

/** The day where the page is open, as ISO 8601 writes it. */
function today(): string {
  const now = new Date();
  const two = (value: number) => String(value).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

function Buttons(props: { readonly report: ReportModel; readonly paper: PaperName }) {
  const { report, paper } = props;
  const [said, setSaid] = useState('');
  const [busy, setBusy] = useState(false);

  async function save(): Promise<void> {
    setBusy(true);
    setSaid(t('report.pdfBusy'));
    setSaid(await savePdf(report, paper));
    setBusy(false);
  }

  return (
    <div>
      <div className="report-buttons">
        <button
          type="button"
          className="ui-button"
          data-testid="report-print"
          onClick={() => window.print()}
        >
          {t('report.print')}
        </button>
        <button
          type="button"
          className="ui-button"
          data-testid="report-pdf"
          disabled={busy}
          onClick={() => void save()}
        >
          {t('report.pdf')}
        </button>
      </div>
      <p role="status">{said}</p>
    </div>
  );
}

interface ChoiceProps {
  readonly choice: Choice;
  readonly onChange: (choice: Choice) => void;
}

function TitleFields({ choice, onChange }: ChoiceProps) {
  return (
    <>
      <label className="report-field">
        {t('report.paper')}
        <select
          value={choice.paper}
          data-testid="report-paper"
          onChange={(event) => onChange({ ...choice, paper: event.target.value as PaperName })}
        >
          <option value="A4">{t('report.paperA4')}</option>
          <option value="Letter">{t('report.paperLetter')}</option>
        </select>
      </label>
      {(['revision', 'remark'] as const).map((name) => (
        <label key={name} className="report-field" title={t(`report.${name}Help`)}>
          {t(`report.${name}`)}
          <input
            type="text"
            maxLength={80}
            value={choice[name]}
            onChange={(event) => onChange({ ...choice, [name]: event.target.value })}
          />
        </label>
      ))}
    </>
  );
}

function SectionChoice({ choice, onChange }: ChoiceProps) {
  function toggle(id: SectionId, on: boolean): void {
    const sections = new Set(choice.sections);
    if (on) sections.add(id);
    else sections.delete(id);
    onChange({ ...choice, sections });
  }
  return (
    <fieldset>
      <legend>{t('report.choose')}</legend>
      {SECTION_IDS.map((id) => (
        <label key={id}>
          <input
            type="checkbox"
            checked={choice.sections.has(id)}
            onChange={(event) => toggle(id, event.target.checked)}
          />
          {t(`report.section.${id}`)}
        </label>
      ))}
    </fieldset>
  );
}
