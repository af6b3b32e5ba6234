/** How far the y axis reaches. Symmetric for forces and moments, so that zero is always in the middle. */
export interface RangeDemand {
  readonly pitchDeg: Float64Array;
  readonly curves: readonly Float64Array[];
  /** Pitches in view. */
  readonly fromDeg: number;
  readonly toDeg: number;
  readonly overCentreDeg: readonly number[];
  /** Least reach to either side. */
  readonly floor: number;
  readonly symmetric: boolean;
}

export type Range = readonly [low: number, high: number];

/** Beyond this pitch a force does not set the scale, unless nothing nearer is in view. */
const FAR_DEG = 60;
/** Force grows without bound toward over-centre: so near to it nothing sets the scale. */
const NEAR_LOCK_DEG = 20;

/** The range that shows what is in view well, rounded up to a round number. */
export function demandedRange(demand: RangeDemand): Range {
  const [low, high] = extremes(demand, FAR_DEG, NEAR_LOCK_DEG) ??
    extremes(demand, 90, NEAR_LOCK_DEG / 4) ?? [0, 0];
  const { floor } = demand;
  if (demand.symmetric) {
    const reach = roundUp(Math.max(floor, -low, high) * (1 - 1e-9));
    return [-reach, reach];
  }
  const top = roundUp(Math.max(floor, high));
  const bottom = roundUp(Math.max(floor, -low));
  // The side that nothing reaches still shows the marks on the zero line.
  return [-Math.max(low < 0 ? bottom : 0, 0.1 * top), Math.max(high > 0 ? top : 0, 0.1 * bottom)];
}

function extremes(demand: RangeDemand, farDeg: number, nearDeg: number): Range | null {
  const { pitchDeg, curves, fromDeg, toDeg, overCentreDeg } = demand;
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < pitchDeg.length; i++) {
    const pitch = pitchDeg[i];
    if (pitch < fromDeg || pitch > toDeg || Math.abs(pitch) > farDeg) continue;
    if (beyondAny(pitch, overCentreDeg, nearDeg)) continue;
    for (let k = 0; k < curves.length; k++) {
      const value = curves[k][i];
      if (value < low) low = value;
      if (value > high) high = value;
    }
  }
  return low <= high ? [low, high] : null;
}

function beyondAny(pitch: number, locks: readonly number[], near: number): boolean {
  for (let k = 0; k < locks.length; k++) if (beyond(pitch, locks[k], near)) return true;
  return false;
}

/** Nearer to over-centre than `near`, or past it as seen from flat pitch. */
function beyond(pitch: number, lock: number, near: number): boolean {
  return lock >= 0 ? pitch > lock - near : pitch < lock + near;
}

const STEPS = [1, 1.5, 2, 3, 4, 5, 6, 8, 10];

/** The next round number: 1, 1.5, 2, 3, 4, 5, 6, 8 times a power of ten. */
export function roundUp(value: number): number {
  if (!(value > 0)) return 0;
  const decade = 10 ** Math.floor(Math.log10(value));
  const step = STEPS.find((candidate) => candidate * decade >= value * (1 - 1e-12)) ?? 10;
  return step * decade;
}

/** Holds a range still under a drag: it grows at once and shrinks when the hand is off. */
export class HeldRange {
  private held: Range = [-1, 1];

  take(wanted: Range, mayShrink: boolean): Range {
    this.held = mayShrink
      ? wanted
      : [Math.min(this.held[0], wanted[0]), Math.max(this.held[1], wanted[1])];
    return this.held;
  }
}
