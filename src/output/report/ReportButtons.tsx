import { useState } from 'react';
import { Press } from '../../ui/Press';
import { useAppState } from '../../ui/session';
import type { ReportModel } from './model';
import type { PaperName } from './pdf/reportPdf';
import { t } from './roomText';
import { savePdf } from './savePdf';

/** Print and PDF, and what came of it, or why there is nothing to print. */
export function ReportButtons(props: {
  readonly report: ReportModel | null;
  readonly paper: PaperName;
}) {
  const { report, paper } = props;
  const empty = useAppState(({ design }) => design.parts.length === 0);
  const [said, setSaid] = useState('');
  const [busy, setBusy] = useState(false);
  const off = report === null || empty;

  async function save(made: ReportModel): Promise<void> {
    setBusy(true);
    setSaid(t('report.pdfBusy'));
    setSaid(await savePdf(made, paper));
    setBusy(false);
  }

  return (
    <div>
      <div className="report-buttons">
        <Press testId="report-print" off={off} onPress={() => window.print()}>
          {t('report.print')}
        </Press>
        <Press
          testId="report-pdf"
          off={busy || off}
          onPress={() => {
            if (report) void save(report);
          }}
        >
          {t('report.pdf')}
        </Press>
      </div>
      <p className="report-said" role="status">
        {empty ? t('report.nothing') : said}
      </p>
    </div>
  );
}
