import { describe, expect, it } from 'vitest';
import { parseQuantity } from '../../../src/state/typed/parseQuantity';

describe('units of two names', () => {
  // Exact by definition: the inch and standard gravity; 1 kgf cm = 98.0665 N mm.
  it.each([
    ['30 N mm', 30],
    ['0.03 N m', 30],
    ['30 Nmm', 30],
    ['30 N*mm', 30],
    ['3 kg cm', 3 * 98.0665],
    ['12 ozf in', (12 * 0.45359237 * 9.80665 * 25.4) / 16],
    ['12 ozin', (12 * 0.45359237 * 9.80665 * 25.4) / 16],
    ['12 oz in', (12 * 0.45359237 * 9.80665 * 25.4) / 16],
  ])('%s is %f N mm', (text, value) => {
    const read = parseQuantity(text, 'N mm', 'N mm');
    expect(read.ok && read.value).toBeCloseTo(value, 9);
  });

  it('a sum that ends in a plain unit is still read', () => {
    expect(parseQuantity('1/8 in', 'mm', 'mm')).toEqual({ ok: true, value: 3.175 });
    expect(parseQuantity('2*3 mm', 'mm', 'mm')).toEqual({ ok: true, value: 6 });
  });
});
