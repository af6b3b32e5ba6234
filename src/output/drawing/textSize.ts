import type { Box, TextEntity } from './sheetTypes';

/** Height of a capital over the size of the font, of the face in the PDF (its OS/2 table: 0.688); page faces are taller by up to 0.04. */
export const CAPITAL = 0.688;

/** Advance widths in thousandths of the font's size, from the space to the tilde, of the face in the PDF. */
const ADVANCES = [
  278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556,
  556, 556, 556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667,
  611, 778, 722, 278, 500, 667, 556, 833, 722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667,
  667, 611, 278, 278, 278, 469, 556, 333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500,
  222, 833, 556, 556, 556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584,
];
/** The same of further signs that stand on drawings. */
const SIGNS: Readonly<Record<string, number>> = {
  '\u00d8': 778,
  '\u00b1': 549,
  '\u00d7': 584,
  '\u00b0': 400,
  '\u00b5': 576,
  '\u00b2': 333,
  '\u00b3': 333,
  '\u2212': 584,
  '\u2026': 1000,
  '\u2013': 556,
  '\u2019': 222,
};
/** Any other sign: as wide as any letter of the face. */
const OTHER = 1000;

/** Air round a text, and what a program that knows neither face may need more. */
const WIDER = 1.1;

/** Length of a line of text in the face of the PDF, mm; what other faces are made to keep. */
export function textLength(text: string, height: number): number {
  let sum = 0;
  for (const sign of text) {
    sum += ADVANCES[(sign.codePointAt(0) ?? 0) - 32] ?? SIGNS[sign] ?? OTHER;
  }
  return (sum / 1000) * (height / CAPITAL);
}

/** Room that a line of text takes up along itself, mm. */
export function textWidth(text: string, height: number): number {
  return textLength(text, height) * WIDER;
}

/** Part of the height that descends below the base line. */
const DESCENT = 0.3;

export function textBox({ x, y, height, text, anchor, turned }: TextEntity): Box {
  const width = textWidth(text, height);
  const start = anchor === 'start' ? 0 : anchor === 'middle' ? -width / 2 : -width;
  return turned
    ? { x0: x - height, x1: x + DESCENT * height, y0: y + start, y1: y + start + width }
    : { x0: x + start, x1: x + start + width, y0: y - DESCENT * height, y1: y + height };
}

/** Blanks at which a line may end: all but those between a number and its unit. */
const BLANK = /(?<!\d(?= (?:mm|in|g|%|\u00b5m)(?![\p{L}]))) /u;

/** Breaks a text into lines no wider than `width`; a single word that is wider stays whole, and a number keeps its unit. */
export function wrapText(text: string, height: number, width: number): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(BLANK)) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line !== '' && textWidth(longer, height) > width) {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  return line === '' ? lines : [...lines, line];
}

/** A text made to fit: smaller down to `least`, then cut with an ellipsis. */
export function fittedText(
  text: string,
  height: number,
  width: number,
  least: number,
): { readonly text: string; readonly height: number } {
  const full = textWidth(text, height);
  if (full <= width) return { text, height };
  const fitted = Math.max(least, (height * width) / full);
  let shown = text;
  while (shown.length > 1 && textWidth(shown, fitted) > width + 1e-9) {
    shown = `${[...shown.replace(/\u2026$/, '')].slice(0, -1).join('').trimEnd()}\u2026`;
    if (shown === '\u2026') break;
  }
  return { text: shown, height: fitted };
}
