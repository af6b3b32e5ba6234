import { line } from './arcs';
import type { LineEntity } from './sheetTypes';

/**
 * Hatching of a closed outline (ISO 128-3): thin lines at 45 degrees, `tilt` 1 rising to the right, `spacing` apart, from a
 * common origin so that neighbouring outlines of one metal match. Even-odd rule.
 */
export function hatchLines(
  outline: readonly (readonly [number, number])[],
  tilt: 1 | -1,
  spacing: number,
): LineEntity[] {
  // In a frame turned by 45 degrees the lines are level: v is across them, w along them.
  const half = Math.SQRT1_2;
  const turned = outline.map(([x, y]) => [half * (y - tilt * x), half * (x + tilt * y)] as const);
  const across = turned.map(([v]) => v);
  const lines: LineEntity[] = [];
  // A third of a step off the origin: no line runs through a corner of a round number.
  const first = Math.ceil(Math.min(...across) / spacing - 1 / 3);
  for (let k = first; (k + 1 / 3) * spacing < Math.max(...across); k++) {
    const v = (k + 1 / 3) * spacing;
    const hits = crossings(turned, v);
    for (let i = 0; i + 1 < hits.length; i += 2) {
      const [w0, w1] = [hits[i], hits[i + 1]];
      if (w1 - w0 < 0.05) continue;
      const point = (w: number) => [half * (w - tilt * v), half * (v + tilt * w)] as const;
      lines.push(line('hatch', ...point(w0), ...point(w1)));
    }
  }
  return lines;
}

function crossings(turned: readonly (readonly [number, number])[], v: number): number[] {
  const hits: number[] = [];
  turned.forEach(([v0, w0], i) => {
    const [v1, w1] = turned[(i + 1) % turned.length];
    if (v0 < v !== v1 < v) hits.push(w0 + ((v - v0) / (v1 - v0)) * (w1 - w0));
  });
  return hits.toSorted((a, b) => a - b);
}
