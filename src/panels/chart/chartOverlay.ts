import { t } from '../../messages';
import type { PitchMark } from '../../state/words/pitchMarks';
import { signedDegrees } from '../../state/words/pitchText';
import { ElementPool, setShown, setText, setValues, svgElement } from '../marks/svg';
import { createBenchMarks, type MeasuredMark } from './benchMarks';
import type { ChartCursor } from './chartCursor';
import type { ChartHead } from './chartHead';
import { createLineNames, type NamedLine, type NamesView } from './lineNames';
import type { PlotFrame } from './plotFrame';
import type { Tick } from './plotOptions';

/** What lies over the canvas as SVG: rest and flee marks, names of the lines, over-centre words, the pitch cursor. */
export interface ChartOverlay {
  readonly cursor: SVGGElement;
  readonly knobX: number;
  updateTicks(frame: PlotFrame, ticks: Readonly<Record<'x' | 'y', readonly Tick[]>>): void;
  updateHead(frame: PlotFrame, head: ChartHead): void;
  updateNames(frame: PlotFrame, lines: readonly NamedLine[], view: NamesView): void;
  updateBench(frame: PlotFrame, marks: readonly MeasuredMark[], unit: string): void;
  updateCursor(frame: PlotFrame, cursor: ChartCursor): void;
}

const MARK_RADIUS = 5.5;
/** Of the numbers from the frame: length of the ticks and a gap. */
const TICK_GAP = 8;
/** From the top of a number of an axis to the line it stands on. */
const TICK_RISE = 10;

export function createOverlay(
  svg: SVGSVGElement,
  readout: HTMLElement,
  pick: (line: NamedLine) => void,
): ChartOverlay {
  const tickGroup = svgElement('g', svg, { 'aria-hidden': 'true' });
  const tickTexts = new ElementPool(() => svgElement('text', tickGroup, { class: 'chart-tick' }));
  const nameGroup = svgElement('g', svg);
  const bench = createBenchMarks(svgElement('g', svg));
  const lockWords = new ElementPool(() => svgElement('text', svg, { class: 'chart-lock-word' }));
  const cursor = svgElement('g', svg, {
    class: 'chart-cursor',
    role: 'slider',
    tabindex: 0,
    'aria-label': t('chart.cursor'),
    'aria-valuemin': -90,
    'aria-valuemax': 90,
    'data-testid': 'chart-cursor',
  });
  const line = svgElement('line', cursor, { class: 'chart-cursor-line' });
  const focus = svgElement('circle', cursor, { class: 'chart-cursor-focus', r: 14 });
  const knob = svgElement('circle', cursor, { class: 'chart-cursor-knob', r: 8 });
  const markGroup = svgElement('g', svg, { class: 'chart-marks' });
  const marks = new ElementPool(() => makeMark(markGroup));
  const strays = new ElementPool(() => svgElement('text', svg, { class: 'chart-stray' }));
  const names = createLineNames(nameGroup, pick);
  let knobX = 0;

  return {
    cursor,
    get knobX() {
      return knobX;
    },
    updateNames: names.update,
    updateBench: bench,
    updateTicks(frame, { x, y }) {
      const texts = tickTexts.take(x.length + y.length);
      x.forEach(({ at, text }, i) => {
        setText(texts[i], text);
        const place = { x: frame.x(at), y: frame.bottom + TICK_GAP + TICK_RISE };
        setValues(texts[i], { ...place, dy: 0, 'text-anchor': 'middle' });
      });
      y.forEach(({ at, text }, i) => {
        const element = texts[x.length + i];
        setText(element, text);
        const place = { x: frame.left - TICK_GAP, y: frame.y(at) };
        setValues(element, { ...place, dy: TICK_RISE / 2 - 1, 'text-anchor': 'end' });
      });
    },
    updateHead(frame, head) {
      const found = head.marks.filter((mark) => inView(frame, mark.pitchDeg));
      nameStrays(strays, frame, head.marks);
      const elements = marks.take(found.length);
      found.forEach((mark, i) => {
        const x = frame.x(mark.pitchDeg).toFixed(2);
        const y = frame.y(mark.value).toFixed(2);
        setValues(elements[i], {
          class: `chart-mark chart-mark-${mark.kind}`,
          transform: `translate(${x} ${y})`,
          'data-kind': mark.kind,
          'data-pitch-deg': mark.pitchDeg.toFixed(2),
        });
      });
      const words = lockWords.take(head.closed.length);
      head.closed.forEach((span, i) => {
        const lock = span.edgeDeg;
        const side = lock === span.fromDeg ? 1 : -1;
        const x = frame.x(lock) + side * 11;
        const fits = x > frame.left + 6 && x < frame.right - 2;
        setText(words[i], fits ? t(`chart.${span.why}`) : '');
        const turn = `rotate(-90 ${x.toFixed(1)} ${frame.bottom - 8})`;
        setValues(words[i], { x, y: frame.bottom - 8, dy: 4, transform: turn });
      });
    },
    updateCursor(frame, { pitchDeg, value, text, spoken }) {
      const visible = inView(frame, pitchDeg);
      setShown(readout, visible);
      // Out of view it keeps the focus and the keys.
      setValues(cursor, { class: visible ? 'chart-cursor' : 'chart-cursor chart-cursor-away' });
      knobX = frame.x(pitchDeg);
      setValues(line, { x1: knobX, x2: knobX, y1: frame.top, y2: frame.bottom });
      const height = value === null ? null : frame.y(value);
      const reaches = height !== null && height >= frame.top - 1 && height <= frame.bottom + 1;
      const y = reaches ? height : height !== null && height < frame.top ? frame.top : frame.bottom;
      for (const circle of [focus, knob]) setValues(circle, { cx: knobX, cy: y });
      setValues(knob, { class: `chart-cursor-knob${reaches ? '' : ' chart-cursor-knob-off'}` });
      setValues(cursor, { 'aria-valuenow': pitchDeg, 'aria-valuetext': spoken });
      setText(readout, text);
      placeReadout(readout, frame, knobX);
    },
  };
}

/** Marks out of view are named at the edge that they lie beyond, the nearest of each side. */
function nameStrays(
  pool: ElementPool<SVGTextElement>,
  frame: PlotFrame,
  marks: readonly PitchMark[],
): void {
  const [left, right] = pool.take(2);
  const below = marks.findLast((mark) => frame.x(mark.pitchDeg) < frame.left - 0.5);
  const above = marks.find((mark) => frame.x(mark.pitchDeg) > frame.right + 0.5);
  const y = frame.bottom - 8;
  setText(
    left,
    below ? t(`chart.left.${below.kind}`, { angle: signedDegrees(below.pitchDeg) }) : '',
  );
  setValues(left, { x: frame.left + 6, y });
  setText(
    right,
    above ? t(`chart.right.${above.kind}`, { angle: signedDegrees(above.pitchDeg) }) : '',
  );
  setValues(right, { x: frame.right - 6, y, 'text-anchor': 'end' });
}

function inView(frame: PlotFrame, pitchDeg: number): boolean {
  const x = frame.x(pitchDeg);
  return x >= frame.left - 0.5 && x <= frame.right + 0.5;
}

/** Width of a character of the read-out, generously: reading its real width would cost a layout a frame. */
const CHARACTER_WIDTH = 7.5;

/** In the strip above the plot, over the cursor as far as there is room. */
function placeReadout(readout: HTMLElement, frame: PlotFrame, x: number): void {
  const half = 6 + (CHARACTER_WIDTH * (readout.textContent?.length ?? 0)) / 2;
  const middle = Math.max(frame.left + half, Math.min(frame.right - half, x));
  readout.style.transform = `translate(calc(${middle.toFixed(1)}px - 50%), ${frame.top - 22}px)`;
}

function makeMark(parent: SVGGElement): SVGGElement {
  const mark = svgElement('g', parent);
  svgElement('circle', mark, { class: 'chart-disc', r: MARK_RADIUS });
  svgElement('path', mark, {
    class: 'chart-half',
    d: `M0 ${-MARK_RADIUS}A${MARK_RADIUS} ${MARK_RADIUS} 0 0 0 0 ${MARK_RADIUS}Z`,
  });
  return mark;
}
