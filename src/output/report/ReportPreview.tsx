import { useEffect, useLayoutEffect, useRef } from 'react';
import type { Choice } from './choice';
import type { ReportModel } from './model';
import { PAPERS, type PaperName } from './pdf/reportPdf';
import { fitType } from './printScale';
import { ReportPages } from './ReportPages';
import { t } from './roomText';

/** Room beside the sheet, CSS pixels. */
const BESIDE = 32;
/** Smaller than this nothing could be told on it. */
const LEAST = 0.4;

/** The sheet on the desk: as wide as there is room, or as large as on paper. */
export function ReportPreview(props: {
  readonly report: ReportModel | null;
  /** Why there is none, in words. */
  readonly fault: string | null;
  readonly paper: PaperName;
  readonly shown: Choice['shown'];
  /** The size of type with which it will be printed. */
  readonly scale: number;
  readonly onScale: (scale: number) => void;
}) {
  const { report, fault, paper, shown, scale, onScale } = props;
  const desk = useRef<HTMLDivElement>(null);
  const sheet = useRef<HTMLDivElement>(null);
  const ready = report !== null;

  useEffect(() => {
    const [around, own] = [desk.current, sheet.current];
    if (!around || !own || !ready) return;
    function fit(): void {
      if (!around || !own) return;
      const width = around.clientWidth - BESIDE;
      // Folded away, or on paper, there is nothing to fit into.
      if (width <= 0) return;
      const whole = (PAPERS[paper].widthMm * 96) / 25.4;
      const zoom = shown === 'full' ? 1 : Math.min(1, Math.max(LEAST, width / whole));
      own.style.zoom = String(zoom);
    }
    fit();
    const observer = new ResizeObserver(fit);
    observer.observe(around);
    return () => observer.disconnect();
  }, [ready, paper, shown]);

  useLayoutEffect(() => {
    const own = sheet.current?.querySelector<HTMLElement>('.report-paper');
    if (!own || !sheet.current || !report) return;
    onScale(fitType(own, paper, Number(sheet.current.style.zoom || 1)));
  }, [report, paper, onScale]);

  return (
    <div
      className="report-desk"
      ref={desk}
      tabIndex={0}
      role="region"
      aria-label={t('report.preview')}
    >
      {fault !== null && (
        <p className="report-fault" role="alert">
          {t('report.failed', { reason: fault })}
        </p>
      )}
      {report && (
        <div className="report-sheet" ref={sheet} data-paper={paper} data-testid="report-sheet">
          <ReportPages report={report} scale={scale} />
        </div>
      )}
    </div>
  );
}
