import type { PlotEdges } from '../../ui/drawn/axes';
import type { PlotCells, PlotPoints } from '../../ui/drawn/plotLayout';
import {
  type Command,
  circle,
  INK,
  type Look,
  line,
  path,
  polygon,
  type Shape,
} from '../report/figures/figure';

/** Fills of bands by their look; what is under them is seen through none, so the widest comes first. */
const BANDS: Readonly<Record<string, Look>> = {
  about: { fill: INK.holdsWash, stroke: INK.holds, width: 0.4 },
  wide: { fill: '#e6e9e6' },
  narrow: { fill: '#c3c8c4' },
};

export function bandLook(look: string): Look {
  return BANDS[look] ?? BANDS.about;
}

/** Lines of another slope for each kind, by the cell: those of neighbours go on in one another. */
const HATCHES: readonly Look[] = [
  { stroke: INK.quiet, width: 0.6 },
  { stroke: INK.flees, width: 0.9 },
  { stroke: INK.before, width: 0.7 },
  { stroke: INK.centres, width: 1.1 },
  { stroke: INK.line, width: 0.9 },
];

/** One cell with the lines of a kind: rising, falling, upright, level or crossed. */
export function hatchShape(
  kind: number,
  left: number,
  top: number,
  right: number,
  bottom: number,
): Shape {
  return path(hatchLines(kind, left, top, right, bottom), HATCHES[kind % HATCHES.length]);
}

function hatchLines(
  kind: number,
  left: number,
  top: number,
  right: number,
  bottom: number,
): Command[] {
  const rising: Command[] = [
    ['M', left, bottom],
    ['L', right, top],
  ];
  const falling: Command[] = [
    ['M', left, top],
    ['L', right, bottom],
  ];
  const [x, y] = [(left + right) / 2, (top + bottom) / 2];
  switch (kind % HATCHES.length) {
    case 0:
      return rising;
    case 1:
      return falling;
    case 2:
      return [
        ['M', x, top],
        ['L', x, bottom],
      ];
    case 3:
      return [
        ['M', left, y],
        ['L', right, y],
      ];
    default:
      return [...rising, ...falling];
  }
}

/** Every kind of area that is in the cells as one path, in the plane between the edges. */
export function cellShapes(
  { cells, columns, rows, kinds }: PlotCells,
  { left, right, top, bottom }: PlotEdges,
): Shape[] {
  const [dx, dy] = [(right - left) / columns, (bottom - top) / rows];
  return kinds.flatMap(({ bit }, kind) => {
    const lines: Command[] = [];
    cells.forEach((cell, i) => {
      if ((cell & bit) === 0) return;
      const [x, y] = [left + (i % columns) * dx, bottom - Math.floor(i / columns) * dy];
      lines.push(...hatchLines(kind, x, y - dy, x + dx, y));
    });
    return lines.length === 0 ? [] : [path(lines, HATCHES[kind % HATCHES.length])];
  });
}

const POINT = { up: INK.centres, down: INK.flees, round: INK.text } as const;
const WHITE = '#ffffff';

/** A point: filled where it points up, hollow else; ringed or crossed out. */
export function pointShape(
  shape: PlotPoints['shape'],
  state: PlotPoints['state'],
  x: number,
  y: number,
): Shape[] {
  const stroke = state === 'crossed' ? INK.quiet : POINT[shape];
  const look = { stroke, width: 1.1, fill: shape === 'up' && state !== 'crossed' ? stroke : WHITE };
  const to = shape === 'up' ? 1 : -1;
  const drawn =
    shape === 'round'
      ? circle(x, y, 2.8, look)
      : polygon(
          [
            [x - 3.6, y + 2.8 * to],
            [x, y - 3.6 * to],
            [x + 3.6, y + 2.8 * to],
          ],
          look,
        );
  if (state === 'ringed') return [drawn, circle(x, y, 6, { stroke: INK.before, width: 1.2 })];
  if (state === 'full') return [drawn];
  const ink = { stroke: INK.text, width: 1 };
  return [drawn, line(x - 5, y - 5, x + 5, y + 5, ink), line(x + 5, y - 5, x - 5, y + 5, ink)];
}

/** An interval from `low` to `high`, pixels. */
export function whiskerShape(x: number, low: number, high: number): Shape {
  return path(
    [
      ['M', x, low],
      ['L', x, high],
      ['M', x - 3, low],
      ['L', x + 3, low],
      ['M', x - 3, high],
      ['L', x + 3, high],
    ],
    { stroke: INK.text, width: 1 },
  );
}
