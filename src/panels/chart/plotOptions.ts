import { significant } from '../../state/quantities';
import type { ChartTheme } from './chartTheme';
import type { uPlot } from './uplot';

/** A tick of an axis with the number beside it. */
export interface Tick {
  readonly at: number;
  readonly text: string;
}

/** What the plot asks its owner while it draws. */
export interface PlotSource {
  theme(): ChartTheme;
  /** Room right of the plot for the lines' names, CSS pixels. */
  gutter(): number;
  /** Where the axes have their ticks: the overlay writes the numbers, which on the canvas took half of a drawing. */
  ticks(axis: 'x' | 'y', ticks: readonly Tick[]): void;
  drawBands(plot: uPlot): void;
  drawLines(plot: uPlot): void;
  drawn(plot: uPlot): void;
}

/** Room above the plot for the read-out of the pitch cursor. */
const READOUT_STRIP = 24;

/** uPlot with only its canvas, scales, axes and grid: lines and bands are its owner's, cursor and marks the overlay's. */
export function plotOptions(width: number, height: number, source: PlotSource): uPlot.Options {
  const { theme } = source;
  let widest = 0;
  const grid = { stroke: () => theme().line, width: 1 };
  const ticks = { stroke: () => theme().line, width: 1, size: 4 };
  return {
    width,
    height,
    pxAlign: false,
    padding: [READOUT_STRIP, () => source.gutter(), 0, 0],
    legend: { show: false },
    cursor: { show: false },
    select: { show: false, left: 0, top: 0, width: 0, height: 0 },
    scales: { x: { time: false, auto: false }, y: { auto: false } },
    // The owner draws the lines: one that has no path is passed over.
    series: [{}, { paths: () => null, points: { show: false } }],
    axes: [
      {
        stroke: () => theme().quiet,
        size: 26,
        gap: 4,
        space: 46,
        incrs: [0.1, 0.2, 0.5, 1, 2, 5, 10, 15, 30],
        values(_plot, splits) {
          source.ticks(
            'x',
            splits.map((at) => ({ at, text: `${signedTick(at)}\u00b0` })),
          );
          return splits.map(() => null);
        },
        grid,
        ticks,
      },
      {
        stroke: () => theme().quiet,
        // As wide as the longest label: a cut label reads as another number.
        size: () => Math.max(46, 14 + 7 * widest),
        gap: 4,
        space: 28,
        values(_plot, splits) {
          const found = splits.map((at) => ({ at, text: signedTick(at) }));
          widest = Math.max(0, ...found.map(({ text }) => text.length));
          source.ticks('y', found);
          return splits.map(() => null);
        },
        grid,
        ticks,
      },
    ],
    hooks: { drawClear: [source.drawBands], draw: [source.drawLines, source.drawn] },
  };
}

/** A tick's number with its sign; the dust of adding steps is rounded off. */
function signedTick(value: number): string {
  const round = Number(value.toPrecision(10));
  const digits = String(Math.abs(round)).replace('.', '').replace(/^0+/, '').length;
  const text = Math.abs(round) < 1e6 ? significantAsIs(round, digits) : significant(round);
  return round > 0 ? `+${text}` : text;
}

function significantAsIs(value: number, digits: number): string {
  return value === 0 ? '0' : significant(value, Math.max(1, digits));
}
