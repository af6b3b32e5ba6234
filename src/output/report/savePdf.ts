import { isCancelled, reasonOf } from '../../ui/fileErrors';
import { fileSave } from '../../ui/fileSave';
import { fileStem } from '../../ui/fileStem';
import { fetchFont } from '../pdfFonts';
import type { ReportModel } from './model';
import { PAPERS, type PaperName, type PdfFonts, reportPdf } from './pdf/reportPdf';
import { t } from './roomText';

/**
 * Makes the PDF and saves it; the writer and the fonts are fetched only now. The browser asks for a place first, while the
 * press of the button still counts. Says what came of it; nothing where the person thought better of it.
 */
export async function savePdf(report: ReportModel, paper: PaperName): Promise<string> {
  const fileName = `${fileStem(report.title.design, 'head')}-report.pdf`;
  let pages = 0;
  const made = makePdf(report, paper).then((pdf) => {
    pages = pdf.pages;
    return new Blob([pdf.bytes], { type: 'application/pdf' });
  });
  // Where the window is closed before the making fails, nobody waits for it.
  made.catch(() => {});
  try {
    const saved = await fileSave(made, {
      fileName,
      description: 'PDF',
      extensions: ['.pdf'],
      mimeTypes: ['application/pdf'],
      id: 'stillgrip-report',
    });
    const count = pages === 1 ? t('report.pagesOne') : t('report.pagesMany', { count: pages });
    return saved
      ? t('report.pdfSaved', { file: saved.name, pages: count })
      : t('report.pdfHanded', { file: fileName, pages: count });
  } catch (error) {
    if (isCancelled(error)) return '';
    return t('report.pdfFailed', { reason: reasonOf(error) });
  }
}

async function makePdf(report: ReportModel, paper: PaperName) {
  const [{ jsPDF }, fonts] = await Promise.all([import('jspdf'), fetchFonts()]);
  return reportPdf(jsPDF, fonts, report, PAPERS[paper]);
}

async function fetchFonts(): Promise<PdfFonts> {
  const [regular, bold] = await Promise.all([fetchFont('regular'), fetchFont('bold')]);
  return { regular, bold };
}
