import type { Vec3 } from '../math/vector';
import { createStepper, stepFactor } from './dormandPrince';

/** A free rigid body in motion: what a scene shows. */
export interface Tumbling {
  /** s since the start. */
  readonly time: number;
  /** Spin in the body's principal axes, rad/s. */
  readonly spin: Float64Array;
  /** Attitude R_SB (space from body) as a unit quaternion (w, x, y, z). */
  readonly attitude: Float64Array;
  /** Goes on by `duration` s. Nothing is allocated. */
  advance(duration: number): void;
}

/** Error allowed in a step, as a share of the spin and of a unit quaternion. */
const TOLERANCE = 1e-12;

/**
 * Integrates Euler's equations with the attitude, q' = q w / 2 (w the spin as a pure quaternion in body axes; J. B. Kuipers,
 * Quaternions and Rotation Sequences, ch. 11), by the embedded pair 5(4). The quaternion is made a unit one after every
 * step (its drift is of the order of the step's error). The moments must be positive and the spin finite: `createFreeBody` says
 * so to a person; its closed form is what the spin is held to in the tests, 1e-9 over 20 periods.
 */
export function createTumbling(
  inertia: Vec3,
  spin: Vec3,
  attitude: readonly [number, number, number, number] = [1, 0, 0, 0],
): Tumbling {
  const [I1, I2, I3] = inertia;
  const stepper = createStepper([...spin, ...attitude], derivative);
  const { y, end, error } = stepper;
  stepper.restart();
  const scale = Math.hypot(...spin);
  const moving = scale > 0;
  let suggested = moving ? 1e-2 / scale : Infinity;

  function derivative(at: Float64Array, out: Float64Array): void {
    const [a, b, c] = [at[0], at[1], at[2]];
    out[0] = ((I2 - I3) / I1) * b * c;
    out[1] = ((I3 - I1) / I2) * c * a;
    out[2] = ((I1 - I2) / I3) * a * b;
    const [w, x, y1, z] = [at[3], at[4], at[5], at[6]];
    out[3] = (-x * a - y1 * b - z * c) / 2;
    out[4] = (w * a + y1 * c - z * b) / 2;
    out[5] = (w * b + z * a - x * c) / 2;
    out[6] = (w * c + x * b - y1 * a) / 2;
  }

  function share(): number {
    let worst = 0;
    for (let i = 0; i < 7; i++) {
      worst = Math.max(worst, Math.abs(error[i]) / (TOLERANCE * (i < 3 ? scale : 1)));
    }
    return worst;
  }

  function step(longest: number): number {
    let h = Math.min(suggested, longest);
    for (;;) {
      stepper.trial(h);
      const size = share();
      if (size <= 1 || h < 1e-9 / scale) {
        if (h === suggested || size > 0.5) suggested = h * stepFactor(size);
        break;
      }
      h *= Math.min(0.9, stepFactor(size));
      suggested = h;
    }
    const norm = Math.hypot(end[3], end[4], end[5], end[6]);
    for (let i = 3; i < 7; i++) end[i] /= norm;
    stepper.accept();
    stepper.restart();
    return h;
  }

  const motion = {
    time: 0,
    spin: y.subarray(0, 3),
    attitude: y.subarray(3, 7),
    advance(duration: number) {
      if (!(duration >= 0 && duration < Infinity)) {
        throw new RangeError(`advance(): duration is negative or not finite: ${duration}`);
      }
      const until = motion.time + duration;
      // At rest there is nothing to step.
      if (!moving) motion.time = until;
      while (motion.time < until) {
        const left = until - motion.time;
        const taken = step(left);
        motion.time = taken === left ? until : motion.time + taken;
      }
    },
  };
  return motion;
}
