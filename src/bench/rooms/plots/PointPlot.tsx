import { type KeyboardEvent, type PointerEvent, useMemo, useState } from 'react';
import { PlotNumbers } from '../../../ui/plots/PlotNumbers';
import { PlotTools } from '../../../ui/plots/PlotTools';
import { useSession } from '../../../ui/session';
import { say } from '../../say';
import { DrawnPlot } from './DrawnPlot';
import { plotData } from './plotData';
import {
  nearestPoint,
  type PlacedPoint,
  type PlotContent,
  placedPoints,
  plotScene,
  ring,
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
  /** Where it stands: what was measured, for a file of it. */
  readonly about: string;
  /** What a reading without a direction is called in a key. */
  readonly held?: string;
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
  const data = useMemo(
    () =>
      plotData(content, {
        x: props.xTitle,
        y: props.yTitle,
        held: props.held ?? say('benchRoom.travel.held'),
      }),
    [content, props.xTitle, props.yTitle, props.held],
  );
  const [asTable, setAsTable] = useState(false);
  const { store } = useSession();
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
          <DrawnPlot {...{ content, scene, placed, xTitle: props.xTitle, yTitle: props.yTitle }} />
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
        {asTable && (
          <PlotNumbers data={data} name={props.title} testId={`${props.testId}-numbers`} />
        )}
      </div>
      <Below chosen={chosen} hint={props.hint ?? false} {...(onToggle && { onToggle })} />
      <PlotTools
        testId={props.testId}
        plot={() => ({
          data,
          design: store.getState().design,
          lines: [`${props.title}. ${props.about}.`, props.summary],
          summary: props.summary,
          name: props.testId,
        })}
        asTable={asTable}
        onTable={setAsTable}
      />
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
