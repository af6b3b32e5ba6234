import { useMemo, useState } from 'react';
import { readingFromSi } from '../../../engine/units';
import type { PlotData } from '../../../ui/drawn/plotLayout';
import { linePath, place, roundTicks } from '../../../ui/drawn/plotScale';
import { PlotNumbers } from '../../../ui/plots/PlotNumbers';
import { PlotTools } from '../../../ui/plots/PlotTools';
import { useAppState, useSession } from '../../../ui/session';
import { seriesOf } from '../../namedSteps';
import type { Reading } from '../../readings/types';
import { say } from '../../say';
import { median } from '../../steadyReadings';
import { Axes } from '../plots/Axes';
import { useWidth } from '../plots/useWidth';
import '../plots/plots.css';

/** A stretch of samples, and what stands above it. */
export interface SeriesMark {
  readonly from: number;
  readonly to: number;
  readonly label: string;
}

const HEIGHT = 190;
const [LEFT, RIGHT, TOP, FOOT] = [46, 12, 34, 30];
const LABEL_ROOM = 40;

/** What was logged over time, every sample, with the stretches that count as readings. */
export function SeriesPlot(props: {
  /** Of the run. */
  readonly name: string;
  readonly readings: readonly Reading[];
  readonly marks: readonly SeriesMark[];
}) {
  const { name, readings, marks } = props;
  const [host, width] = useWidth<HTMLDivElement>();
  const unit = useAppState((state) => state.settings.units.force);
  const isForce = readings.some(({ force }) => force !== null);
  const series = useMemo(() => {
    const { time, value } = seriesOf(readings);
    return { time, value: isForce ? value.map((one) => readingFromSi(one, unit)) : value };
  }, [readings, isForce, unit]);
  const [asTable, setAsTable] = useState(false);
  const { store } = useSession();
  const yTitle = isForce
    ? say('benchRoom.plot.forceAxis', { unit })
    : say('benchRoom.series.momentAxis');
  const summary = say('benchRoom.series.summary', {
    samples: readings.length,
    count: marks.length,
  });
  const data = () => seriesData(series, marks, yTitle);
  return (
    <div className="bench-plot bench-series" ref={host} data-testid="bench-series">
      {width > 0 && (
        <div className="bench-series-frame">
          <Drawn {...series} marks={marks} width={width} yTitle={yTitle} />
          {asTable && <PlotNumbers data={data()} name={name} testId="bench-series-numbers" />}
        </div>
      )}
      <PlotTools
        testId="bench-series"
        plot={() => ({
          data: data(),
          design: store.getState().design,
          lines: [`${name}.`, summary],
          summary,
          name: 'bench-log',
        })}
        asTable={asTable}
        onTable={setAsTable}
      />
      <p className="ui-unseen">{summary}</p>
    </div>
  );
}

/** The log as it leaves the page and as a table: every sample, and each reading at the middle of its stretch. */
function seriesData(
  { time, value }: { readonly time: Float64Array; readonly value: Float64Array },
  marks: readonly SeriesMark[],
  yTitle: string,
): PlotData {
  const taken = marks.map(({ from, to }) => {
    return { x: (time[from] + time[to - 1]) / 2, y: median(value.subarray(from, to)) };
  });
  return {
    x: time,
    lines: [{ name: say('benchRoom.series.log'), look: '1', values: value }],
    points: [
      {
        name: say('benchRoom.series.taken'),
        shape: 'round',
        state: 'full',
        x: taken.map(({ x }) => x),
        y: taken.map(({ y }) => y),
      },
    ],
    xTitle: say('benchRoom.series.time'),
    yTitle,
  };
}

interface DrawnProps {
  readonly time: Float64Array;
  readonly value: Float64Array;
  readonly marks: readonly SeriesMark[];
  readonly width: number;
  readonly yTitle: string;
}

function Drawn({ time, value, marks, width, yTitle }: DrawnProps) {
  const [right, bottom] = [width - RIGHT, HEIGHT - FOOT];
  const end = time[time.length - 1] || 1;
  const [low, high] = useMemo(() => rangeOf(value), [value]);
  const px = (seconds: number) => place(seconds, 0, end, LEFT, right);
  const py = (load: number) => place(load, low, high, bottom, TOP);
  const line = useMemo(
    () => columns(time, value, Math.max(1, width - LEFT - RIGHT)),
    [time, value, width],
  );
  const boxes = boxesOf(marks, (sample) => px(time[Math.min(sample, time.length - 1)] ?? 0));
  return (
    <svg className="bench-plot-svg" viewBox={`0 0 ${width} ${HEIGHT}`} aria-hidden="true">
      <Axes
        edges={{ left: LEFT, right, top: TOP, bottom }}
        height={HEIGHT}
        xTicks={roundTicks(0, end, Math.max(2, Math.floor((right - LEFT) / 80)))}
        yTicks={roundTicks(low, high, 4)}
        x={px}
        y={py}
        hasZero={low < 0 && high > 0}
        xTitle={say('benchRoom.series.time')}
        yTitle={yTitle}
      />
      {boxes.map(({ from, left, width: wide, label }) => (
        <g key={from}>
          <rect className="bench-series-mark" x={left} y={TOP} width={wide} height={bottom - TOP} />
          <text className="bench-tick" x={left + wide / 2} y={TOP - 5} textAnchor="middle">
            {label}
          </text>
        </g>
      ))}
      <path className="bench-series-line" d={linePath(line.time.map(px), line.value.map(py))} />
    </svg>
  );
}

/** Where the marks stand. Labels that would run into the one before are left out: the table has them all. */
function boxesOf(marks: readonly SeriesMark[], px: (sample: number) => number) {
  let labelled = Number.NEGATIVE_INFINITY;
  return marks.map(({ from, to, label }) => {
    const left = px(from);
    const width = Math.max(1, px(to - 1) - left);
    const shows = left + width / 2 - labelled > LABEL_ROOM;
    if (shows) labelled = left + width / 2;
    return { from, left, width, label: shows ? label : '' };
  });
}

/** The lowest and the highest sample of every column of pixels, in the order in which they came. */
function columns(time: Float64Array, value: Float64Array, count: number) {
  const end = time[time.length - 1] || 1;
  const out = { time: [] as number[], value: [] as number[] };
  for (let from = 0; from < time.length; ) {
    const column = Math.floor((time[from] / end) * count);
    let [low, high, to] = [from, from, from];
    for (; to < time.length && Math.floor((time[to] / end) * count) === column; to++) {
      if (!(value[to] >= value[low])) low = to;
      if (!(value[to] <= value[high])) high = to;
    }
    for (const k of low === high ? [low] : [Math.min(low, high), Math.max(low, high)]) {
      out.time.push(time[k]);
      out.value.push(value[k]);
    }
    from = to;
  }
  return out;
}

function rangeOf(value: Float64Array): readonly [number, number] {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const one of value) {
    if (one < low) low = one;
    if (one > high) high = one;
  }
  if (!(low < high)) return Number.isFinite(low) ? [low - 1, low + 1] : [-1, 1];
  const room = 0.06 * (high - low);
  return [low - room, high + room];
}
