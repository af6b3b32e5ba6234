import type { Figure, PathShape, TextShape } from '../report/figures/figure';

/** What of a canvas' context a drawing needs. */
export type Paper = Pick<
  CanvasRenderingContext2D,
  | 'beginPath'
  | 'moveTo'
  | 'lineTo'
  | 'bezierCurveTo'
  | 'closePath'
  | 'fill'
  | 'stroke'
  | 'fillText'
  | 'setLineDash'
  | 'scale'
  | 'fillStyle'
  | 'strokeStyle'
  | 'lineWidth'
  | 'lineJoin'
  | 'font'
  | 'textAlign'
  | 'textBaseline'
>;

const ANCHORS = { start: 'left', middle: 'center', end: 'right' } as const;

/** Draws a figure in its own units times `scale`, in a font that the page has loaded. */
export function paintFigure(paper: Paper, { shapes }: Figure, scale: number, font: string): void {
  paper.scale(scale, scale);
  paper.lineJoin = 'round';
  for (const shape of shapes) {
    if (shape.kind === 'text') paintText(paper, shape, font);
    else paintPath(paper, shape);
  }
}

function paintText(
  paper: Paper,
  { x, y, text, size, anchor, colour, bold }: TextShape,
  font: string,
) {
  paper.font = `${bold ? 600 : 400} ${size}px ${font}`;
  paper.textAlign = ANCHORS[anchor];
  paper.textBaseline = 'alphabetic';
  paper.fillStyle = colour;
  paper.fillText(text, x, y);
}

function paintPath(paper: Paper, { commands, stroke, fill, width = 1, dash }: PathShape): void {
  paper.beginPath();
  for (const command of commands) {
    if (command[0] === 'M') paper.moveTo(command[1], command[2]);
    else if (command[0] === 'L') paper.lineTo(command[1], command[2]);
    else if (command[0] === 'C') {
      const [, a, b, c, d, e, f] = command;
      paper.bezierCurveTo(a, b, c, d, e, f);
    } else paper.closePath();
  }
  if (fill) {
    paper.fillStyle = fill;
    paper.fill();
  }
  if (!stroke) return;
  paper.strokeStyle = stroke;
  paper.lineWidth = width;
  paper.setLineDash(dash ? [...dash] : []);
  paper.stroke();
}
