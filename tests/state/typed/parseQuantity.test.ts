import { describe, expect, it } from 'vitest';
import type { FieldUnit } from '../../../src/state/shownUnits';
import { parseQuantity } from '../../../src/state/typed/parseQuantity';

function value(text: string, field: FieldUnit = 'mm', shown: string = field): number {
  const result = parseQuantity(text, field, shown);
  if (!result.ok) throw new Error(`${text}: ${JSON.stringify(result.error)}`);
  return result.value;
}
function fault(text: string, field: FieldUnit = 'mm', shown: string = field): string {
  const result = parseQuantity(text, field, shown);
  return result.ok ? `read as ${result.value}` : result.error.code;
}

describe('typed quantities', () => {
  it.each([
    ['0.5', 0.5],
    ['0,5', 0.5],
    [',5', 0.5],
    ['.5', 0.5],
    ['5.', 5],
    ['+3', 3],
    ['-3', -3],
    ['\u22123', -3],
    ['1e3', 1000],
    ['2e-2', 0.02],
    ['2*3', 6],
    ['2\u00d73', 6],
    ['(1+2)/4', 0.75],
    ['-(2-5)', 3],
    ['0.1+0.2', 0.3],
    ['10 000', 10000],
    ['0,125', 0.125],
    ['1234,5', 1234.5],
  ])('%s counts in the unit beside the field', (text, expected) => {
    expect(value(text)).toBe(expected);
  });

  it.each([
    ['5.5mm', 5.5],
    ['5.5 mm', 5.5],
    ['1/8 in', 3.175],
    ['1/8"', 3.175],
    ['1 1/8 in', 28.575],
    ['\u00bd in', 12.7],
    ['1\u00bd in', 38.1],
    ['0,5 cm', 5],
    ['2*3 in', 152.4],
    ['25 thou', 0.635],
    ['3 MM', 3],
  ])('%s takes its unit for the whole, in mm', (text, expected) => {
    expect(value(text)).toBe(expected);
  });

  it('counts in inches where the field shows inches, unless another unit is typed', () => {
    expect(value('1/8', 'mm', 'in')).toBe(3.175);
    expect(value('3.175 mm', 'mm', 'in')).toBe(3.175);
  });

  it.each<[string, FieldUnit, string, number]>([
    ['1 oz', 'g', 'g', 28.349523125],
    ['2', 'g', 'oz', 56.69904625],
    ['7.85 g/cm3', 'kg/m3', 'kg/m\u00b3', 7850],
    ['7850 kg/m3', 'kg/m3', 'kg/m\u00b3', 7850],
    ['7850 kg/m\u00b3', 'kg/m3', 'kg/m\u00b3', 7850],
    ['0.284 lb/in3', 'kg/m3', 'kg/m\u00b3', 7861.0929],
    ['10 200 rpm', 'rpm', 'rpm', 10200],
    ['170 Hz', 'rpm', 'rpm', 10200],
    ['10200 1/min', 'rpm', 'rpm', 10200],
    ['20\u00b0', 'deg', '\u00b0', 20],
    ['20 deg', 'deg', '\u00b0', 20],
    ['2', '1', '', 2],
    // Definitions and factors of NIST SP 811, appendix B (from memory).
    ['1 rad', 'deg', '\u00b0', 57.29578],
    ['1 lb', 'g', 'g', 453.59237],
    ['2 kg', 'g', 'g', 2000],
    ['3 mg', 'g', 'g', 0.003],
    ['1 m', 'mm', 'mm', 1000],
    ['20 um', 'mm', 'mm', 0.02],
    ['100 mil', 'mm', 'mm', 2.54],
    ['2 min', 's', 's', 120],
    ['500 ms', 's', 's', 0.5],
    ['2 g/cc', 'kg/m3', 'kg/m\u00b3', 2000],
    ['1 kg m2', 'g mm2', 'g\u00a0mm\u00b2', 1e9],
    ['1 g cm2', 'g mm2', 'g\u00a0mm\u00b2', 100],
    ['2 GPa', 'MPa', 'MPa', 2000],
    ['5 N/mm2', 'MPa', 'MPa', 5],
    ['500 MPa', 'GPa', 'GPa', 0.5],
    ['100 ft', 'm', 'm', 30.48],
    ['2 km', 'm', 'm', 2000],
    ['1 kN', 'N', 'N', 1000],
    ['1 lbf', 'N', 'N', 4.448222],
    ['100 ozf', 'N', 'N', 27.80139],
    ['1 N m', 'N mm', 'N\u00a0mm', 1000],
    ['1 N cm', 'N mm', 'N\u00a0mm', 10],
    ['1 kg cm', 'N mm', 'N\u00a0mm', 98.0665],
    ['1 ozf in', 'N mm', 'N\u00a0mm', 7.061552],
  ])('%s in a field of %s', (text, field, shown, expected) => {
    expect(value(text, field, shown)).toBeCloseTo(expected, 3);
  });

  it.each<[string, string]>([
    ['', 'empty'],
    ['   ', 'empty'],
    ['abc', 'notANumber'],
    ['NaN', 'notANumber'],
    ['Infinity', 'notANumber'],
    ['5 mm 3', 'notANumber'],
    ['2**3', 'notANumber'],
    ['(2', 'notANumber'],
    ['2)', 'notANumber'],
    ['1.2.3', 'notANumber'],
    ['1 2', 'notANumber'],
    ['5\u00b2', 'notANumber'],
    [',', 'notANumber'],
    ['1,2,3', 'ambiguousComma'],
    ['--', 'notANumber'],
    ['1 in + 3 mm', 'notANumber'],
    ['1,000', 'ambiguousComma'],
    ['1.234,5', 'ambiguousComma'],
    ['1,234.5', 'ambiguousComma'],
    ['5 apples', 'unknownUnit'],
    ['5 g', 'wrongUnit'],
    ['5 rpm', 'wrongUnit'],
    ['1/0', 'divideByZero'],
    ['0/0', 'divideByZero'],
    ['1e999', 'divideByZero'],
  ])('refuses "%s" aloud: %s', (text, code) => {
    expect(fault(text)).toBe(code);
  });

  it('refuses any unit in a field of bare numbers', () => {
    expect(fault('2 mm', '1', '')).toBe('wrongUnit');
  });

  it('does not hang on long or deep input', () => {
    expect(fault('('.repeat(5000))).toBe('notANumber');
    expect(fault('9'.repeat(5000))).toBe('notANumber');
  });
});
