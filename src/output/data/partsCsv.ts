import type { Design } from '../../design/design';
import { centreOfMass } from '../../engine/mass/inertia';
import { JXX, JXY, JXZ, JYY, JYZ, JZZ, M, type Moments } from '../../engine/mass/moments';
import { gramSquareMmFromSi, gramsFromKilograms, mmFromMetres } from '../../engine/units';
import { partText, t } from '../../messages';
import { partType } from '../../parts/registry';
import type { HeadReading, PartReading } from '../../state/reading';
import { conditionLines } from './conditionLines';
import { type Cell, csvFile } from './csv';

const FRAME = ['csv.frame', 'csv.secondNote', 'csv.shareNote'] as const;

const SECOND = [JXX, JYY, JZZ, JXY, JXZ, JYZ];
const AXES = ['xx', 'yy', 'zz', 'xy', 'xz', 'yz'];

function header(): string[] {
  return [
    t('csv.part'),
    t('csv.kind'),
    t('csv.counts'),
    t('csv.mass'),
    ...['x', 'y', 'z'].map((axis) => t('csv.centre', { axis })),
    ...AXES.map((axes) => t('csv.second', { axes })),
    t('csv.difference'),
    t('csv.shareOf'),
  ];
}

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
    partText(`part.${part.part.kind}.label`, partType(part.part.kind).label),
    t(countsKey(part)),
    ...numbers(part.moments_G),
    isSummed(part) && absolute > 0 ? (100 * difference(part.moments_G)) / absolute : null,
  ]);
  const share = absolute > 0 ? (100 * difference(reading.totals)) / absolute : null;
  rows.push([t('csv.sum'), '', '', ...numbers(reading.totals), share]);
  return csvFile([...conditionLines(design), ...FRAME.map((key) => t(key))], header(), rows);
}

function countsKey({ part, carriedBy }: PartReading) {
  if (part.hidden) return 'csv.leftOut' as const;
  return carriedBy === 'rod' ? ('csv.inLinkage' as const) : ('csv.inSum' as const);
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
