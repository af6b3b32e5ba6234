import type { uPlot } from './uplot';

/** Values further out than this many plot heights are drawn as if they were there: canvases dislike huge numbers. */
const FAR_HEIGHTS = 4;

/**
 * A line through the samples that lifts the pen at gaps (NaN) and between samples on either side of over-centre,
 * where the curve leaves to infinity on one side and comes back on the other.
 */
export function linePaths(breaksDeg: () => readonly number[]): uPlot.Series.PathBuilder {
  return (plot, seriesIndex, first, last) => {
    const xs = plot.data[0] as ArrayLike<number>;
    const ys = plot.data[seriesIndex] as ArrayLike<number>;
    const { height, top, width } = plot.bbox;
    const x0 = plot.valToPos(0, 'x', true);
    const perX = plot.valToPos(1, 'x', true) - x0;
    const y0 = plot.valToPos(0, 'y', true);
    const perY = plot.valToPos(1, 'y', true) - y0;
    const highest = top - FAR_HEIGHTS * height;
    const lowest = top + FAR_HEIGHTS * height;
    const yAt = (value: number) => Math.min(lowest, Math.max(highest, y0 + perY * value));
    const breaks = breaksDeg();
    const stride = Math.max(1, Math.floor((1.5 * (last - first)) / Math.max(1, width)));
    const half = (height / 2) * 0.9;

    const stroke = new Path2D();
    let down = false;
    let before = first;
    for (let i = first; i <= last; before = i, i = nextIndex(i, stride, last)) {
      const y = ys[i];
      if (!Number.isFinite(y)) {
        down = false;
        continue;
      }
      const lock = i > first ? breakBetween(breaks, xs[before], xs[i]) : null;
      const x = x0 + perX * xs[i];
      if (lock !== null && Number.isFinite(ys[before])) {
        // Out to the edge and back in from it, where the curve is on its way there.
        const at = x0 + perX * lock;
        if (Math.abs(perY * ys[before]) > half)
          stroke.lineTo(at, ys[before] > 0 ? highest : lowest);
        down = Math.abs(perY * y) > half;
        if (down) stroke.moveTo(at, y > 0 ? highest : lowest);
      }
      if (down) stroke.lineTo(x, yAt(y));
      else stroke.moveTo(x, yAt(y));
      down = true;
    }
    return { stroke, fill: null, clip: null, band: null, gaps: [], flags: 0 };
  };
}

function nextIndex(i: number, stride: number, last: number): number {
  return i < last ? Math.min(last, i + stride) : last + 1;
}

function breakBetween(breaks: readonly number[], from: number, to: number): number | null {
  return breaks.find((angle) => angle > from && angle < to) ?? null;
}
