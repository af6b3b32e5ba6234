import { type AxisTick, type PlotEdges, tickText } from './axes';
import { type PlacedMark, placeMarks } from './plotMarks';
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

/** An area between two edges over the common x, NaN where there is none; a name where it stands in a key. */
export interface PlotBand {
  readonly name: string;
  readonly look: string;
  readonly low: ArrayLike<number>;
  readonly high: ArrayLike<number>;
}

/** Places that lie on no common x, and half of an interval about each where there is one. `shape`: of a few. */
export interface PlotPoints {
  readonly name: string;
  readonly shape: 'up' | 'down' | 'round';
  /** Filled or not, with a ring round it, or crossed out. */
  readonly state: 'full' | 'ringed' | 'crossed';
  readonly x: readonly number[];
  readonly y: readonly number[];
  readonly half?: readonly number[];
}

/**
 * Kinds of areas in cells that fill the plane between the ends of x and `yRange`: row by row from the lowest y, a bit a kind.
 */
export interface PlotCells {
  readonly columns: number;
  readonly rows: number;
  readonly cells: Uint8Array;
  readonly kinds: readonly { readonly name: string; readonly bit: number }[];
}

/** Lines over a common x, in the units that the titles name. */
export interface PlotData {
  readonly x: ArrayLike<number>;
  /** What stands at 1, 2, 3 ... in place of numbers along x. */
  readonly xNames?: readonly string[];
  readonly lines: readonly PlotLine[];
  /** Half the width of a band about the first line; NaN where there is none. */
  readonly band?: ArrayLike<number>;
  /** Bands of other edges. */
  readonly bands?: readonly PlotBand[];
  readonly points?: readonly PlotPoints[];
  readonly cells?: PlotCells;
  /** In place of all that is drawn, and zero. */
  readonly yRange?: readonly [number, number];
  readonly xTitle: string;
  readonly yTitle: string;
  /** Firm lines across the plot. */
  readonly marks?: readonly PlotMark[];
  /** Another quantity over the same x, in a field of its own below. */
  readonly below?: PlotData;
}

/** Where everything of a plot goes, in pixels, y down. */
export interface PlotLayout {
  readonly edges: PlotEdges;
  readonly xTicks: readonly AxisTick[];
  readonly yTicks: readonly AxisTick[];
  /** Of the line at zero; null where zero is out of view. */
  readonly zeroY: number | null;
  readonly px: readonly number[];
  /** Heights of each line; NaN lifts the pen. */
  readonly lines: readonly (readonly number[])[];
  readonly bands: readonly {
    readonly look: string;
    readonly low: readonly number[];
    readonly high: readonly number[];
  }[];
  readonly points: readonly (PlotPoints & {
    readonly low: readonly number[];
    readonly high: readonly number[];
  })[];
  /** Baselines of the lines' names, right of the plot, in the order of the lines; none for a line alone. */
  readonly names: readonly number[];
  /** Marks within the plot. */
  readonly marks: readonly PlacedMark[];
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
  const [xLow, xHigh] = spanOf(data);
  const [yLow, yHigh] = rangeOf(data);
  const x = (value: number) => place(value, xLow, xHigh, LEFT, right);
  const y = (value: number) => place(value, yLow, yHigh, bottom, TOP);
  const xTicks = roundTicks(xLow, xHigh, Math.max(2, Math.floor((right - LEFT) / 80)));
  const zeroY = yLow <= 0 && yHigh >= 0 ? y(0) : null;
  const edges = { left: LEFT, right, top: TOP, bottom };
  const names = data.lines.length > 1 ? nameHeights(data, y, bottom) : [];
  const yTicks = roundTicks(yLow, yHigh, Math.max(2, Math.floor((bottom - TOP) / 34)));
  return {
    edges,
    xTicks: data.xNames
      ? namedTicks(data.xNames, x, Math.floor((x(2) - x(1)) / (letter * LETTER)))
      : xTicks.map((value) => ({ at: x(value), text: tickText(value) })),
    yTicks: yTicks.map((value) => ({ at: y(value), text: tickText(value) })),
    zeroY,
    px: Array.from(data.x, x),
    lines: data.lines.map(({ values }) => Array.from(values, y)),
    bands: bandsOf(data).map(({ look, low, high }) => ({
      look,
      low: Array.from(low, y),
      high: Array.from(high, y),
    })),
    points: (data.points ?? []).map((own) => ({
      ...own,
      x: own.x.map(x),
      y: own.y.map(y),
      low: (own.half ?? []).map((half, i) => y(own.y[i] - half)),
      high: (own.half ?? []).map((half, i) => y(own.y[i] + half)),
    })),
    names,
    marks: placeMarks(
      (data.marks ?? [])
        .filter((mark) => mark.x >= xLow && mark.x <= xHigh)
        .map((mark) => ({ at: x(mark.x), text: mark.text })),
      { edges, zeroY, names, letter: letter * LETTER },
    ),
  };
}

/** At most so many letters: what is longer is cut off, and whole in the table. */
function namedTicks(
  names: readonly string[],
  x: (value: number) => number,
  most: number,
): AxisTick[] {
  return names.map((name, i) => ({
    at: x(i + 1),
    text: name.length > most ? `${name.slice(0, most - 1).trimEnd()}\u2026` : name,
  }));
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

/** The band about the first line, and those of edges of their own. */
export function bandsOf({ lines, band, bands = [] }: PlotData): readonly PlotBand[] {
  const [first] = lines;
  if (!band || !first) return bands;
  const edge = (sign: 1 | -1) => Array.from(first.values, (value, i) => value + sign * band[i]);
  return [{ name: '', look: 'about', low: edge(-1), high: edge(1) }, ...bands];
}

/** From the first place to the last, and as far as there are points. */
function spanOf({ x, points = [] }: PlotData): readonly [number, number] {
  const [first, last] = [x[0], x[x.length - 1]];
  const all = points.flatMap((own) => own.x);
  return [
    all.reduce((least, one) => Math.min(least, one), first),
    all.reduce((most, one) => Math.max(most, one), last),
  ];
}

function rangeOf(data: PlotData): readonly [number, number] {
  if (data.yRange) return data.yRange;
  let low = 0;
  let high = 0;
  const take = (values: ArrayLike<number>) => {
    for (let i = 0; i < values.length; i++) {
      // A comparison with NaN takes nothing on.
      if (values[i] < low) low = values[i];
      if (values[i] > high) high = values[i];
    }
  };
  for (const { values } of data.lines) take(values);
  for (const own of bandsOf(data)) [own.low, own.high].forEach(take);
  for (const { y, half = [] } of data.points ?? []) {
    take(y.flatMap((one, i) => [one - (half[i] ?? 0), one + (half[i] ?? 0)]));
  }
  if (low === high) return [-1, 1];
  const room = 0.06 * (high - low);
  return [low < 0 ? low - room : 0, high > 0 ? high + room : 0];
}

function lastKnown(values: ArrayLike<number>): number {
  for (let i = values.length - 1; i >= 0; i--) if (!Number.isNaN(values[i])) return values[i];
  return Number.NaN;
}
