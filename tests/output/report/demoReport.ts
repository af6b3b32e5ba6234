import { readFileSync } from 'node:fs';
import { jsPDF } from 'jspdf';
import type { Design } from '../../../src/design/design';
import { parseDesign } from '../../../src/design/file';
import type { ReportInputs } from '../../../src/output/report/inputs';
import { type ReportModel, SECTION_IDS } from '../../../src/output/report/model';
import { type Paper, type PdfFonts, reportPdf } from '../../../src/output/report/pdf/reportPdf';
import { createSession } from '../../../src/state/createSession';
import { METRIC_UNITS } from '../../../src/state/settings';

export function demoDesign(file: string): Design {
  const address = new URL(`../../../assets/designs/${file}.json`, import.meta.url);
  const parsed = parseDesign(readFileSync(address, 'utf8'));
  if (!parsed.ok) throw new Error(`demoDesign(): ${file} is not sound: ${parsed.error.path}`);
  return parsed.value;
}

/** What the page would hand in for a design, all sections on. */
export function inputsOf(design: Design, change: Partial<ReportInputs> = {}): ReportInputs {
  const { live } = createSession(design, (callback) => callback());
  live.flush();
  return {
    design,
    reading: live.reading,
    model: live.model,
    units: METRIC_UNITS,
    pitchDeg: 12,
    date: '2026-11-25',
    revision: 'A',
    remark: '',
    picture: null,
    tolerance: null,
    fileName: 'dunlin-260.json',
    link: { length: 9000, address: null },
    sections: new Set(SECTION_IDS),
    ...change,
  };
}

function font(face: string): Uint8Array {
  const address = new URL(`../../../src/output/fonts/LiberationSans-${face}.ttf`, import.meta.url);
  return new Uint8Array(readFileSync(address));
}

export const FONTS: PdfFonts = { regular: font('Regular'), bold: font('Bold') };

export function pdfOf(report: ReportModel, paper: Paper) {
  return reportPdf(jsPDF, FONTS, report, paper);
}
