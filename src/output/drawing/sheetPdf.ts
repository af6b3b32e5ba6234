import type { jsPDF } from 'jspdf';
import { spokenLanguage } from '../../messages/languages';
import { base64Of } from '../base64';
import { printableSigns } from '../pdfSigns';
import { arrowCorners } from './sheetSvg';
import {
  type ArcEntity,
  type Entity,
  LINE_STYLES,
  type Sheet,
  type TextEntity,
} from './sheetTypes';
import { CAPITAL } from './textSize';

const FACE = 'LiberationSans';
const POINTS_PER_MM = 72 / 25.4;

/**
 * The sheet as a PDF in its own size: vectors, and text in the embedded face, whose file (TrueType) is given so
 * that signs beyond Latin 1 come out right.
 */
export async function sheetPdf(
  sheet: Sheet,
  font: Uint8Array,
  created: Date,
): Promise<ArrayBuffer> {
  const { jsPDF: Pdf } = await import('jspdf');
  const { width, height } = sheet.format;
  const orientation = width > height ? 'landscape' : 'portrait';
  const pdf = new Pdf({ unit: 'mm', format: [width, height], orientation, compress: true });
  pdf.setProperties({ title: sheet.title, creator: 'Stillgrip' });
  pdf.setLanguage(spokenLanguage());
  pdf.setCreationDate(created);
  pdf.addFileToVFS('sheet.ttf', base64Of(font));
  pdf.addFont('sheet.ttf', FACE, 'normal');
  pdf.setFont(FACE, 'normal');
  pdf.setLineCap('round');
  for (const one of sheet.entities) draw(pdf, one, height);
  return pdf.output('arraybuffer');
}

function draw(pdf: jsPDF, one: Entity, height: number): void {
  if (one.shape === 'text') {
    drawText(pdf, one, height);
    return;
  }
  if (one.shape === 'arrow') {
    const [a, b, c] = arrowCorners(one);
    pdf.triangle(a[0], height - a[1], b[0], height - b[1], c[0], height - c[1], 'F');
    return;
  }
  const { width, dashes } = LINE_STYLES[one.layer];
  pdf.setLineWidth(width);
  pdf.setLineDashPattern(dashes ? [...dashes] : [], 0);
  if (one.shape === 'line') pdf.line(one.x1, height - one.y1, one.x2, height - one.y2);
  else if (one.shape === 'circle') pdf.circle(one.x, height - one.y, one.r, 'S');
  else drawArc(pdf, one, height);
}

/** Anchored by hand: the library anchors a turned text along the page, and a text of several lines it would spread. */
function drawText(pdf: jsPDF, one: TextEntity, height: number): void {
  const text = printableSigns(pdf, one.text);
  pdf.setFontSize((one.height / CAPITAL) * POINTS_PER_MM);
  const share = { start: 0, middle: 0.5, end: 1 }[one.anchor];
  const back = share * pdf.getTextWidth(text);
  if (one.turned) pdf.text(text, one.x, height - one.y + back, { angle: 90 });
  else pdf.text(text, one.x - back, height - one.y);
}

/** Bezier curves of at most 30 degrees: 1e-7 of the radius off. */
function drawArc(pdf: jsPDF, { x, y, r, from, to }: ArcEntity, height: number): void {
  const sweep = (((to - from) % 360) + 360) % 360 || 360;
  const count = Math.ceil(sweep / 30);
  const step = ((sweep / count) * Math.PI) / 180;
  const reach = (4 / 3) * Math.tan(step / 4) * r;
  const start = (from * Math.PI) / 180;
  const curves: number[][] = [];
  const at = (angle: number) => [x + r * Math.cos(angle), height - y - r * Math.sin(angle)];
  const [x0, y0] = at(start);
  for (let k = 0; k < count; k++) {
    const [a, b] = [start + k * step, start + (k + 1) * step];
    const [ax, ay] = at(a);
    const [bx, by] = at(b);
    curves.push([
      -reach * Math.sin(a),
      -reach * Math.cos(a),
      bx + reach * Math.sin(b) - ax,
      by + reach * Math.cos(b) - ay,
      bx - ax,
      by - ay,
    ]);
  }
  pdf.lines(curves, x0, y0, [1, 1], 'S', false);
}
