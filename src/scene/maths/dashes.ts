/**
 * Dashed and dash-dot lines as plain segments, so that a pattern keeps its size in millimetres and needs no shader.
 * Patterns are lengths of stroke, gap, stroke, gap ... in the unit of the points.
 */
export type Point = readonly [x: number, y: number, z: number];
export type Pattern = readonly number[];

/** The drawing-office pattern of an axis, for strokes of about `unit`. */
export function axisPattern(unit: number): Pattern {
  return [3 * unit, 0.7 * unit, 0.5 * unit, 0.7 * unit];
}
export function dashPattern(unit: number): Pattern {
  return [unit, 0.8 * unit];
}
export const SOLID: Pattern = [];

/** Appends the strokes of a polyline to `out`, six numbers a stroke; the pattern runs on round its corners. */
export function dashPolyline(out: number[], points: readonly Point[], pattern: Pattern): void {
  const period = pattern.reduce((sum, length) => sum + length, 0);
  let place = 0;
  let left = pattern[0];
  for (let i = 0; i + 1 < points.length; i++) {
    const from = points[i];
    const to = points[i + 1];
    const length = Math.hypot(to[0] - from[0], to[1] - from[1], to[2] - from[2]);
    if (length === 0) continue;
    if (!(period > 0)) {
      addStroke(out, from, to, 0, 1);
      continue;
    }
    for (let done = 0; done < length - 1e-9 * length; ) {
      const step = Math.min(left, length - done);
      if (place % 2 === 0) addStroke(out, from, to, done / length, (done + step) / length);
      done += step;
      left -= step;
      if (left <= 1e-9 * period) {
        place = (place + 1) % pattern.length;
        left = pattern[place];
      }
    }
  }
}

/** The stretch between two shares of the way from `a` to `b`. */
function addStroke(out: number[], a: Point, b: Point, start: number, end: number): void {
  const dx = b[0] - a[0];
  const dy = b[1] - a[1];
  const dz = b[2] - a[2];
  out.push(a[0] + dx * start, a[1] + dy * start, a[2] + dz * start);
  if (end === 1) out.push(b[0], b[1], b[2]);
  else out.push(a[0] + dx * end, a[1] + dy * end, a[2] + dz * end);
}

/** Points of an arc about the origin in the plane of two unit directions. */
export function arcPoints(
  radius: number,
  fromDeg: number,
  toDeg: number,
  at: (cosine: number, sine: number) => Point,
  steps = 48,
): Point[] {
  return Array.from({ length: steps + 1 }, (_, i) => {
    const angle = ((fromDeg + ((toDeg - fromDeg) * i) / steps) * Math.PI) / 180;
    return at(radius * Math.cos(angle), radius * Math.sin(angle));
  });
}
