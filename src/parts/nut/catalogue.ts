import { threadPitchDiameter } from '../../engine/mass/thread';
import type { CatalogueSize, CatalogueStandard, PartCatalogue } from '../catalogue';
import { usualChamfer } from '../chamferedHexagon';
import { threadOf } from '../threadTable';
import type { NutValues } from './parameters';
import { HEXAGON_NUTS, ISO_4032_SOURCE, ISO_4035_SOURCE } from './tables/hexagonNuts';
import { ISO_7040, ISO_7040_SOURCE, ISO_10511, ISO_10511_SOURCE } from './tables/lockingNuts';

/** Everything of a nut but its materials. */
type NutDimensions = Omit<NutValues, 'densityKgM3' | 'insertDensityKgM3'>;

/** Countersink over the thread diameter: the middle of d and 1.15 d, between which ISO 4032 has it (memory). */
const COUNTERSINK = 1.075;

/** Width of a locking nut's collar over that of its body, and height of its ring over that of the collar: estimates. */
const COLLAR = 0.92;
const RING = 2 / 3;

const RING_NOTE = 'Widths of collar and ring are estimates.';

/** Bought nuts, of the dimensions that the tables print as nominal, the greatest allowed; the thread is tapped. */
export const nutCatalogue: PartCatalogue = {
  standards: [
    standard('ISO 4032', 'Hexagon nut', { source: ISO_4032_SOURCE, fromMemory: false }, () =>
      HEXAGON_NUTS.map((row) => [row.size, hexagonNut(row.size, row.across, row.regular)]),
    ),
    standard('ISO 4035', 'Thin hexagon nut', { source: ISO_4035_SOURCE, fromMemory: false }, () =>
      HEXAGON_NUTS.map((row) => [row.size, hexagonNut(row.size, row.across, row.thin)]),
    ),
    standard(
      'ISO 7040',
      'Prevailing torque nut with nylon ring',
      { source: ISO_7040_SOURCE, fromMemory: true, note: RING_NOTE },
      () => ISO_7040.map((row) => [row.size, lockingNut(row)]),
    ),
    standard(
      'ISO 10511',
      'Thin prevailing torque nut with nylon ring',
      { source: ISO_10511_SOURCE, fromMemory: true, note: RING_NOTE },
      () => ISO_10511.map((row) => [row.size, lockingNut(row)]),
    ),
  ],
};

function standard(
  name: string,
  title: string,
  origin: Omit<CatalogueSize, 'size'>,
  table: () => readonly (readonly [string, NutDimensions])[],
): CatalogueStandard {
  const rows = new Map(table());
  return {
    standard: name,
    title,
    sizes: [...rows.keys()].map((size) => ({ size, ...origin })),
    values: (size) => {
      const values = rows.get(size);
      if (!values) throw new RangeError(`catalogue ${name}: no row for ${size}`);
      return values;
    },
  };
}

function hexagonNut(size: string, acrossMm: number, heightMm: number): NutDimensions {
  const { diameterMm, pitchMm } = threadOf(size);
  return {
    form: 'hex',
    acrossMm,
    heightMm,
    threadDiameterMm: diameterMm,
    threadPitchMm: pitchMm,
    collarDiameterMm: shown(COLLAR * acrossMm),
    collarHeightMm: 0,
    collarGrip: 'plain',
    closedEndMm: 0,
    chamferMm: usualChamfer(acrossMm),
    countersinkDiameterMm: shown(COUNTERSINK * diameterMm),
    insertHeightMm: 0,
    insertInnerDiameterMm: shown(threadPitchDiameter(diameterMm, pitchMm)),
    insertOuterDiameterMm: shown((diameterMm + COLLAR * acrossMm) / 2),
  };
}

function lockingNut({ size, across, height, thread }: (typeof ISO_7040)[number]): NutDimensions {
  const collar = shown(height - thread);
  return {
    ...hexagonNut(size, across, thread),
    collarHeightMm: collar,
    insertHeightMm: shown(RING * collar),
  };
}

function shown(mm: number): number {
  return Number(mm.toFixed(4));
}
