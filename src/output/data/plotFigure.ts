import { type PlotData, plotLayout } from '../../ui/drawn/plotLayout';
import {
  type Command,
  type Figure,
  INK,
  type Look,
  line,
  path,
  polygon,
  type Shape,
  text,
} from '../report/figures/figure';

const WIDTH = 520;
const HEIGHT = 300;
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

/** A small plot of the page for paper: axes with their titles, lines with their names at the right, band and marks. */
export function plotFigure(data: PlotData, alt: string): Figure {
  const layout = plotLayout(data, WIDTH, HEIGHT, SIZE);
  const { left, right, top, bottom } = layout.edges;
  const thin = { stroke: INK.grid, width: 0.6 };
  const shapes: Shape[] = [
    ...layout.xTicks.flatMap(({ at, text: number }) => [
      line(at, top, at, bottom, thin),
      text(at, bottom + 14, number, { ...SMALL, anchor: 'middle' }),
    ]),
    ...layout.yTicks.flatMap(({ at, text: number }) => [
      line(left, at, right, at, thin),
      text(left - 6, at + 4, number, { ...SMALL, anchor: 'end' }),
    ]),
    ...bandShapes(layout),
    line(left, layout.zeroY, right, layout.zeroY, { stroke: INK.line, width: 0.9 }),
    ...layout.lines.map((heights, i) =>
      path(commands(layout.px, heights), lookOf(data.lines[i].look)),
    ),
    ...layout.names.map((y, i) => {
      const { name, look } = data.lines[i];
      const colour = lookOf(look).stroke ?? INK.text;
      return text(right + 8, y, name, { size: SIZE, colour, bold: look === 'total' });
    }),
    ...layout.marks.flatMap(({ at, y, text: words }) => [
      line(at, top, at, bottom, { stroke: INK.quiet, width: 0.9, dash: [4, 3] }),
      text(at - 4, y, words, { ...SMALL, anchor: 'end' }),
    ]),
    text(right, HEIGHT - 4, data.xTitle, { ...SMALL, anchor: 'end' }),
    text(left, 12, data.yTitle, SMALL),
  ];
  return { width: WIDTH, height: HEIGHT, alt, shapes };
}

function lookOf(look: string): Look {
  return LOOKS[look] ?? LOOKS.total;
}

function bandShapes({ band, px }: ReturnType<typeof plotLayout>): Shape[] {
  if (!band) return [];
  const known = px.map((_, i) => i).filter((i) => !Number.isNaN(band.low[i] + band.high[i]));
  if (known.length < 2) return [];
  const over = known.map((i) => [px[i], band.high[i]] as const);
  const under = known.toReversed().map((i) => [px[i], band.low[i]] as const);
  return [polygon([...over, ...under], { fill: INK.holdsWash, stroke: INK.holds, width: 0.4 })];
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
