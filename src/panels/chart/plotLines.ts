import { thinned } from './thinned';
import type { uPlot } from './uplot';

/** A line of the plot as it is drawn: its samples and its look, sizes in CSS pixels. */
export interface PlotLine {
  readonly values: Float64Array;
  readonly colour: string;
  readonly width: number;
  readonly dash: readonly number[];
  /** Pitches where the curve leaves to infinity on one side and comes back on the other. */
  readonly breaksDeg: readonly number[];
}

/** Values further out than this many plot heights are drawn as if they were there: canvases dislike huge numbers. */
const FAR_HEIGHTS = 4;
/** Chords leave the curve by no more than this, pixels of the canvas: less than a shade of grey shows. */
const TOLERANCE = 0.04;

/** Samples that are kept of the line being drawn. */
let kept = new Int32Array(0);

/**
 * Draws the lines over one another, the first lowest: each through as few of its samples as look the same, the pen lifted at
 * gaps (NaN) and between samples on either side of over-centre.
 */
export function drawLines(plot: uPlot, pitchDeg: Float64Array, lines: readonly PlotLine[]): void {
  const { ctx, bbox } = plot;
  const widest = lines.reduce((width, line) => Math.max(width, line.width), 0) * devicePixelRatio;
  ctx.save();
  ctx.beginPath();
  ctx.rect(
    bbox.left - widest / 2,
    bbox.top - widest / 2,
    bbox.width + widest,
    bbox.height + widest,
  );
  ctx.clip();
  ctx.lineJoin = 'round';
  for (const line of lines) {
    ctx.strokeStyle = line.colour;
    ctx.lineWidth = line.width * devicePixelRatio;
    ctx.setLineDash(line.dash as number[]);
    ctx.beginPath();
    traceLine(plot, pitchDeg, line);
    ctx.stroke();
  }
  ctx.restore();
}

/** Of the pitches in view, with one beyond on either side: the first and the last sample. */
export function samplesInView(plot: uPlot, pitchDeg: Float64Array): readonly [number, number] {
  const { min = -90, max = 90 } = plot.scales.x;
  let first = 0;
  while (first + 1 < pitchDeg.length && pitchDeg[first + 1] <= min) first++;
  let last = pitchDeg.length - 1;
  while (last - 1 > first && pitchDeg[last - 1] >= max) last--;
  return [first, last];
}

/** Canvas pixels of pitches and values: `x0 + perX * pitch`, `y0 + perY * value`. */
export function pixelScales(plot: uPlot) {
  const x0 = plot.valToPos(0, 'x', true);
  const y0 = plot.valToPos(0, 'y', true);
  return {
    x0,
    perX: plot.valToPos(1, 'x', true) - x0,
    y0,
    perY: plot.valToPos(1, 'y', true) - y0,
  };
}

/** Samples between which a curve looks straight, as `thinned` gives them; written anew by the next call. */
export function keptSamples(
  plot: uPlot,
  pitchDeg: Float64Array,
  values: Float64Array,
  range: readonly [number, number],
  breaksDeg: readonly number[],
): Int32Array {
  const { perY } = pixelScales(plot);
  if (kept.length < pitchDeg.length) kept = new Int32Array(pitchDeg.length);
  const tolerance = TOLERANCE / Math.abs(perY);
  return kept.subarray(0, thinned(kept, pitchDeg, values, range, tolerance, breaksDeg));
}

function traceLine(plot: uPlot, xs: Float64Array, { values: ys, breaksDeg }: PlotLine): void {
  const { ctx } = plot;
  const { height, top } = plot.bbox;
  const { x0, perX, y0, perY } = pixelScales(plot);
  const highest = top - FAR_HEIGHTS * height;
  const lowest = top + FAR_HEIGHTS * height;
  const half = (height / 2) * 0.9;
  let down = false;
  let before = -1;
  const through = keptSamples(plot, xs, ys, samplesInView(plot, xs), breaksDeg);
  for (let k = 0; k < through.length; k++) {
    const i = through[k];
    const y = ys[i];
    if (!Number.isFinite(y)) {
      down = false;
      before = i;
      continue;
    }
    const lock = before >= 0 ? breakBetween(breaksDeg, xs[before], xs[i]) : null;
    const x = x0 + perX * xs[i];
    if (lock !== null && Number.isFinite(ys[before])) {
      // Out to the edge and back in from it, where the curve is on its way there.
      const at = x0 + perX * lock;
      if (Math.abs(perY * ys[before]) > half) ctx.lineTo(at, ys[before] > 0 ? highest : lowest);
      down = Math.abs(perY * y) > half;
      if (down) ctx.moveTo(at, y > 0 ? highest : lowest);
    }
    const level = Math.min(lowest, Math.max(highest, y0 + perY * y));
    if (down) ctx.lineTo(x, level);
    else ctx.moveTo(x, level);
    down = true;
    before = i;
  }
}

function breakBetween(breaks: readonly number[], from: number, to: number): number | null {
  for (let b = 0; b < breaks.length; b++) {
    if (breaks[b] > from && breaks[b] < to) return breaks[b];
  }
  return null;
}
