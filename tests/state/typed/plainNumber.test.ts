import { describe, expect, it } from 'vitest';
import { plainNumber } from '../../../src/state/typed/plainNumber';

describe('a plain typed number', () => {
  it('takes point or comma, and every minus that a keyboard or a paste gives', () => {
    for (const [typed, value] of [
      ['12.5', 12.5],
      [' 0,25 ', 0.25],
      ['+3', 3],
      ['\u22124', -4],
      ['\u20134', -4],
      ['1.000', 1],
      ['2e-3', 0.002],
    ] as const) {
      expect(plainNumber(typed), typed).toEqual({ ok: true, value });
    }
  });

  it('refuses a comma that could be a thousand, so that no gauge of 1,000 N becomes one of 1 N', () => {
    for (const typed of ['1,000', '12,500', '-1,000']) {
      expect(plainNumber(typed), typed).toEqual({ ok: false, error: 'ambiguousComma' });
    }
    // "0,125" and "1,25" can be nothing but decimal commas.
    expect(plainNumber('0,125')).toEqual({ ok: true, value: 0.125 });
    expect(plainNumber('1,25')).toEqual({ ok: true, value: 1.25 });
  });

  it('is nothing else that a computer would take for a number', () => {
    for (const typed of ['', ' ', '0x10', 'Infinity', '1.2.3', '1,234.5', '5 N', '.', '-']) {
      expect(plainNumber(typed), typed).toEqual({ ok: false, error: 'notANumber' });
    }
  });

  it('knows no negative zero', () => {
    const read = plainNumber('\u22120');
    expect(read.ok && Object.is(read.value, 0)).toBe(true);
  });
});
