import { cellMiddle, type Family, type FamilyRequest, FORBIDDEN } from '../../neutralise/family';
import { tickText } from '../../ui/drawn/axes';
import { roomForNames } from '../../ui/drawn/plotLayout';
import { linePath, roundTicks } from '../../ui/drawn/plotScale';
import { ElementPool, setShown, setText, setValues, svgElement } from '../marks/svg';
import { type FamilyScale, xOf, yOf } from './familyScale';

/** What the chart says beside the curves. */
export interface FamilyTexts {
  readonly xTitle: string;
  readonly yTitle: string;
  /** One name a curve. */
  readonly names: readonly string[];
  /** Millimetres in one shown unit. */
  readonly perShown: number;
}

export interface FamilyPlot {
  update(
    request: FamilyRequest,
    family: Family | null,
    texts: FamilyTexts,
    width: number,
    height: number,
  ): void;
  /** Where the head stands now. */
  mark(diameterMm: number, lengthMm: number): void;
  scale(): FamilyScale | null;
}

const LEFT = 52;
const TOP = 22;
const FOOT = 34;
/** Of the names, pixels, as in the style sheet. */
const LETTER = 12;
/** Between the names of two curves. */
const LINE = 14;
const BITS = Object.values(FORBIDDEN);

/** The chart of a family: hatched where it is forbidden, a line a material, and a mark for the head as it is. */
export function createFamilyPlot(svg: SVGSVGElement, handle: SVGGElement, id: string): FamilyPlot {
  const patterns = svgElement('defs', null);
  svg.prepend(patterns);
  const back = svgElement('g', null);
  patterns.after(back);
  const hatches = BITS.map((bit) => hatch(patterns, back, bit, id));
  const grid = svgElement('path', back, { class: 'plot-grid' });
  const lines = new ElementPool(() => svgElement('path', back));
  const names = new ElementPool(() => svgElement('text', back));
  const ticks = new ElementPool(() => svgElement('text', back, { class: 'plot-tick' }));
  const xTitle = svgElement('text', back, { class: 'plot-title' });
  const yTitle = svgElement('text', back, { class: 'plot-title' });
  let scale: FamilyScale | null = null;
  let here: readonly [number, number] | null = null;

  function update(
    request: FamilyRequest,
    family: Family | null,
    texts: FamilyTexts,
    width: number,
    height: number,
  ): void {
    if (width <= 0 || height <= 0) return;
    setValues(svg, { viewBox: `0 0 ${width} ${height}` });
    const { diametersMm, lengthsMm } = request;
    const now: FamilyScale = {
      diametersMm,
      lengthsMm,
      left: LEFT,
      right: width - roomForNames(texts.names, width, LETTER),
      top: TOP,
      bottom: height - FOOT,
    };
    scale = now;
    drawAxes(now, texts, height);
    hatches.forEach((path, i) => setValues(path, { d: hatchPath(request, family, now, BITS[i]) }));
    const curves = family?.curves ?? [];
    const paths = lines.take(curves.length);
    const labels = names.take(curves.length);
    curves.forEach(({ points }, i) => {
      const xs = points.map((point) => (point ? xOf(now, point.diameterMm) : 0));
      const ys = points.map((point) => (point ? yOf(now, point.lengthMm) : Number.NaN));
      setValues(paths[i], { class: `plot-line plot-line-${lookOf(i)}`, d: linePath(xs, ys) });
    });
    nameCurves(curves, labels, texts.names, now);
    if (here) mark(...here);
  }

  /** At the height where each curve ends, moved apart and kept above the axis. */
  function nameCurves(
    curves: Family['curves'],
    labels: readonly SVGTextElement[],
    curveNames: readonly string[],
    now: FamilyScale,
  ): void {
    const ends = curves
      .map(({ points }, i) => ({ i, last: points.findLast((point) => point !== null) ?? null }))
      .flatMap(({ i, last }) => {
        setShown(labels[i], last !== null);
        return last ? [{ i, y: yOf(now, last.lengthMm) }] : [];
      })
      .toSorted((a, b) => b.y - a.y);
    // From the lowest up.
    let below = now.bottom + LINE;
    for (const { i, y } of ends) {
      below = Math.min(y, below - LINE);
      setText(labels[i], curveNames[i]);
      setValues(labels[i], {
        class: `plot-name plot-name-${lookOf(i)}`,
        x: now.right + 8,
        y: below + 4,
      });
    }
  }

  function drawAxes(now: FamilyScale, texts: FamilyTexts, height: number): void {
    const { perShown } = texts;
    const shown = ([low, high]: readonly [number, number]) =>
      [low / perShown, high / perShown] as const;
    const [xLow, xHigh] = shown(now.diametersMm);
    const [yLow, yHigh] = shown(now.lengthsMm);
    const xs = roundTicks(xLow, xHigh, Math.max(2, Math.floor((now.right - LEFT) / 60)));
    const ys = roundTicks(yLow, yHigh, Math.max(2, Math.floor((now.bottom - TOP) / 30)));
    const atX = (x: number) => xOf(now, x * perShown);
    const atY = (y: number) => yOf(now, y * perShown);
    setValues(grid, {
      d:
        xs.map((x) => `M${atX(x).toFixed(1)} ${TOP}V${now.bottom}`).join('') +
        ys.map((y) => `M${LEFT} ${atY(y).toFixed(1)}H${now.right}`).join(''),
    });
    const labels = ticks.take(xs.length + ys.length);
    xs.forEach((x, i) => {
      setText(labels[i], tickText(x));
      setValues(labels[i], { x: atX(x), y: now.bottom + 15, 'text-anchor': 'middle' });
    });
    ys.forEach((y, i) => {
      setText(labels[xs.length + i], tickText(y));
      setValues(labels[xs.length + i], { x: LEFT - 6, y: atY(y) + 4, 'text-anchor': 'end' });
    });
    setText(xTitle, texts.xTitle);
    setValues(xTitle, { x: now.right, y: height - 4, 'text-anchor': 'end' });
    setText(yTitle, texts.yTitle);
    setValues(yTitle, { x: LEFT, y: 12 });
  }

  function mark(diameterMm: number, lengthMm: number): void {
    here = [diameterMm, lengthMm];
    if (!scale) return;
    const x = xOf(scale, diameterMm);
    const y = yOf(scale, lengthMm);
    const inside =
      x >= scale.left - 1 && x <= scale.right + 1 && y >= scale.top - 1 && y <= scale.bottom + 1;
    setShown(handle, inside);
    setValues(handle, { transform: `translate(${x.toFixed(1)} ${y.toFixed(1)})` });
  }

  return { update, mark, scale: () => scale };
}

/** Lines of another slope and spacing for each kind, so that they can be told apart without colour. */
function hatch(patterns: SVGDefsElement, back: SVGGElement, bit: number, id: string) {
  const k = BITS.indexOf(bit as never);
  const name = `${id}-hatch-${bit}`;
  const size = 7 + (k % 3) * 2;
  const pattern = svgElement('pattern', patterns, {
    id: name,
    width: size,
    height: size,
    patternUnits: 'userSpaceOnUse',
    patternTransform: `rotate(${[45, -45, 0, 90, 20, 70][k]})`,
  });
  svgElement('path', pattern, { d: `M0 0V${size}`, class: `family-hatch family-hatch-${bit}` });
  return svgElement('path', back, { fill: `url(#${name})`, class: 'family-forbidden' });
}

/** Cells of one kind as one path; runs along a row are joined. */
function hatchPath(
  request: FamilyRequest,
  family: Family | null,
  scale: FamilyScale,
  bit: number,
): string {
  if (!family) return '';
  const { map } = family;
  const dx = (scale.right - scale.left) / map.columns;
  const dy = (scale.bottom - scale.top) / map.rows;
  let d = '';
  for (let row = 0; row < map.rows; row++) {
    let from = -1;
    for (let column = 0; column <= map.columns; column++) {
      const on = column < map.columns && (map.cells[row * map.columns + column] & bit) !== 0;
      if (on && from < 0) from = column;
      if (on || from < 0) continue;
      const [, lengthMm] = cellMiddle(request, map, column, row);
      const y = yOf(scale, lengthMm) - dy / 2;
      d += `M${(scale.left + from * dx).toFixed(1)} ${y.toFixed(1)}h${((column - from) * dx).toFixed(1)}v${dy.toFixed(1)}h${(-(column - from) * dx).toFixed(1)}Z`;
      from = -1;
    }
  }
  return d;
}

/** Which kinds of forbidding a map shows. */
export function forbiddenKinds({ map }: Family): readonly (keyof typeof FORBIDDEN)[] {
  const all = map.cells.reduce((bits, cell) => bits | cell, 0);
  return (Object.keys(FORBIDDEN) as (keyof typeof FORBIDDEN)[]).filter(
    (name) => (all & FORBIDDEN[name]) !== 0,
  );
}

/** Four looks in turn. */
export function lookOf(index: number): number {
  return 1 + (index % 4);
}
