import type { Rectangle } from '../drawing/labels';

/** It keeps off the edges of the picture by this, pixels. */
const EDGE = 4;

/** Pixels. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

/** Pixels from the picture's upper left corner. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

/**
 * Where the read-out stands: to the pointer's right, or to the left (`left` is then where it ends) where there is no room or it would
 * lie on what is to be kept clear; somewhat higher, but within the picture. `own`: its size, pixels like all else.
 */
export function placeReadout(
  { x, y }: Spot,
  room: Size,
  own: Size,
  keepClear: readonly Rectangle[],
): { readonly left: number; readonly top: number; readonly before: boolean } {
  const top = Math.max(EDGE, Math.min(y - 36, room.height - own.height - EDGE));
  const [right, edge] = [x + 18, x - 18];
  const before = edge - own.width;
  const lies = (at: number) =>
    keepClear.some(
      (box) =>
        at < box.right &&
        box.left < at + own.width &&
        top < box.bottom &&
        box.top < top + own.height,
    );
  const isBefore =
    right + own.width > room.width || (lies(right) && before >= EDGE && !lies(before));
  if (!isBefore) return { left: Math.max(EDGE, right), top, before: false };
  if (before >= EDGE) return { left: edge, top, before: true };
  return { left: EDGE, top, before: false };
}
