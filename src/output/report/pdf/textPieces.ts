import type { LinkBlock, ReportTitle, TextBlock } from '../model';

import type { TextStyle } from './pdfText';
import { bodyStyle, type Frame, type Piece, QUIET, RULE, smallStyle } from './piece';

/** The title block: frame, design large, fields beside each other, what the design says of itself. */
export function titlePiece(frame: Frame, title: ReportTitle): Piece {
  const { pdf, left, width, scale } = frame;
  const kind: TextStyle = { size: 8 * scale, colour: QUIET };
  const name: TextStyle = { size: 15 * scale, bold: true };
  const small = smallStyle(frame);
  const label: TextStyle = { size: 6.4 * scale, colour: QUIET };
  const inner = width - 6;
  const nameLines = pdf.lines(title.design, inner, name);
  const share = inner / title.fields.length;
  const fields = title.fields.map((field) => pdf.lines(field.value, share - 2, small));
  const most = Math.max(1, ...fields.map((lines) => lines.length));
  const noteLines = title.note === null ? [] : pdf.lines(title.note, inner, small);
  const nameTop = 2 + pdf.lineHeight(kind);
  const fieldTop = nameTop + nameLines.length * pdf.lineHeight(name) + 1;
  const noteTop = fieldTop + pdf.lineHeight(label) + most * pdf.lineHeight(small) + 1;
  const height = noteTop + noteLines.length * pdf.lineHeight(small) + 1.5;
  return {
    height: height + 3,
    keepWithNext: true,
    draw(top) {
      const { doc } = pdf;
      doc.setDrawColor('#1a1d1b');
      doc.setLineWidth(0.5);
      doc.rect(left, top, width, height);
      doc.setLineWidth(0.25);
      doc.line(left, top + fieldTop, left + width, top + fieldTop);
      const x = left + 3;
      pdf.draw(pdf.lines(title.kind, inner, kind), x, top + 2, kind);
      pdf.draw(nameLines, x, top + nameTop, name);
      title.fields.forEach((field, i) => {
        const at = x + i * share;
        if (i > 0) doc.line(at - 1.5, top + fieldTop, at - 1.5, top + noteTop - 0.5);
        pdf.draw(pdf.lines(field.label, share - 2, label), at, top + fieldTop + 0.6, label);
        pdf.draw(fields[i], at, top + fieldTop + 0.6 + pdf.lineHeight(label), small);
      });
      pdf.draw(noteLines, x, top + noteTop, { ...small, colour: QUIET });
    },
  };
}

export function headingPiece(frame: Frame, text: string): Piece {
  const { pdf, left, width, scale } = frame;
  const style: TextStyle = { size: 10.5 * scale, bold: true };
  const lines = pdf.lines(text, width, style);
  const own = lines.length * pdf.lineHeight(style);
  return {
    height: own + 2.6,
    keepWithNext: true,
    draw(top) {
      pdf.draw(lines, left, top + 1, style);
      pdf.doc.setDrawColor(RULE);
      pdf.doc.setLineWidth(0.25);
      pdf.doc.line(left, top + 1.2 + own, left + width, top + 1.2 + own);
    },
  };
}

export function textPiece(frame: Frame, { text, look }: TextBlock): Piece {
  const { pdf, left, width, scale } = frame;
  const style: TextStyle = {
    plain: bodyStyle(frame),
    lead: { size: 10.5 * scale, bold: true },
    quiet: { size: 7.4 * scale, colour: QUIET },
    warning: { ...bodyStyle(frame), bold: true, colour: '#9a2b00' },
  }[look];
  const lines = pdf.lines(text, width, style);
  return {
    height: lines.length * pdf.lineHeight(style) + 1.2,
    keepWithNext: false,
    draw: (top) => void pdf.draw(lines, left, top, style),
  };
}

/** An address in small type, every line of which opens it. */
export function linkPiece(frame: Frame, { address }: LinkBlock): Piece {
  const { pdf, left, width, scale } = frame;
  const style: TextStyle = { size: 6.4 * scale, colour: QUIET };
  const lines = pdf.lines(address, width, style);
  const height = lines.length * pdf.lineHeight(style);
  return {
    height: height + 1.2,
    keepWithNext: false,
    draw(top) {
      pdf.draw(lines, left, top, style);
      pdf.doc.link(left, top, width, height, { url: address });
    },
  };
}
