import { uprightCut } from '../../engine/mass/sectionOutline';
import type { Solid } from '../../engine/mass/solid';
import { metresFromMm } from '../../engine/units';
import { facingOutboard, revolution, tubeProfile } from '../shapes';
import { cornersAt, isPlainSection, outerLoft } from './airfoilShape';
import type { BladeValues } from './parameters';

/**
 * A spar or a weight: a round rod along x at one distance from the bolt axis and at one height, half that of the section
 * in the rod's middle (0 without camber). Metres, in the blade's own frame.
 */
export interface Rod {
  readonly prefix: 'spar' | 'spar2' | 'weight' | 'weight2';
  readonly name: string;
  readonly diameter: number;
  readonly bore: number;
  readonly fromX: number;
  readonly toX: number;
  readonly y: number;
  readonly z: number;
  readonly density: number;
}

/** Rods that are there (diameter above 0). They must be in the airfoil for their height to mean anything. */
export function rodsOf(values: BladeValues): Rod[] {
  const v = values;
  const rods: Rod[] = [];
  for (const prefix of ['spar', 'spar2'] as const) {
    if (v[`${prefix}DiameterMm`] === 0) continue;
    const [fromMm, toMm] = [v[`${prefix}StartMm`], v[`${prefix}EndMm`]];
    rods.push(rod(v, prefix, fromMm, toMm, v[`${prefix}BoreMm`]));
  }
  for (const prefix of ['weight', 'weight2'] as const) {
    if (v[`${prefix}DiameterMm`] === 0) continue;
    const [station, length] = [v[`${prefix}StationMm`], v[`${prefix}LengthMm`]];
    rods.push(rod(v, prefix, station - length / 2, station + length / 2, 0));
  }
  return rods;
}

const NAMES = {
  spar: 'spar',
  spar2: 'second spar',
  weight: 'tip weight',
  weight2: 'second weight',
} as const;

function rod(
  values: BladeValues,
  prefix: Rod['prefix'],
  fromMm: number,
  toMm: number,
  boreMm: number,
): Rod {
  const [fromX, toX] = [metresFromMm(fromMm), metresFromMm(toMm)];
  const y = metresFromMm(values[`${prefix}OffsetMm`]);
  return {
    prefix,
    name: NAMES[prefix],
    diameter: metresFromMm(values[`${prefix}DiameterMm`]),
    bore: metresFromMm(boreMm),
    fromX,
    toX,
    y,
    z: middleHeight(values, (fromX + toX) / 2, y),
    density: values[`${prefix}DensityKgM3`],
  };
}

/** Half way between top and bottom of the section; 0 beside it. */
function middleHeight(values: BladeValues, x: number, y: number): number {
  if (isPlainSection(values)) return 0;
  const cut = uprightCut(cornersAt(outerLoft(values), x), y);
  return cut ? (cut.low + cut.high) / 2 : 0;
}

/** A rod in place of the material that it lies in: a hole of its diameter, and the rod or tube that fills it. */
export function rodSolids(one: Rod, around: number): Solid[] {
  const pose = facingOutboard(one.fromX, one.y, one.z);
  const wall = (bore: number) => tubeProfile(bore / 2, one.diameter / 2, 0, one.toX - one.fromX);
  return [
    revolution(`hole for the ${one.name}`, -around, wall(0), pose),
    revolution(one.name, one.density, wall(one.bore), pose),
  ];
}
