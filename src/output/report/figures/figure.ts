/**
 * A picture as a list of shapes, drawn once and shown alike on the page (SVG) and in the PDF (vectors). Units are CSS
 * pixels (1/96 inch), y down; colours are for white paper.
 */
export interface Figure {
  readonly width: number;
  readonly height: number;
  /** What it shows, in words. */
  readonly alt: string;
  readonly shapes: readonly Shape[];
}

export type Shape = PathShape | TextShape;

/** Straight and cubic pieces; every curve is one of them, so that no renderer needs more. */
export type Command =
  | readonly ['M' | 'L', number, number]
  | readonly ['C', number, number, number, number, number, number]
  | readonly ['Z'];

export interface PathShape {
  readonly kind: 'path';
  readonly commands: readonly Command[];
  readonly stroke?: string;
  readonly fill?: string;
  readonly width?: number;
  readonly dash?: readonly number[];
}

export interface TextShape {
  readonly kind: 'text';
  readonly x: number;
  /** Of the baseline. */
  readonly y: number;
  readonly text: string;
  readonly size: number;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly colour: string;
  readonly bold?: boolean;
}

export type Look = Omit<PathShape, 'kind' | 'commands'>;

/** Ink on white paper; the data colours are those of the page in its light theme. */
export const INK = {
  text: '#1a1d1b',
  quiet: '#59605c',
  line: '#868d88',
  grid: '#dfe2de',
  wash: '#f0f2ef',
  part: '#d5dad7',
  partEdge: '#59605c',
  centres: '#0072b2',
  flees: '#c25100',
  holds: '#00795a',
  holdsWash: '#dcf0ea',
  pitch: '#1a1d1b',
  before: '#a8457f',
} as const;

export function path(commands: readonly Command[], look: Look): PathShape {
  return { kind: 'path', commands, ...look };
}

export function line(x1: number, y1: number, x2: number, y2: number, look: Look): PathShape {
  return path(
    [
      ['M', x1, y1],
      ['L', x2, y2],
    ],
    look,
  );
}

export function polygon(points: readonly (readonly [number, number])[], look: Look): PathShape {
  const commands = points.map(([x, y], i): Command => [i === 0 ? 'M' : 'L', x, y]);
  return path([...commands, ['Z']], look);
}

/** Bezier handles of a quarter turn: the circle is met within 0.03 % of its radius (textbook value). */
const QUARTER = 0.5522847498;

/** An ellipse with half axes a and b, its first axis turned by `turnDeg` (clockwise on the paper, since y is down). */
export function ellipse(
  cx: number,
  cy: number,
  a: number,
  b: number,
  look: Look,
  turnDeg = 0,
): PathShape {
  const turn = (turnDeg * Math.PI) / 180;
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  const at = (x: number, y: number) => [cx + x * c - y * s, cy + x * s + y * c] as const;
  const k = QUARTER;
  const piece = (
    p: readonly [number, number],
    q: readonly [number, number],
    r: readonly [number, number],
  ): Command => ['C', ...at(...p), ...at(...q), ...at(...r)];
  return path(
    [
      ['M', ...at(a, 0)],
      piece([a, k * b], [k * a, b], [0, b]),
      piece([-k * a, b], [-a, k * b], [-a, 0]),
      piece([-a, -k * b], [-k * a, -b], [0, -b]),
      piece([k * a, -b], [a, -k * b], [a, 0]),
      ['Z'],
    ],
    look,
  );
}

export function circle(cx: number, cy: number, r: number, look: Look): PathShape {
  return ellipse(cx, cy, r, r, look);
}

export function text(
  x: number,
  y: number,
  words: string,
  look: Partial<Pick<TextShape, 'size' | 'anchor' | 'colour' | 'bold'>> = {},
): TextShape {
  const { size = 10.5, anchor = 'start', colour = INK.text, bold = false } = look;
  return { kind: 'text', x, y, text: words, size, anchor, colour, bold };
}

/** An SVG path of the commands, to a hundredth of a pixel. */
export function pathData(commands: readonly Command[]): string {
  return commands
    .map(([op, ...numbers]) => op + numbers.map((one) => Math.round(one * 100) / 100).join(' '))
    .join('');
}

/** The same so far to the right and down. */
export function movedShape(shape: Shape, dx: number, dy: number): Shape {
  if (shape.kind === 'text') return { ...shape, x: shape.x + dx, y: shape.y + dy };
  return { ...shape, commands: shape.commands.map((command) => movedCommand(command, dx, dy)) };
}

function movedCommand(command: Command, dx: number, dy: number): Command {
  if (command[0] === 'Z') return command;
  if (command[0] === 'C') {
    const [op, a, b, c, d, e, f] = command;
    return [op, a + dx, b + dy, c + dx, d + dy, e + dx, f + dy];
  }
  const [op, x, y] = command;
  return [op, x + dx, y + dy];
}
