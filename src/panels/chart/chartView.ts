import { shownTryOut } from '../../design/tryOuts';
import { t } from '../../messages';
import { closedEdges } from '../../state/closedSpans';
import { significant } from '../../state/quantities';
import type { HeadReading } from '../../state/reading';
import type { Session } from '../../state/session';
import { attachPitchKeys } from '../../ui/pitchKeys';
import { setText, setValues } from '../marks/svg';
import { type MeasuredMark, markEnds, measuredMarks } from './benchMarks';
import { type ChartCursor, chartCursor } from './chartCursor';
import { ChartData } from './chartData';
import { type ChartHead, chartHead } from './chartHead';
import { createOverlay } from './chartOverlay';
import { attachChartPointer } from './chartPointer';
import {
  type ChartTheme,
  COMPARED_DASHES,
  readTheme,
  SHARE_DASHES,
  watchTheme,
} from './chartTheme';
import type { ChartTrail } from './chartTrail';
import { ComparedLines } from './comparedLines';
import { namedLines } from './namedLines';
import { keepSizeOnPaper } from './paperSize';
import { including, type PitchWindow, usualWindow } from './pitchWindow';
import { drawBands } from './plotBands';
import { type PlotFrame, plotFrame } from './plotFrame';
import { drawLines, type PlotLine } from './plotLines';
import { plotOptions, type Tick } from './plotOptions';
import { hangsOnRod, type PlottedQuantity, plottedQuantity } from './quantity';
import { uPlot } from './uplot';
import { demandedRange, HeldRange } from './yRange';

/** The places in the page that the chart writes to. */
export interface ChartElements {
  readonly host: HTMLElement;
  readonly svg: SVGSVGElement;
  readonly readout: HTMLElement;
  readonly note: HTMLElement;
}

/**
 * The plot, kept up to date outside React, in three steps that a drag takes in different pictures: each shows what the one before it
 * has left.
 */
export interface ChartView {
  /** Works out what is to be drawn. `head`: more than the pitch pointer changed. */
  take(head: boolean): void;
  /** Draws what was worked out; in a drag the names of the lines wait for `writeWords`. */
  draw(): void;
  /** Brings the words of the chart up to what is drawn. */
  writeWords(): void;
  readonly window: PitchWindow;
  /** Null: the usual one again. */
  setWindow(window: PitchWindow | null): void;
  destroy(): void;
}

const NARROW_WIDTH = 520;
const TOTAL_WIDTH = 2.5;
const SHARE_WIDTH = 1.5;
const COMPARED_WIDTH = 1.25;
/** Lines are named before they shoot up toward over-centre. */
const NAME_SHORT_OF_LOCK_DEG = 5;

export function createChartView(elements: ChartElements, session: Session): ChartView {
  const { host, svg, readout, note } = elements;
  const { store, live, actions, letGo } = session;
  const reading: HeadReading = live.reading;
  const data = new ChartData(reading.curve.pitchDeg);
  const compared = new ComparedLines(data.pitchDeg.length);
  const range = new HeldRange();
  const overlay = createOverlay(svg, readout, ({ part, tryOut }) => {
    if (part !== null) actions.select(part);
    if (tryOut !== null) actions.tryOuts.show(tryOut);
  });
  let theme: ChartTheme = readTheme();
  let view: PitchWindow = usualWindow(store.getState().pitchDeg);
  /** Somebody zoomed or moved the view; else it follows the pitch pointer. */
  let zoomedByHand = false;
  let plot: uPlot | null = null;
  let frame: PlotFrame | null = null;
  const ticks: Record<'x' | 'y', readonly Tick[]> = { x: [], y: [] };
  /** What the numbers beside the ticks were written for. */
  let ticksPlaced: readonly unknown[] = [];
  /** Of the host: asking for it in a frame would cost a layout. */
  let hostWidth = 0;
  let quantity: PlottedQuantity = plottedQuantity(reading, store.getState().settings);
  let head: ChartHead = chartHead(reading, quantity);
  let cursor: ChartCursor = cursorNow();
  let marks: readonly MeasuredMark[] = [];
  /** The lowest and the highest value that are to be seen. */
  let heights: readonly [number, number] = [0, 0];
  /** What was worked out and is not drawn yet. */
  let undrawn: 'head' | 'cursor' | null = null;
  /** What the plot's scales were last set to. */
  let scalesSet: readonly number[] = [];
  /** What the y range was last chosen for; another choice starts it anew. */
  let rangeSubject = '';
  let wordsMayWait = false;
  let wordsBehind = false;
  /** Fetched when the grip is first let go. */
  let trail: ChartTrail | null = null;
  let trailAsked = false;

  function resize(): void {
    const { clientWidth: width, clientHeight: height } = host;
    if (width === 0 || height === 0) return;
    hostWidth = width;
    setValues(svg, { viewBox: `0 0 ${width} ${height}` });
    if (plot) plot.setSize({ width, height });
    else {
      const source = {
        theme: () => theme,
        gutter,
        ticks(axis: 'x' | 'y', found: readonly Tick[]) {
          ticks[axis] = found;
        },
        drawBands: (drawing: uPlot) => drawBands(drawing, head, data, theme),
        drawLines: (drawing: uPlot) => drawLines(drawing, data.pitchDeg, lines()),
        drawn,
      };
      plot = new uPlot(plotOptions(width, height, source), [[], []], host);
      plot.setData([data.pitchDeg, data.total], false);
      host.append(svg, readout);
    }
    updateHead();
  }

  /** Pitches toward which what hangs on the rod grows without bound, or ends. */
  function poles(): readonly number[] {
    return closedEdges(reading.linkage).map((span) => span.edgeDeg);
  }

  /** Those of the try-outs laid over too: none of their poles sets the scale. */
  function allPoles(): readonly number[] {
    return [...poles(), ...compared.lines.flatMap((line) => line?.outlook.overCentreDeg ?? [])];
  }

  function gutter(): number {
    const { chartShares } = store.getState().settings;
    const narrow = hostWidth < NARROW_WIDTH;
    const named = chartShares || compared.any;
    return named ? (narrow ? 88 : 128) : narrow ? 16 : 64;
  }

  function updateHead(): void {
    takeHead();
    draw();
  }

  function takeHead(): void {
    undrawn = 'head';
    const { settings, gesture } = store.getState();
    quantity = plottedQuantity(reading, settings);
    head = chartHead(reading, quantity);
    cursor = cursorNow();
    data.update(reading, quantity, settings.chartShares, t('chart.others'));
    compared.update(session, quantity);
    marks = measuredMarks(session.benchPoints.getState(), reading, quantity);
    const subject = `${quantity.kind} ${quantity.unit} ${settings.chartShares} ${view.from} ${view.to}`;
    const mayShrink = !gesture || subject !== rangeSubject;
    rangeSubject = subject;
    const shown = [
      ...data.shareValues.filter((_, k) => data.shares[k] !== null),
      ...compared.values.filter((_, k) => compared.lines[k] !== null),
    ];
    heights = range.take(
      demandedRange({
        pitchDeg: data.pitchDeg,
        curves: [data.total, ...shown, ...(marks.length > 0 ? markEnds(marks, data.pitchDeg) : [])],
        fromDeg: view.from,
        toDeg: view.to,
        overCentreDeg: hangsOnRod(quantity) ? allPoles() : [],
        floor: quantity.floor * quantity.factor,
        symmetric: quantity.kind !== 'energy',
      }),
      mayShrink,
    );
  }

  function draw(): void {
    const what = undrawn;
    if (!plot || what === null) return;
    undrawn = null;
    if (what === 'cursor') return drawCursor();
    const [low, high] = heights;
    plot.batch(() => {
      const asked = [view.from, view.to, low, high];
      if (asked.every((one, i) => one === scalesSet[i])) return;
      scalesSet = asked;
      plot?.setScale('x', { min: view.from, max: view.to });
      plot?.setScale('y', { min: low, max: high });
    });
  }

  /** The total lowest, then the shares, then the try-outs laid over. */
  function lines(): PlotLine[] {
    const { selection } = store.getState();
    const onRod = hangsOnRod(quantity);
    const breaksDeg = onRod ? head.overCentreDeg : [];
    const { ink } = theme;
    const all: PlotLine[] = [
      { values: data.total, colour: ink, width: TOTAL_WIDTH, dash: [], breaksDeg },
    ];
    data.shares.forEach((share, k) => {
      if (!share) return;
      const width = share.id !== null && share.id === selection ? 2 * SHARE_WIDTH : SHARE_WIDTH;
      const look = { colour: theme.shares[k], width, dash: SHARE_DASHES[k] };
      all.push({ values: data.shareValues[k], ...look, breaksDeg });
    });
    compared.lines.forEach((line, k) => {
      if (!line) return;
      const look = { colour: ink, width: COMPARED_WIDTH, dash: COMPARED_DASHES[k] };
      const own = onRod ? line.outlook.overCentreDeg : [];
      all.push({ values: compared.values[k], ...look, breaksDeg: own });
    });
    return all;
  }

  /** After every drawing of the canvas: the overlay follows. */
  function drawn(done: uPlot): void {
    frame = plotFrame(done);
    const placed = [ticks.x, ticks.y, frame.left, frame.bottom, frame.right, frame.top, view];
    if (placed.some((one, i) => one !== ticksPlaced[i])) overlay.updateTicks(frame, ticks);
    ticksPlaced = placed;
    overlay.updateHead(frame, head);
    overlay.updateBench(frame, marks, quantity.unit);
    drawCursor();
    drawTrail();
    wordsBehind = true;
    if (!wordsMayWait) writeWords();
  }

  function writeWords(): void {
    if (!plot || !frame || !wordsBehind) return;
    wordsBehind = false;
    const { design, settings, selection } = store.getState();
    const locks = hangsOnRod(quantity) ? poles().filter((at) => at > 0) : [];
    overlay.updateNames(frame, namedLines(data, compared, shownTryOut(design)), {
      pitchDeg: data.pitchDeg,
      lastDeg: Math.min(90, ...locks.map((at) => at - NAME_SHORT_OF_LOCK_DEG)),
      gutter: gutter(),
      selection,
    });
    const fellBack = settings.chartQuantity !== quantity.kind && !reading.linkage;
    setText(note, noteText(fellBack, plot.scales.y));
  }

  function drawTrail(): void {
    if (frame) trail?.draw(frame, reading, quantity);
    if (trailAsked || !letGo.run) return;
    trailAsked = true;
    import('./chartTrail').then(
      (module) => {
        if (!alive) return;
        trail = module.createChartTrail(svg, letGo);
        drawTrail();
      },
      () => {
        trailAsked = false;
      },
    );
  }

  function noteText(fellBack: boolean, y: uPlot.Scale): string {
    const floor = quantity.floor * quantity.factor;
    if (fellBack) return t('chart.noArm');
    const held = quantity.kind !== 'energy' && (y.max ?? 0) <= floor * 1.5 + 1e-9 && isFlat(floor);
    const reach = `${significant(y.max ?? 0, 2)}\u00a0${quantity.unit}`;
    return held ? t('chart.heldScale', { reach }) : '';
  }

  function isFlat(floor: number): boolean {
    return data.pitchDeg.every(
      (pitch, i) => Math.abs(pitch) > 30 || Math.abs(data.total[i]) < floor,
    );
  }

  function cursorNow(): ChartCursor {
    const { pitchDeg, settings } = store.getState();
    return chartCursor(reading, quantity, pitchDeg, settings.units);
  }

  function drawCursor(): void {
    if (frame) overlay.updateCursor(frame, cursor);
  }

  function setWindow(next: PitchWindow | null): void {
    zoomedByHand = next !== null;
    view = next ?? usualWindow(store.getState().pitchDeg);
    updateHead();
  }

  /** The pointer, moved by keys or elsewhere, stays in view. */
  function followPointer(): boolean {
    const { pitchDeg } = store.getState();
    const next = zoomedByHand ? including(view, pitchDeg) : usualWindow(pitchDeg);
    if (next.from === view.from && next.to === view.to) return false;
    view = next;
    return true;
  }

  const observer = new ResizeObserver(resize);
  observer.observe(host);
  resize();
  let alive = true;
  document.fonts?.ready.then(() => alive && plot?.redraw(false, true));
  const detach = [
    watchTheme(() => {
      theme = readTheme();
      plot?.redraw(false);
    }),
    keepSizeOnPaper(host, resize),
    session.outlooks.subscribe(updateHead),
    letGo.subscribe(drawTrail),
    session.benchPoints.subscribe(updateHead),
    attachPitchKeys(overlay.cursor, session),
    attachChartPointer(host, session, {
      frame: () => frame,
      knobX: () => overlay.knobX,
      window: () => view,
      setWindow,
      cursor: overlay.cursor,
    }),
    store.subscribe((state, before) => {
      if (before.gesture && !state.gesture) updateHead();
    }),
  ];

  return {
    take(changed) {
      const movedView = followPointer();
      if (changed || movedView) return takeHead();
      cursor = cursorNow();
      undrawn ??= 'cursor';
    },
    draw() {
      wordsMayWait = store.getState().gesture;
      draw();
      wordsMayWait = false;
    },
    writeWords,
    get window() {
      return view;
    },
    setWindow,
    destroy() {
      alive = false;
      observer.disconnect();
      for (const undo of detach) undo();
      plot?.destroy();
      svg.replaceChildren();
    },
  };
}
