import type { Vec3 } from '../../engine/math/vector';
import { createFreeBody, type FreeBody } from '../../engine/release/freeBody';
import type { Radians } from '../../engine/units';
import { RACKET_AXES, type RacketAxis } from './racketBody';

/** How fast it is thrown, turns a second, and how long it is looked at, s: a throw high into the air, made longer. */
const TURNS = 1.5;
export const SPIN = 2 * Math.PI * TURNS;
export const DURATION = 8;

/** A throw about one axis, a little beside it. */
export interface RacketThrow {
  readonly axis: RacketAxis;
  /** Place of the axis among the body's. */
  readonly index: number;
  /** At the start, rad/s, body axes. */
  readonly spin: Vec3;
  readonly free: FreeBody;
  /** When the spin about the thrown axis changes its sign, s, ascending: each time it has turned over. */
  readonly flips: readonly number[];
}

/** `beside`: angle between the spin and the axis at the start; the error lies midway between the two other axes. */
export function throwRacket(inertia: Vec3, axis: RacketAxis, beside: Radians): RacketThrow {
  const index = RACKET_AXES.indexOf(axis);
  const aside = (SPIN * Math.sin(beside)) / Math.SQRT2;
  const spin: [number, number, number] = [aside, aside, aside];
  spin[index] = SPIN * Math.cos(beside);
  const made = createFreeBody(inertia, spin);
  if (!made.ok) throw new Error(`throwRacket(): no body turns like this: ${made.error.kind}`);
  return { axis, index, spin, free: made.value, flips: flipTimes(made.value, index, DURATION) };
}

/** Changes of sign of one component of the spin: bracketed by samples far closer than two of them, then halved. */
export function flipTimes(free: FreeBody, index: number, duration: number): readonly number[] {
  const out = new Float64Array(3);
  const at = (time: number) => free.spinAt(time, out)[index];
  const step = Math.min(duration / 200, (free.flipTime ?? duration) / 8);
  const found: number[] = [];
  for (let time = 0; time < duration; time += step) {
    const end = Math.min(duration, time + step);
    if (at(time) > 0 === at(end) > 0) continue;
    let [low, high] = [time, end];
    const sign = at(low) > 0;
    while (high - low > 1e-12 * duration) {
      const middle = (low + high) / 2;
      if (at(middle) > 0 === sign) low = middle;
      else high = middle;
    }
    found.push((low + high) / 2);
  }
  return found;
}

/** How often it has turned over by a time. */
export function flipsBy({ flips }: RacketThrow, time: number): number {
  return flips.filter((flip) => flip <= time).length;
}
