import type { jsPDF } from 'jspdf';
import { spokenLanguage } from '../../../messages/languages';
import { base64Of } from '../../base64';
import type { Block, FactsBlock, ReportModel } from '../model';
import { t } from '../roomText';
import { besidePiece, figuresPiece } from './figurePieces';
import { factsPiece, listPieces } from './listPieces';
import { FAMILY, PdfText, type TextStyle } from './pdfText';
import type { Frame, Piece } from './piece';
import { tablePieces } from './tablePieces';
import { headingPiece, linkPiece, textPiece, titlePiece } from './textPieces';

export interface Paper {
  readonly widthMm: number;
  readonly heightMm: number;
}

export const PAPERS = {
  A4: { widthMm: 210, heightMm: 297 },
  Letter: { widthMm: 215.9, heightMm: 279.4 },
} as const satisfies Readonly<Record<string, Paper>>;
export type PaperName = keyof typeof PAPERS;

/** The two faces that are embedded, as TrueType files. */
export interface PdfFonts {
  readonly regular: Uint8Array;
  readonly bold: Uint8Array;
}

const SIDE = 14;
const TOP = 11;
const FOOT = 14;
/** Type is made smaller by these until the report has no more pages than wanted. */
const SCALES = [1, 0.94, 0.88, 0.82];
export const MOST_PAGES = 3;

/**
 * The report as a PDF: vectors and selectable text, both faces embedded as subsets, so that every sign of the texts comes
 * out. Type shrinks from 8.6 to 7 points where that brings it to three pages; a head too large for that gets more. Nothing
 * is cut: tables, pictures and paragraphs go to the next page whole.
 */
export function reportPdf(
  make: typeof jsPDF,
  fonts: PdfFonts,
  report: ReportModel,
  paper: Paper,
): { readonly bytes: ArrayBuffer; readonly pages: number } {
  const doc = new make({
    unit: 'mm',
    format: [paper.widthMm, paper.heightMm],
    compress: true,
    putOnlyUsedFonts: true,
  });
  addFont(doc, fonts.regular, 'normal');
  addFont(doc, fonts.bold, 'bold');
  doc.setProperties({
    title: `${report.title.design}: ${report.title.kind}`,
    subject: report.title.fields.map(({ label, value }) => `${label}: ${value}`).join('; '),
    creator: 'Stillgrip',
  });
  doc.setLanguage(spokenLanguage());
  const pdf = new PdfText(doc);
  const pages = fittingPages(pdf, report, paper);
  pages.forEach((pieces, i) => {
    if (i > 0) doc.addPage([paper.widthMm, paper.heightMm]);
    let y = TOP;
    for (const piece of pieces) {
      piece.draw(y);
      y += piece.height;
    }
    drawFoot(pdf, report, paper, i + 1, pages.length);
  });
  return { bytes: doc.output('arraybuffer'), pages: pages.length };
}

function addFont(doc: jsPDF, bytes: Uint8Array, style: 'normal' | 'bold'): void {
  const file = `report-${style}.ttf`;
  doc.addFileToVFS(file, base64Of(bytes));
  doc.addFont(file, FAMILY, style);
}

function fittingPages(pdf: PdfText, report: ReportModel, paper: Paper): Piece[][] {
  let pages: Piece[][] = [];
  for (const scale of SCALES) {
    const frame: Frame = {
      pdf,
      left: SIDE,
      width: paper.widthMm - 2 * SIDE,
      height: paper.heightMm - TOP - FOOT,
      scale,
    };
    pages = paginate(piecesOf(frame, report), frame.height);
    if (pages.length <= MOST_PAGES) break;
  }
  return pages;
}

function piecesOf(frame: Frame, report: ReportModel): Piece[] {
  return [
    titlePiece(frame, report.title),
    ...report.sections.flatMap(({ title, blocks }) => [
      headingPiece(frame, title),
      ...blockPieces(frame, blocks),
    ]),
  ];
}

/** Neighbouring groups of facts share their columns. */
function blockPieces(frame: Frame, blocks: readonly Block[]): Piece[] {
  const pieces: Piece[] = [];
  let facts: FactsBlock[] = [];
  const flush = () => {
    if (facts.length > 0) pieces.push(factsPiece(frame, facts));
    facts = [];
  };
  for (const [i, block] of blocks.entries()) {
    if (block.kind === 'facts') {
      facts.push(block);
      continue;
    }
    flush();
    const before = pieces.at(-1);
    // Link and table go with the words that lead to them.
    const led = block.kind === 'link' || (block.kind === 'table' && blocks[i - 1]?.kind === 'text');
    if (led && before) {
      pieces[pieces.length - 1] = { ...before, keepWithNext: true };
    }
    pieces.push(...onePiece(frame, block));
  }
  flush();
  return pieces;
}

function onePiece(frame: Frame, block: Exclude<Block, FactsBlock>): Piece[] {
  switch (block.kind) {
    case 'text':
      return [textPiece(frame, block)];
    case 'link':
      return [linkPiece(frame, block)];
    case 'list':
      return listPieces(frame, block);
    case 'beside':
      return [besidePiece(frame, block)];
    case 'table':
      return tablePieces(frame, block);
    default:
      return [figuresPiece(frame, block.figures)];
  }
}

/** Pieces to pages, in order: what must stay with the next goes over with it. */
export function paginate<P extends Pick<Piece, 'height' | 'keepWithNext'>>(
  pieces: readonly P[],
  height: number,
): P[][] {
  const pages: P[][] = [[]];
  let used = 0;
  for (let i = 0; i < pieces.length; ) {
    let end = i;
    while (pieces[end].keepWithNext && end + 1 < pieces.length) end++;
    const group = pieces.slice(i, end + 1);
    const own = group.reduce((sum, piece) => sum + piece.height, 0);
    if (used > 0 && used + own > height) {
      pages.push([]);
      used = 0;
    }
    pages[pages.length - 1].push(...group);
    used += own;
    i = end + 1;
  }
  return pages;
}

/** A bar of 50 mm to check the print by, what it is of, and the page's number. */
function drawFoot(
  pdf: PdfText,
  { title }: ReportModel,
  paper: Paper,
  page: number,
  pages: number,
): void {
  const { doc } = pdf;
  const y = paper.heightMm - 8;
  doc.setDrawColor('#1a1d1b');
  doc.setLineWidth(0.3);
  doc.line(SIDE, y, SIDE + 50, y);
  for (const x of [SIDE, SIDE + 50]) doc.line(x, y - 1.2, x, y + 1.2);
  const small = { size: 6.8, colour: '#59605c' };
  pdf.place(t('report.bar'), SIDE + 25, y - 0.9, small, 'middle');
  const right = paper.widthMm - SIDE;
  const number = t('report.page', { page, pages });
  pdf.place(number, right, y + 0.8, small, 'end');
  const room = right - (SIDE + 54) - pdf.width(number, small) - 4;
  const rest = ` \u00b7 ${title.foot}`;
  const name = shortened(pdf, title.design, room - pdf.width(rest, small), small);
  const [line] = pdf.lines(`${name}${rest}`, room, small);
  pdf.drawLine(line.runs, SIDE + 54, y + 0.8, small);
}

/** As much of a name as there is room for. */
function shortened(pdf: PdfText, name: string, room: number, style: TextStyle): string {
  if (pdf.width(name, style) <= room) return name;
  let length = name.length - 1;
  while (length > 1 && pdf.width(`${name.slice(0, length)}\u2026`, style) > room) length--;
  return `${name.slice(0, length).trimEnd()}\u2026`;
}
