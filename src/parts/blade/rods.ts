import { uprightCut } from '../../engine/mass/sectionOutline';
import type { Solid } from '../../engine/mass/solid';
import { type Pose, rotationAboutY } from '../../engine/math/pose';
import { metresFromMm, radians } from '../../engine/units';
import { revolution, tubeProfile } from '../shapes';
import { cornersAt, isPlainSection, outerLoft } from './airfoilShape';
import type { BladeValues } from './parameters';

/**
 * A spar or a weight: a round rod at one distance from the bolt axis, whose ends lie at half the height of the section
 * there (with camber it is tilted a little; its end faces are square to it, so they lean over its x by up to half the
 * diameter times the sine of the tilt). Metres, in the blade's own frame.
 */
export interface Rod {
  readonly prefix: 'spar' | 'spar2' | 'weight' | 'weight2';
  readonly name: string;
  readonly diameter: number;
  readonly bore: number;
  readonly y: number;
  readonly fromX: number;
  readonly toX: number;
  readonly fromZ: number;
  readonly toZ: number;
  readonly density: number;
}

/** Rods that are there (diameter above 0). Their stations must be in the airfoil for the heights to mean anything. */
export function rodsOf(values: BladeValues): Rod[] {
  const v = values;
  const rods: Rod[] = [];
  for (const prefix of ['spar', 'spar2'] as const) {
    const [fromMm, toMm] = [v[`${prefix}StartMm`], v[`${prefix}EndMm`]];
    rods.push(rod(v, prefix, fromMm, toMm, v[`${prefix}BoreMm`]));
  }
  for (const prefix of ['weight', 'weight2'] as const) {
    const [station, length] = [v[`${prefix}StationMm`], v[`${prefix}LengthMm`]];
    rods.push(rod(v, prefix, station - length / 2, station + length / 2, 0));
  }
  return rods.filter((one) => one.diameter > 0).map((one) => raise(values, one));
}

const NAMES = {
  spar: 'spar',
  spar2: 'second spar',
  weight: 'tip weight',
  weight2: 'second weight',
} as const;

function rod(
  v: BladeValues,
  prefix: Rod['prefix'],
  fromMm: number,
  toMm: number,
  boreMm: number,
): Rod {
  return {
    prefix,
    name: NAMES[prefix],
    diameter: metresFromMm(v[`${prefix}DiameterMm`]),
    bore: metresFromMm(boreMm),
    y: metresFromMm(v[`${prefix}OffsetMm`]),
    fromX: metresFromMm(fromMm),
    toX: metresFromMm(toMm),
    fromZ: 0,
    toZ: 0,
    density: v[`${prefix}DensityKgM3`],
  };
}

function raise(values: BladeValues, one: Rod): Rod {
  if (isPlainSection(values)) return one;
  const loft = outerLoft(values);
  const [fromZ, toZ] = [one.fromX, one.toX].map((x) => {
    const cut = uprightCut(cornersAt(loft, x), one.y);
    return cut ? (cut.low + cut.high) / 2 : 0;
  });
  return { ...one, fromZ, toZ };
}

/** Angle of the rod's axis above the span. */
export function tiltOf(one: Rod): number {
  return Math.atan2(one.toZ - one.fromZ, one.toX - one.fromX);
}

/** A rod in place of the material that it lies in: a hole of its diameter, and the rod or tube that fills it. */
export function rodSolids(one: Rod, around: number): Solid[] {
  const pose: Pose = {
    rotation: rotationAboutY(radians(Math.PI / 2 - tiltOf(one))),
    translation: [one.fromX, one.y, one.fromZ],
  };
  const length = Math.hypot(one.toX - one.fromX, one.toZ - one.fromZ);
  const wall = (bore: number) => tubeProfile(bore / 2, one.diameter / 2, 0, length);
  return [
    revolution(`hole for the ${one.name}`, -around, wall(0), pose),
    revolution(one.name, one.density, wall(one.bore), pose),
  ];
}
