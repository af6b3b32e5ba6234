import type { FactsBlock, ListBlock } from '../model';

import type { TextStyle } from './pdfText';
import { bodyStyle, COLUMN_GAP, type Frame, HAIR, type Piece, QUIET, smallStyle } from './piece';

/** Each item by itself, the first and the last never alone on a page; or all of them in two columns as one piece. */
export function listPieces(frame: Frame, { items, columns }: ListBlock): Piece[] {
  if (columns === 2) {
    const width = (frame.width - COLUMN_GAP) / 2;
    const placed = shareOut(
      items.map((item) => [itemRow(frame, item, width)]),
      2,
    );
    return [columnsPiece(frame, placed, width)];
  }
  return items.map((item, i) => {
    const row = itemRow(frame, item, frame.width);
    return {
      height: row.height + (i === items.length - 1 ? 1.2 : 0),
      keepWithNext: (i === 0 && items.length > 1) || i === items.length - 2,
      draw: (top) => row.draw(frame.left, top),
    };
  });
}

function itemRow(frame: Frame, item: string, width: number): Row {
  const { pdf } = frame;
  const style = bodyStyle(frame);
  const lines = pdf.lines(item, width - 4, style);
  return {
    height: lines.length * pdf.lineHeight(style) + 0.3,
    draw(x, top) {
      pdf.draw(pdf.lines('\u2022', 4, style), x + 0.8, top, style);
      pdf.draw(lines, x + 4, top, style);
    },
  };
}

function columnsPiece(frame: Frame, placed: readonly Row[][], columnWidth: number): Piece {
  return {
    height: Math.max(...placed.map(heightOf)) + 1.6,
    keepWithNext: false,
    draw(top) {
      placed.forEach((rows, i) => {
        let y = top;
        for (const row of rows) {
          row.draw(frame.left + i * (columnWidth + COLUMN_GAP), y);
          y += row.height;
        }
      });
    },
  };
}

/** A line of a column. */
interface Row {
  readonly height: number;
  draw(x: number, top: number): void;
}

/** Facts in three columns, filled one after the other; a group's heading goes with its first fact. */
export function factsPiece(frame: Frame, blocks: readonly FactsBlock[]): Piece {
  const columns = 3;
  const columnWidth = (frame.width - (columns - 1) * COLUMN_GAP) / columns;
  const groups = blocks.map((block) => factRows(frame, block, columnWidth));
  // One group is spread over the columns; several stay whole.
  const units: Row[][] = groups.length === 1 ? groups[0].map((row) => [row]) : groups;
  return columnsPiece(frame, shareOut(units, columns), columnWidth);
}

/** In order, with the least height of the highest column: the limit is raised until all fits. */
function shareOut(units: readonly Row[][], columns: number): Row[][] {
  const whole = units.reduce((sum, rows) => sum + heightOf(rows), 0);
  for (let limit = whole / columns; ; limit += Math.max(0.5, whole / 100)) {
    const found: Row[][] = [[]];
    let used = 0;
    for (const unit of units) {
      const own = heightOf(unit);
      if (used > 0 && used + own > limit + 1e-6) {
        found.push([]);
        used = 0;
      }
      found[found.length - 1].push(...unit);
      used += own;
    }
    if (found.length <= columns) return found;
  }
}

function heightOf(rows: readonly Row[]): number {
  return rows.reduce((sum, row) => sum + row.height, 0);
}

function factRows(frame: Frame, { title, facts }: FactsBlock, width: number): Row[] {
  const { pdf } = frame;
  const style = smallStyle(frame);
  const label: TextStyle = { ...style, colour: QUIET };
  const rows = facts.map((fact): Row => {
    // A long value stands under its label.
    const long = pdf.width(fact.value, style) > 1.6 * width;
    const [labelWidth, valueWidth] = long ? [width, width] : [0.53 * width, 0.47 * width - 1];
    const labels = pdf.lines(fact.label, labelWidth - 1, label);
    const values = pdf.lines(fact.value, valueWidth, style);
    const step = pdf.lineHeight(style);
    const height =
      (long ? labels.length + values.length : Math.max(labels.length, values.length)) * step;
    return {
      height: height + 0.5,
      draw(x, top) {
        pdf.draw(labels, x, top, label);
        if (long) pdf.draw(values, x, top + labels.length * step, style);
        else pdf.draw(values, x + labelWidth + 1, top, style, 'right', valueWidth);
        pdf.doc.setDrawColor(HAIR);
        pdf.doc.setLineWidth(0.1);
        pdf.doc.line(x, top + height + 0.2, x + width, top + height + 0.2);
      },
    };
  });
  if (title === null) return rows;
  const bold: TextStyle = { ...style, bold: true };
  const heading: Row = {
    height: pdf.lineHeight(bold) + 1.3,
    draw: (x, top) => void pdf.draw(pdf.lines(title, width, bold), x, top + 0.9, bold),
  };
  return [heading, ...rows];
}
