import type { HeadReading } from '../../state/reading';
import { beyondOverCentre, type PitchSpan } from '../marks/pitchMarks';
import type { ChartTheme } from './chartTheme';
import type { uPlot } from './uplot';

/** Behind the lines: the pitch in use as a quiet band, what lies beyond over-centre hatched, the zero line firm. */
export function drawBands(plot: uPlot, reading: HeadReading, theme: ChartTheme): void {
  const { ctx } = plot;
  ctx.save();
  ctx.beginPath();
  ctx.rect(plot.bbox.left, plot.bbox.top, plot.bbox.width, plot.bbox.height);
  ctx.clip();
  const used = reading.usedPitchDeg;
  fillSpan(plot, { fromDeg: -used, toDeg: used }, theme.used);
  if (reading.linkage) {
    for (const span of beyondOverCentre(reading.overCentreDeg))
      hatchSpan(plot, span, theme.warning);
    for (const angle of reading.overCentreDeg) drawLock(plot, angle, theme.warning);
  }
  const zero = plot.valToPos(0, 'y', true);
  ctx.strokeStyle = theme.lineStrong;
  ctx.lineWidth = devicePixelRatio;
  ctx.beginPath();
  ctx.moveTo(plot.bbox.left, zero);
  ctx.lineTo(plot.bbox.left + plot.bbox.width, zero);
  ctx.stroke();
  ctx.restore();
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
