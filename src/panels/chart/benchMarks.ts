import { t } from '../../messages';
import type { BenchPoint } from '../../state/benchPoints';
import { fixed } from '../../state/quantities';
import type { HeadReading } from '../../state/reading';
import { signed, signedDegrees } from '../../state/words/pitchText';
import { ElementPool, setText, setValues, svgElement } from '../marks/svg';
import { curveAt, placeOf } from './curveAt';
import type { PlotFrame } from './plotFrame';
import { type PlottedQuantity, perMoment } from './quantity';

/** A point of the bench in the quantity that the chart shows, in display units. */
export interface MeasuredMark {
  readonly point: BenchPoint;
  readonly value: number;
  readonly half: number;
}

/** Points in the plotted quantity; none in an energy, and none where the rod carries nothing. */
export function measuredMarks(
  points: readonly BenchPoint[],
  { curve }: HeadReading,
  { kind, factor }: PlottedQuantity,
): readonly MeasuredMark[] {
  if (kind === 'energy') return [];
  const per = perMoment(curve, kind);
  return points.flatMap((point) => {
    const lever = per ? curveAt(curve.pitchDeg, per, point.pitchDeg) : 1;
    const value = lever * factor * point.moment;
    if (!Number.isFinite(value)) return [];
    return [{ point, value, half: Math.abs(lever * factor * point.half) }];
  });
}

/** Their ends at the samples next to them, NaN elsewhere: what the scale has to reach. */
export function markEnds(
  marks: readonly MeasuredMark[],
  pitchDeg: Float64Array,
): readonly Float64Array[] {
  const low = new Float64Array(pitchDeg.length).fill(Number.NaN);
  const high = new Float64Array(pitchDeg.length).fill(Number.NaN);
  for (const { point, value, half } of marks) {
    const i = Math.min(
      pitchDeg.length - 1,
      Math.max(0, Math.ceil(placeOf(pitchDeg, point.pitchDeg))),
    );
    low[i] = Math.min(value - half, Number.isNaN(low[i]) ? value : low[i]);
    high[i] = Math.max(value + half, Number.isNaN(high[i]) ? value : high[i]);
  }
  return [low, high];
}

/** How many points there are, and how many the curve goes through within their 95 % interval. */
export function benchSummary(points: readonly BenchPoint[], reading: HeadReading): string {
  if (points.length === 0) return '';
  const within = points.filter(
    ({ pitchDeg, moment, half }) => Math.abs(reading.momentAt(pitchDeg) - moment) <= half,
  );
  return t('chart.benchSummary', {
    count: points.length,
    from: signedDegrees(points[0].pitchDeg),
    to: signedDegrees(points[points.length - 1].pitchDeg),
    within: within.length,
  });
}

/** Draws the points as diamonds with the bar of their 95 % interval. */
export function createBenchMarks(parent: SVGGElement) {
  const pool = new ElementPool(() => makeMark(parent));
  return (frame: PlotFrame, marks: readonly MeasuredMark[], unit: string): void => {
    const seen = marks.filter(({ point, value }) => {
      const [x, y] = [frame.x(point.pitchDeg), frame.y(value)];
      return x >= frame.left && x <= frame.right && y >= frame.top && y <= frame.bottom;
    });
    const elements = pool.take(seen.length);
    seen.forEach(({ point, value, half }, i) => {
      const [bar, , title] = elements[i].children;
      const [x, y] = [frame.x(point.pitchDeg), frame.y(value)];
      const high = Math.max(frame.top, frame.y(value + half)) - y;
      const low = Math.min(frame.bottom, frame.y(value - half)) - y;
      setValues(elements[i], { transform: `translate(${x.toFixed(2)} ${y.toFixed(2)})` });
      setValues(bar, {
        d: `M0 ${high.toFixed(1)}V${low.toFixed(1)}M-3 ${high.toFixed(1)}h6M-3 ${low.toFixed(1)}h6`,
      });
      setText(
        title,
        t('chart.benchPoint', {
          angle: signedDegrees(point.pitchDeg),
          value: signed(value),
          half: signed(half).replace('+', ''),
          unit,
          rpm: fixed(point.speedRpm, 0),
        }),
      );
    });
  };
}

function makeMark(parent: SVGGElement): SVGGElement {
  const mark = svgElement('g', parent, { class: 'chart-bench' });
  svgElement('path', mark, { class: 'chart-bench-bar' });
  svgElement('path', mark, { class: 'chart-bench-point', d: 'M0 -5L5 0L0 5L-5 0Z' });
  svgElement('title', mark);
  return mark;
}
