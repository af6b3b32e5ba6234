import { describe, expect, it } from 'vitest';
import { previewReadings } from '../../../src/bench/readings/preview';
import { withHalf } from '../../../src/bench/rooms/fit/fitWords';
import { returningText } from '../../../src/bench/rooms/fit/Returning';
import { previewWords } from '../../../src/bench/rooms/readings/previewWords';
import { BENCH_FIT } from '../../../src/messages/en/benchFit';
import { BENCH_ROOMS } from '../../../src/messages/en/benchRooms';

describe('the words of the bench', () => {
  it('have no place that its own braces do not close', () => {
    for (const [key, text] of Object.entries({ ...BENCH_ROOMS, ...BENCH_FIT }))
      expect(text.replace(/\{\w+\}/g, ''), key).not.toMatch(/[{}]/);
  });

  it('show a value to the place of the two digits of its uncertainty', () => {
    // JCGM 100:2008 (GUM), 7.2.2: 100.021 47 g with 0.35 mg.
    expect(withHalf({ value: 100.02147, unit: 'g' }, 0.00035)).toBe(
      '100.02147 \u00b1 0.00035\u00a0g',
    );
    expect(withHalf({ value: 66.9521, unit: 'N' }, 0.619)).toBe('66.95 \u00b1 0.62\u00a0N');
    expect(withHalf({ value: -0.004, unit: 'N' }, 12.3)).toBe('0 \u00b1 12\u00a0N');
  });

  it('show a value alone where nothing is left to tell its uncertainty', () => {
    expect(withHalf({ value: 1.5, unit: 'N' }, Number.NaN)).toBe('1.50\u00a0N');
  });

  it('say what was assumed of a table, and that a guess is one', () => {
    const preview = previewReadings('pitch,force N\n1,2\n3,4\n');
    if (!preview.ok) throw new Error('not read');
    const words = previewWords(preview.value).join(' ');
    expect(words).toContain('parted by comma');
    expect(words).toContain('guessed');
    expect(words).toContain('assumed: pitch (deg)');
    expect(words).toContain('2 rows are understood, 0 refused');
  });

  it('call a returning force aerodynamic only where it was found to look so', () => {
    const base = {
      kind: 'returns',
      innerDeg: 20,
      fromDeg: { low: null, high: 30 },
      restoring: true,
      excess: [],
      scaling: { kind: 'oneSpeed' },
    } as const;
    expect(returningText({ ...base, looks: 'aerodynamic' })).toContain('it looks aerodynamic');
    expect(returningText({ ...base, looks: 'cannotTell' })).not.toContain('it looks aerodynamic');
    expect(returningText({ ...base, looks: 'notWithSpeedSquared' })).toContain(
      'does not look aerodynamic',
    );
    expect(returningText({ ...base, looks: 'cannotTell' })).toContain('from +30.0\u00b0 on');
  });
});
