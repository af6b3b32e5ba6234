import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { displayForce, fixed, show, significant } from '../../../src/state/quantities';
import { METRIC_UNITS } from '../../../src/state/settings';
import { shownNumber, shownText, shownUnit } from '../../../src/state/shownUnits';
import { parseQuantity } from '../../../src/state/typed/parseQuantity';
import { plainNumber } from '../../../src/state/typed/plainNumber';
import { speakOther } from '../../support/pseudo';

const MM = shownUnit('mm', METRIC_UNITS);

function read(text: string): number | string {
  const found = parseQuantity(text, 'mm', 'mm');
  return found.ok ? found.value : found.error.code;
}

describe('a language with a decimal comma', () => {
  let english = () => {};
  beforeEach(() => {
    english = speakOther({}, ',');
  });
  afterEach(() => english());

  it('shows it in every number, with three digits behind it too, and reads what it shows', () => {
    expect(significant(-0.0123)).toBe('\u22120,0123');
    expect(fixed(2.5, 2)).toBe('2,50');
    expect(show(displayForce(8.04, METRIC_UNITS))).toBe('8,04\u00a0N');
    expect(shownText(1.125, MM)).toBe('1,125\u00a0mm');
    for (const value of [0.5, 1.125, -12.75, 999.001, 1234.5]) {
      expect(read(shownNumber(value, MM))).toBe(value);
    }
  });

  it('takes comma and point alike, and refuses a point that could set thousands apart', () => {
    expect([read('0,5'), read('0.5'), read('1,125'), read('2,5/2')]).toEqual([
      0.5, 0.5, 1.125, 1.25,
    ]);
    expect([read('1.125'), read('1.234,5'), read('1,234.5')]).toEqual([
      'ambiguousPoint',
      'ambiguousComma',
      'ambiguousComma',
    ]);
    expect(plainNumber('1,125')).toEqual({ ok: true, value: 1.125 });
    expect(plainNumber('1.125')).toEqual({ ok: false, error: 'ambiguousPoint' });
    expect(plainNumber('0.125')).toEqual({ ok: true, value: 0.125 });
  });

  it('is the mirror of English', () => {
    english();
    expect([read('1.125'), read('1,125'), read('0,125')]).toEqual([1.125, 'ambiguousComma', 0.125]);
    expect(shownText(1.125, MM)).toBe('1.125\u00a0mm');
  });
});
