import type { Design } from '../../design/design';
import { centreOfMass } from '../../engine/mass/inertia';
import { JXX, JXY, JXZ, JYY, JYZ, JZZ, M, type Moments } from '../../engine/mass/moments';
import { gramSquareMmFromSi, gramsFromKilograms, mmFromMetres } from '../../engine/units';
import { partType } from '../../parts/registry';
import type { HeadReading, PartReading } from '../../state/reading';
import { conditionLines } from './conditionLines';
import { type Cell, csvFile } from './csv';

const HEADER = [
  'Part',
  'Kind',
  'Counts',
  'Mass (g)',
  'Centre x (mm)',
  'Centre y (mm)',
  'Centre z (mm)',
  'J_xx (g mm2)',
  'J_yy (g mm2)',
  'J_zz (g mm2)',
  'J_xy (g mm2)',
  'J_xz (g mm2)',
  'J_yz (g mm2)',
  'J_yy - J_zz (g mm2)',
  'Share of J_yy - J_zz (%)',
];

const FRAME = [
  'Grip frame: origin on the feathering axis at the shaft, x outboard, y toward the leading edge, z = x cross y.',
  'J are second moments (integral of the coordinates over the mass) about that origin, not moments of inertia; about the feathering axis a part has J_yy + J_zz.',
  'Shares are of the sum of all sizes, so that they stay finite where parts cancel.',
];

const SECOND = [JXX, JYY, JZZ, JXY, JXZ, JYZ];

/** Every part that has mass, with its ten numbers in the grip frame, and the sum of those that turn with the grip. */
export function partsCsv(reading: HeadReading, design: Design): string {
  const parts = reading.order
    .map((id) => reading.part(id))
    .filter((part): part is PartReading => part !== undefined)
    .filter(({ carriedBy }) => carriedBy === 'grip' || carriedBy === 'rod');
  const absolute = parts
    .filter(isSummed)
    .reduce((sum, { moments_G }) => sum + Math.abs(difference(moments_G)), 0);
  const rows = parts.map((part): Cell[] => [
    part.part.name,
    partType(part.part.kind).label,
    part.part.hidden ? 'left out' : part.carriedBy === 'rod' ? 'in the linkage' : 'in the sum',
    ...numbers(part.moments_G),
    isSummed(part) && absolute > 0 ? (100 * difference(part.moments_G)) / absolute : null,
  ]);
  const share = absolute > 0 ? (100 * difference(reading.totals)) / absolute : null;
  rows.push(['Sum', '', '', ...numbers(reading.totals), share]);
  return csvFile([...conditionLines(design), ...FRAME], HEADER, rows);
}

function isSummed({ part, carriedBy }: PartReading): boolean {
  return !part.hidden && carriedBy === 'grip';
}

function difference(moments: Moments): number {
  return moments[JYY] - moments[JZZ];
}

function numbers(moments: Moments): Cell[] {
  const centre = centreOfMass(moments);
  return [
    gramsFromKilograms(moments[M]),
    ...[0, 1, 2].map((k) => (centre ? mmFromMetres(centre[k]) : null)),
    ...SECOND.map((k) => gramSquareMmFromSi(moments[k])),
    gramSquareMmFromSi(difference(moments)),
  ];
}
