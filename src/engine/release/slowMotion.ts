/** Slowed time: turns the time of a watch into time of the motion. */
export interface SlowClock {
  /** Motion time shown so far, s. */
  readonly shown: number;
  /** How many times slower than it is. */
  readonly slowness: number;
  /** Watch time that was left out because a frame came too late, s: say so if it matters. */
  readonly skipped: number;
  /** The watch says `now` (s): by how much the motion goes on. Zero on the first call and after `pause`. */
  tick(now: number): number;
  /** From the next tick on; the motion does not jump. */
  setSlowness(slowness: number): void;
  /** The time until the next tick does not count. */
  pause(): void;
}

/** A frame that comes later than this (a hidden page) shows no more than so much, s. */
const LONGEST_FRAME = 0.1;

export function createSlowClock(slowness: number, longestFrame = LONGEST_FRAME): SlowClock {
  let factor = checked(slowness);
  let last = Number.NaN;
  let shown = 0;
  let skipped = 0;
  return {
    get shown() {
      return shown;
    },
    get slowness() {
      return factor;
    },
    get skipped() {
      return skipped;
    },
    tick(now) {
      // A watch that was set back shows nothing.
      const passed = Number.isNaN(last) ? 0 : Math.max(0, now - last);
      last = now;
      const taken = Math.min(passed, longestFrame);
      skipped += passed - taken;
      shown += taken / factor;
      return taken / factor;
    },
    setSlowness(next) {
      factor = checked(next);
    },
    pause() {
      last = Number.NaN;
    },
  };
}

function checked(slowness: number): number {
  if (!(slowness > 0 && slowness < Infinity)) {
    throw new RangeError(`slow clock: slowness is not positive and finite: ${slowness}`);
  }
  return slowness;
}

/**
 * A slowness of the series 1, 2, 5, 10, 20, 50, ... that shows `period` s of the motion in about `shown` s: the nearest by
 * ratio, never below 1. 1 for a period that is not positive and finite.
 */
export function roundSlowness(period: number, shown: number): number {
  const wanted = shown / period;
  if (!(wanted > 1 && wanted < Infinity)) return 1;
  const decade = 10 ** Math.floor(Math.log10(wanted));
  const steps = [decade, 2 * decade, 5 * decade, 10 * decade];
  const off = (step: number) => Math.abs(Math.log(step / wanted));
  return steps.reduce((best, step) => (off(step) < off(best) ? step : best));
}
