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

/** Between the pointer and what is beside it, above it or below it, pixels. */
const BESIDE = 18;
const ABOVE = 36;
const BELOW = 24;

/**
 * Where the read-out stands: to the pointer's right and somewhat higher, or to the left (`left` is then where it ends) where there is
 * no room or it would lie on what is to be kept clear; where it would on both sides, lower or higher still. Within the picture in any
 * case. `own`: its size, pixels like all else.
 */
export function placeReadout(
  { x, y }: Spot,
  room: Size,
  own: Size,
  keepClear: readonly Rectangle[],
): { readonly left: number; readonly top: number; readonly before: boolean } {
  const right = x + BESIDE;
  const left = x - BESIDE - own.width;
  const usual = within(y - ABOVE, room, own);
  const hasRight = right + own.width <= room.width;
  const hasLeft = left >= EDGE;
  for (const top of [usual, within(y + BELOW, room, own), within(usual - own.height, room, own)]) {
    const isFree = (at: number) => !keepClear.some((box) => lies(at, top, own, box));
    if (hasRight && isFree(right)) return { left: right, top, before: false };
    if (hasLeft && isFree(left)) return { left: x - BESIDE, top, before: true };
  }
  if (hasRight) return { left: right, top: usual, before: false };
  if (hasLeft) return { left: x - BESIDE, top: usual, before: true };
  return { left: EDGE, top: usual, before: false };
}

function within(top: number, room: Size, own: Size): number {
  return Math.max(EDGE, Math.min(top, room.height - own.height - EDGE));
}

function lies(left: number, top: number, { width, height }: Size, box: Rectangle): boolean {
  return left < box.right && box.left < left + width && top < box.bottom && box.top < top + height;
}
