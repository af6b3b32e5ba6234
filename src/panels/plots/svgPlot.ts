import { bandPath, createAxes, type PlotEdges, tickText } from '../../ui/drawn/axes';
import { linePath, place, roundTicks } from '../../ui/drawn/plotScale';
import { ElementPool, setShown, setText, setValues, svgElement } from '../marks/svg';

/** A line of a small plot. Its look (colour, dash) is `plot-line-<look>`. */
export interface PlotLine {
  readonly name: string;
  readonly look: string;
  readonly values: ArrayLike<number>;
}

export interface PlotMark {
  readonly x: number;
  readonly text: string;
}

export interface SvgPlotData {
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

export interface SvgPlot {
  update(data: SvgPlotData, width: number, height: number): void;
}

const LEFT = 52;
const TOP = 22;
const FOOT = 34;
/** Room for the names at the right. */
const NAMES = 118;

/** A plot of lines over a common x, drawn with SVG: axes, round ticks, names at the right. Zero is always in view. */
export function createSvgPlot(svg: SVGSVGElement): SvgPlot {
  const axes = createAxes(svg, { grid: 'plot-grid', tick: 'plot-tick' });
  const zero = svgElement('path', svg, { class: 'plot-zero' });
  const band = svgElement('path', svg, { class: 'plot-band' });
  const marks = new ElementPool(() => svgElement('line', svg, { class: 'plot-mark' }));
  const markTexts = new ElementPool(() => svgElement('text', svg, { class: 'plot-mark-text' }));
  const lines = new ElementPool(() => svgElement('path', svg));
  const names = new ElementPool(() => svgElement('text', svg));
  const xTitle = svgElement('text', svg, { class: 'plot-title' });
  const yTitle = svgElement('text', svg, { class: 'plot-title' });

  function update(data: SvgPlotData, width: number, height: number): void {
    if (width <= 0 || height <= 0) return;
    setValues(svg, { viewBox: `0 0 ${width} ${height}` });
    // One line is named by the axis.
    const right = width - (data.lines.length > 1 ? NAMES : 16);
    const bottom = height - FOOT;
    const [xLow, xHigh] = [data.x[0], data.x[data.x.length - 1]];
    const [yLow, yHigh] = rangeOf(data);
    const px = Array.from(data.x, (x) => place(x, xLow, xHigh, LEFT, right));
    const py = (y: number) => place(y, yLow, yHigh, bottom, TOP);
    drawAxes([xLow, xHigh], [yLow, yHigh], py, { left: LEFT, right, top: TOP, bottom });
    setText(xTitle, data.xTitle);
    setValues(xTitle, { x: right, y: height - 4, 'text-anchor': 'end' });
    setText(yTitle, data.yTitle);
    setValues(yTitle, { x: LEFT, y: 12 });
    drawBand(data, px, py);
    const paths = lines.take(data.lines.length);
    data.lines.forEach((line, i) => {
      setValues(paths[i], {
        class: `plot-line plot-line-${line.look}`,
        d: linePath(px, Array.from(line.values, py)),
      });
    });
    drawNames(data, py, right, bottom);
    drawMarks(data.marks ?? [], xLow, xHigh, right, bottom);
  }

  function drawAxes(
    [xLow, xHigh]: readonly [number, number],
    [yLow, yHigh]: readonly [number, number],
    py: (y: number) => number,
    edges: PlotEdges,
  ): void {
    const { left, right, top, bottom } = edges;
    const xs = roundTicks(xLow, xHigh, Math.max(2, Math.floor((right - left) / 80)));
    const ys = roundTicks(yLow, yHigh, Math.max(2, Math.floor((bottom - top) / 34)));
    axes.draw(
      xs.map((x) => ({ at: place(x, xLow, xHigh, left, right), text: tickText(x) })),
      ys.map((y) => ({ at: py(y), text: tickText(y) })),
      edges,
    );
    setValues(zero, { d: `M${left} ${py(0).toFixed(1)}H${right}` });
  }

  function drawBand(data: SvgPlotData, px: readonly number[], py: (y: number) => number): void {
    const edges = edgesOf(data);
    setShown(band, edges !== null);
    if (!edges) return;
    const ends = px.map((_, i) => edges(i).map(py));
    const [low, high] = [0, 1].map((side) => ends.map((pair) => pair[side]));
    setValues(band, { d: bandPath(px, low, high) });
  }

  /** At the height where each line ends, moved apart where they would lie on one another. */
  function drawNames(
    data: SvgPlotData,
    py: (y: number) => number,
    right: number,
    bottom: number,
  ): void {
    const ends = data.lines
      .map(({ values }, i) => ({ i, y: py(lastKnown(values)) }))
      .toSorted((a, b) => a.y - b.y);
    let above = TOP - 12;
    for (const end of ends) {
      end.y = Math.max(Number.isNaN(end.y) ? TOP : end.y, above + 14);
      above = end.y;
    }
    const over = Math.max(0, above - bottom);
    const texts = names.take(ends.length > 1 ? ends.length : 0);
    if (texts.length === 0 || ends.length < 2) return;
    for (const { i, y } of ends) {
      const { name, look } = data.lines[i];
      setText(texts[i], name);
      setValues(texts[i], { x: right + 8, y: y - over + 4, class: `plot-name plot-name-${look}` });
    }
  }

  function drawMarks(
    wanted: readonly PlotMark[],
    xLow: number,
    xHigh: number,
    right: number,
    bottom: number,
  ): void {
    const inside = wanted.filter(({ x }) => x >= xLow && x <= xHigh);
    const strokes = marks.take(inside.length);
    const texts = markTexts.take(inside.length);
    inside.forEach(({ x, text }, i) => {
      const at = place(x, xLow, xHigh, LEFT, right);
      setValues(strokes[i], { x1: at, x2: at, y1: TOP, y2: bottom });
      setText(texts[i], text);
      // Neighbours stand on lines of their own.
      setValues(texts[i], { x: at - 4, y: bottom - 6 - 14 * i, 'text-anchor': 'end' });
    });
  }

  return { update };
}

/** Lower and upper edge of the band at a place; null where the plot has none. */
function edgesOf({ lines, band, bandEdges }: SvgPlotData) {
  const [first] = lines;
  if (bandEdges) return (i: number) => [bandEdges.low[i], bandEdges.high[i]] as const;
  if (!band || !first) return null;
  return (i: number) => [first.values[i] - band[i], first.values[i] + band[i]] as const;
}

function rangeOf(data: SvgPlotData): readonly [number, number] {
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
