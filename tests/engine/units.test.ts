import { describe, expect, test } from 'vitest';
import {
  angularSpeedFromRpm,
  degreesFromRadians,
  gramSquareMmFromSi,
  gramsFromKilograms,
  INCH_MM,
  kilogramsFromGrams,
  metresFromMm,
  mmFromMetres,
  OUNCE_FORCE_N,
  OUNCE_GRAMS,
  ounceForceFromNewtons,
  radiansFromDegrees,
} from '../../src/engine/units';

describe('units at the edge', () => {
  // Published: the definitions of 1959 (inch, pound) and of standard gravity (3rd CGPM, 1901).
  test('the inch, the ounce and the ounce-force have their defined sizes', () => {
    expect(INCH_MM).toBe(25.4);
    expect(OUNCE_GRAMS * 16).toBe(453.59237);
    expect(OUNCE_FORCE_N).toBeCloseTo(0.2780138509537812, 16);
    expect(ounceForceFromNewtons(3)).toBeCloseTo(3 / 0.278013850953781, 12);
  });

  test('a right angle is pi / 2, and a thousand turns a minute 104.72 rad/s', () => {
    expect(radiansFromDegrees(90)).toBe(Math.PI / 2);
    expect(degreesFromRadians(radiansFromDegrees(20))).toBeCloseTo(20, 14);
    expect(angularSpeedFromRpm(1000)).toBeCloseTo(104.71975511965977, 12);
    expect(angularSpeedFromRpm(60)).toBeCloseTo(2 * Math.PI, 14);
  });

  test('millimetres and grams go in and come back', () => {
    expect(metresFromMm(25)).toBe(0.025);
    expect(mmFromMetres(0.025)).toBe(25);
    expect(kilogramsFromGrams(3.5)).toBe(0.0035);
    expect(gramsFromKilograms(0.0035)).toBe(3.5);
    // A gram at a millimetre is one g mm^2.
    expect(gramSquareMmFromSi(0.001 * 0.001 ** 2)).toBeCloseTo(1, 14);
  });
});
