import type { BesideBlock, FigureItem } from '../model';
import { t } from '../roomText';
import { drawFigure, PIXEL_MM } from './pdfFigure';
import type { PdfText } from './pdfText';
import { COLUMN_GAP, type Frame, type Piece, smallStyle } from './piece';
import { tablePieces } from './tablePieces';

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
  const { dataUrl } = item.picture;
  const format = dataUrl.startsWith('data:image/jpeg') ? 'JPEG' : 'PNG';
  pdf.doc.addImage(dataUrl, format, x, y, size.width, size.height, t('report.picture'), 'MEDIUM');
}
