import type { Command } from './figure';

/** The window of a plot: pitches from `low` to `high`, values within plus-minus `reach`. */
export interface PlotWindow {
  readonly low: number;
  readonly high: number;
  readonly reach: number;
  x(pitchDeg: number): number;
  y(value: number): number;
}

/**
 * A sampled curve cut to the window: a line ends where it leaves at top or bottom (a pole is not drawn down again on the
 * other side), and a NaN lifts the pen.
 */
export function clippedLine(
  pitchDeg: Float64Array,
  values: Float64Array,
  window: PlotWindow,
): Command[] {
  const commands: Command[] = [];
  let down = false;
  for (let i = 0; i + 1 < pitchDeg.length; i++) {
    const piece = clipped(pitchDeg[i], values[i], pitchDeg[i + 1], values[i + 1], window);
    if (!piece) {
      down = false;
      continue;
    }
    const [x0, y0, x1, y1] = piece;
    if (!down) commands.push(['M', window.x(x0), window.y(y0)]);
    commands.push(['L', window.x(x1), window.y(y1)]);
    down = Math.abs(y1) < window.reach;
  }
  return commands;
}

/** Points of a curve within the pitches of the window, held at its top and bottom; gaps are left out. For fills. */
export function clippedPoints(
  pitchDeg: Float64Array,
  values: Float64Array,
  { low, high, reach, x, y }: PlotWindow,
): [number, number][] {
  const points: [number, number][] = [];
  pitchDeg.forEach((pitch, i) => {
    if (pitch < low || pitch > high || Number.isNaN(values[i])) return;
    points.push([x(pitch), y(Math.min(reach, Math.max(-reach, values[i])))]);
  });
  return points;
}

/** The part of a straight piece that lies in the window (Liang and Barsky's way); null where none does. */
function clipped(
  x0: number,
  y0: number,
  x1: number,
  y1: number,
  { low, high, reach }: PlotWindow,
): [number, number, number, number] | null {
  if (Number.isNaN(y0 + y1)) return null;
  // From one end of the height to the other between two samples: a pole, not a line.
  if (Math.abs(y1 - y0) > 2 * reach) return null;
  let [from, to] = [0, 1];
  const cut = (start: number, step: number, least: number, most: number) => {
    if (step === 0) {
      if (start < least || start > most) to = -1;
      return;
    }
    const [a, b] = [(least - start) / step, (most - start) / step];
    from = Math.max(from, Math.min(a, b));
    to = Math.min(to, Math.max(a, b));
  };
  cut(x0, x1 - x0, low, high);
  cut(y0, y1 - y0, -reach, reach);
  if (from >= to) return null;
  const at = (share: number) => [x0 + share * (x1 - x0), y0 + share * (y1 - y0)] as const;
  return [...at(from), ...at(to)];
}
