import { bracketedRoot } from '../math/rootBracket';
import { radians } from '../units';
import { createStepper, type Stepper, stepFactor } from './dormandPrince';
import type { ReleaseSystem } from './releaseSystem';

/** Places in the state: pitch, its rate, energy that friction and damping have taken. */
export const PITCH = 0;
export const RATE = 1;
export const TAKEN = 2;

/**
 * Error allowed in a step, as a share of the size of the motion itself: |rate| + |acceleration| / rateScale, so that an
 * oscillation of any amplitude is followed equally well, down to the floor (rounding of an angle of 1 rad).
 */
const TOLERANCE = 1e-11;
const FLOOR = 2e-16;

/** How a step ended. */
export type SlideEnd =
  /** Still sliding the same way. */
  | 'slid'
  /** The rate came to zero. */
  | 'turned'
  /** A stop was reached, with the rate as it was just before. */
  | 'low'
  | 'high'
  /** Nothing is known any farther: the last pitch with a value. */
  | 'gap';

/** Motion one way (way = +1 or -1), where Coulomb friction has one sign. */
export interface Slide {
  readonly stepper: Stepper;
  /** Set before each step; `stepper.restart()` after a change. */
  way: -1 | 1;
  hand: number;
  /** Time that the last step took. */
  taken: number;
  /** Makes one step of no more than `longest` seconds. */
  step(longest: number): SlideEnd;
}

/**
 * Steps of the pair 5(4) that end exactly where the way ends. With the way fixed the equations are as smooth as their
 * curves and pitch is monotone, so a stop cannot be missed; nor can a standstill, since a motion of one freedom that came
 * to zero and back within a step would have made half a swing in it, and a step is a hundredth of one. The end is found by
 * Brent's method on the length of the step itself; its error is that of a step.
 */
export function createSlide(
  system: ReleaseSystem,
  start: ArrayLike<number>,
  rateScale: number,
): Slide {
  const stepper = createStepper(start, derivative);
  const { y, slope, end, endSlope, error } = stepper;
  /** What the controller would take next; a step cut short at an event or a frame leaves it alone. */
  let suggested = 1e-2 / rateScale;

  function derivative(at: Float64Array, out: Float64Array): void {
    const pitch = radians(at[PITCH]);
    const rate = at[RATE];
    const inertia = system.inertia.value(pitch);
    const friction = system.friction(pitch);
    const drag = slide.way * friction + system.damping * rate;
    const bend = (system.inertia.slope(pitch) * rate * rate) / 2;
    const known = inertia > 0 && friction >= 0;
    out[PITCH] = rate;
    out[RATE] = known ? (system.moment(pitch) + slide.hand - drag - bend) / inertia : Number.NaN;
    out[TAKEN] = drag * rate;
  }

  /** Error of the trial as a share of what is allowed; NaN in a gap. */
  function share(): number {
    const before = Math.abs(y[RATE]) + Math.abs(slope[RATE]) / rateScale;
    const after = Math.abs(end[RATE]) + Math.abs(endSlope[RATE]) / rateScale;
    const allowed = TOLERANCE * Math.max(before, after) + FLOOR * rateScale;
    return Math.max(Math.abs(error[RATE]), Math.abs(error[PITCH]) * rateScale) / allowed;
  }

  /** Length of the trial that `end` holds: none is made twice. */
  let tried = Number.NaN;
  function trial(h: number): void {
    if (h !== tried) stepper.trial(h);
    tried = h;
  }

  // Functions of the step's length whose zeros are the events.
  function rateAfter(h: number): number {
    trial(h);
    return slide.way * end[RATE];
  }
  let stop = 0;
  function beyondStop(h: number): number {
    trial(h);
    return slide.way * (end[PITCH] - stop);
  }

  /** Takes the trial of length h over, and its end as exactly the given one. */
  function finish(h: number, ended: SlideEnd): SlideEnd {
    trial(h);
    stepper.accept();
    slide.taken = h;
    if (ended === 'turned') y[RATE] = 0;
    if (ended === 'low' || ended === 'high') y[PITCH] = stop;
    return ended;
  }

  /** Length of the step at which the rate is zero, in (0, h]; it is not positive at h. */
  function standstill(h: number): number {
    let high = h;
    let low = y[RATE] === 0 ? h : 0;
    // From standstill the rate starts at zero: the bracket begins where it has grown.
    for (let i = 0; low > 0 && i < 60; i++) {
      low /= 4;
      if (rateAfter(low) > 0) break;
      high = low;
    }
    return bracketedRoot(rateAfter, low, high, 1e-15 * h)?.root || high;
  }

  function step(longest: number): SlideEnd {
    let h = Math.min(suggested, longest);
    const shortest = 1e-13 / rateScale;
    let unknown = false;
    tried = Number.NaN;
    for (;;) {
      trial(h);
      const size = share();
      if (size <= 1) {
        // Toward a gap the step only shrinks.
        const factor = unknown ? 1 : stepFactor(size);
        if (h === suggested || factor < 1) suggested = h * factor;
        break;
      }
      unknown ||= Number.isNaN(size);
      if (unknown && h < shortest) {
        slide.taken = 0;
        return 'gap';
      }
      h *= Number.isNaN(size) ? 0.5 : Math.min(stepFactor(size), 0.9);
      suggested = h;
    }
    return endOf(h);
  }

  /** The accepted trial, cut where the way ends within it. */
  function endOf(h: number): SlideEnd {
    let within = h;
    let ended: SlideEnd = 'slid';
    if (!(slide.way * end[RATE] > 0)) {
      within = standstill(h);
      ended = 'turned';
    }
    stop = slide.way > 0 ? system.high : system.low;
    if (beyondStop(within) >= 0 && slide.way * (y[PITCH] - stop) < 0) {
      within = bracketedRoot(beyondStop, 0, within, 1e-15 * within)?.root ?? within;
      ended = slide.way > 0 ? 'high' : 'low';
    }
    return finish(within, ended);
  }

  const slide: Slide = { stepper, way: 1, hand: 0, taken: 0, step };
  return slide;
}
