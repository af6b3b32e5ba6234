import type { PlacedSurface } from './surface';

/** Places in a row of the search: an interval of pitch and one of azimuth, a piece of the surface, a bound. */
export const LOW = 0;
export const HIGH = 1;
export const FROM = 2;
export const TO = 3;
/** No point of the piece comes nearer than this within the intervals, m. */
export const BOUND = 4;
/** Node of the part's tree; -1: the triangle that the row itself holds. */
export const NODE = 5;
/** Node of the keep-out's tree; -2 - i: its triangle i; -1: a convex shape. */
export const TARGET = 6;
/** What to halve next: one of the four below. */
export const SPLIT = 7;
/** Times that it has been halved. */
export const LEVEL = 8;
/** What rows are ordered by: the bound, and among equal ones the smallest piece first. */
export const KEY = 9;
/** Nine coordinates of a triangle, frame C. */
export const CORNERS = 10;
export const WIDTH = 19;

export const BY_PIECE = 0;
export const BY_PITCH = 1;
export const BY_AZIMUTH = 2;
export const BY_TARGET = 3;

/**
 * Rows that are still open, the one with the least key first: a binary heap of places in one array, kept between
 * searches. It grows where a search has more open than any before it.
 */
export class Rows {
  values = new Float64Array(WIDTH * 1024);
  private heap = new Int32Array(1024);
  private free = new Int32Array(1024);
  private open = 0;
  private unused = 0;
  private made = 0;

  get count(): number {
    return this.open;
  }

  clear(): void {
    this.open = 0;
    this.unused = 0;
    this.made = 0;
  }

  /** A place for a row, not yet open; a copy of another where that is given. */
  room(from = -1): number {
    if (this.unused === 0 && this.made === this.heap.length) this.grow();
    const at = WIDTH * (this.unused > 0 ? this.free[--this.unused] : this.made++);
    if (from >= 0) this.values.copyWithin(at, from, from + WIDTH);
    return at;
  }

  /** Gives a row's place back. */
  drop(at: number): void {
    this.free[this.unused++] = at / WIDTH;
  }

  /** Opens a row whose key is written. */
  put(at: number): void {
    const { heap, values: v } = this;
    const bound = v[at + KEY];
    let i = this.open++;
    while (i > 0) {
      const above = (i - 1) >> 1;
      if (v[WIDTH * heap[above] + KEY] <= bound) break;
      heap[i] = heap[above];
      i = above;
    }
    heap[i] = at / WIDTH;
  }

  /** Takes the row with the least key. */
  take(): number {
    const { heap, values: v } = this;
    const least = heap[0];
    const moved = heap[--this.open];
    const bound = v[WIDTH * moved + KEY];
    let i = 0;
    for (;;) {
      let below = 2 * i + 1;
      if (below >= this.open) break;
      const other = below + 1;
      if (other < this.open && v[WIDTH * heap[other] + KEY] < v[WIDTH * heap[below] + KEY]) {
        below = other;
      }
      if (v[WIDTH * heap[below] + KEY] >= bound) break;
      heap[i] = heap[below];
      i = below;
    }
    heap[i] = moved;
    return WIDTH * least;
  }

  private grow(): void {
    const values = new Float64Array(2 * this.values.length);
    values.set(this.values);
    this.values = values;
    const heap = new Int32Array(2 * this.heap.length);
    heap.set(this.heap);
    this.heap = heap;
    const free = new Int32Array(2 * this.free.length);
    free.set(this.free);
    this.free = free;
  }
}

/** Puts triangle `i` of a surface into a row. */
export function takeTriangle(
  values: Float64Array,
  row: number,
  { corners }: PlacedSurface,
  i: number,
): void {
  values[row + NODE] = -1;
  for (let k = 0; k < 9; k++) values[row + CORNERS + k] = corners[9 * i + k];
}

/**
 * Cuts the triangle of two equal rows in two, across its longest side.
 */
export function halveTriangle(v: Float64Array, one: number, other: number): void {
  const a = one + CORNERS;
  const ab = side(v, a, a + 3);
  const bc = side(v, a + 3, a + 6);
  const ca = side(v, a + 6, a);
  const p = ab >= bc && ab >= ca ? 0 : bc >= ca ? 3 : 6;
  const q = (p + 3) % 9;
  for (let k = 0; k < 3; k++) {
    const middle = (v[a + p + k] + v[a + q + k]) / 2;
    v[one + CORNERS + q + k] = middle;
    v[other + CORNERS + p + k] = middle;
  }
}

function side(v: Float64Array, p: number, q: number): number {
  const x = v[p] - v[q];
  const y = v[p + 1] - v[q + 1];
  const z = v[p + 2] - v[q + 2];
  return x * x + y * y + z * z;
}
