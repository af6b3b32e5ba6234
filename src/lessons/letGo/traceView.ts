import { degreesFromRadians, radians } from '../../engine/units';
import type { HeadReading } from '../../state/reading';
import type { Session } from '../../state/session';
import { pitchMarks } from '../../state/words/pitchMarks';
import { signedDegrees } from '../../state/words/pitchText';
import { createAxes, tickText } from '../../ui/drawn/axes';
import { place, roundTicks } from '../../ui/drawn/plotScale';
import { ElementPool, setShown, setValues, svgElement } from '../../ui/drawn/svg';
import { drivenSpan } from './hillsScale';

/** Pitch against time of the run under way or the last one. */
export interface TraceView {
  /** Of the time axis. */
  readonly unit: 'ms' | 's';
  draw(reading: HeadReading, width: number, height: number): void;
}

const [LEFT, RIGHT, TOP, FOOT] = [40, 10, 6, 20];
/** Of a sample of the trace. */
const degrees = (pitch: number) => degreesFromRadians(radians(pitch));
/** Swings in view at first. */
const FIRST_SWINGS = 2;

export function createTraceView(svg: SVGSVGElement, session: Session): TraceView {
  const { letGo } = session;
  const bands = new ElementPool(() => svgElement('rect', svg, { class: 'letgo-band' }));
  const axes = createAxes(svg, { grid: 'letgo-grid', tick: 'letgo-tick' });
  const rests = new ElementPool(() => svgElement('line', svg));
  const walls = new ElementPool(() => svgElement('line', svg));
  const line = svgElement('path', svg, { class: 'letgo-trace' });
  const dot = svgElement('circle', svg, { class: 'letgo-trace-dot', r: 4 });

  let shownUnit: TraceView['unit'] = 'ms';

  function draw(reading: HeadReading, width: number, height: number): void {
    if (width <= 0 || height <= 0) return;
    const { run } = letGo;
    setValues(svg, { viewBox: `0 0 ${width} ${height}` });
    const [right, bottom] = [width - RIGHT, height - FOOT];
    const [low, high] = pitchSpan(reading);
    const last = run ? lastTime(run.time, run.swing) : 0.01;
    const unit = last < 1 ? 1000 : 1;
    shownUnit = unit === 1 ? 's' : 'ms';
    const px = (time: number) => place(time, 0, last, LEFT, right);
    const py = (deg: number) => place(deg, low, high, bottom, TOP);
    const xs = roundTicks(0, last * unit, Math.max(2, Math.floor((right - LEFT) / 56)));
    const ys = roundTicks(low, high, Math.max(2, Math.floor((bottom - TOP) / 34)));
    axes.draw(
      // Before a run the axis of time has no numbers yet.
      xs.map((x) => ({ at: px(x / unit), text: run ? tickText(x) : '' })),
      ys.map((y) => ({ at: py(y), text: signedDegrees(y, 0) })),
      { left: LEFT, right, top: TOP, bottom },
    );
    drawStill(reading, py, [low, high], [right, bottom]);
    drawLine(px, py);
  }

  /** Where it can stay, where it rests and flees, and the ends of the travel. */
  function drawStill(
    reading: HeadReading,
    py: (deg: number) => number,
    [low, high]: readonly [number, number],
    [right]: readonly [number, number],
  ): void {
    const inView = (deg: number) => deg > low && deg < high;
    const found = reading.bandsDeg
      .map(([from, to]) => [Math.max(low, from), Math.min(high, to)] as const)
      .filter(([from, to]) => to > from);
    const rects = bands.take(found.length);
    found.forEach(([from, to], k) => {
      const y = py(to);
      setValues(rects[k], { x: LEFT, y, width: right - LEFT, height: py(from) - y });
    });
    const marks = pitchMarks(reading).filter(({ pitchDeg }) => inView(pitchDeg));
    const lines = rests.take(marks.length);
    marks.forEach(({ pitchDeg, kind }, k) => {
      const y = py(pitchDeg);
      setValues(lines[k], {
        class: `letgo-rest letgo-rest-${kind}`,
        x1: LEFT,
        x2: right,
        y1: y,
        y2: y,
      });
    });
    const ends = reading.linkage?.reach === 0 ? null : reading.linkage?.ends;
    const stops = ends ? [ends.low, ends.high].filter(({ why }) => why !== 'open') : [];
    const shown = stops.filter(({ deg }) => deg >= low && deg <= high);
    const elements = walls.take(shown.length);
    shown.forEach(({ deg, why }, k) => {
      const y = py(deg);
      setValues(elements[k], {
        class: `letgo-wall letgo-wall-${why}`,
        x1: LEFT,
        x2: right,
        y1: y,
        y2: y,
      });
    });
  }

  function drawLine(px: (time: number) => number, py: (deg: number) => number): void {
    const { run } = letGo;
    setShown(line, run !== null);
    setShown(dot, run !== null);
    if (!run) return;
    const { length, time, pitch } = run.trace;
    let d = '';
    for (let i = 0; i < length; i++) {
      const at = `${px(time[i]).toFixed(1)} ${py(degrees(pitch[i])).toFixed(1)}`;
      d += `${i === 0 ? 'M' : 'L'}${at}`;
    }
    const { release } = run;
    const now = [px(run.time), py(degrees(release.pitch))] as const;
    setValues(line, { d: `${d}L${now[0].toFixed(1)} ${now[1].toFixed(1)}` });
    setValues(dot, { cx: now[0], cy: now[1] });
  }

  /** What the run has reached, rounded outward to five degrees; before there is one, the pitch in use. */
  function pitchSpan(reading: HeadReading): readonly [number, number] {
    const { run } = letGo;
    const [lowEnd, highEnd] = drivenSpan(reading);
    if (!run) {
      const used = reading.usedPitchDeg;
      return [Math.max(lowEnd, -used), Math.min(highEnd, used)];
    }
    let low = degrees(run.from);
    let high = low;
    const { length, pitch } = run.trace;
    for (let i = 0; i < length; i++) {
      low = Math.min(low, degrees(pitch[i]));
      high = Math.max(high, degrees(pitch[i]));
    }
    // Where it comes to rest is in view from the first.
    for (const { pitchDeg, kind } of pitchMarks(reading)) {
      if (kind !== 'stable' || pitchDeg < lowEnd || pitchDeg > highEnd) continue;
      low = Math.min(low, pitchDeg);
      high = Math.max(high, pitchDeg);
    }
    return [5 * Math.floor(low / 5 - 0.2), 5 * Math.ceil(high / 5 + 0.2)];
  }

  return {
    draw,
    get unit() {
      return shownUnit;
    },
  };
}

/** The end of the time axis: two swings at first, then by steps as the run goes on. */
function lastTime(time: number, swing: number): number {
  let last = FIRST_SWINGS * swing;
  while (time > 0.98 * last) last *= 1.5;
  return last;
}
