import { type PlotData, type PlotLayout, plotLayout } from '../../ui/drawn/plotLayout';
import {
  type Command,
  type Figure,
  INK,
  type Look,
  line,
  movedShape,
  path,
  polygon,
  type Shape,
  text,
} from '../report/figures/figure';
import { axisShapes } from '../report/figures/plotShapes';
import { bandLook, cellShapes, pointShape, whiskerShape } from './plotAreas';
import { plotKey } from './plotKey';

const WIDTH = 520;
const HEIGHT = 300;
/** Of each of two fields, one under the other. */
const LOWER = 200;
const SIZE = 10.5;
const SMALL = { size: SIZE, colour: INK.quiet } as const;

/** Colour and dash of a line by its look; as on the page in its light theme. */
const LOOKS: Readonly<Record<string, Look>> = {
  total: { stroke: INK.text, width: 2 },
  '1': { stroke: INK.centres, width: 1.3, dash: [9, 4] },
  '2': { stroke: INK.flees, width: 1.3, dash: [2, 3] },
  '3': { stroke: INK.holds, width: 1.3, dash: [9, 3, 2, 3] },
  '4': { stroke: INK.before, width: 1.3, dash: [5, 3] },
};

/**
 * A small plot of the page for paper: axes with their titles, areas, lines with their names at the right, points and marks,
 * and under it what the areas and points mean. Another quantity over the same x stands below.
 */
export function plotFigure(data: PlotData, alt: string): Figure {
  const { below } = data;
  const first = field(data, below ? LOWER : HEIGHT);
  if (!below) return { width: WIDTH, height: first.height, alt, shapes: first.shapes };
  const second = field(below, LOWER);
  const lower = second.shapes.map((shape) => movedShape(shape, 0, first.height));
  const shapes = [...first.shapes, ...lower];
  return { width: WIDTH, height: first.height + second.height, alt, shapes };
}

/** `height` is without the key. */
function field(data: PlotData, height: number) {
  const layout = plotLayout(data, WIDTH, height, SIZE);
  const { left, right } = layout.edges;
  const key = plotKey(data, left, WIDTH);
  const shapes: Shape[] = [
    ...(data.cells ? cellShapes(data.cells, layout.edges) : []),
    ...layout.bands.flatMap((band) => bandShapes(layout.px, band)),
    ...axisShapes(layout.edges, { x: layout.xTicks, y: layout.yTicks }, layout.zeroY, SIZE),
    ...layout.lines.map((heights, i) =>
      path(commands(layout.px, heights), lookOf(data.lines[i].look)),
    ),
    ...layout.names.map((y, i) => {
      const { name, look } = data.lines[i];
      const colour = lookOf(look).stroke ?? INK.text;
      return text(right + 8, y, name, { size: SIZE, colour, bold: look === 'total' });
    }),
    ...layout.points.flatMap(placedPoints),
    ...markShapes(layout),
    text(right, height - 4, data.xTitle, { ...SMALL, anchor: 'end' }),
    text(left, 12, data.yTitle, SMALL),
    ...key.shapes.map((shape) => movedShape(shape, 0, height)),
  ];
  return { shapes, height: height + key.height };
}

function lookOf(look: string): Look {
  return LOOKS[look] ?? LOOKS.total;
}

function markShapes({ marks, edges }: PlotLayout): Shape[] {
  return marks.flatMap(({ at, x, y, anchor, text: words }) => [
    line(at, edges.top, at, edges.bottom, { stroke: INK.quiet, width: 0.9, dash: [4, 3] }),
    text(x, y, words, { ...SMALL, anchor }),
  ]);
}

function bandShapes(
  px: readonly number[],
  { look, low, high }: PlotLayout['bands'][number],
): Shape[] {
  const known = px.map((_, i) => i).filter((i) => !Number.isNaN(low[i] + high[i]));
  if (known.length < 2) return [];
  const over = known.map((i) => [px[i], high[i]] as const);
  const under = known.toReversed().map((i) => [px[i], low[i]] as const);
  return [polygon([...over, ...under], bandLook(look))];
}

function placedPoints({ shape, state, x, y, low, high }: PlotLayout['points'][number]): Shape[] {
  return x.flatMap((at, i) => [
    ...(low.length > 0 ? [whiskerShape(at, low[i], high[i])] : []),
    ...pointShape(shape, state, at, y[i]),
  ]);
}

/** NaN lifts the pen. */
function commands(xs: readonly number[], ys: readonly number[]): Command[] {
  const drawn: Command[] = [];
  let down = false;
  xs.forEach((x, i) => {
    const known = !Number.isNaN(ys[i]);
    if (known) drawn.push([down ? 'L' : 'M', x, ys[i]]);
    down = known;
  });
  return drawn;
}
