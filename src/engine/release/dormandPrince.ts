/** Writes dy/ds of the state y into `out`; the equations do not know the time. NaN where there is no value. */
export type Derivative = (y: Float64Array, out: Float64Array) => void;

/**
 * One step of the embedded Runge-Kutta pair 5(4) of J. R. Dormand and P. J. Prince (J. Comp. Appl. Math. 6, 1980, 19-26;
 * coefficients as in E. Hairer, S. P. Norsett, G. Wanner, Solving Ordinary Differential Equations I, table II.5.2).
 *
 * `trial(h)` fills `end`, `endSlope` and `error` (the difference of the two members, of order h^5 while `end` itself
 * is good to h^6 a step) and leaves the state alone, so that a root in h can be looked for on the step itself: an event then
 * needs no interpolation and is as exact as the step. `accept()` makes the end the state. Nothing is allocated by either.
 */
export interface Stepper {
  readonly y: Float64Array;
  /** dy/ds at `y`. */
  readonly slope: Float64Array;
  readonly end: Float64Array;
  readonly endSlope: Float64Array;
  readonly error: Float64Array;
  /** Brings `slope` up to date: before the first trial, and after `y` or the equations have been changed from outside. */
  restart(): void;
  trial(h: number): void;
  accept(): void;
}

const A21 = 1 / 5;
const [A31, A32] = [3 / 40, 9 / 40];
const [A41, A42, A43] = [44 / 45, -56 / 15, 32 / 9];
const [A51, A52, A53, A54] = [19372 / 6561, -25360 / 2187, 64448 / 6561, -212 / 729];
const [A61, A62, A63, A64, A65] = [9017 / 3168, -355 / 33, 46732 / 5247, 49 / 176, -5103 / 18656];
const [B1, B3, B4, B5, B6] = [35 / 384, 500 / 1113, 125 / 192, -2187 / 6784, 11 / 84];
const [E1, E3, E4, E5, E6, E7] = [
  71 / 57600,
  -71 / 16695,
  71 / 1920,
  -17253 / 339200,
  22 / 525,
  -1 / 40,
];

export function createStepper(start: ArrayLike<number>, derivative: Derivative): Stepper {
  const n = start.length;
  const column = () => new Float64Array(n);
  const y = Float64Array.from(start);
  const [k1, k2, k3, k4, k5, k6, k7] = Array.from({ length: 7 }, column);
  const [stage, end, error] = [column(), column(), column()];

  function trial(h: number): void {
    for (let i = 0; i < n; i++) stage[i] = y[i] + h * A21 * k1[i];
    derivative(stage, k2);
    for (let i = 0; i < n; i++) stage[i] = y[i] + h * (A31 * k1[i] + A32 * k2[i]);
    derivative(stage, k3);
    for (let i = 0; i < n; i++) stage[i] = y[i] + h * (A41 * k1[i] + A42 * k2[i] + A43 * k3[i]);
    derivative(stage, k4);
    for (let i = 0; i < n; i++) {
      stage[i] = y[i] + h * (A51 * k1[i] + A52 * k2[i] + A53 * k3[i] + A54 * k4[i]);
    }
    derivative(stage, k5);
    for (let i = 0; i < n; i++) {
      stage[i] = y[i] + h * (A61 * k1[i] + A62 * k2[i] + A63 * k3[i] + A64 * k4[i] + A65 * k5[i]);
    }
    derivative(stage, k6);
    for (let i = 0; i < n; i++) {
      end[i] = y[i] + h * (B1 * k1[i] + B3 * k3[i] + B4 * k4[i] + B5 * k5[i] + B6 * k6[i]);
    }
    derivative(end, k7);
    for (let i = 0; i < n; i++) {
      const sum = E1 * k1[i] + E3 * k3[i] + E4 * k4[i] + E5 * k5[i] + E6 * k6[i] + E7 * k7[i];
      error[i] = h * sum;
    }
  }

  function restart(): void {
    derivative(y, k1);
  }
  return {
    y,
    slope: k1,
    end,
    endSlope: k7,
    error,
    restart,
    trial,
    accept() {
      y.set(end);
      k1.set(k7);
    },
  };
}

/** How the next step's length follows from the error of this one, as a share of what is allowed (at most 1: accepted). */
export function stepFactor(share: number): number {
  return Math.min(5, Math.max(0.2, 0.9 * Math.max(share, 1e-10) ** -0.2));
}
