import type { CatalogueStandard, PartCatalogue } from '../catalogue';
import { usualChamfer } from '../chamferedHexagon';
import { standardLengthsMm, threadOf } from '../threadTable';
import { type BoltDimensions, plainHead, screwThread, setScrewThread, shown } from './screwValues';
import { ASME_B18_3, ASME_B18_3_SOURCE, inchLengthsMm } from './tables/asmeB183';
import { ISO_4014, ISO_4014_SOURCE } from './tables/iso4014';
import { ISO_4026, ISO_4026_SOURCE } from './tables/iso4026';
import { ISO_4762, ISO_4762_SOURCE } from './tables/iso4762';
import { ISO_7380, ISO_7380_SOURCE } from './tables/iso7380';

/**
 * Bought screws. Dimensions are those that a table prints as nominal, which for heads are the greatest allowed; the
 * thread is rolled. A real screw lies within its tolerances and is usually a few per cent lighter.
 *
 * Any length in the limits may be asked for, since screws are cut; what is cut shorter than its thread is all thread.
 */
export const boltCatalogue: PartCatalogue = {
  lengthParameter: 'lengthMm',
  lengthLimitsMm: [2, 300],
  standards: [
    standard('ISO 4762', 'Socket head cap screw', {
      rows: ISO_4762,
      source: ISO_4762_SOURCE,
      fromMemory: false,
      lengths: (row) => standardLengthsMm(row.shortest, row.longest),
      values: (row, lengthMm) => ({
        ...plainHead(row.headDiameter, row.headHeight),
        ...screwThread(row.size, lengthMm, row.thread, row.fullThreadTo),
        headForm: 'cap',
        headChamferMm: row.chamfer,
        socketAcrossMm: row.across,
        socketDepthMm: row.depth,
      }),
    }),
    standard('ISO 7380', 'Button head screw', {
      rows: ISO_7380,
      source: ISO_7380_SOURCE,
      fromMemory: true,
      note: 'ISO 7380-1; threaded to the head. The range of lengths is from memory.',
      lengths: (row) => standardLengthsMm(row.shortest, row.longest),
      values: (row, lengthMm) => ({
        ...plainHead(row.headDiameter, row.headHeight),
        ...screwThread(row.size, lengthMm, lengthMm, lengthMm),
        headForm: 'button',
        headChamferMm: 0,
        headTopDiameterMm: row.flat,
        headRimHeightMm: rimHeight(row),
        socketAcrossMm: row.across,
        socketDepthMm: row.depth,
      }),
    }),
    standard('ISO 4014', 'Hexagon head bolt', {
      rows: ISO_4014,
      source: ISO_4014_SOURCE,
      fromMemory: true,
      note: 'The range of lengths is from memory; the washer face is left out.',
      lengths: (row) => standardLengthsMm(...row.boltLengths),
      values: (row, lengthMm) => hexagonHead(row, screwThread(row.size, lengthMm, row.thread, 0)),
    }),
    standard('ISO 4017', 'Hexagon head screw, threaded to the head', {
      rows: ISO_4014,
      source: ISO_4014_SOURCE,
      fromMemory: true,
      note: 'The range of lengths is from memory; the washer face is left out.',
      lengths: (row) => standardLengthsMm(...row.screwLengths),
      values: (row, lengthMm) =>
        hexagonHead(row, screwThread(row.size, lengthMm, lengthMm, lengthMm)),
    }),
    standard('ISO 4026', 'Set screw with flat point', {
      rows: ISO_4026,
      source: ISO_4026_SOURCE,
      fromMemory: true,
      note: 'Which lengths have the short socket, and the longest length, are from memory.',
      lengths: (row) => standardLengthsMm(row.shortest, row.longest),
      values: (row, lengthMm) => {
        const depth = lengthMm <= row.shortTo ? row.shortDepth : row.longDepth;
        const { diameterMm } = threadOf(row.size);
        return {
          ...plainHead(shown(1.5 * diameterMm), diameterMm),
          ...setScrewThread(row.size, lengthMm, row.point),
          headForm: 'none',
          headChamferMm: 0,
          socketAcrossMm: row.across,
          socketDepthMm: Math.min(depth, lengthMm / 2),
        };
      },
    }),
    standard('ASME B18.3', 'Socket head cap screw, inch', {
      rows: ASME_B18_3,
      source: ASME_B18_3_SOURCE,
      fromMemory: true,
      note: 'The range of lengths is from memory; no chamfer on the head.',
      lengths: (row) => inchLengthsMm(threadOf(row.size).diameterMm, row.longestInch),
      values: (row, lengthMm) => ({
        ...plainHead(row.headDiameter, row.headHeight),
        ...screwThread(row.size, lengthMm, row.thread, 0),
        headForm: 'cap',
        headChamferMm: 0,
        socketAcrossMm: row.across,
        socketDepthMm: row.depth,
      }),
    }),
  ],
};

interface Table<Row extends { readonly size: string }> {
  readonly rows: readonly Row[];
  readonly source: string;
  readonly fromMemory: boolean;
  readonly note?: string;
  readonly lengths: (row: Row) => readonly number[];
  readonly values: (row: Row, lengthMm: number) => BoltDimensions;
}

function standard<Row extends { readonly size: string }>(
  name: string,
  title: string,
  { rows, source, fromMemory, note, lengths, values }: Table<Row>,
): CatalogueStandard {
  return {
    standard: name,
    title,
    sizes: rows.map((row) => ({
      size: row.size,
      lengthsMm: lengths(row),
      source,
      fromMemory,
      ...(note ? { note } : {}),
    })),
    values: (size, lengthMm) => {
      const row = rows.find((one) => one.size === size);
      if (!row || lengthMm === undefined) {
        throw new RangeError(`catalogue ${name}: no row for ${size} x ${lengthMm}`);
      }
      return values(row, lengthMm);
    },
  };
}

function rimHeight({ headDiameter, headHeight, flat, domeRadius }: (typeof ISO_7380)[number]) {
  const rise = (diameter: number) => Math.sqrt(domeRadius ** 2 - (diameter / 2) ** 2);
  return shown(headHeight - rise(flat) + rise(headDiameter));
}

function hexagonHead(
  { across, headHeight }: (typeof ISO_4014)[number],
  thread: ReturnType<typeof screwThread>,
): BoltDimensions {
  return {
    ...plainHead(across, headHeight),
    ...thread,
    headForm: 'hexagon',
    headChamferMm: usualChamfer(across),
    socketAcrossMm: shown(across / 2),
    socketDepthMm: 0,
  };
}
