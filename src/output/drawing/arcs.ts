import type { ArcEntity, Entity, Layer, LineEntity } from './sheetTypes';

export function line(layer: Layer, x1: number, y1: number, x2: number, y2: number): LineEntity {
  return { shape: 'line', layer, x1, y1, x2, y2 };
}

function degrees(y: number, x: number): number {
  return (Math.atan2(y, x) * 180) / Math.PI;
}

/** The edge from one point to the next: a line, or the arc of a bulge (tangent of a quarter of its sweep). */
export function edge(
  layer: Layer,
  x1: number,
  y1: number,
  x2: number,
  y2: number,
  bulge = 0,
): LineEntity | ArcEntity {
  if (bulge === 0) return line(layer, x1, y1, x2, y2);
  const [dx, dy] = [x2 - x1, y2 - y1];
  const away = (1 - bulge * bulge) / (4 * bulge);
  const [x, y] = [(x1 + x2) / 2 - away * dy, (y1 + y2) / 2 + away * dx];
  const start = degrees(y1 - y, x1 - x);
  const stop = degrees(y2 - y, x2 - x);
  const [from, to] = bulge > 0 ? [start, stop] : [stop, start];
  return { shape: 'arc', layer, x, y, r: Math.hypot(x1 - x, y1 - y), from, to };
}

/** The arc through three points, from the first to the last; a line where they lie on one. */
export function arcThrough(
  layer: Layer,
  [x1, y1]: readonly [number, number],
  [xm, ym]: readonly [number, number],
  [x2, y2]: readonly [number, number],
): LineEntity | ArcEntity {
  const [dx, dy] = [x2 - x1, y2 - y1];
  const chord = Math.hypot(dx, dy);
  // Height of the middle above the chord, to its right positive, is half the chord times the bulge.
  const height = ((xm - (x1 + x2) / 2) * dy - (ym - (y1 + y2) / 2) * dx) / chord;
  const bulge = (2 * height) / chord;
  return edge(layer, x1, y1, x2, y2, Math.abs(bulge) < 1e-9 ? 0 : bulge);
}

/** The same entities, moved. */
export function moved(entities: readonly Entity[], dx: number, dy: number): Entity[] {
  return entities.map(
    (one): Entity =>
      one.shape === 'line'
        ? { ...one, x1: one.x1 + dx, y1: one.y1 + dy, x2: one.x2 + dx, y2: one.y2 + dy }
        : { ...one, x: one.x + dx, y: one.y + dy },
  );
}

/** Points along an arc, its ends included, no chord farther from it than a thousandth of its radius. */
export function arcPoints({ x, y, r, from, to }: ArcEntity): [number, number][] {
  const sweep = (((to - from) % 360) + 360) % 360 || 360;
  const count = Math.max(2, Math.ceil(sweep / 5));
  return Array.from({ length: count + 1 }, (_, k) => {
    const angle = ((from + (sweep * k) / count) * Math.PI) / 180;
    return [x + r * Math.cos(angle), y + r * Math.sin(angle)];
  });
}
