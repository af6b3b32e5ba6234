import { describe, expect, it } from 'vitest';
import { readStation } from '../../../src/scene/picking/readStation';

describe('the typed station of a bolt', () => {
  it('is a decimal number with point or comma', () => {
    for (const [typed, mm] of [
      ['31.4', 31.4],
      [' 31,4 ', 31.4],
      ['\u221212', -12],
      ['0,125', 0.125],
      ['1.000', 1],
      ['1.5e-7', 1.5e-7],
    ] as const) {
      expect(readStation(typed), typed).toEqual({ ok: true, value: mm });
    }
  });

  it('is not guessed from anything else', () => {
    for (const typed of [
      '',
      ' ',
      '0x10',
      '0b1',
      'Infinity',
      '1.2.3',
      '1,234.5',
      '12 mm',
      '-',
      '.',
    ]) {
      expect(readStation(typed), typed).toEqual({ ok: false, error: 'notANumber' });
    }
    expect(readStation('1,000')).toEqual({ ok: false, error: 'ambiguousComma' });
    expect(readStation('1e9')).toEqual({ ok: false, error: 'outside' });
  });
});
