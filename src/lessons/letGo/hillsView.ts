import { degreesFromRadians, radians } from '../../engine/units';
import { t } from '../../messages';
import { displayEnergy } from '../../state/quantities';
import type { HeadReading } from '../../state/reading';
import type { Session } from '../../state/session';
import { pitchMarks } from '../../state/words/pitchMarks';
import { signedDegrees } from '../../state/words/pitchText';
import { createAxes, tickText } from '../../ui/drawn/axes';
import { linePath, place, roundTicks } from '../../ui/drawn/plotScale';
import { ElementPool, setShown, setText, setValues, svgElement } from '../../ui/drawn/svg';
import { ballPlace, drivenSpan, type HillsScale, hillsScale } from './hillsScale';

/** Energy against pitch as hills and wells, the ball in it. Kept up to date outside React. */
export interface HillsView {
  /** The head, units or size have changed. */
  draw(reading: HeadReading, width: number, height: number): void;
  /** Only the ball and its energy. */
  move(reading: HeadReading): void;
  pitchAt(x: number): number;
}

const [LEFT, RIGHT, TOP, FOOT] = [40, 8, 6, 20];
const BALL = 9;

export function createHillsView(svg: SVGSVGElement, session: Session): HillsView {
  const { store, letGo } = session;
  const back = svgElement('g', svg);
  const beyond = new ElementPool(() => svgElement('rect', back, { class: 'letgo-beyond' }));
  const axes = createAxes(svg, { grid: 'letgo-grid', tick: 'letgo-tick' }, back);
  const ground = svgElement('path', svg, { class: 'letgo-ground' });
  const held = new ElementPool(() => svgElement('path', svg, { class: 'letgo-held' }));
  const surface = svgElement('path', svg, { class: 'letgo-surface' });
  const walls = new ElementPool(() => svgElement('line', svg));
  const wallTexts = new ElementPool(() => svgElement('text', svg, { class: 'letgo-wall-text' }));
  const level = svgElement('line', svg, { class: 'letgo-level' });
  const motion = svgElement('line', svg, { class: 'letgo-motion' });
  const start = svgElement('path', svg, { class: 'letgo-start' });
  const marks = new ElementPool(() => svgElement('circle', svg, { r: 5 }));
  const markTexts = new ElementPool(() => svgElement('text', svg, { class: 'letgo-mark-text' }));
  const pull = svgElement('line', svg, { class: 'letgo-pull' });
  const ball = svgElement('g', svg, { class: 'letgo-ball' });
  svgElement('circle', ball, { class: 'letgo-ball-hit', r: 22 });
  svgElement('circle', ball, { class: 'letgo-ball-disc', r: BALL });
  const spoke = svgElement('line', ball, {
    class: 'letgo-ball-spoke',
    x1: 0,
    y1: 0,
    x2: 0,
    y2: -6,
  });

  let scale: HillsScale = { fromDeg: -90, toDeg: 90, low: 0, high: 1 };
  let [right, bottom] = [0, 0];
  const px = (deg: number) => place(deg, scale.fromDeg, scale.toDeg, LEFT, right);
  const py = (energy: number) => place(energy, scale.low, scale.high, bottom, TOP);

  /** Kinetic and potential together where it has been let go. */
  function total(): number | null {
    const { run } = letGo;
    if (!run || store.getState().gesture || letGo.store.getState().status === 'held') return null;
    return run.release.energy.kinetic + run.release.energy.potential;
  }

  function draw(reading: HeadReading, width: number, height: number): void {
    if (width <= 0 || height <= 0) return;
    setValues(svg, { viewBox: `0 0 ${width} ${height}` });
    [right, bottom] = [width - RIGHT, height - FOOT];
    scale = hillsScale(reading, total());
    drawAxes();
    drawCurve(reading);
    drawEnds(reading);
    drawMarks(reading);
    move(reading);
  }

  function drawAxes(): void {
    const { units } = store.getState().settings;
    const per = displayEnergy(1, units);
    const xs = roundTicks(scale.fromDeg, scale.toDeg, Math.max(2, Math.floor((right - LEFT) / 60)));
    const [low, high] = [scale.low * per.value, scale.high * per.value];
    const ys = roundTicks(low, high, Math.max(2, Math.floor((bottom - TOP) / 32)));
    axes.draw(
      xs.map((x) => ({ at: px(x), text: signedDegrees(x, 0) })),
      ys.map((y) => ({ at: py(y / per.value), text: tickText(y) })),
      { left: LEFT, right, top: TOP, bottom },
    );
  }

  function drawCurve(reading: HeadReading): void {
    const { pitchDeg, energy } = reading.curve;
    const [lowDeg, highDeg] = drivenSpan(reading);
    const inside = Array.from(pitchDeg.keys()).filter(
      (i) => pitchDeg[i] >= lowDeg && pitchDeg[i] <= highDeg,
    );
    const xs = inside.map((i) => px(pitchDeg[i]));
    const ys = inside.map((i) => py(energy[i]));
    const line = linePath(xs, ys);
    setValues(surface, { d: line });
    // The ground under it, parted where there is no value.
    setValues(ground, {
      d: line
        .split('M')
        .filter(Boolean)
        .map((piece) => groundUnder(piece))
        .join(''),
    });
    const bands = reading.bandsDeg.filter(([from, to]) => to > lowDeg && from < highDeg);
    const elements = held.take(bands.length);
    bands.forEach(([from, to], k) => {
      const [a, b] = [Math.max(from, lowDeg), Math.min(to, highDeg)];
      const between = inside.filter((i) => pitchDeg[i] > a && pitchDeg[i] < b);
      const at = [a, ...between.map((i) => pitchDeg[i]), b];
      const heights = at.map((deg) => py(reading.energyAt(deg)));
      setValues(elements[k], { d: linePath(at.map(px), heights) });
    });
  }

  function groundUnder(piece: string): string {
    const points = piece.split('L');
    const [first, last] = [points[0], points[points.length - 1]].map((one) => one.split(' ')[0]);
    return `M${piece}L${last} ${bottom}L${first} ${bottom}Z`;
  }

  function drawEnds(reading: HeadReading): void {
    const ends = reading.linkage?.reach === 0 ? null : reading.linkage?.ends;
    const found = ends ? [ends.low, ends.high].filter(({ why }) => why !== 'open') : [];
    const rects = beyond.take(found.length);
    const lines = walls.take(found.length);
    const texts = wallTexts.take(found.length);
    found.forEach((end, k) => {
      const x = px(end.deg);
      const side = end.deg < 0 ? -1 : 1;
      const [from, to] = side < 0 ? [LEFT, x] : [x, right];
      setValues(rects[k], { x: from, y: TOP, width: Math.max(0, to - from), height: bottom - TOP });
      setValues(lines[k], {
        class: `letgo-wall letgo-wall-${end.why}`,
        x1: x,
        x2: x,
        y1: TOP,
        y2: bottom,
      });
      setText(texts[k], t(`letGo.end.${end.why}`));
      const at = x - side * 5;
      setValues(texts[k], { x: at, y: TOP + 10, 'text-anchor': side < 0 ? 'start' : 'end' });
    });
  }

  function drawMarks(reading: HeadReading): void {
    const [lowDeg, highDeg] = drivenSpan(reading);
    const shown = pitchMarks(reading).filter(
      ({ pitchDeg }) => pitchDeg >= lowDeg && pitchDeg <= highDeg,
    );
    const elements = marks.take(shown.length);
    const texts = markTexts.take(shown.length);
    shown.forEach(({ pitchDeg, kind }, k) => {
      const [x, y] = [px(pitchDeg), py(reading.energyAt(pitchDeg))];
      setValues(elements[k], { class: `letgo-mark letgo-mark-${kind}`, cx: x, cy: y });
      setText(texts[k], signedDegrees(pitchDeg));
      setValues(texts[k], { x, y: Math.min(y + 18, bottom - 4) });
    });
  }

  function move(reading: HeadReading): void {
    const { pitchDeg } = store.getState();
    const [x, y] = ballPlace(reading, pitchDeg, px, py, BALL);
    const known = Number.isFinite(x + y);
    setShown(ball, known);
    if (!known) return;
    setValues(ball, { transform: `translate(${x.toFixed(2)} ${y.toFixed(2)})` });
    // It rolls: a turn for each circumference, told from the middle of the plot.
    const turn = degreesFromRadians(radians((px(pitchDeg) - px(0)) / BALL));
    setValues(spoke, { transform: `rotate(${turn.toFixed(1)})` });
    moveLevel(reading, pitchDeg);
    movePull(x, y);
  }

  function moveLevel(reading: HeadReading, pitchDeg: number): void {
    const energy = total();
    setShown(level, energy !== null);
    setShown(motion, energy !== null);
    setShown(start, energy !== null);
    const { run } = letGo;
    if (energy === null || !run) return;
    const x = px(pitchDeg);
    const top = py(energy);
    setValues(level, { x1: LEFT, x2: right, y1: top, y2: top });
    setValues(motion, { x1: x, x2: x, y1: py(reading.energyAt(pitchDeg)), y2: top });
    const fromDeg = degreesFromRadians(run.from);
    setValues(start, {
      transform: `translate(${px(fromDeg).toFixed(1)} ${py(reading.energyAt(fromDeg)).toFixed(1)})`,
      d: 'M0 -2l-4 -8h8z',
    });
  }

  /** From the ball toward where the hand draws it. */
  function movePull(x: number, y: number): void {
    const hand = letGo.run?.hand;
    const pushed = letGo.store.getState().pushing && hand !== undefined && hand.kind !== 'off';
    setShown(pull, pushed);
    if (!pushed || !letGo.run) return;
    const to =
      hand.kind === 'spring'
        ? px(degreesFromRadians(hand.target))
        : x + 36 * Math.sign(letGo.run.release.hand);
    setValues(pull, { x1: x, y1: y, x2: Math.min(right, Math.max(LEFT, to)), y2: y });
  }

  return {
    draw,
    move,
    pitchAt: (x) => place(x, LEFT, right, scale.fromDeg, scale.toDeg),
  };
}
