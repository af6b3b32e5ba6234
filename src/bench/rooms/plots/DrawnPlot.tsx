import { memo } from 'react';
import { bandPath } from '../../../ui/drawn/axes';
import { linePath, roundTicks } from '../../../ui/drawn/plotScale';
import { Axes } from './Axes';
import {
  cross,
  PLOT_EDGES,
  PLOT_HEIGHT,
  type PlacedPoint,
  type PlotContent,
  type PlotPoint,
  type PlotScene,
  ring,
  shape,
} from './plotScene';

interface DrawnPlotProps {
  readonly content: PlotContent;
  readonly scene: PlotScene;
  readonly placed: readonly PlacedPoint[];
  readonly xTitle: string;
  readonly yTitle: string;
}

/** Everything but the ring round the point that is looked at: drawn anew only when the readings or the width change. */
export const DrawnPlot = memo(function DrawnPlot(props: DrawnPlotProps) {
  const { content, scene, placed, xTitle, yTitle } = props;
  const { x, curves, bands } = content;
  const xs = x.map(scene.x);
  const { left, top } = PLOT_EDGES;
  const { right, bottom, xRange, yRange } = scene;
  return (
    <svg className="bench-plot-svg" height={PLOT_HEIGHT} aria-hidden="true">
      <Axes
        edges={{ left, right, top, bottom }}
        height={PLOT_HEIGHT}
        xTicks={roundTicks(...xRange, Math.max(2, Math.floor((right - left) / 70)))}
        yTicks={roundTicks(...yRange, 5)}
        x={scene.x}
        y={scene.y}
        hasZero
        xTitle={xTitle}
        yTitle={yTitle}
      />
      <svg x={left} width={right - left} height={PLOT_HEIGHT}>
        <g transform={`translate(${-left} 0)`}>
          {bands.map(({ look, low, high }) => (
            <path
              key={look}
              className={`bench-band-${look}`}
              d={bandPath(xs, low.map(scene.y), high.map(scene.y))}
            />
          ))}
          {curves.map(({ look, y }) => (
            <path
              key={look}
              className={`bench-line bench-line-${look}`}
              d={linePath(xs, y.map(scene.y))}
            />
          ))}
        </g>
      </svg>
      <Points scene={scene} placed={placed} />
    </svg>
  );
});

/** One path for all points of a look: thousands of readings are a handful of elements. */
function Points(props: { readonly scene: PlotScene; readonly placed: readonly PlacedPoint[] }) {
  const { scene, placed } = props;
  const inside = placed.filter(({ beyond }) => beyond === 0);
  const whiskers = inside.flatMap(({ point, x }) =>
    point.half ? [whisker(x, scene.y(point.y - point.half), scene.y(point.y + point.half))] : [],
  );
  const of = (state: PlotPoint['state']) => placed.filter(({ point }) => point.state === state);
  return (
    <>
      {whiskers.length > 0 && <path className="bench-whisker" d={whiskers.join('')} />}
      {(['counts', 'doubted', 'aside'] as const).map((state) =>
        (['pull', 'push', 'held'] as const).map((kind) => {
          const own = of(state).filter(({ point }) => point.kind === kind);
          return own.length === 0 ? null : (
            <path
              key={`${state} ${kind}`}
              className="bench-point"
              data-kind={kind}
              data-state={state}
              data-count={own.length}
              d={own.map(({ x, y }) => shape(kind, x, y)).join('')}
            />
          );
        }),
      )}
      <path
        className="bench-doubt"
        d={of('doubted')
          .map(({ x, y }) => ring(x, y, 7))
          .join('')}
      />
      <path
        className="bench-cross"
        d={of('aside')
          .map(({ x, y }) => cross(x, y))
          .join('')}
      />
      <path
        className="bench-cross"
        d={placed
          .map(({ x, y, beyond }) =>
            beyond === 0
              ? ''
              : `M${x.toFixed(1)} ${y + beyond * 5}m-4 ${-4 * beyond}l4 ${4 * beyond}l4 ${-4 * beyond}`,
          )
          .join('')}
      />
    </>
  );
}

function whisker(x: number, low: number, high: number): string {
  const at = x.toFixed(1);
  return `M${at} ${low.toFixed(1)}V${high.toFixed(1)}M${at} ${low.toFixed(1)}m-3 0h6M${at} ${high.toFixed(1)}m-3 0h6`;
}
