import { type Figure, pathData, type Shape } from '../report/figures/figure';
import { xmlText } from '../solids/xmlText';

/** What stands above a picture: a title, and lines under it. */
export interface SheetWords {
  readonly title: string;
  readonly lines: readonly string[];
}

const MARGIN = 12;
const TITLE = 22;
const LINE = 15;
const SIZE = 10.5;
/** Letters of this type are at most about this wide, as a share of their size. */
const LETTER = 0.56;

/**
 * A drawing as an SVG file of its own, `width` CSS pixels wide: white ground, title and lines above. Nothing outside it is
 * referred to. Its own key is part of the drawing.
 */
export function figureSheet(figure: Figure, { title, lines }: SheetWords, width: number): string {
  const whole = figure.width + 2 * MARGIN;
  const shown = lines.flatMap((line) => wrapped(line, figure.width));
  const top = MARGIN + TITLE + LINE * shown.length + 4;
  const height = top + figure.height + MARGIN;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${round((height * width) / whole)}" viewBox="0 0 ${whole} ${height}" font-family="Inter, Arial, sans-serif" role="img">\n`,
    `<title>${xmlText(title)}</title>\n<desc>${xmlText(figure.alt)}</desc>\n`,
    `<rect width="${whole}" height="${height}" fill="#ffffff"/>\n`,
    textAt(MARGIN, MARGIN + 14, title, 'font-size="15" font-weight="600" fill="#1a1d1b"'),
    ...shown.map((line, i) =>
      textAt(MARGIN, MARGIN + TITLE + LINE * i + 11, line, `font-size="${SIZE}" fill="#59605c"`),
    ),
    `<g transform="translate(${MARGIN} ${top})">\n`,
    ...figure.shapes.map(shapeSvg),
    '</g>\n</svg>\n',
  ].join('');
}

function shapeSvg(shape: Shape): string {
  if (shape.kind === 'text') {
    const weight = shape.bold ? ' font-weight="600"' : '';
    const look = `font-size="${shape.size}" text-anchor="${shape.anchor}" fill="${shape.colour}"${weight}`;
    return textAt(shape.x, shape.y, shape.text, look);
  }
  const { stroke, fill, width = 1, dash } = shape;
  const dashes = dash ? ` stroke-dasharray="${dash.join(' ')}"` : '';
  const line = stroke
    ? ` stroke="${stroke}" stroke-width="${width}" stroke-linejoin="round"${dashes}`
    : '';
  return `<path d="${pathData(shape.commands)}" fill="${fill ?? 'none'}"${line}/>\n`;
}

function textAt(x: number, y: number, words: string, look: string): string {
  return `<text x="${round(x)}" y="${round(y)}" ${look}>${xmlText(words)}</text>\n`;
}

/** Lines that fit into a width, broken between words. */
function wrapped(line: string, width: number): string[] {
  const most = Math.floor(width / (SIZE * LETTER));
  const lines: string[] = [];
  let current = '';
  for (const word of line.split(' ')) {
    if (current !== '' && current.length + 1 + word.length > most) {
      lines.push(current);
      current = word;
    } else current = current === '' ? word : `${current} ${word}`;
  }
  return [...lines, current];
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
