import { gridPath, type PlotEdges, tickText } from '../../../ui/drawn/axes';

/** Grid, numbers, titles and the line of zero of a plot; ticks in the values' own unit, `x` and `y` give pixels. */
export function Axes(props: {
  readonly edges: PlotEdges;
  /** Of the whole picture, pixels. */
  readonly height: number;
  readonly xTicks: readonly number[];
  readonly yTicks: readonly number[];
  readonly x: (value: number) => number;
  readonly y: (value: number) => number;
  readonly hasZero: boolean;
  readonly xTitle: string;
  readonly yTitle: string;
}) {
  const { edges, height, xTicks, yTicks, x, y } = props;
  const { left, right, bottom } = edges;
  return (
    <>
      <path className="bench-plot-grid" d={gridPath(xTicks.map(x), yTicks.map(y), edges)} />
      {props.hasZero && (
        <path className="bench-plot-zero" d={`M${left} ${y(0).toFixed(1)}H${right}`} />
      )}
      {xTicks.map((tick) => (
        <text key={tick} className="bench-tick" x={x(tick)} y={bottom + 14} textAnchor="middle">
          {tickText(tick)}
        </text>
      ))}
      {yTicks.map((tick) => (
        <text key={tick} className="bench-tick" x={left - 6} y={y(tick) + 4} textAnchor="end">
          {tickText(tick)}
        </text>
      ))}
      <text className="bench-tick" x={right} y={height - 4} textAnchor="end">
        {props.xTitle}
      </text>
      <text className="bench-tick" x={2} y={11}>
        {props.yTitle}
      </text>
    </>
  );
}
