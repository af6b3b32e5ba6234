import { outlineClearance } from '../../engine/mass/sectionOutline';
import { mmFromMetres } from '../../engine/units';
import { atMost, type Problem } from '../contract';
import { demand } from '../rules';
import { coreLoft, cornersAt, outerLoft } from './airfoilShape';
import type { BladeValues } from './parameters';
import { type Rod, rodsOf } from './rods';

/** Places along a rod at which its room is measured; between the ends of a straight loft the room changes evenly. */
const STATIONS = 5;

/** Thinnest rod and bore that are taken for one, mm; 0 is none. */
const THINNEST_MM = 0.1;
/** Widest bore of a tube, as a share of its diameter. */
const WIDEST_BORE = 0.95;

type RodDiameter = `${Rod['prefix']}DiameterMm` | 'sparBoreMm' | 'spar2BoreMm';

/** Spars and weights must lie in the airfoil (in the core of a skinned one) all along, and not in one another. */
export function rodProblems(values: BladeValues): Problem[] {
  const rods = rodsOf(values);
  const along = rods.flatMap((rod) => [
    ...thinnest(values, `${rod.prefix}DiameterMm`),
    ...(rod.prefix === 'spar' || rod.prefix === 'spar2'
      ? sparProblems(values, rod.prefix)
      : weightProblems(values, rod.prefix)),
  ]);
  if (along.length > 0) return along;
  const inside = rods.flatMap((rod) => roomProblems(values, rod));
  if (inside.length > 0) return inside;
  return rods.flatMap((rod, i) =>
    rods.slice(0, i).flatMap((other) => overlapProblems(values, rod, other)),
  );
}

function thinnest(values: BladeValues, field: RodDiameter): Problem[] {
  if (values[field] === 0) return [];
  return demand(field, values[field], 'atLeast', THINNEST_MM, 'the thinnest, unless 0 for none');
}

/** A limit below the thinnest rod leaves room for none. */
function atMostRoom(values: BladeValues, field: RodDiameter, room: number, against: string) {
  const limit = mmFromMetres(room);
  return demand(field, values[field], 'atMost', limit < THINNEST_MM ? 0 : limit, against);
}

function sparProblems(values: BladeValues, prefix: 'spar' | 'spar2'): Problem[] {
  const [start, end] = [`${prefix}StartMm`, `${prefix}EndMm`] as const;
  const bore = `${prefix}BoreMm` as const;
  return [
    ...atMost(values, end, 'lengthMm'),
    ...demand(start, values[start], 'atLeast', values.rootLengthMm, 'rootLengthMm'),
    ...demand(end, values[end], 'above', values[start], start),
    ...thinnest(values, bore),
    ...demand(
      bore,
      values[bore],
      'atMost',
      WIDEST_BORE * values[`${prefix}DiameterMm`],
      'nineteen twentieths of its diameter',
    ),
  ];
}

function weightProblems(values: BladeValues, prefix: 'weight' | 'weight2'): Problem[] {
  const [length, station] = [`${prefix}LengthMm`, `${prefix}StationMm`] as const;
  const { rootLengthMm, lengthMm } = values;
  const half = values[length] / 2;
  return [
    ...demand(
      length,
      values[length],
      'atMost',
      lengthMm - rootLengthMm,
      'the length of the airfoil',
    ),
    ...demand(
      station,
      values[station],
      'atLeast',
      rootLengthMm + half,
      'the begin of the airfoil and half the weight',
    ),
    ...demand(station, values[station], 'atMost', lengthMm - half, 'the tip less half the weight'),
  ];
}

function roomProblems(values: BladeValues, rod: Rod): Problem[] {
  const loft = values.build === 'skin' ? coreLoft(values) : outerLoft(values);
  if (!loft) return [];
  let front = Infinity;
  let back = -Infinity;
  let room = Infinity;
  for (let k = 0; k < STATIONS; k++) {
    const t = k / (STATIONS - 1);
    const corners = cornersAt(loft, rod.fromX + t * (rod.toX - rod.fromX));
    room = Math.min(room, outlineClearance(corners, rod.y, rod.z));
    let [low, high] = [Infinity, -Infinity];
    for (let i = 0; i < corners.length; i += 2) {
      low = Math.min(low, corners[i]);
      high = Math.max(high, corners[i]);
    }
    back = Math.max(back, low);
    front = Math.min(front, high);
  }
  if (back < front) {
    const offset = `${rod.prefix}OffsetMm` as const;
    const where = values.build === 'skin' ? 'the core' : 'the airfoil';
    const beside = [
      ...demand(offset, values[offset], 'atLeast', mmFromMetres(back), `the back edge of ${where}`),
      ...demand(
        offset,
        values[offset],
        'atMost',
        mmFromMetres(front),
        `the front edge of ${where}`,
      ),
    ];
    if (beside.length > 0) return beside;
  }
  return atMostRoom(
    values,
    `${rod.prefix}DiameterMm`,
    back < front ? 2 * room : 0,
    'the room at its place',
  );
}

function overlapProblems(values: BladeValues, rod: Rod, other: Rod): Problem[] {
  if (Math.max(rod.fromX, other.fromX) >= Math.min(rod.toX, other.toX)) return [];
  const room = 2 * Math.hypot(rod.y - other.y, rod.z - other.z) - other.diameter;
  return atMostRoom(values, `${rod.prefix}DiameterMm`, room, `the room beside the ${other.name}`);
}
