import { type Figure, movedShape, polygon, type Shape, text } from '../report/figures/figure';

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
const WHITE = '#ffffff';

/** A drawing on a white ground, with a title and lines above it where they are wanted; its own key is part of it. */
export function figureSheet(figure: Figure, words: SheetWords | null): Figure {
  const width = figure.width + 2 * MARGIN;
  const above = words ? wordShapes(words, figure.width) : [];
  const top = MARGIN + (words ? TITLE + LINE * (above.length - 1) + 4 : 0);
  const height = top + figure.height + MARGIN;
  const corners = [
    [0, 0],
    [width, 0],
    [width, height],
    [0, height],
  ] as const;
  return {
    width,
    height,
    alt: words ? `${words.title}. ${figure.alt}` : figure.alt,
    shapes: [
      polygon(corners, { fill: WHITE }),
      ...above,
      ...figure.shapes.map((shape) => movedShape(shape, MARGIN, top)),
    ],
  };
}

function wordShapes({ title, lines }: SheetWords, width: number): Shape[] {
  return [
    text(MARGIN, MARGIN + 14, title, { size: 15, bold: true }),
    ...lines
      .flatMap((line) => wrapped(line, width))
      .map((line, i) =>
        text(MARGIN, MARGIN + TITLE + LINE * i + 11, line, { size: SIZE, colour: '#59605c' }),
      ),
  ];
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
