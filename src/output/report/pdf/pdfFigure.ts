import type { jsPDF } from 'jspdf';
import type { Command, Figure, PathShape } from '../figures/figure';
import { type PdfText, POINT_MM } from './pdfText';

/** A CSS pixel on paper. */
export const PIXEL_MM = 25.4 / 96;

/** Draws a figure as vectors and text, its upper left corner at (x, y) mm; `scale` 1 prints a pixel as 1/96 inch. */
export function drawFigure(
  pdf: PdfText,
  { shapes }: Figure,
  x: number,
  y: number,
  scale: number,
): void {
  const mm = PIXEL_MM * scale;
  for (const shape of shapes) {
    if (shape.kind === 'path') drawPath(pdf.doc, shape, x, y, mm);
    else {
      const { size, colour, bold = false, anchor } = shape;
      const style = { size: (size * mm) / POINT_MM, colour, bold };
      pdf.place(shape.text, x + shape.x * mm, y + shape.y * mm, style, anchor);
    }
  }
}

function drawPath(doc: jsPDF, shape: PathShape, x: number, y: number, mm: number): void {
  const { commands, stroke, fill, width = 1, dash } = shape;
  if (commands.length < 2) return;
  if (stroke) {
    doc.setDrawColor(stroke);
    doc.setLineWidth(width * mm);
    doc.setLineDashPattern(dash ? dash.map((one) => one * mm) : [], 0);
  }
  if (fill) doc.setFillColor(fill);
  for (const command of commands)
    send(
      doc,
      command,
      (px) => x + px * mm,
      (py) => y + py * mm,
    );
  if (stroke && fill) doc.fillStroke();
  else if (fill) doc.fill();
  else doc.stroke();
  if (dash) doc.setLineDashPattern([], 0);
}

function send(
  doc: jsPDF,
  command: Command,
  px: (x: number) => number,
  py: (y: number) => number,
): void {
  const [op] = command;
  if (op === 'Z') doc.close();
  else if (op === 'C') {
    const [, a, b, c, d, e, f] = command;
    doc.curveTo(px(a), py(b), px(c), py(d), px(e), py(f));
  } else {
    const [, a, b] = command;
    if (op === 'M') doc.moveTo(px(a), py(b));
    else doc.lineTo(px(a), py(b));
  }
}
