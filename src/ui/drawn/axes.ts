import { localNumber } from '../../messages/numbers';
import { ElementPool, setText, setValues, svgElement } from './svg';

/** The edges of what is plotted, pixels, y down. */
export interface PlotEdges {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export interface AxisTick {
  /** Where it stands along its axis, pixels. */
  readonly at: number;
  readonly text: string;
}

/** A round number of an axis (`roundTicks`), with a true minus sign and the language's decimal sign. */
export function tickText(value: number): string {
  return localNumber(String(value)).replace('-', '\u2212');
}

/** Lines across the plot at the ticks of both axes, in pixels. */
export function gridPath(
  xs: readonly number[],
  ys: readonly number[],
  { left, right, top, bottom }: PlotEdges,
): string {
  return (
    xs.map((x) => `M${x.toFixed(1)} ${top}V${bottom}`).join('') +
    ys.map((y) => `M${left} ${y.toFixed(1)}H${right}`).join('')
  );
}

/** The area between two lines over the same places, in pixels; where either is NaN it is left out. */
export function bandPath(
  xs: readonly number[],
  low: readonly number[],
  high: readonly number[],
): string {
  const known = xs.map((_, i) => i).filter((i) => !Number.isNaN(low[i] + high[i]));
  if (known.length < 2) return '';
  const over = known.map((i) => `${xs[i].toFixed(1)} ${high[i].toFixed(1)}`);
  const under = known.toReversed().map((i) => `${xs[i].toFixed(1)} ${low[i].toFixed(1)}`);
  return `M${[...over, ...under].join('L')}Z`;
}

/** Grid, and the numbers under and left of the plot, for plots that are kept up to date outside React. */
export interface SvgAxes {
  draw(xs: readonly AxisTick[], ys: readonly AxisTick[], edges: PlotEdges): void;
}

/** `gridParent` lies under what is plotted, the numbers come last in `svg`. */
export function createAxes(
  svg: SVGSVGElement,
  classes: { readonly grid: string; readonly tick: string },
  gridParent: SVGElement = svg,
): SvgAxes {
  const grid = svgElement('path', gridParent, { class: classes.grid });
  const texts = new ElementPool(() => svgElement('text', svg, { class: classes.tick }));
  return {
    draw(xs, ys, edges) {
      const { left, bottom } = edges;
      const at = (ticks: readonly AxisTick[]) => ticks.map((tick) => tick.at);
      setValues(grid, { d: gridPath(at(xs), at(ys), edges) });
      const elements = texts.take(xs.length + ys.length);
      xs.forEach((tick, i) => {
        setText(elements[i], tick.text);
        setValues(elements[i], { x: tick.at, y: bottom + 14, 'text-anchor': 'middle' });
      });
      ys.forEach((tick, i) => {
        const element = elements[xs.length + i];
        setText(element, tick.text);
        setValues(element, { x: left - 6, y: tick.at + 4, 'text-anchor': 'end' });
      });
    },
  };
}
