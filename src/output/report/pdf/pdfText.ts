import type { jsPDF } from 'jspdf';
import { printableSigns } from '../../pdfSigns';

/** The family in the document; regular and bold are embedded (see `fonts`). */
export const FAMILY = 'Report';
export const POINT_MM = 25.4 / 72;

export interface TextStyle {
  readonly size: number;
  readonly bold?: boolean;
  readonly colour?: string;
}

/** A piece of a line in one go; the index of a symbol ("J_yy") stands lower and smaller. */
interface Run {
  readonly text: string;
  readonly low: boolean;
}

export interface TextLine {
  readonly runs: readonly Run[];
  readonly width: number;
}

const LOW_SIZE = 0.72;
const LOW_DROP = 0.18;
const LINE = 1.24;
/** Measures, breaks and draws text in millimetres; sizes are points. Widths are remembered. */
export class PdfText {
  private readonly widths = new Map<string, number>();

  constructor(readonly doc: jsPDF) {}

  /** Lines no wider than `width` mm: broken at blanks; in a word that is wider at a firm blank, else anywhere. */
  lines(text: string, width: number, style: TextStyle): TextLine[] {
    return text.split('\n').flatMap((paragraph) => this.paragraph(paragraph, width, style));
  }

  private paragraph(text: string, width: number, style: TextStyle): TextLine[] {
    const lines: TextLine[] = [];
    let current = '';
    const push = () => {
      lines.push({ runs: runsOf(current), width: this.width(current, style) });
      current = '';
    };
    for (const word of this.printable(text, style).split(' ')) {
      const longer = current === '' ? word : `${current} ${word}`;
      if (this.width(longer, style) <= width) {
        current = longer;
        continue;
      }
      if (current !== '') push();
      current = word;
      while (this.width(current, style) > width && current.length > 1) {
        const rest = current;
        current = this.fitting(rest, width, style);
        const after = rest.slice(current.length);
        push();
        current = after.replace(/^\u00a0/, '');
      }
    }
    push();
    return lines;
  }

  private fitting(word: string, width: number, style: TextStyle): string {
    let length = word.length - 1;
    while (length > 1 && this.width(word.slice(0, length), style) > width) length--;
    const blank = word.lastIndexOf('\u00a0', length);
    return word.slice(0, blank > 0 ? blank : length);
  }

  width(text: string, style: TextStyle): number {
    return runsOf(text).reduce((sum, run) => sum + this.runWidth(run, style), 0);
  }

  private runWidth({ text, low }: Run, { size, bold = false }: TextStyle): number {
    const key = `${bold}${text}`;
    let atOnePoint = this.widths.get(key);
    if (atOnePoint === undefined) {
      this.doc.setFont(FAMILY, bold ? 'bold' : 'normal');
      this.doc.setFontSize(10);
      atOnePoint = this.doc.getTextWidth(text) / 10;
      this.widths.set(key, atOnePoint);
    }
    return atOnePoint * size * (low ? LOW_SIZE : 1);
  }

  lineHeight({ size }: TextStyle): number {
    return LINE * size * POINT_MM;
  }

  /** Draws lines from their top edge down; `align` within `width`. Returns the height used. */
  draw(
    lines: readonly TextLine[],
    x: number,
    top: number,
    style: TextStyle,
    align: 'left' | 'right' = 'left',
    width = 0,
  ): number {
    const step = this.lineHeight(style);
    lines.forEach((line, i) => {
      const left = align === 'left' ? x : x + width - line.width;
      this.drawLine(line.runs, left, top + i * step + 0.94 * style.size * POINT_MM, style);
    });
    return lines.length * step;
  }

  /** One line of text from its baseline. */
  drawLine(runs: readonly Run[], x: number, baseline: number, style: TextStyle): void {
    const { doc } = this;
    let at = x;
    for (const run of runs) {
      if (run.text === '') continue;
      doc.setFont(FAMILY, style.bold ? 'bold' : 'normal');
      doc.setTextColor(style.colour ?? '#1a1d1b');
      doc.setFontSize(run.low ? LOW_SIZE * style.size : style.size);
      doc.text(run.text, at, baseline + (run.low ? LOW_DROP * style.size * POINT_MM : 0));
      at += this.runWidth(run, style);
    }
  }

  /** A short text anchored at a point on its baseline. */
  place(
    text: string,
    x: number,
    baseline: number,
    style: TextStyle,
    anchor: 'start' | 'middle' | 'end',
  ): void {
    const shown = this.printable(text, style);
    const width = this.width(shown, style);
    const shift = { start: 0, middle: width / 2, end: width }[anchor];
    this.drawLine(runsOf(shown), x - shift, baseline, style);
  }

  /** With signs that the font has; a question mark for any other. */
  private printable(text: string, { bold = false }: TextStyle): string {
    this.doc.setFont(FAMILY, bold ? 'bold' : 'normal');
    return printableSigns(this.doc, text);
  }
}

function runsOf(text: string): Run[] {
  return text.split(/((?<![\w-])[IJ]_[xyz]{2}(?![\w-]))/).flatMap((piece, i): Run[] => {
    if (i % 2 === 0) return piece === '' ? [] : [{ text: piece, low: false }];
    const [letter, index] = piece.split('_');
    return [
      { text: letter, low: false },
      { text: index, low: true },
    ];
  });
}
