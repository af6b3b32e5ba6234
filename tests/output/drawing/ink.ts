import type {
  ArcEntity,
  ArrowEntity,
  Box,
  CircleEntity,
  Entity,
  LineEntity,
} from '../../../src/output/drawing/sheetTypes';
import { ARROW_LENGTH, ARROW_WIDTH, LINE_STYLES } from '../../../src/output/drawing/sheetTypes';

export type Point = readonly [x: number, y: number];
export type Stroke = LineEntity | CircleEntity | ArcEntity | ArrowEntity;

function grown({ x0, y0, x1, y1 }: Box, by: number): Box {
  return { x0: x0 - by, y0: y0 - by, x1: x1 + by, y1: y1 + by };
}

export function boxesShare(a: Box, b: Box): boolean {
  return a.x0 < b.x1 && b.x0 < a.x1 && a.y0 < b.y1 && b.y0 < a.y1;
}

/** Whether a stroke of its own width puts ink into a box. */
export function inks(stroke: Stroke, box: Box): boolean {
  if (stroke.shape === 'arrow') {
    const corners = arrowhead(stroke);
    return corners.some((a, i) => segmentMeets(a, corners[(i + 1) % 3], box));
  }
  const wide = grown(box, LINE_STYLES[stroke.layer].width / 2);
  if (stroke.shape === 'line') {
    return segmentMeets([stroke.x1, stroke.y1], [stroke.x2, stroke.y2], wide);
  }
  if (!circleMeets(stroke, wide)) return false;
  if (stroke.shape === 'circle') return true;
  const points = along(stroke);
  return points.some((a, i) => i > 0 && segmentMeets(points[i - 1], a, wide));
}

/** Liang and Barsky's clipping of a segment against a box (1984). */
function segmentMeets([xa, ya]: Point, [xb, yb]: Point, box: Box): boolean {
  let [enter, leave] = [0, 1];
  const sides = [
    [xa - xb, xa - box.x0],
    [xb - xa, box.x1 - xa],
    [ya - yb, ya - box.y0],
    [yb - ya, box.y1 - ya],
  ];
  for (const [p, q] of sides) {
    if (p === 0 && q < 0) return false;
    if (p < 0) enter = Math.max(enter, q / p);
    if (p > 0) leave = Math.min(leave, q / p);
  }
  return enter < leave;
}

/** A circle's line passes a box whose nearest point lies within it and whose farthest beyond it. */
function circleMeets({ x, y, r }: CircleEntity | ArcEntity, box: Box): boolean {
  const nearest = Math.hypot(
    Math.max(box.x0 - x, 0, x - box.x1),
    Math.max(box.y0 - y, 0, y - box.y1),
  );
  const farthest = Math.hypot(
    Math.max(Math.abs(box.x0 - x), Math.abs(box.x1 - x)),
    Math.max(Math.abs(box.y0 - y), Math.abs(box.y1 - y)),
  );
  return nearest < r && r < farthest;
}

/** One point for each degree. */
export function along({ x, y, r, from, to }: ArcEntity): Point[] {
  const sweep = (((to - from) % 360) + 360) % 360;
  const count = Math.ceil(sweep) + 1;
  return Array.from({ length: count + 1 }, (_, k): Point => {
    const angle = ((from + (sweep * k) / count) * Math.PI) / 180;
    return [x + r * Math.cos(angle), y + r * Math.sin(angle)];
  });
}

export function arrowhead({ x, y, angle }: ArrowEntity): Point[] {
  const [c, s] = [Math.cos((angle * Math.PI) / 180), Math.sin((angle * Math.PI) / 180)];
  const back: Point = [x - ARROW_LENGTH * c, y - ARROW_LENGTH * s];
  const half = ARROW_WIDTH / 2;
  return [
    [x, y],
    [back[0] - half * s, back[1] + half * c],
    [back[0] + half * s, back[1] - half * c],
  ];
}

/** Whether two lines cross each other well within both, by more than a line's width. */
export function cross(a: LineEntity, b: LineEntity): boolean {
  const [ux, uy, vx, vy] = [a.x2 - a.x1, a.y2 - a.y1, b.x2 - b.x1, b.y2 - b.y1];
  const turn = ux * vy - uy * vx;
  const [lengthA, lengthB] = [Math.hypot(ux, uy), Math.hypot(vx, vy)];
  if (Math.abs(turn) < 1e-9 * lengthA * lengthB) return false;
  const [wx, wy] = [b.x1 - a.x1, b.y1 - a.y1];
  const [s, t] = [(wx * vy - wy * vx) / turn, (wx * uy - wy * ux) / turn];
  const [edgeA, edgeB] = [0.25 / lengthA, 0.25 / lengthB];
  return s > edgeA && s < 1 - edgeA && t > edgeB && t < 1 - edgeB;
}

export function inkOf(entities: readonly Entity[]): Stroke[] {
  return entities.filter((one): one is Stroke => one.shape !== 'text');
}

/** The smallest box round all of a stroke's ink. */
export function strokeBox(stroke: Stroke): Box {
  const points: readonly Point[] =
    stroke.shape === 'arrow'
      ? arrowhead(stroke)
      : stroke.shape === 'line'
        ? [
            [stroke.x1, stroke.y1],
            [stroke.x2, stroke.y2],
          ]
        : stroke.shape === 'arc'
          ? along(stroke)
          : [
              [stroke.x - stroke.r, stroke.y - stroke.r],
              [stroke.x + stroke.r, stroke.y + stroke.r],
            ];
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return { x0: Math.min(...xs), y0: Math.min(...ys), x1: Math.max(...xs), y1: Math.max(...ys) };
}
