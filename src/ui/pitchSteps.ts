/**
 * How the pitch pointer moves, on the dial, in the chart and on the hills of the energy alike: what a key does to it and to what a dragged value
 * snaps. Pitch in degrees, kept in [-90, 90].
 */
export const PITCH_END_DEG = 90;

interface Modifiers {
  readonly shiftKey: boolean;
  readonly altKey: boolean;
}

interface KeyPress extends Modifiers {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
}

/** Snap of a drag: 0.1 degree; Shift 1 degree, Alt 0.01 degree. */
export function snapPitch(pitchDeg: number, modifiers: Modifiers): number {
  const perDegree = modifiers.altKey ? 100 : modifiers.shiftKey ? 1 : 10;
  return keepInRange(Math.round(pitchDeg * perDegree) / perDegree);
}

/**
 * Pitch after a key, or null when the key is not for the pointer. Arrows 1 degree (Shift 5, Alt 0.1), Page keys 10,
 * Home and End the ends of the range. With Ctrl or Command an arrow goes to the next of `stops` (rest and flee
 * angles, ascending).
 */
export function pitchAfterKey(
  press: KeyPress,
  pitchDeg: number,
  stops: readonly number[],
): number | null {
  if (press.key === 'Home') return -PITCH_END_DEG;
  if (press.key === 'End') return PITCH_END_DEG;
  if (press.key === 'PageUp') return tidy(pitchDeg + 10);
  if (press.key === 'PageDown') return tidy(pitchDeg - 10);
  const way = wayOf(press.key);
  if (way === 0) return null;
  if (press.ctrlKey || press.metaKey) return nextStop(pitchDeg, way, stops);
  const step = press.altKey ? 0.1 : press.shiftKey ? 5 : 1;
  return tidy(pitchDeg + way * step);
}

function wayOf(key: string): -1 | 0 | 1 {
  if (key === 'ArrowUp' || key === 'ArrowRight') return 1;
  return key === 'ArrowDown' || key === 'ArrowLeft' ? -1 : 0;
}

/** The nearest stop beyond the pointer, or the pointer itself when there is none. */
function nextStop(pitchDeg: number, way: -1 | 1, stops: readonly number[]): number {
  const beyond = stops.filter((stop) => way * (stop - pitchDeg) > 0.005);
  if (beyond.length === 0) return pitchDeg;
  return way > 0 ? Math.min(...beyond) : Math.max(...beyond);
}

/** Without the dust that adding tenths leaves. */
function tidy(pitchDeg: number): number {
  return keepInRange(Math.round(pitchDeg * 1e6) / 1e6);
}

export function keepInRange(pitchDeg: number): number {
  return Math.min(PITCH_END_DEG, Math.max(-PITCH_END_DEG, pitchDeg));
}
