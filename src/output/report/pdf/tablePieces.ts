import type { TableBlock } from '../model';

import type { PdfText, TextStyle } from './pdfText';
import { type Frame, HAIR, type Piece, RULE, smallStyle } from './piece';

/** A table in one piece; one that is higher than a page in as many as it needs, the heading over each. */
export function tablePieces(frame: Frame, table: TableBlock): Piece[] {
  const set = tableSetter(frame, table);
  const pieces: Piece[] = [];
  let from = 0;
  while (from < table.rows.length || pieces.length === 0) {
    let to = from;
    let height = set.headHeight;
    while (to < table.rows.length && height + set.rowHeights[to] <= frame.height - 14) {
      height += set.rowHeights[to];
      to++;
    }
    const [first, last] = [from, Math.max(to, from + 1)];
    pieces.push({
      height: height + 2.4,
      keepWithNext: false,
      draw: (top) => set.draw(top, first, last),
    });
    from = last;
  }
  return pieces;
}

function tableSetter(frame: Frame, { caption, columns, rows, sum = false }: TableBlock) {
  const { pdf, left, width } = frame;
  const style = smallStyle(frame);
  const bold: TextStyle = { ...style, bold: true };
  const pad = 1.2;
  const shares = columns.reduce((total, { share }) => total + share, 0);
  const widths = columns.map(({ share }) => (width * share) / shares);
  const lefts = widths.map((_, i) => left + widths.slice(0, i).reduce((a, b) => a + b, 0));
  const isSum = (row: number) => sum && row === rows.length - 1;
  const linesOf = (cells: readonly string[], look: TextStyle) =>
    cells.map((cell, i) => pdf.lines(cell, widths[i] - 2 * pad, look));
  const step = pdf.lineHeight(style);
  const heightOfCells = (cells: readonly (readonly unknown[])[]) =>
    Math.max(1, ...cells.map((lines) => lines.length)) * step + 0.55;
  const head = linesOf(
    columns.map(({ title }) => title),
    bold,
  );
  const captionLines = pdf.lines(caption, width, bold);
  const captionHeight = captionLines.length * step + 0.6;
  const body = rows.map((cells, row) => linesOf(cells, isSum(row) ? bold : style));

  function drawRow(cells: readonly ReturnType<PdfText['lines']>[], top: number, look: TextStyle) {
    cells.forEach((lines, i) => {
      pdf.draw(lines, lefts[i] + pad, top + 0.25, look, columns[i].align, widths[i] - 2 * pad);
    });
  }
  function rule(y: number, colour: string, thickness: number) {
    pdf.doc.setDrawColor(colour);
    pdf.doc.setLineWidth(thickness);
    pdf.doc.line(left, y, left + width, y);
  }
  return {
    headHeight: captionHeight + heightOfCells(head),
    rowHeights: body.map(heightOfCells),
    draw(top: number, from: number, to: number): void {
      pdf.draw(captionLines, left, top, bold);
      let y = top + captionHeight;
      rule(y, RULE, 0.25);
      drawRow(head, y, bold);
      y += heightOfCells(head);
      rule(y, RULE, 0.25);
      for (let row = from; row < to && row < body.length; row++) {
        if (isSum(row)) rule(y, RULE, 0.25);
        drawRow(body[row], y, isSum(row) ? bold : style);
        y += heightOfCells(body[row]);
        rule(y, HAIR, 0.1);
      }
    },
  };
}
