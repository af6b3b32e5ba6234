import { type KeyboardEvent, memo, type PointerEvent, useMemo } from 'react';
import { linePath, roundTicks } from '../../../ui/drawn/plotScale';
import { say } from '../../say';
import {
  bandPath,
  cross,
  nearestPoint,
  PLOT_EDGES,
  PLOT_HEIGHT,
  type PlacedPoint,
  type PlotContent,
  type PlotPoint,
  type PlotScene,
  placedPoints,
  plotScene,
  ring,
  shape,
} from './plotScene';
import { useWidth } from './useWidth';
import './plots.css';

export interface PointPlotProps {
  readonly title: string;
  readonly xTitle: string;
  readonly yTitle: string;
  readonly summary: string;
  readonly content: PlotContent;
  readonly testId: string;
  /** Says how points are looked at, while none is: once on a page is enough. */
  readonly hint?: boolean;
  /** Id of the point that is looked at. */
  readonly picked: string | null;
  readonly onPick: (id: string) => void;
  /** Sets the point aside, or counts it again; left out: points are looked at and no more. */
  readonly onToggle?: (id: string) => void;
}

/**
 * Readings as points over curves and bands, zero in view. A point is looked at with the pointer, or by stepping through them
 * with the arrow keys; what it is stands below, with the button that sets it aside or counts it again.
 */
export function PointPlot(props: PointPlotProps) {
  const { content, picked, onPick, onToggle } = props;
  const [host, width] = useWidth<HTMLDivElement>();
  const scene = useMemo(() => plotScene(content, width), [content, width]);
  const placed = useMemo(() => placedPoints(content.points, scene), [content, scene]);
  const at = placed.findIndex(({ point }) => point.id === picked);
  const chosen = placed[at];

  function step(event: KeyboardEvent): void {
    const by = { ArrowRight: 1, ArrowUp: 1, ArrowLeft: -1, ArrowDown: -1 }[event.key];
    const end = { Home: 0, End: placed.length - 1 }[event.key];
    if (by === undefined && end === undefined) return;
    event.preventDefault();
    const next = end ?? (at < 0 ? 0 : Math.max(0, Math.min(placed.length - 1, at + (by ?? 0))));
    if (placed[next]) onPick(placed[next].point.id);
  }
  function pointAt(event: PointerEvent<HTMLDivElement>): void {
    const box = event.currentTarget.getBoundingClientRect();
    const near = nearestPoint(placed, event.clientX - box.left, event.clientY - box.top);
    if (near && near.point.id !== picked) onPick(near.point.id);
  }

  return (
    <div className="bench-plot" data-testid={props.testId}>
      <div className="bench-plot-host" ref={host}>
        {width > 0 && (
          <Drawn {...{ content, scene, placed, xTitle: props.xTitle, yTitle: props.yTitle }} />
        )}
        {width > 0 && chosen && (
          <svg className="bench-plot-svg bench-plot-over" aria-hidden="true">
            <path className="bench-picked" d={ring(chosen.x, chosen.y, 9)} />
          </svg>
        )}
        {placed.length > 0 && (
          <div
            className="bench-plot-reader"
            role="slider"
            tabIndex={0}
            aria-label={say('benchRoom.plot.reader', { title: props.title })}
            aria-valuemin={1}
            aria-valuemax={placed.length}
            aria-valuenow={Math.max(1, at + 1)}
            aria-valuetext={chosen ? sentence(chosen) : say('benchRoom.plot.readerStart')}
            onKeyDown={step}
            onPointerMove={pointAt}
            onPointerDown={pointAt}
          />
        )}
      </div>
      <Below chosen={chosen} hint={props.hint ?? false} {...(onToggle && { onToggle })} />
      <p className="ui-unseen">{props.summary}</p>
    </div>
  );
}

function sentence({ point, beyond }: PlacedPoint): string {
  return beyond === 0 ? point.text : `${point.text} ${say('benchRoom.plot.beyond')}`;
}

/** What the point is that is looked at. */
function Below(props: {
  readonly chosen: PlacedPoint | undefined;
  readonly hint: boolean;
  readonly onToggle?: (id: string) => void;
}) {
  const { chosen, hint, onToggle } = props;
  // As high with nothing in it, so that nothing moves.
  if (!chosen)
    return <p className="bench-plot-read">{hint ? say('benchRoom.plot.readerStart') : ''}</p>;
  const { id, state } = chosen.point;
  return (
    <div className="bench-plot-read">
      <span data-testid="bench-read">{sentence(chosen)}</span>
      {onToggle && (
        <button
          type="button"
          className="ui-button"
          data-testid="bench-toggle"
          onClick={() => onToggle(id)}
        >
          {say(state === 'aside' ? 'benchRoom.countAgain' : 'benchRoom.setAside')}
        </button>
      )}
    </div>
  );
}

interface DrawnProps {
  readonly content: PlotContent;
  readonly scene: PlotScene;
  readonly placed: readonly PlacedPoint[];
  readonly xTitle: string;
  readonly yTitle: string;
}

/** Everything but the ring round the point that is looked at: drawn anew only when the readings or the width change. */
const Drawn = memo(function Drawn({ content, scene, placed, xTitle, yTitle }: DrawnProps) {
  const { x, curves, bands } = content;
  const xs = x.map(scene.x);
  const { right } = scene;
  return (
    <svg className="bench-plot-svg" height={PLOT_HEIGHT} aria-hidden="true">
      <Axes scene={scene} xTitle={xTitle} yTitle={yTitle} />
      <svg x={PLOT_EDGES.left} width={right - PLOT_EDGES.left} height={PLOT_HEIGHT}>
        <g transform={`translate(${-PLOT_EDGES.left} 0)`}>
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

function Axes(props: {
  readonly scene: PlotScene;
  readonly xTitle: string;
  readonly yTitle: string;
}) {
  const { scene, xTitle, yTitle } = props;
  const { right, bottom, xRange, yRange } = scene;
  const { left, top } = PLOT_EDGES;
  const xTicks = roundTicks(...xRange, Math.max(2, Math.floor((right - left) / 70)));
  const yTicks = roundTicks(...yRange, 5);
  const grid =
    xTicks.map((tick) => `M${scene.x(tick).toFixed(1)} ${top}V${bottom}`).join('') +
    yTicks.map((tick) => `M${left} ${scene.y(tick).toFixed(1)}H${right}`).join('');
  return (
    <>
      <path className="bench-plot-grid" d={grid} />
      <path className="bench-plot-zero" d={`M${left} ${scene.y(0).toFixed(1)}H${right}`} />
      {xTicks.map((tick) => (
        <text
          key={tick}
          className="bench-tick"
          x={scene.x(tick)}
          y={bottom + 14}
          textAnchor="middle"
        >
          {shown(tick)}
        </text>
      ))}
      {yTicks.map((tick) => (
        <text key={tick} className="bench-tick" x={left - 6} y={scene.y(tick) + 4} textAnchor="end">
          {shown(tick)}
        </text>
      ))}
      <text className="bench-tick" x={right} y={PLOT_HEIGHT - 4} textAnchor="end">
        {xTitle}
      </text>
      <text className="bench-tick" x={left} y={11}>
        {yTitle}
      </text>
    </>
  );
}

function shown(value: number): string {
  return String(value).replace('-', '\u2212');
}
