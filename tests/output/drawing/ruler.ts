import { INCH_MM } from '../../../src/engine/units';
import type {
  ArcEntity,
  ArrowEntity,
  LineEntity,
  Sheet,
  TextEntity,
} from '../../../src/output/drawing/sheetTypes';
import { along, type Point } from './ink';

/** A figure of the sheet with what a ruler finds where its arrows point, mm of the part. */
export interface Measured {
  readonly text: string;
  readonly feature: string;
  readonly kind: 'length' | 'diameter' | 'flats' | 'leader' | 'endLeader';
  /** Places that the tips point to: along the axis, and away from it (from the middle, in the end view). */
  readonly tips: readonly { readonly u: number; readonly r: number }[];
}

const NEAR = 1e-6;

/** The scale as the title block prints it (ISO 5455: paper before the colon, part behind it). */
export function printedScale(sheet: Sheet): number {
  const found = sheet.entities.flatMap((one) =>
    one.shape === 'text' ? (/^(\d+):(\d+)$/.exec(one.text) ?? []).slice(1, 3) : [],
  );
  if (found.length !== 2) throw new Error('no scale is printed, or more than one');
  return Number(found[0]) / Number(found[1]);
}

/** A length as printed: how many mm, and how far it may be off by its rounding. */
export function printedMm(text: string, sheet: Sheet): { mm: number; half: number } {
  const unit = sheet.unit === 'in' ? INCH_MM : 1;
  return {
    mm: Number(text) * unit,
    half: (sheet.unit === 'in' ? 0.5 * 10 ** -(text.split('.')[1]?.length ?? 4) : 0.5e-4) * unit,
  };
}

/** The numbers of the main view and of the end view; every figure must have a line and arrows of its own. */
export function measuredFigures(sheet: Sheet): Measured[] {
  const middle = endMiddle(sheet);
  return sheet.entities.flatMap((one) =>
    one.shape === 'text' && one.layer === 'dimension' ? [measure(sheet, one, middle)] : [],
  );
}

function linesOn(sheet: Sheet, layer: string): LineEntity[] {
  return sheet.entities.filter(
    (one): one is LineEntity => one.shape === 'line' && one.layer === layer,
  );
}

function arrowsOf(sheet: Sheet): ArrowEntity[] {
  return sheet.entities.filter((one) => one.shape === 'arrow');
}

/** Where the end view's centre lines cross: an upright one, halved at the height of the main view's axis. */
function endMiddle(sheet: Sheet): Point {
  const level = sheet.origin[1];
  const upright = linesOn(sheet, 'centre').filter(
    ({ x1, x2, y1, y2 }) =>
      Math.abs(x1 - x2) < NEAR && Math.abs((y1 + y2) / 2 - level) < NEAR && y1 !== y2,
  );
  if (upright.length !== 1) throw new Error(`${upright.length} end views level with the main one`);
  return [upright[0].x1, level];
}

function measure(sheet: Sheet, text: TextEntity, middle: Point): Measured {
  const line = lineUnder(sheet, text);
  const feature = text.dimension ?? '';
  const tips = arrowsOf(sheet).filter((one) => onLine(line, one));
  if (tips.length > 0) {
    const across = text.text.startsWith('AF');
    const kind = text.turned ? 'diameter' : across ? 'flats' : 'length';
    return { text: text.text, feature, kind, tips: placesOf(sheet, tips, across ? middle : null) };
  }
  const tip = leaderTip(sheet, line);
  const atEnd = /^Hex socket| 90\u00b0/.test(text.text);
  return {
    text: text.text,
    feature,
    kind: atEnd ? 'endLeader' : 'leader',
    tips: placesOf(sheet, [tip], atEnd ? middle : null),
  };
}

/** The nearest line that the text stands on, within a letter's height below it. */
function lineUnder(sheet: Sheet, text: TextEntity): LineEntity {
  const room = text.height;
  const found = linesOn(sheet, 'dimension').flatMap((line) => {
    const [across, from, to] = text.turned
      ? [line.x1 - text.x, line.y1, line.y2]
      : [text.y - line.y1, line.x1, line.x2];
    const level = text.turned ? line.x1 === line.x2 : line.y1 === line.y2;
    const at = text.turned ? text.y : text.x;
    const spans = Math.min(from, to) <= at + 0.01 && at - 0.01 <= Math.max(from, to);
    return level && across > 0 && across < room && spans ? [{ line, across }] : [];
  });
  const [nearest] = found.toSorted((a, b) => a.across - b.across);
  if (!nearest) throw new Error(`"${text.text}" stands on no line`);
  return nearest.line;
}

function onLine({ x1, y1, x2, y2 }: LineEntity, { x, y, angle }: ArrowEntity): boolean {
  const within = (a: number, b: number, v: number) =>
    v >= Math.min(a, b) - NEAR && v <= Math.max(a, b) + NEAR;
  const turn = Math.abs(Math.cos((angle * Math.PI) / 180));
  const parallel = y1 === y2 ? turn > 1 - NEAR : turn < NEAR;
  return parallel && within(x1, x2, x) && within(y1, y2, y);
}

/** From the shelf down the slanted line that begins where the shelf does. */
function leaderTip(sheet: Sheet, shelf: LineEntity): ArrowEntity {
  const ends: Point[] = [
    [shelf.x1, shelf.y1],
    [shelf.x2, shelf.y2],
  ];
  const meets = (x: number, y: number) => ends.some(([a, b]) => Math.hypot(a - x, b - y) < NEAR);
  for (const line of linesOn(sheet, 'dimension')) {
    if (line === shelf || line.y1 === line.y2) continue;
    const far: Point | null = meets(line.x2, line.y2)
      ? [line.x1, line.y1]
      : meets(line.x1, line.y1)
        ? [line.x2, line.y2]
        : null;
    const tip =
      far && arrowsOf(sheet).find(({ x, y }) => Math.hypot(x - far[0], y - far[1]) < NEAR);
    if (tip) return tip;
  }
  throw new Error('a shelf without a leader');
}

function placesOf(sheet: Sheet, tips: readonly ArrowEntity[], middle: Point | null) {
  const scale = printedScale(sheet);
  const [x0, y0] = middle ?? sheet.origin;
  return tips.map(({ x, y }) => {
    const [u, v] = [(x - x0) / scale, (y - y0) / scale];
    return { u, r: middle ? Math.hypot(u, v) : Math.abs(v) };
  });
}

/** A drawn edge of the main view, mm of the part: its ends as (u, signed distance from the axis). */
export interface Edge {
  readonly from: Point;
  readonly to: Point;
  readonly passes: (u: number, r: number) => boolean;
}

/** Edges of a layer between the ends of the axis; the end view and the title block lie beyond them. */
export function edgesOf(sheet: Sheet, layer: 'visible' | 'thread'): Edge[] {
  const scale = printedScale(sheet);
  const [x0, y0] = sheet.origin;
  const axis = linesOn(sheet, 'centre').find(
    (one) => one.y1 === one.y2 && Math.abs(one.y1 - y0) < NEAR && one.x1 < x0 && one.x2 > x0,
  );
  if (!axis) throw new Error('the main view has no axis');
  const place = ([x, y]: Point): Point => [(x - x0) / scale, (y - y0) / scale];
  return sheet.entities.flatMap((one) => {
    if (one.layer !== layer || (one.shape !== 'line' && one.shape !== 'arc')) return [];
    const points = one.shape === 'line' ? lineEnds(one) : along(one);
    if (points.some(([x]) => x < axis.x1 || x > axis.x2)) return [];
    const places = points.map(place);
    return [{ from: places[0], to: places[places.length - 1], passes: passing(one, places) }];
  });
}

function lineEnds(line: LineEntity): Point[] {
  return [
    [line.x1, line.y1],
    [line.x2, line.y2],
  ];
}

/** Whether a place lies on the edge: within a thousandth of its length of it. */
function passing(one: LineEntity | ArcEntity, places: readonly Point[]) {
  const whole = Math.hypot(places[0][0] - places[1][0], places[0][1] - places[1][1]);
  const room = 1e-3 * (one.shape === 'arc' ? one.r : whole) + 1e-9;
  return (u: number, r: number) =>
    places.slice(1).some(([u1, r1], i) => {
      const [u0, r0] = places[i];
      const length = Math.hypot(u1 - u0, r1 - r0) || 1;
      const t = Math.min(
        1,
        Math.max(0, ((u - u0) * (u1 - u0) + (r - r0) * (r1 - r0)) / length ** 2),
      );
      return Math.hypot(u - u0 - t * (u1 - u0), r - r0 - t * (r1 - r0)) < room;
    });
}
