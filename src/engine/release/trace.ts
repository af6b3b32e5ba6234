import type { Release } from './release';

/** Samples of a release against time: what a chart draws. Only the first `length` of each column count. */
export interface Trace {
  readonly length: number;
  /** s. */
  readonly time: Float64Array;
  readonly pitch: Float64Array;
  /** rad/s. */
  readonly rate: Float64Array;
  /** Kinetic energy, J. */
  readonly kinetic: Float64Array;
  /** Takes a release's present state: the `visit` of `advance`. */
  add(release: Release): void;
  clear(): void;
}

/**
 * A trace of at most `capacity` samples (at least 16) that covers a motion of any length: when it is full, every second
 * sample goes and from then on only every second (fourth, ...) step is taken in. Its last sample is always the
 * newest. Allocates only when made.
 */
export function createTrace(capacity = 4096): Trace {
  if (!(capacity >= 16 && Number.isInteger(capacity))) {
    throw new RangeError(
      `createTrace(): capacity is not a whole number of at least 16: ${capacity}`,
    );
  }
  return new ReleaseTrace(capacity);
}

class ReleaseTrace implements Trace {
  length = 0;
  readonly time: Float64Array;
  readonly pitch: Float64Array;
  readonly rate: Float64Array;
  readonly kinetic: Float64Array;
  /** Steps seen; those whose number is a multiple of `every` are kept. */
  private seen = 0;
  private every = 1;

  constructor(private readonly capacity: number) {
    this.time = new Float64Array(capacity);
    this.pitch = new Float64Array(capacity);
    this.rate = new Float64Array(capacity);
    this.kinetic = new Float64Array(capacity);
  }

  add(release: Release): void {
    // A step that is not kept is there as the newest only, and gives way to the next.
    if (this.seen > 0 && (this.seen - 1) % this.every !== 0) this.length--;
    if (this.length === this.capacity) this.thin();
    const at = this.length++;
    this.time[at] = release.time;
    this.pitch[at] = release.pitch;
    this.rate[at] = release.rate;
    this.kinetic[at] = release.energy.kinetic;
    this.seen++;
  }

  clear(): void {
    this.length = 0;
    this.every = 1;
    this.seen = 0;
  }

  private thin(): void {
    const half = Math.ceil(this.length / 2);
    for (const column of [this.time, this.pitch, this.rate, this.kinetic]) {
      for (let i = 0; i < half; i++) column[i] = column[2 * i];
    }
    this.length = half;
    this.every *= 2;
  }
}
