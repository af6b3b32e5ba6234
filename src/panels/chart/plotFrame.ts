import type { uPlot } from './uplot';

/** Where the plot's inside lies in its host, CSS pixels, and how values map to it. */
export interface PlotFrame {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  x(pitchDeg: number): number;
  /** Not kept inside: check with `top` and `bottom`. */
  y(value: number): number;
  pitchAt(x: number): number;
}

export function plotFrame(plot: uPlot): PlotFrame {
  const ratio = devicePixelRatio;
  const left = plot.bbox.left / ratio;
  const top = plot.bbox.top / ratio;
  const width = plot.bbox.width / ratio;
  const height = plot.bbox.height / ratio;
  const { min: from = 0, max: to = 1 } = plot.scales.x;
  const { min: low = 0, max: high = 1 } = plot.scales.y;
  return {
    left,
    top,
    right: left + width,
    bottom: top + height,
    x: (pitchDeg) => left + ((pitchDeg - from) / (to - from)) * width,
    y: (value) => top + ((high - value) / (high - low)) * height,
    pitchAt: (x) => from + ((x - left) / width) * (to - from),
  };
}

export function insideFrame(frame: PlotFrame, x: number, y: number): boolean {
  return x >= frame.left && x <= frame.right && y >= frame.top && y <= frame.bottom;
}
