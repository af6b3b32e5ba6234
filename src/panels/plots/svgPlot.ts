import { bandPath, createAxes } from '../../ui/drawn/axes';
import { type PlotData, type PlotLayout, plotLayout } from '../../ui/drawn/plotLayout';
import { linePath } from '../../ui/drawn/plotScale';
import { ElementPool, setShown, setText, setValues, svgElement } from '../marks/svg';

export interface SvgPlot {
  update(data: PlotData, width: number, height: number): void;
}

/** Pixels, as in the style sheet. */
const LETTER = 12;

/** A plot of lines over a common x, drawn with SVG: axes, round ticks, names at the right. Zero is always in view. */
export function createSvgPlot(svg: SVGSVGElement): SvgPlot {
  const axes = createAxes(svg, { grid: 'plot-grid', tick: 'plot-tick' });
  const zero = svgElement('path', svg, { class: 'plot-zero' });
  const back = svgElement('g', svg);
  const bands = new ElementPool(() => svgElement('path', back, { class: 'plot-band' }));
  const marks = new ElementPool(() => svgElement('line', svg, { class: 'plot-mark' }));
  const markTexts = new ElementPool(() => svgElement('text', svg, { class: 'plot-mark-text' }));
  const lines = new ElementPool(() => svgElement('path', svg));
  const names = new ElementPool(() => svgElement('text', svg));
  const xTitle = svgElement('text', svg, { class: 'plot-title' });
  const yTitle = svgElement('text', svg, { class: 'plot-title' });

  function update(data: PlotData, width: number, height: number): void {
    if (width <= 0 || height <= 0) return;
    setValues(svg, { viewBox: `0 0 ${width} ${height}` });
    const layout = plotLayout(data, width, height, LETTER);
    const { left, right } = layout.edges;
    axes.draw(layout.xTicks, layout.yTicks, layout.edges);
    setShown(zero, layout.zeroY !== null);
    if (layout.zeroY !== null) {
      setValues(zero, { d: `M${left} ${layout.zeroY.toFixed(1)}H${right}` });
    }
    setText(xTitle, data.xTitle);
    setValues(xTitle, { x: right, y: height - 4, 'text-anchor': 'end' });
    setText(yTitle, data.yTitle);
    setValues(yTitle, { x: left, y: 12 });
    const areas = bands.take(layout.bands.length);
    layout.bands.forEach(({ low, high }, i) => {
      setValues(areas[i], { d: bandPath(layout.px, low, high) });
    });
    drawLines(data, layout);
    drawMarks(layout);
  }

  function drawLines(data: PlotData, layout: PlotLayout): void {
    const paths = lines.take(data.lines.length);
    const texts = names.take(layout.names.length);
    data.lines.forEach(({ name, look }, i) => {
      setValues(paths[i], {
        class: `plot-line plot-line-${look}`,
        d: linePath(layout.px, layout.lines[i]),
      });
      if (layout.names.length === 0) return;
      setText(texts[i], name);
      setValues(texts[i], {
        x: layout.edges.right + 8,
        y: layout.names[i],
        class: `plot-name plot-name-${look}`,
      });
    });
  }

  function drawMarks({ marks: wanted, edges }: PlotLayout): void {
    const strokes = marks.take(wanted.length);
    const texts = markTexts.take(wanted.length);
    wanted.forEach(({ at, x, y, text, anchor }, i) => {
      setValues(strokes[i], { x1: at, x2: at, y1: edges.top, y2: edges.bottom });
      setText(texts[i], text);
      setValues(texts[i], { x, y, 'text-anchor': anchor });
    });
  }

  return { update };
}
