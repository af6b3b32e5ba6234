import type { CatalogueStandard, PartCatalogue } from '../catalogue';
import {
  type BearingRow,
  OPEN_ROWS,
  OPEN_SOURCE,
  SHIELDED_ROWS,
  SHIELDED_SOURCE,
  THRUST_ROWS,
  THRUST_SOURCE,
} from './tables';

/** Bought bearings. The mass is the printed one where there is one, else it is worked out from the dimensions. */
export const bearingCatalogue: PartCatalogue = {
  standards: [
    list('Deep groove', 'Deep groove ball bearing, open', 'deepGroove', OPEN_ROWS, OPEN_SOURCE),
    list(
      'Deep groove shielded',
      'Deep groove ball bearing, shields on both sides',
      'deepGroove',
      SHIELDED_ROWS,
      SHIELDED_SOURCE,
    ),
    list('Thrust ball', 'Thrust ball bearing, grooved', 'thrustBall', THRUST_ROWS, THRUST_SOURCE),
  ],
};

function list(
  name: string,
  title: string,
  bearingType: 'deepGroove' | 'thrustBall',
  rows: readonly BearingRow[],
  source: string,
): CatalogueStandard {
  return {
    standard: name,
    title,
    sizes: rows.map(({ size, fromMemory = false, note }) => ({
      size,
      source: fromMemory ? 'memory' : source,
      fromMemory,
      ...(note ? { note } : {}),
    })),
    values: (size) => {
      const row = rows.find((one) => one.size === size);
      if (!row) throw new RangeError(`catalogue ${name}: no row for ${size}`);
      const [boreMm, outerDiameterMm, widthMm] = row.dimensions;
      const [dynamicLoadN, staticLoadN] = row.ratings ?? [0, 0];
      return {
        bearingType,
        boreMm,
        outerDiameterMm,
        widthMm,
        massFrom: row.massGrams === null ? 'dimensions' : 'given',
        ...(row.massGrams === null ? {} : { massGrams: row.massGrams }),
        dynamicLoadN,
        staticLoadN,
      };
    },
  };
}
