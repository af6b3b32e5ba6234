import { describe, expect, test } from 'vitest';
import { createStepper, stepFactor } from '../../../src/engine/release/dormandPrince';

/** Two equations that turn about each other at a rate that their size sets. */
function circling(y: Float64Array, out: Float64Array): void {
  const square = y[0] * y[0] + y[1] * y[1];
  out[0] = -square * y[1];
  out[1] = square * y[0];
}

/** Errors of one step of h of y' = y cos s, y = exp(sin s): of the end, and of the estimate. */
function oneStep(h: number): { readonly end: number; readonly estimate: number } {
  const stepper = createStepper([0.2, 1], (y, out) => {
    out[0] = 1;
    out[1] = y[1] * Math.cos(y[0]);
  });
  stepper.restart();
  stepper.trial(h);
  const exact = Math.exp(Math.sin(0.2 + h) - Math.sin(0.2));
  return { end: Math.abs(stepper.end[1] - exact), estimate: Math.abs(stepper.error[1]) };
}

describe('a step of the pair 5(4)', () => {
  test('halved, errs 64 times less, and its estimate 32 times: orders five and four', () => {
    // Against the exact solution. Terms of the next order are some h of the leading one.
    const [coarse, fine] = [oneStep(0.1), oneStep(0.05)];
    expect(coarse.end / fine.end).toBeGreaterThan(64 * 0.85);
    expect(coarse.end / fine.end).toBeLessThan(64 * 1.15);
    expect(coarse.estimate / fine.estimate).toBeGreaterThan(32 * 0.85);
    expect(coarse.estimate / fine.estimate).toBeLessThan(32 * 1.15);
    expect(fine.end).toBeLessThan(fine.estimate);
  });

  test('leaves the state alone until it is accepted, and then starts from its own last slope', () => {
    const stepper = createStepper([1, 0.5], circling);
    stepper.restart();
    stepper.trial(0.3);
    stepper.trial(0.1);
    expect(Array.from(stepper.y)).toEqual([1, 0.5]);
    const end = Array.from(stepper.end);
    stepper.accept();
    expect(Array.from(stepper.y)).toEqual(end);
    const slope = new Float64Array(2);
    circling(stepper.y, slope);
    expect(Array.from(stepper.slope)).toEqual(Array.from(slope));
  });

  test('polynomials in time up to the fifth power are met exactly', () => {
    // y0 runs as the time; y1' = 5 t^4: order five means no error but rounding.
    const stepper = createStepper([0.2, 0], (y, out) => {
      out[0] = 1;
      out[1] = 5 * y[0] ** 4;
    });
    stepper.restart();
    stepper.trial(1.1);
    expect(stepper.end[1]).toBeCloseTo(1.3 ** 5 - 0.2 ** 5, 13);
  });
});

test('the next step is longer or shorter by the fifth root, within bounds', () => {
  expect(stepFactor(1)).toBeCloseTo(0.9, 15);
  expect(stepFactor(1 / 32)).toBeCloseTo(1.8, 12);
  expect(stepFactor(32)).toBeCloseTo(0.45, 12);
  expect(stepFactor(0)).toBe(5);
  expect(stepFactor(Infinity)).toBe(0.2);
});
