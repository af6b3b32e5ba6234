import { useLayoutEffect, useState, useSyncExternalStore } from 'react';
import { createPortal } from 'react-dom';
import { Press } from '../../ui/Press';
import { useSession } from '../../ui/session';
import { type Choice, useChoice } from './choice';
import { SECTION_IDS, type SectionId } from './model';
import type { PaperName } from './pdf/reportPdf';
import { TYPE_SCALES } from './printScale';
import { ReportButtons } from './ReportButtons';
import { ReportPages } from './ReportPages';
import { ReportPreview } from './ReportPreview';
import { t } from './roomText';
import { useReport } from './useReport';
import './report.css';

/** The report, as it will be printed, with what can be chosen beside it. */
export function ReportRoom() {
  const [choice, setChoice] = useChoice();
  const { report, fault, retake } = useReport(choice);
  usePageSize(choice.paper);
  const [scale, setScale] = useState<number>(TYPE_SCALES[0]);
  return (
    <section className="report-room" aria-label={t('report.title')} data-testid="report-room">
      <div className="report-side">
        <ReportButtons report={report} paper={choice.paper} />
        <TitleFields choice={choice} onChange={setChoice} />
        <Retake retake={retake} />
        <SectionChoice choice={choice} onChange={setChoice} />
      </div>
      <ReportPreview
        report={report}
        fault={fault}
        paper={choice.paper}
        shown={choice.shown}
        scale={scale}
        onScale={setScale}
      />
      {createPortal(
        <div className="report-print">
          {report ? (
            <ReportPages report={report} scale={scale} />
          ) : (
            <p>{fault === null ? t('report.making') : t('report.failed', { reason: fault })}</p>
          )}
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

/** The picture of the stage anew; where no stage is open there is none to take, and the report has none. */
function Retake({ retake }: { readonly retake: () => void }) {
  const { stageCamera } = useSession();
  const ready = useSyncExternalStore(stageCamera.subscribe, stageCamera.ready);
  return (
    <div>
      <Press title={t('report.retakeHelp')} testId="report-retake" off={!ready} onPress={retake}>
        {t('report.retake')}
      </Press>
      {!ready && <p className="report-said">{t('report.noStage')}</p>}
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
