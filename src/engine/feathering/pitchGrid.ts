import type { Radians } from '../units';

/**
 * A fixed list of pitches (radians) at which a head is looked at again and again, with their sines and cosines worked out
 * once. What belongs to a grid is remembered by the object: make one for a purpose and keep it.
 */
export class PitchGrid {
  readonly sines: Float64Array;
  readonly cosines: Float64Array;
  /** Sines of half the pitches. */
  readonly halves: Float64Array;

  constructor(readonly pitches: Float64Array) {
    this.sines = pitches.map((pitch) => Math.sin(pitch));
    this.cosines = pitches.map((pitch) => Math.cos(pitch));
    this.halves = pitches.map((pitch) => Math.sin(pitch / 2));
  }
}

/** Ranges that are remembered at once. */
const MOST = 4;

/** The grid that `make` gives for a range; the same object as long as few other ranges are asked for. */
export function gridOfRange(
  make: (from: Radians, to: Radians) => Float64Array,
): (from: Radians, to: Radians) => PitchGrid {
  const held: { readonly from: number; readonly to: number; readonly grid: PitchGrid }[] = [];
  return (from, to) => {
    const known = held.find((one) => one.from === from && one.to === to);
    if (known) return known.grid;
    const grid = new PitchGrid(make(from, to));
    if (held.length === MOST) held.shift();
    held.push({ from, to, grid });
    return grid;
  };
}
