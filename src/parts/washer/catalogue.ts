import type { CatalogueStandard, PartCatalogue } from '../catalogue';

/**
 * Plain washers, M1.6 to M8: ISO 7089 normal and ISO 7092 small series, grade A, mm. Hole, rim and thickness are nominal:
 * the least hole, the greatest rim, the middle thickness.
 */
export const washerCatalogue: PartCatalogue = {
  standards: [
    standard(
      'ISO 7089',
      'Plain washer',
      'ISO 7089 (DIN 125 A): two open hardware data tables that agree; masses agree with a printed table (M5 up)',
      {
        'M1.6': [1.7, 4, 0.3],
        M2: [2.2, 5, 0.3],
        'M2.5': [2.7, 6, 0.5],
        M3: [3.2, 7, 0.5],
        M4: [4.3, 9, 0.8],
        M5: [5.3, 10, 1],
        M6: [6.4, 12, 1.6],
        M8: [8.4, 16, 1.6],
      },
    ),
    standard(
      'ISO 7092',
      'Plain washer, small series',
      'ISO 7092 (DIN 433): one open hardware data table',
      {
        'M1.6': [1.7, 3.5, 0.3],
        M2: [2.2, 4.5, 0.3],
        'M2.5': [2.7, 5, 0.5],
        M3: [3.2, 6, 0.5],
        M4: [4.3, 8, 0.5],
        M5: [5.3, 9, 1],
        M6: [6.4, 11, 1.6],
        M8: [8.4, 15, 1.6],
      },
    ),
  ],
};

/** Rows: hole d1, rim d2, thickness h. */
function standard(
  name: string,
  title: string,
  source: string,
  rows: Readonly<Record<string, readonly [number, number, number]>>,
): CatalogueStandard {
  return {
    standard: name,
    title,
    sizes: Object.keys(rows).map((size) => ({ size, source, fromMemory: false })),
    values: (size) => {
      const row = rows[size];
      if (!row) throw new RangeError(`catalogue ${name}: no row for ${size}`);
      const [innerDiameterMm, outerDiameterMm, thicknessMm] = row;
      return { innerDiameterMm, outerDiameterMm, thicknessMm };
    },
  };
}
