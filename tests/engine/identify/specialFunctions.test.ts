import { describe, expect, it } from 'vitest';
import { incompleteBeta, lnGamma, upperGamma } from '../../../src/engine/identify/specialFunctions';

/** Closed forms of Abramowitz and Stegun, Handbook of Mathematical Functions: by number beside each. */
describe('the gamma and beta functions in closed form', () => {
  it('gamma of halves is sqrt pi times 1/2, 3/2, ... (6.1.8, 6.1.12)', () => {
    let gamma = Math.sqrt(Math.PI);
    for (let x = 0.5; x < 12; x++) {
      expect(lnGamma(x)).toBeCloseTo(Math.log(gamma), 12);
      gamma *= x;
    }
  });

  it('the share above of one decay is e^-x, of two e^-x (1 + x), on both sides of x = a + 1 (6.5.13)', () => {
    for (const x of [1e-9, 0.3, 1, 1.999, 2, 2.001, 3, 3.001, 7, 40]) {
      expect(upperGamma(1, x) / Math.exp(-x)).toBeCloseTo(1, 13);
      expect(upperGamma(2, x) / (Math.exp(-x) * (1 + x))).toBeCloseTo(1, 12);
    }
  });

  it('nothing lies above infinity, all of it above zero', () => {
    expect(upperGamma(3, 0)).toBe(1);
    expect(upperGamma(3, Infinity)).toBe(0);
  });

  it('the incomplete beta function of whole numbers is a polynomial, on both sides of its middle (26.5.24)', () => {
    for (const x of [0, 0.05, 0.4, 0.6, 2 / 3, 0.9, 1]) {
      expect(incompleteBeta(1, 1, x)).toBeCloseTo(x, 13);
      expect(incompleteBeta(3, 1, x)).toBeCloseTo(x ** 3, 13);
      expect(incompleteBeta(1, 3, x)).toBeCloseTo(1 - (1 - x) ** 3, 13);
      // Two heads or more of three.
      expect(incompleteBeta(2, 2, x)).toBeCloseTo(3 * x ** 2 * (1 - x) + x ** 3, 13);
    }
  });

  it('I_x(1/2, 1/2) is the arcsine law: 2/pi arcsin sqrt x', () => {
    for (const x of [1e-6, 0.2, 0.5, 0.8]) {
      const wanted = (2 / Math.PI) * Math.asin(Math.sqrt(x));
      expect(incompleteBeta(0.5, 0.5, x) / wanted).toBeCloseTo(1, 12);
    }
  });

  it('have no value where they are not defined', () => {
    for (const x of [0, -1, Number.NaN]) expect(() => lnGamma(x)).toThrow('lnGamma()');
    for (const [a, x] of [
      [0, 1],
      [1, -1e-9],
      [Number.NaN, 1],
    ]) {
      expect(() => upperGamma(a, x)).toThrow('upperGamma()');
    }
    for (const [a, b, x] of [
      [0, 1, 0.5],
      [1, 0, 0.5],
      [1, 1, -1e-9],
      [1, 1, 1 + 1e-9],
    ]) {
      expect(() => incompleteBeta(a, b, x)).toThrow('incompleteBeta()');
    }
  });
});
