import { linePath, place, roundTicks } from '../../../ui/drawn/plotScale';
import { useWidth } from './useWidth';
import './plots.css';

export interface PlotCurve {
  readonly name: string;
  /** `bench-line-<look>`. */
  readonly look: 'model' | 'fit';
  readonly y: readonly number[];
}

/** A reading in a plot; `kind` gives its shape: up, down, round. */
export interface PlotPoint {
  readonly x: number;
  readonly y: number;
  readonly kind: 'pull' | 'push' | 'held';
  readonly flagged: boolean;
  readonly title: string;
}

export interface PointPlotProps {
  readonly xTitle: string;
  readonly yTitle: string;
  readonly summary: string;
  readonly x: readonly number[];
  readonly curves: readonly PlotCurve[];
  /** Edges of bands over `x`, NaN where there is none. */
  readonly bands: readonly {
    readonly look: 'friction' | 'fit' | 'two';
    readonly low: readonly number[];
    readonly high: readonly number[];
  }[];
  readonly points: readonly PlotPoint[];
  readonly testId: string;
}

const HEIGHT = 190;
const [LEFT, RIGHT, TOP, FOOT] = [46, 12, 18, 30];

/** Readings as points over curves and bands, zero in view; what is drawn is said to who cannot see it. */
export function PointPlot(props: PointPlotProps) {
  const [host, width] = useWidth<HTMLDivElement>();
  return (
    <div className="bench-plot" ref={host} data-testid={props.testId}>
      {width > 0 && <Drawn {...props} width={width} />}
      <p className="ui-unseen">{props.summary}</p>
    </div>
  );
}

function Drawn(props: PointPlotProps & { readonly width: number }) {
  const { x, curves, bands, points, width } = props;
  const [right, bottom] = [width - RIGHT, HEIGHT - FOOT];
  const [xLow, xHigh] = rangeOf([...x, ...points.map((point) => point.x)], false);
  const [yLow, yHigh] = rangeOf(
    [
      ...curves.flatMap(({ y }) => y),
      ...bands.flatMap(({ low, high }) => [...low, ...high]),
      ...points.map(({ y }) => y),
    ],
    true,
  );
  const px = (value: number) => place(value, xLow, xHigh, LEFT, right);
  const py = (value: number) => place(value, yLow, yHigh, bottom, TOP);
  const xs = x.map(px);
  const xTicks = roundTicks(xLow, xHigh, Math.max(2, Math.floor((right - LEFT) / 70)));
  const yTicks = roundTicks(yLow, yHigh, 5);
  return (
    <svg className="bench-plot-svg" viewBox={`0 0 ${width} ${HEIGHT}`} aria-hidden="true">
      <path
        className="bench-plot-grid"
        d={
          xTicks.map((tick) => `M${px(tick).toFixed(1)} ${TOP}V${bottom}`).join('') +
          yTicks.map((tick) => `M${LEFT} ${py(tick).toFixed(1)}H${right}`).join('')
        }
      />
      <path className="bench-plot-zero" d={`M${LEFT} ${py(0).toFixed(1)}H${right}`} />
      {bands.map(({ look, low, high }) => (
        <path
          key={look}
          className={`bench-band-${look}`}
          d={bandPath(xs, low.map(py), high.map(py))}
        />
      ))}
      {curves.map(({ look, y }) => (
        <path key={look} className={`bench-line bench-line-${look}`} d={linePath(xs, y.map(py))} />
      ))}
      {points.map((point, k) => (
        <path
          key={k}
          className="bench-point"
          data-kind={point.kind}
          data-flagged={point.flagged || undefined}
          d={shape(point.kind, px(point.x), py(point.y))}
        >
          <title>{point.title}</title>
        </path>
      ))}
      {xTicks.map((tick) => (
        <text key={tick} className="bench-tick" x={px(tick)} y={bottom + 14} textAnchor="middle">
          {shown(tick)}
        </text>
      ))}
      {yTicks.map((tick) => (
        <text key={tick} className="bench-tick" x={LEFT - 6} y={py(tick) + 4} textAnchor="end">
          {shown(tick)}
        </text>
      ))}
      <text className="bench-tick" x={right} y={HEIGHT - 3} textAnchor="end">
        {props.xTitle}
      </text>
      <text className="bench-tick" x={LEFT} y={11}>
        {props.yTitle}
      </text>
    </svg>
  );
}

/** Triangle up for pull, down for push, round for held. */
export function shape(kind: PlotPoint['kind'], x: number, y: number): string {
  const at = `${x.toFixed(1)} ${y.toFixed(1)}`;
  if (kind === 'pull') return `M${at}m-4.5 3.5l4.5 -8l4.5 8z`;
  if (kind === 'push') return `M${at}m-4.5 -3.5l4.5 8l4.5 -8z`;
  return `M${at}m-3.5 0a3.5 3.5 0 1 0 7 0a3.5 3.5 0 1 0 -7 0z`;
}

function bandPath(xs: readonly number[], low: readonly number[], high: readonly number[]): string {
  const known = xs.map((_, i) => i).filter((i) => !Number.isNaN(low[i] + high[i]));
  if (known.length < 2) return '';
  const over = known.map((i) => `${xs[i].toFixed(1)} ${high[i].toFixed(1)}`);
  const under = known.toReversed().map((i) => `${xs[i].toFixed(1)} ${low[i].toFixed(1)}`);
  return `M${[...over, ...under].join('L')}Z`;
}

function rangeOf(values: readonly number[], withZero: boolean): readonly [number, number] {
  const known = values.filter(Number.isFinite);
  const all = withZero ? [...known, 0] : known;
  if (all.length === 0) return [-1, 1];
  const [low, high] = [all.reduce((a, b) => Math.min(a, b)), all.reduce((a, b) => Math.max(a, b))];
  if (low === high) return [low - 1, high + 1];
  const room = withZero ? 0.06 * (high - low) : 0.02 * (high - low);
  return [low - room, high + room];
}

function shown(value: number): string {
  return String(value).replace('-', '\u2212');
}
