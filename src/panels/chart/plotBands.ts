import type { PitchSpan } from '../../state/closedSpans';
import type { ChartData } from './chartData';
import type { ChartHead } from './chartHead';
import type { ChartTheme } from './chartTheme';
import { keptSamples, pixelScales, samplesInView } from './plotLines';
import type { uPlot } from './uplot';

/**
 * Behind the lines: the pitch in use as a quiet band, what cannot be used hatched, friction about the total, the zero line
 * firm with a bar where friction holds.
 */
export function drawBands(plot: uPlot, head: ChartHead, data: ChartData, theme: ChartTheme): void {
  const { ctx } = plot;
  ctx.save();
  ctx.beginPath();
  ctx.rect(plot.bbox.left, plot.bbox.top, plot.bbox.width, plot.bbox.height);
  ctx.clip();
  const used = head.usedPitchDeg;
  fillSpan(plot, { fromDeg: -used, toDeg: used }, theme.used);
  for (const span of head.closed) {
    hatchSpan(plot, span, theme.warning);
    drawLock(plot, span.edgeDeg, theme.warning);
  }
  drawFriction(plot, data, theme);
  const zero = plot.valToPos(0, 'y', true);
  ctx.strokeStyle = theme.lineStrong;
  ctx.lineWidth = devicePixelRatio;
  ctx.beginPath();
  ctx.moveTo(plot.bbox.left, zero);
  ctx.lineTo(plot.bbox.left + plot.bbox.width, zero);
  ctx.stroke();
  for (const [from, to] of head.heldDeg) drawHeld(plot, from, to, zero, theme.holds);
  ctx.restore();
}

/** The total more and less friction: a quiet band with thin edges, parted where there is no number. */
function drawFriction(
  plot: uPlot,
  { pitchDeg, total, friction, bandEdges }: ChartData,
  theme: ChartTheme,
): void {
  const [first, last] = samplesInView(plot, pitchDeg);
  const { ctx } = plot;
  ctx.fillStyle = theme.holds;
  ctx.strokeStyle = theme.holds;
  ctx.lineWidth = devicePixelRatio;
  ctx.setLineDash([]);
  const [upper, lower] = bandEdges;
  for (let i = first; i <= last; i++) {
    upper[i] = total[i] + friction[i];
    lower[i] = total[i] - friction[i];
  }
  for (let from = first; from <= last; from++) {
    if (Number.isNaN(upper[from])) continue;
    let to = from;
    while (to < last && !Number.isNaN(upper[to + 1])) to++;
    traceBand(plot, pitchDeg, upper, lower, [from, to]);
    ctx.globalAlpha = 0.16;
    ctx.fill();
    ctx.globalAlpha = 0.45;
    ctx.stroke();
    ctx.globalAlpha = 1;
    from = to;
  }
}

/** Out along one edge and back along the other. */
function traceBand(
  plot: uPlot,
  pitchDeg: Float64Array,
  upper: Float64Array,
  lower: Float64Array,
  range: readonly [number, number],
): void {
  const { ctx } = plot;
  const { x0, perX, y0, perY } = pixelScales(plot);
  ctx.beginPath();
  const out = keptSamples(plot, pitchDeg, upper, range, []);
  for (let k = 0; k < out.length; k++) {
    const i = out[k];
    ctx.lineTo(x0 + perX * pitchDeg[i], y0 + perY * upper[i]);
  }
  const back = keptSamples(plot, pitchDeg, lower, range, []);
  for (let k = back.length - 1; k >= 0; k--) {
    const i = back[k];
    ctx.lineTo(x0 + perX * pitchDeg[i], y0 + perY * lower[i]);
  }
  ctx.closePath();
}

/** A bar on the zero line with a tick at either end, where friction holds the grip. */
function drawHeld(plot: uPlot, fromDeg: number, toDeg: number, zero: number, colour: string): void {
  const { ctx } = plot;
  const [x1, x2] = [plot.valToPos(fromDeg, 'x', true), plot.valToPos(toDeg, 'x', true)];
  const tick = 6 * devicePixelRatio;
  ctx.strokeStyle = colour;
  ctx.lineWidth = 4 * devicePixelRatio;
  ctx.beginPath();
  ctx.moveTo(x1, zero);
  ctx.lineTo(x2, zero);
  ctx.stroke();
  ctx.lineWidth = 2 * devicePixelRatio;
  ctx.beginPath();
  for (const x of [x1, x2]) {
    ctx.moveTo(x, zero - tick);
    ctx.lineTo(x, zero + tick);
  }
  ctx.stroke();
}

function fillSpan(plot: uPlot, span: PitchSpan, colour: string): void {
  const x = plot.valToPos(span.fromDeg, 'x', true);
  const width = plot.valToPos(span.toDeg, 'x', true) - x;
  plot.ctx.fillStyle = colour;
  plot.ctx.fillRect(x, plot.bbox.top, width, plot.bbox.height);
}

function hatchSpan(plot: uPlot, span: PitchSpan, colour: string): void {
  const { ctx, bbox } = plot;
  ctx.globalAlpha = 0.08;
  fillSpan(plot, span, colour);
  const x = plot.valToPos(span.fromDeg, 'x', true);
  const width = plot.valToPos(span.toDeg, 'x', true) - x;
  ctx.save();
  ctx.beginPath();
  ctx.rect(x, bbox.top, width, bbox.height);
  ctx.clip();
  ctx.globalAlpha = 0.3;
  ctx.strokeStyle = colour;
  ctx.lineWidth = devicePixelRatio;
  ctx.beginPath();
  const step = 8 * devicePixelRatio;
  for (let at = x - bbox.height; at < x + width; at += step) {
    ctx.moveTo(at, bbox.top + bbox.height);
    ctx.lineTo(at + bbox.height, bbox.top);
  }
  ctx.stroke();
  ctx.restore();
}

function drawLock(plot: uPlot, pitchDeg: number, colour: string): void {
  const { ctx, bbox } = plot;
  const x = plot.valToPos(pitchDeg, 'x', true);
  ctx.globalAlpha = 1;
  ctx.strokeStyle = colour;
  ctx.lineWidth = 1.5 * devicePixelRatio;
  ctx.setLineDash([]);
  ctx.beginPath();
  ctx.moveTo(x, bbox.top);
  ctx.lineTo(x, bbox.top + bbox.height);
  ctx.stroke();
}
