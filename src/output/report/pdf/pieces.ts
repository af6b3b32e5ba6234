import { t } from '../../../messages';
import type {
  BesideBlock,
  FactsBlock,
  FigureItem,
  ListBlock,
  ReportTitle,
  TableBlock,
  TextBlock,
} from '../model';
import { drawFigure, PIXEL_MM } from './pdfFigure';
import type { PdfText, TextStyle } from './pdfText';

/** Something that is not cut: a paragraph, a whole table, a row of pictures. Heights in mm, the gap below included. */
export interface Piece {
  readonly height: number;
  /** Must not stand last on a page. */
  readonly keepWithNext: boolean;
  draw(top: number): void;
}

/** Where pieces are set: the left edge and width of the text, and the scale of its type. */
export interface Frame {
  readonly pdf: PdfText;
  readonly left: number;
  readonly width: number;
  /** Height of a page between its margins. */
  readonly height: number;
  /** 1: body of 8.6 points. */
  readonly scale: number;
}

const QUIET = '#59605c';
const RULE = '#868d88';
const HAIR = '#d0d4d0';
const COLUMN_GAP = 5;

export function bodyStyle({ scale }: Frame): TextStyle {
  return { size: 8.6 * scale };
}

function smallStyle({ scale }: Frame): TextStyle {
  return { size: 7.8 * scale };
}

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

/** Each item by itself, or all of them in two columns as one piece. */
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
      keepWithNext: false,
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

/** Highest picture of the stage on paper, mm; with smaller type it gives way more than in proportion. */
const PICTURE_HEIGHT = 62;
const FIGURE_GAP = 3;

/** Pictures side by side, each with its caption below. */
export function figuresPiece(frame: Frame, items: readonly FigureItem[]): Piece {
  const { pdf, left, width } = frame;
  const style = smallStyle(frame);
  const wanted = items.map((item) => sizeOf(item, frame));
  const whole = wanted.reduce((sum, one) => sum + one.width, 0) + FIGURE_GAP * (items.length - 1);
  const fit = Math.min(1, width / whole);
  const sizes = wanted.map((one) => ({ width: fit * one.width, height: fit * one.height }));
  const height = Math.max(...sizes.map((one) => one.height));
  return {
    height: height + pdf.lineHeight(style) + 2,
    keepWithNext: false,
    draw(top) {
      let x = left;
      items.forEach((item, i) => {
        const own = sizes[i];
        drawItem(pdf, item, x, top, own);
        pdf.draw(pdf.lines(item.caption, own.width, style), x, top + height + 0.6, style);
        x += own.width + FIGURE_GAP;
      });
    },
  };
}

function sizeOf(item: FigureItem, { width, scale }: Frame): Size {
  if (item.kind === 'drawn') {
    const { figure } = item;
    return {
      width: figure.width * PIXEL_MM * scale,
      height: figure.height * PIXEL_MM * scale,
    };
  }
  if (item.kind === 'none') return { width, height: 8 };
  const { picture } = item;
  const height = Math.min(PICTURE_HEIGHT * scale ** 2, (width * picture.height) / picture.width);
  return { width: (height * picture.width) / picture.height, height };
}

/** A picture on the left, a table that is never cut on the right. */
export function besidePiece(frame: Frame, { figure, table }: BesideBlock): Piece {
  const size = sizeOf(figure, frame);
  const share = Math.min(size.width, frame.width / 2 - COLUMN_GAP);
  const picture = figuresPiece({ ...frame, width: share }, [figure]);
  const left = frame.left + share + COLUMN_GAP;
  const [right] = tablePieces({ ...frame, left, width: frame.width - share - COLUMN_GAP }, table);
  return {
    height: Math.max(picture.height, right.height),
    keepWithNext: false,
    draw(top) {
      picture.draw(top);
      right.draw(top);
    },
  };
}

interface Size {
  readonly width: number;
  readonly height: number;
}

function drawItem(pdf: PdfText, item: FigureItem, x: number, y: number, size: Size): void {
  if (item.kind === 'drawn') {
    drawFigure(pdf, item.figure, x, y, size.width / (item.figure.width * PIXEL_MM));
    return;
  }
  if (item.kind === 'none') {
    pdf.doc.setDrawColor(HAIR);
    pdf.doc.setLineWidth(0.2);
    pdf.doc.rect(x, y, size.width, size.height);
    pdf.place(item.words, x + size.width / 2, y + 5, { size: 8, colour: QUIET }, 'middle');
    return;
  }
  const { dataUrl } = item.picture;
  const format = dataUrl.startsWith('data:image/jpeg') ? 'JPEG' : 'PNG';
  pdf.doc.addImage(dataUrl, format, x, y, size.width, size.height, t('report.picture'), 'MEDIUM');
}
