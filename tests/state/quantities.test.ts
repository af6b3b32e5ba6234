import { describe, expect, it } from 'vitest';

import {
  displayEnergy,
  displayForce,
  displayMass,
  displayMoment,
  fixed,
  show,
  showDegrees,
  signedQuantity,
  significant,
} from '../../src/state/quantities';
import type { DisplayUnits } from '../../src/state/settings';
import {
  displayPosition,
  displayRailMass,
  displaySecondMoment,
  secondMomentText,
} from '../../src/state/shownUnits';

const METRIC: DisplayUnits = { length: 'mm', mass: 'g', force: 'N', moment: 'N mm' };
const INCH: DisplayUnits = { length: 'in', mass: 'oz', force: 'ozf', moment: 'ozf in' };

/*
 * NIST SP 811, appendix B (from memory): ounce-force 0.2780139 N, ounce-force inch 7.061552 mN m, avoirdupois ounce
 * 28.34952 g, inch 25.4 mm (exact), pound 453.59237 g (exact), pound-force 4.448222 N.
 */
describe('quantities as shown', () => {
  it('a newton is 3.596943 ounces of force, and half a newton half of it', () => {
    expect(displayForce(1, METRIC)).toEqual({ value: 1, unit: 'N' });
    expect(displayForce(0.2780139, INCH).value).toBeCloseTo(1, 6);
    expect(displayForce(1, INCH)).toEqual({ value: expect.closeTo(3.596943, 5), unit: 'ozf' });
  });

  it('a moment of an ounce-force inch is 7.061552 N mm', () => {
    expect(displayMoment(0.007061552, METRIC).value).toBeCloseTo(7.061552, 9);
    expect(displayMoment(0.007061552, INCH).value).toBeCloseTo(1, 6);
    expect(displayEnergy(0.0035, METRIC)).toEqual({ value: 3.5, unit: 'mJ' });
  });

  it('an ounce is 28.34952 g', () => {
    expect(displayMass(0.02834952, METRIC)).toEqual({ value: 28.34952, unit: 'g' });
    expect(displayMass(0.02834952, INCH).value).toBeCloseTo(1, 6);
  });

  it('an ounce square inch is 28.34952 g times 25.4 mm squared: 18 289.98 g mm2', () => {
    const one = (28.34952e-3 * 25.4 ** 2) / 1e6;
    expect(displaySecondMoment(one, METRIC).value).toBeCloseTo(18_289.98, 1);
    expect(displaySecondMoment(one, INCH)).toEqual({
      value: expect.closeTo(1, 6),
      unit: 'oz\u00a0in\u00b2',
    });
  });

  it('large values change to the next unit by what it holds', () => {
    expect(show({ value: 12_000, unit: 'N' })).toBe('12.0\u00a0kN');
    expect(show({ value: 9_990, unit: 'N' })).toBe('9990\u00a0N');
    expect(show({ value: 20_000, unit: 'g' })).toBe('20.0\u00a0kg');
    expect(show({ value: 50_000, unit: 'N\u00a0mm' })).toBe('50.0\u00a0N\u00a0m');
    expect(show({ value: 16_000, unit: 'oz' })).toBe('1000\u00a0lb');
    expect(show({ value: 32_000, unit: 'ozf' })).toBe('2000\u00a0lbf');
    expect(show({ value: -160_000, unit: 'ozf\u00a0in' })).toBe('\u221210000\u00a0lbf\u00a0in');
  });

  it('three digits count unless more are asked for, and a minus is a minus', () => {
    expect([0, 1234.5, 12.345, 0.012345, -0.5].map((one) => significant(one))).toEqual([
      '0',
      '1235',
      '12.3',
      '0.0123',
      '\u22120.500',
    ]);
    expect(significant(12.345, 4)).toBe('12.35');
    expect([1.2e7, 1.2e-5].map((one) => significant(one))).toEqual(['1.20e+7', '1.20e-5']);
    expect([fixed(-0.04, 1), fixed(-0.06, 1), fixed(2, 2)]).toEqual(['0.0', '\u22120.1', '2.00']);
    expect(showDegrees(-12.34)).toBe('\u221212.3\u00b0');
    expect(signedQuantity({ value: 2, unit: 'N' })).toBe('+2.00\u00a0N');
    expect(signedQuantity({ value: -2, unit: 'N' })).toBe('\u22122.00\u00a0N');
  });

  it('what is less than a nano is nothing: rounding of a sum that cancels', () => {
    expect(displayForce(-5e-10, METRIC).value).toBe(0);
    expect(displayForce(-5e-9, METRIC).value).toBe(-5e-9);
    expect(displayMoment(5e-10, METRIC).value).toBe(0);
    expect(displayMoment(5e-9, METRIC).value).toBe(5e-6);
  });

  it('places and masses of the rail keep a fixed number of decimals', () => {
    expect(displayPosition(0.0254, METRIC)).toBe('25.40');
    expect(displayPosition(0.0254, INCH)).toBe('1.0000');
    expect(displayRailMass(0.0123, METRIC)).toBe('12.30\u00a0g');
    expect(displayRailMass(1.2345, METRIC)).toBe('1235\u00a0g');
    expect(displayRailMass(12.345, METRIC)).toBe('12.35\u00a0kg');
    expect(displayRailMass(0.02834952, INCH)).toBe('1.000\u00a0oz');
    expect(secondMomentText(1.5e-9 * 1e6, METRIC)).toBe('1500\u00a0kg\u00a0mm\u00b2');
  });
});
