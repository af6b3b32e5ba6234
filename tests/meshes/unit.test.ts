import { describe, expect, it } from 'vitest';
import { guessUnit, MM_PER_UNIT } from '../../src/meshes/checks/unit';

describe('the unit of a mesh', () => {
  // The inch and the foot of 1959 are exact; the rest is decimal.
  it('is so many millimetres', () => {
    expect(MM_PER_UNIT).toEqual({ mm: 1, cm: 10, m: 1000, in: 25.4, micron: 0.001, ft: 304.8 });
  });

  it('is millimetres where the size allows it, and the first other that makes 1 to 400 mm', () => {
    expect(guessUnit(30, undefined)).toMatchObject({ unit: 'mm', because: 'habit' });
    expect(guessUnit(400, undefined)).toMatchObject({ unit: 'mm', because: 'habit' });
    expect(guessUnit(1, undefined)).toMatchObject({ unit: 'mm', because: 'habit' });
    expect(guessUnit(0.9, undefined)).toMatchObject({ unit: 'in', because: 'size' });
    expect(guessUnit(0.03, undefined)).toMatchObject({ unit: 'm', because: 'size' });
    expect(guessUnit(401, undefined)).toMatchObject({ unit: 'mm', because: 'nothingFits' });
    expect(guessUnit(0.0005, undefined)).toMatchObject({ unit: 'mm', because: 'nothingFits' });
  });

  it('that is stated is taken, with a word where it makes the part absurd', () => {
    const fine = guessUnit(2, 'in');
    expect(fine).toMatchObject({ unit: 'in', because: 'stated' });
    expect(fine.slip).toBeUndefined();
    expect(guessUnit(30, 'm')).toMatchObject({
      unit: 'm',
      slip: { stated: { sizeMm: 30_000 }, likely: { unit: 'mm', sizeMm: 30 } },
    });
    expect(guessUnit(1e6, 'm').slip).toBeUndefined();
    expect(guessUnit(2, 'ft').readings.map(({ unit, sizeMm }) => [unit, sizeMm])).toContainEqual([
      'ft',
      609.6,
    ]);
  });
});
