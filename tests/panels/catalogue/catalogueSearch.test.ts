import { describe, expect, it } from 'vitest';
import { searchCatalogue } from '../../../src/panels/catalogue/catalogueSearch';
import { readLength } from '../../../src/panels/catalogue/lengthDraft';
import { fittingLength, placeOfLength } from '../../../src/panels/catalogue/lengths';
import type { CatalogueStandard, PartCatalogue } from '../../../src/parts/catalogue';
import { lengthText, referenceText } from '../../../src/state/words/catalogueText';

/**
 * Rows of the shape that the standards have: ISO 4762 M3 from 5 to 30 mm, ISO 7380 M3 to 10 (memory); inch lengths
 * are exact multiples of 25.4 mm (the inch's definition).
 */
function standard(
  name: string,
  title: string,
  rows: Readonly<Record<string, readonly number[] | undefined>>,
): CatalogueStandard {
  const sizes = Object.entries(rows).map(([size, lengthsMm]) => ({
    size,
    ...(lengthsMm ? { lengthsMm } : {}),
    source: 'memory',
    fromMemory: true,
  }));
  return { standard: name, title, sizes, values: () => ({}) };
}
const METRIC = [5, 6, 8, 10, 12, 16, 20, 25, 30];
const INCH = [6.35, 9.525, 12.7, 19.05, 25.4, 38.1];
const screws: PartCatalogue = {
  lengthParameter: 'lengthMm',
  lengthLimitsMm: [2, 300],
  standards: [
    standard('ISO 4762', 'Socket head cap screw', { M3: METRIC, M4: METRIC, M10: [16, 20, 25] }),
    standard('ISO 7380', 'Button head screw', { M3: METRIC, M10: [16, 20, 25] }),
    standard('ISO 10642', 'Countersunk screw', { M3: METRIC }),
    standard('ASME B18.3', 'Socket head cap screw, inch', { '#4-40': INCH, '#10-32': INCH }),
    standard('ISO 4032', 'Hexagon nut', { M3: undefined }),
  ],
};
const names = (query: string) =>
  searchCatalogue(screws, query).map((hit) =>
    referenceText({
      standard: hit.standard.standard,
      size: hit.size.size,
      ...(hit.lengthMm === undefined ? {} : { lengthMm: hit.lengthMm }),
    }),
  );

describe('the search of the catalogue', () => {
  it('gives every row to an empty query, as the tables have them', () => {
    expect(names('')).toHaveLength(9);
    expect(names(' ')[0]).toBe('ISO 4762 M3');
  });

  it('takes a size and a length in any order and any form', () => {
    for (const query of [
      'M3 20',
      '20 m3',
      'm3x20',
      'M3 \u00d7 20',
      'M3 x 20 mm',
      'M3*20',
      '20mm M3',
    ]) {
      expect(names(query), query).toEqual([
        'ISO 4762 M3 \u00d7 20',
        'ISO 7380 M3 \u00d7 20',
        'ISO 10642 M3 \u00d7 20',
      ]);
    }
  });

  it('takes a length that no standard lists', () => {
    expect(names('4762 M3 22')).toEqual(['ISO 4762 M3 \u00d7 22']);
  });

  it('finds a standard written together, and one by its beginning', () => {
    expect(names('iso4762 m4')).toEqual(['ISO 4762 M4']);
    expect(names('476')).toHaveLength(3);
  });

  it('reads 10 beside a kind as a listed length before a size, and never as the beginning of 10642', () => {
    expect(names('button 10')).toEqual(['ISO 7380 M3 \u00d7 10', 'ISO 7380 M10']);
    expect(names('countersunk 10')).toEqual(['ISO 10642 M3 \u00d7 10']);
  });

  it('counts in inches on inch sizes and wherever a fraction stands', () => {
    expect(names('4-40 1/2')).toEqual(['ASME B18.3 #4-40 \u00d7 1/2\u00a0in']);
    expect(names('#4 0.5')).toEqual(['ASME B18.3 #4-40 \u00d7 1/2\u00a0in']);
    expect(names('4-40 12.7mm')).toEqual(['ASME B18.3 #4-40 \u00d7 1/2\u00a0in']);
    expect(names('4-40 1 1/2')).toEqual(['ASME B18.3 #4-40 \u00d7 1 1/2\u00a0in']);
    expect(names('4762 M3 1/2')).toEqual(['ISO 4762 M3 \u00d7 12.7']);
  });

  it('gives no row with a length to a part without one', () => {
    expect(names('nut')).toEqual(['ISO 4032 M3']);
    expect(names('nut M3 20')).toEqual([]);
  });

  it('gives nothing to what it cannot place, and takes any text', () => {
    for (const query of ['zzz', 'M3 20 25', '(((', '1/0', '\\']) expect(names(query)).toEqual([]);
  });
});

describe('lengths of a standard', () => {
  it('have neighbours, and an end on either side', () => {
    expect(placeOfLength(METRIC, 22)).toEqual({ listed: undefined, below: 20, above: 25 });
    expect(placeOfLength(METRIC, 20)).toEqual({ listed: 20, below: 16, above: 25 });
    expect(placeOfLength(METRIC, 4)).toEqual({ listed: undefined, below: undefined, above: 5 });
    expect(placeOfLength(METRIC, 31)).toEqual({ listed: undefined, below: 30, above: undefined });
  });

  it('go to the next longer, so that a nut keeps its thread', () => {
    expect(fittingLength(METRIC, 14)).toBe(16);
    expect(fittingLength(METRIC, 16)).toBe(16);
    expect(fittingLength(METRIC, 99)).toBe(30);
  });

  it('are written as the size is: mm, or inches in fractions', () => {
    expect(lengthText('M3', 22.5)).toBe('22.5\u00a0mm');
    expect(lengthText('#4-40', 9.525)).toBe('3/8\u00a0in');
    expect(lengthText('1/4-28', 38.1)).toBe('1 1/2\u00a0in');
    expect(lengthText('#4-40', 10)).toBe('0.3937\u00a0in');
  });

  it('are read in the unit of the size, and refused aloud', () => {
    expect(readLength('22', 'M3', METRIC, [2, 300])).toEqual({ ok: true, value: 22 });
    expect(readLength('3/8', '#4-40', INCH, [2, 300])).toEqual({ ok: true, value: 9.525 });
    expect(readLength('10 mm', '#4-40', INCH, [2, 300])).toEqual({ ok: true, value: 10 });
    const far = readLength('400', 'M3', METRIC, [2, 300]);
    expect(!far.ok && far.error).toContain('300\u00a0mm');
    for (const text of ['', 'abc', '5 g'])
      expect(readLength(text, 'M3', METRIC, [2, 300]).ok).toBe(false);
  });
});
