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
  READING_UNITS,
  type ReadingUnit,
  radians,
  radiansFromDegrees,
  readingFromSi,
  rpmFromAngularSpeed,
  siFromGramSquareMm,
  siFromReading,
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
    expect(siFromGramSquareMm(1) * 1e9).toBeCloseTo(1, 14);
    expect(radians(0.5)).toBe(0.5);
  });
});

describe('units of readings', () => {
  /*
   * Exact by definition: pound 0.45359237 kg, inch 25.4 mm (agreement of 1959), standard gravity 9.80665 m/s^2 (3rd CGPM
   * 1901), minute and degree (SI brochure, table 8); the products by exact decimal arithmetic here, in whole numbers.
   */
  const exact = (numerator: bigint, decimals: number) => {
    const digits = numerator.toString().padStart(decimals + 1, '0');
    return Number(`${digits.slice(0, -decimals)}.${digits.slice(-decimals)}`);
  };
  const POUND = 45359237n;
  const GRAVITY = 980665n;

  test('pound, ounce and gram of force and their moments are those of the definitions, to a rounding', () => {
    const sizes = {
      lbf: exact(POUND * GRAVITY, 13),
      ozf: exact((POUND * GRAVITY * 10_000n) / 16n, 17),
      kgf: 9.80665,
      gf: 0.00980665,
      'lbf in': exact(POUND * GRAVITY * 254n, 17),
      'lbf ft': exact(POUND * GRAVITY * 3048n, 17),
      'ozf in': exact((POUND * GRAVITY * 254n * 10_000n) / 16n, 21),
      'gf cm': 0.0000980665,
      'kgf cm': 0.0980665,
      in: 0.0254,
    } as const;
    for (const [name, size] of Object.entries(sizes)) {
      const found = siFromReading(1, name as keyof typeof sizes);
      // Three roundings in the constants, one in the product.
      expect(Math.abs(found / size - 1), name).toBeLessThan(4 * Number.EPSILON);
    }
  });

  test('the decimal prefixes, minutes, hours, degrees and turns are exact', () => {
    expect(siFromReading(1250, 'mN')).toBe(1.25);
    expect(siFromReading(0.3, 'kN')).toBe(300);
    expect(siFromReading(250, 'N mm')).toBe(0.25);
    expect(siFromReading(17.1, 'mm')).toBe(0.0171);
    expect(siFromReading(1.5, 'min')).toBe(90);
    expect(siFromReading(2, 'h')).toBe(7200);
    expect(siFromReading(90, 'deg')).toBe(Math.PI / 2);
    expect(siFromReading(60, 'rpm')).toBeCloseTo(2 * Math.PI, 14);
    expect(siFromReading(170, 'Hz')).toBeCloseTo(siFromReading(10_200, 'rpm'), 10);
    expect(siFromReading(7, 'div')).toBe(7);
  });

  test('each comes back as it went in, to two roundings', () => {
    for (const name of Object.keys(READING_UNITS) as ReadingUnit[]) {
      const back = readingFromSi(siFromReading(12.34, name), name);
      expect(Math.abs(back / 12.34 - 1), name).toBeLessThan(4 * Number.EPSILON);
    }
    expect(rpmFromAngularSpeed(angularSpeedFromRpm(10_200))).toBeCloseTo(10_200, 9);
  });
});
