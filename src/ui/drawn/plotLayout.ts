import { type AxisTick, type PlotEdges, tickText } from './axes';
import { place, roundTicks } from './plotScale';

/** A line of a small plot. Its look is one of a few of colour and dash. */
export interface PlotLine {
  readonly name: string;
  readonly look: string;
  /** NaN where it has no value. */
  readonly values: ArrayLike<number>;
}

export interface PlotMark {
  readonly x: number;
  readonly text: string;
}

/** Lines over a common x, in the units that the titles name. */
export interface PlotData {
  readonly x: ArrayLike<number>;
  readonly lines: readonly PlotLine[];
  /** Half the width of a band about the first line; NaN where there is none. */
  readonly band?: ArrayLike<number>;
  /** Or the edges of a band; NaN where there is none. */
  readonly bandEdges?: { readonly low: ArrayLike<number>; readonly high: ArrayLike<number> };
  readonly xTitle: string;
  readonly yTitle: string;
  /** Firm lines across the plot. */
  readonly marks?: readonly PlotMark[];
}

/** Where everything of a plot goes, in pixels, y down. */
export interface PlotLayout {
  readonly edges: PlotEdges;
  readonly xTicks: readonly AxisTick[];
  readonly yTicks: readonly AxisTick[];
  readonly zeroY: number;
  readonly px: readonly number[];
  /** Heights of each line; NaN lifts the pen. */
  readonly lines: readonly (readonly number[])[];
  readonly band: { readonly low: readonly number[]; readonly high: readonly number[] } | null;
  /** Baselines of the lines' names, right of the plot, in the order of the lines; none for a line alone. */
  readonly names: readonly number[];
  /** Marks within the plot, with the baseline of each text, which ends a little left of it. */
  readonly marks: readonly { readonly at: number; readonly y: number; readonly text: string }[];
}

const LEFT = 52;
const TOP = 22;
const FOOT = 34;
const LEAST_NAMES = 118;
const GAP = 8;
/** A letter's width as a share of its size, the widest usual. */
const LETTER = 0.56;

/** Axes, lines, band, names and marks of a plot in so much room; zero is always in view. `letter`: size of type, pixels. */
export function plotLayout(
  data: PlotData,
  width: number,
  height: number,
  letter: number,
): PlotLayout {
  const right = width - nameRoom(data, width, letter);
  const bottom = height - FOOT;
  const [xLow, xHigh] = [data.x[0], data.x[data.x.length - 1]];
  const [yLow, yHigh] = rangeOf(data);
  const x = (value: number) => place(value, xLow, xHigh, LEFT, right);
  const y = (value: number) => place(value, yLow, yHigh, bottom, TOP);
  const xTicks = roundTicks(xLow, xHigh, Math.max(2, Math.floor((right - LEFT) / 80)));
  const yTicks = roundTicks(yLow, yHigh, Math.max(2, Math.floor((bottom - TOP) / 34)));
  const edgesAt = edgesOf(data);
  const ends = edgesAt && Array.from(data.x, (_, i) => edgesAt(i).map(y));
  return {
    edges: { left: LEFT, right, top: TOP, bottom },
    xTicks: xTicks.map((value) => ({ at: x(value), text: tickText(value) })),
    yTicks: yTicks.map((value) => ({ at: y(value), text: tickText(value) })),
    zeroY: y(0),
    px: Array.from(data.x, x),
    lines: data.lines.map(({ values }) => Array.from(values, y)),
    band: ends && { low: ends.map(([low]) => low), high: ends.map(([, high]) => high) },
    names: data.lines.length > 1 ? nameHeights(data, y, bottom) : [],
    marks: (data.marks ?? [])
      .filter((mark) => mark.x >= xLow && mark.x <= xHigh)
      // Neighbours stand on lines of their own.
      .map((mark, i) => ({ at: x(mark.x), y: bottom - 6 - 14 * i, text: mark.text })),
  };
}

/** Room for the names at the right; one line is named by the axis. */
function nameRoom({ lines }: PlotData, width: number, letter: number): number {
  if (lines.length < 2) return 16;
  return roomForNames(
    lines.map(({ name }) => name),
    width,
    letter,
  );
}

/** Width that the longest of the names takes in letters of a size, with the gap before it; at most half of all. */
export function roomForNames(names: readonly string[], width: number, letter: number): number {
  const longest = Math.max(0, ...names.map((name) => name.length));
  return Math.min(width / 2, Math.max(LEAST_NAMES, GAP + longest * letter * LETTER));
}

/** At the height where each line ends, moved apart where they would lie on one another. */
function nameHeights(data: PlotData, y: (value: number) => number, bottom: number): number[] {
  const ends = data.lines
    .map(({ values }, i) => ({ i, y: y(lastKnown(values)) }))
    .toSorted((a, b) => a.y - b.y);
  let above = TOP - 12;
  for (const end of ends) {
    end.y = Math.max(Number.isNaN(end.y) ? TOP : end.y, above + 14);
    above = end.y;
  }
  const over = Math.max(0, above - bottom);
  return data.lines.map((_, i) => (ends.find((end) => end.i === i)?.y ?? TOP) - over + 4);
}

/** Lower and upper edge of the band at a place; null where the plot has none. */
function edgesOf({ lines, band, bandEdges }: PlotData) {
  const [first] = lines;
  if (bandEdges) return (i: number) => [bandEdges.low[i], bandEdges.high[i]] as const;
  if (!band || !first) return null;
  return (i: number) => [first.values[i] - band[i], first.values[i] + band[i]] as const;
}

function rangeOf(data: PlotData): readonly [number, number] {
  let low = 0;
  let high = 0;
  // A comparison with NaN takes nothing on.
  const take = (value: number) => {
    if (value < low) low = value;
    if (value > high) high = value;
  };
  for (const { values } of data.lines) {
    for (let i = 0; i < values.length; i++) take(values[i]);
  }
  const edges = edgesOf(data);
  if (edges) for (let i = 0; i < data.x.length; i++) edges(i).forEach(take);
  if (low === high) return [-1, 1];
  const room = 0.06 * (high - low);
  return [low < 0 ? low - room : 0, high > 0 ? high + room : 0];
}

function lastKnown(values: ArrayLike<number>): number {
  for (let i = values.length - 1; i >= 0; i--) if (!Number.isNaN(values[i])) return values[i];
  return Number.NaN;
}
