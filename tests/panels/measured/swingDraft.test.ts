import { describe, expect, it } from 'vitest';
import type { Swing } from '../../../src/design/measured';
import { completed, missingOf, withSwing } from '../../../src/panels/measured/swingDraft';

const SPAN: Swing = { about: 'span', spacingMm: 60, stringLengthMm: 500, swings: 20, seconds: 9 };

describe('a timing as it is filled in', () => {
  it('is whole with spacing, length, count and time, and not before', () => {
    const { about: _, ...numbers } = SPAN;
    expect(completed('span', numbers)).toEqual(SPAN);
    for (const name of Object.keys(numbers)) {
      expect(completed('span', { ...numbers, [name]: undefined })).toBeNull();
      expect(missingOf({ ...numbers, [name]: undefined })).toEqual([name]);
    }
  });

  it('leaves out what was left empty, so that the usual steps hold', () => {
    const { about: _, ...numbers } = SPAN;
    const swing = completed('span', { ...numbers, amplitudeDeg: undefined, cradleGrams: 0 });
    expect(Object.keys(swing ?? {})).not.toContain('amplitudeDeg');
    expect(swing).toMatchObject({ cradleGrams: 0 });
  });

  it('takes the place of the one about its axis and of no other; axes stay in order', () => {
    const chord: Swing = { ...SPAN, about: 'chord' };
    const both = withSwing(withSwing({ massGrams: 8 }, 'chord', chord), 'span', SPAN);
    expect(both.swings?.map(({ about }) => about)).toEqual(['span', 'chord']);
    const slower = withSwing(both, 'span', { ...SPAN, seconds: 12 });
    expect(slower.swings?.map(({ seconds }) => seconds)).toEqual([12, 9]);
    expect(withSwing(slower, 'chord', null).swings).toHaveLength(1);
    expect(withSwing(withSwing(both, 'chord', null), 'span', null)).toEqual({ massGrams: 8 });
  });
});
