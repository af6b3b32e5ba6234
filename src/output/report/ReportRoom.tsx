import { useEffect, useLayoutEffect, useRef, useState } from 'react';
import { createPortal } from 'react-dom';
import { t } from '../../messages';
import { useSession } from '../../ui/session';
import { type Choice, useChoice } from './choice';
import { type ReportModel, SECTION_IDS, type SectionId } from './model';
import type { PaperName } from './pdf/reportPdf';
import { TYPE_SCALES } from './printScale';
import { ReportPages } from './ReportPages';
import { ReportPreview } from './ReportPreview';
import { savePdf } from './savePdf';
import { type ReportWatch, watchReport } from './watchReport';
import './report.css';

/** The report, as it will be printed, with what can be chosen beside it. */
export function ReportRoom() {
  const [choice, setChoice] = useChoice();
  const { report, retake } = useReport(choice);
  usePageSize(choice.paper);
  const [scale, setScale] = useState<number>(TYPE_SCALES[0]);
  return (
    <section className="report-room" aria-label={t('report.title')} data-testid="report-room">
      <div className="report-side">
        <Buttons report={report} paper={choice.paper} />
        <TitleFields choice={choice} onChange={setChoice} />
        <button
          type="button"
          className="ui-button"
          title={t('report.retakeHelp')}
          data-testid="report-retake"
          onClick={retake}
        >
          {t('report.retake')}
        </button>
        <SectionChoice choice={choice} onChange={setChoice} />
      </div>
      <ReportPreview
        report={report}
        paper={choice.paper}
        shown={choice.shown}
        scale={scale}
        onScale={setScale}
      />
      {report &&
        createPortal(
          <div className="report-print">
            <ReportPages report={report} scale={scale} />
          </div>,
          document.body,
        )}
    </section>
  );
}

/**
 * The sheet in print: not by named pages, which not every browser knows, nor by a style element, which the page's own
 * policy on content forbids.
 */
function usePageSize(paper: PaperName): void {
  useLayoutEffect(() => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(`@page { size: ${paper} portrait; margin: 11mm 14mm 9mm; }`);
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
    return () => {
      document.adoptedStyleSheets = document.adoptedStyleSheets.filter((one) => one !== sheet);
    };
  }, [paper]);
}

/** The report by what is chosen; the room is drawn anew only when there is another one. */
function useReport(choice: Choice) {
  const session = useSession();
  const [report, setReport] = useState<ReportModel | null>(null);
  const chosen = useRef(choice);
  const watch = useRef<ReportWatch | null>(null);
  useEffect(() => {
    const own = watchReport(session, () => chosen.current, setReport);
    watch.current = own;
    return () => own.stop();
  }, [session]);
  useEffect(() => {
    if (chosen.current === choice) return;
    chosen.current = choice;
    watch.current?.again();
  }, [choice]);
  return { report, retake: () => watch.current?.retake() };
}

function Buttons(props: { readonly report: ReportModel | null; readonly paper: PaperName }) {
  const { report, paper } = props;
  const [said, setSaid] = useState('');
  const [busy, setBusy] = useState(false);

  async function save(made: ReportModel): Promise<void> {
    setBusy(true);
    setSaid(t('report.pdfBusy'));
    setSaid(await savePdf(made, paper));
    setBusy(false);
  }

  return (
    <div>
      <div className="report-buttons">
        <button
          type="button"
          className="ui-button"
          data-testid="report-print"
          disabled={report === null}
          onClick={() => window.print()}
        >
          {t('report.print')}
        </button>
        <button
          type="button"
          className="ui-button"
          data-testid="report-pdf"
          disabled={busy || report === null}
          onClick={() => report && void save(report)}
        >
          {t('report.pdf')}
        </button>
      </div>
      <p className="report-said" role="status">
        {said}
      </p>
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
          className="ui-select"
          value={choice.paper}
          data-testid="report-paper"
          onChange={(event) => onChange({ ...choice, paper: event.target.value as PaperName })}
        >
          <option value="A4">{t('report.paperA4')}</option>
          <option value="Letter">{t('report.paperLetter')}</option>
        </select>
      </label>
      <label className="report-field">
        {t('report.shown')}
        <select
          className="ui-select"
          value={choice.shown}
          data-testid="report-shown"
          onChange={(event) =>
            onChange({ ...choice, shown: event.target.value as Choice['shown'] })
          }
        >
          <option value="fit">{t('report.shownFit')}</option>
          <option value="full">{t('report.shownFull')}</option>
        </select>
      </label>
      {(['revision', 'remark'] as const).map((name) => (
        <label key={name} className="report-field" title={t(`report.${name}Help`)}>
          {t(`report.${name}`)}
          <input
            type="text"
            maxLength={80}
            value={choice[name]}
            data-testid={`report-${name}`}
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
            data-testid={`report-section-${id}`}
            onChange={(event) => toggle(id, event.target.checked)}
          />
          {t(`report.section.${id}`)}
        </label>
      ))}
    </fieldset>
  );
}
