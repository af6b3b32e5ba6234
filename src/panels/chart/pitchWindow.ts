/** The pitches that the chart shows: zoomed and moved within [-90, 90], never narrower than two degrees. */
export interface PitchWindow {
  readonly from: number;
  readonly to: number;
}

export const WHOLE_WINDOW: PitchWindow = { from: -90, to: 90 };
const NARROWEST = 2;
/** Shown until somebody zooms: well beyond what a control reaches, short of where most arms go over centre. */
const USUAL_DEG = 60;

/** The usual window, widened so far that the pitch pointer is in it. */
export function usualWindow(pitchDeg: number): PitchWindow {
  return { from: Math.min(-USUAL_DEG, pitchDeg), to: Math.max(USUAL_DEG, pitchDeg) };
}

/** The window grown by `factor` about a pitch that stays where it is. */
export function zoomed(window: PitchWindow, factor: number, about: number): PitchWindow {
  const span = window.to - window.from;
  const next = Math.min(180, Math.max(NARROWEST, span * factor));
  const place = (about - window.from) / span;
  return within(about - place * next, next);
}

export function moved(window: PitchWindow, byDeg: number): PitchWindow {
  return within(window.from + byDeg, window.to - window.from);
}

/** Moved just far enough to have a pitch in view. */
export function including(window: PitchWindow, pitchDeg: number): PitchWindow {
  if (pitchDeg < window.from) return moved(window, pitchDeg - window.from);
  return pitchDeg > window.to ? moved(window, pitchDeg - window.to) : window;
}

function within(from: number, span: number): PitchWindow {
  const low = Math.min(90 - span, Math.max(-90, from));
  return { from: low, to: low + span };
}
