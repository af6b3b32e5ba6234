/** Round numbers for scales: 1, 2 or 5 times a power of ten. */

/** The smallest round number that is not below `value` (positive). */
export function niceAbove(value: number): number {
  if (!(value > 0) || !Number.isFinite(value)) return 1;
  const power = 10 ** Math.floor(Math.log10(value));
  for (const step of [1, 2, 5, 10]) {
    if (step * power >= value * (1 - 1e-9)) return step * power;
  }
  return 10 * power;
}

/** The largest round number that is not above `value` (positive). */
export function niceBelow(value: number): number {
  if (!(value > 0) || !Number.isFinite(value)) return 1;
  const power = 10 ** Math.floor(Math.log10(value) + 1e-9);
  for (const step of [5, 2, 1]) {
    if (step * power <= value * (1 + 1e-9)) return step * power;
  }
  return power;
}

/**
 * Full scale for a picture that should not pump while something is dragged: grows at once when `peak` passes it, and
 * comes down only when `peak` has fallen well below the next round number and nothing is being dragged.
 */
export function steadyScale(current: number, peak: number, dragging: boolean): number {
  if (!(current > 0)) return niceAbove(peak);
  if (peak > current) return niceAbove(peak);
  if (dragging || !(peak > 0)) return current;
  return peak < current / 3 ? niceAbove(peak) : current;
}
