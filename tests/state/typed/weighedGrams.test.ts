import { describe, expect, it } from 'vitest';
import { INCH_UNITS, METRIC_UNITS } from '../../../src/state/settings';
import { weighedGrams } from '../../../src/state/typed/weighedGrams';

const grams = (typed: string, units = METRIC_UNITS) => {
  const read = weighedGrams(typed, units);
  return read.ok ? read.value : read.error;
};

describe('the weighed mass of a body', () => {
  it('may be left empty', () => {
    expect(weighedGrams('  ', METRIC_UNITS)).toEqual({ ok: true, value: undefined });
  });

  // The avoirdupois ounce is 28.349523125 g exactly (international yard and pound agreement of 1959).
  it('counts in the unit of the page, or in the one that is typed', () => {
    expect(grams('8.5')).toBe(8.5);
    expect(grams('8,5')).toBe(8.5);
    expect(grams('2', INCH_UNITS)).toBeCloseTo(56.69904625, 9);
    expect(grams('1 oz')).toBeCloseTo(28.349523125, 9);
    expect(grams('8.5 g', INCH_UNITS)).toBe(8.5);
  });

  it('is refused in words where it can be read in two ways, or is no mass', () => {
    expect(grams('1,000')).toContain('two ways');
    expect(grams('8 mm')).toContain('measures something else');
    expect(grams('0x10')).toMatch(/not known|not a number/);
    expect(grams('8 furlongs')).toContain('not known');
    expect(grams('heavy')).toContain('not a number');
  });

  it('is refused outside its limits, with the limit in the unit of the page', () => {
    expect(grams('0')).toContain('0.001\u00a0g');
    expect(grams('-3')).toContain('at least');
    expect(grams('100001')).toContain('100000\u00a0g');
    expect(grams('9000', INCH_UNITS)).toContain('\u00a0oz');
  });
});
