import { apply, type Vec3, ZERO } from '../../engine/math/vector';
import { metresFromMm } from '../../engine/units';
import type { Handle } from '../contract';
import { lagPose } from './bladeSolids';
import type { BladeValues } from './parameters';

type BladeHandle = Handle<keyof BladeValues>;
/** Turns a point or direction of the blade's own x-y plane into the part frame. */
type Turned = (x: number, y: number) => Vec3;

export function bladeHandles(values: BladeValues): BladeHandle[] {
  const R = lagPose(values).rotation;
  const turned: Turned = (x, y) => apply(R, [x, y, 0]);
  return [...planformHandles(values, turned), ...insideHandles(values, turned)];
}

function planformHandles(values: BladeValues, turned: Turned): BladeHandle[] {
  const begin = metresFromMm(values.rootLengthMm);
  const tip = metresFromMm(values.lengthMm);
  const rootSweep = metresFromMm(values.rootSweepMm);
  const sweep = metresFromMm(values.sweepMm);
  const ahead = values.axisPercent / 100;
  const behind = 1 - ahead;
  const rootChord = metresFromMm(values.rootChordMm);
  const tipChord = metresFromMm(values.tipChordMm);
  const linear = (
    parameter: keyof BladeValues,
    position: Vec3,
    direction: Vec3,
    perMm: number,
  ): BladeHandle => ({ kind: 'linear', parameter, position, direction, perMm });
  const aft = turned(0, -1);
  return [
    linear('lengthMm', turned(tip, -sweep), turned(1, 0), 1),
    linear('rootChordMm', turned(begin, -behind * rootChord - rootSweep), aft, 1 / behind),
    linear('tipChordMm', turned(tip, -behind * tipChord - sweep), aft, 1 / behind),
    linear(
      'axisPercent',
      turned(begin, ahead * rootChord - rootSweep),
      turned(0, 1),
      100 / values.rootChordMm,
    ),
    linear('rootLengthMm', turned(begin, 0), turned(1, 0), 1),
    linear('sweepMm', turned(tip, ahead * tipChord - sweep), aft, 1),
    {
      kind: 'turn',
      parameter: 'lagDeg',
      position: turned((begin + 3 * tip) / 4, 0),
      centre: ZERO,
      axis: [0, 0, 1],
      sense: -1,
    },
  ];
}

/** For the spars and weights that are there: where a spar ends and how far forward it lies, where a weight sits. */
function insideHandles(values: BladeValues, turned: Turned): BladeHandle[] {
  const handles: BladeHandle[] = [];
  for (const prefix of ['spar', 'spar2'] as const) {
    if (values[`${prefix}DiameterMm`] === 0) continue;
    const [from, to, y] = ([`StartMm`, `EndMm`, `OffsetMm`] as const).map((key) =>
      metresFromMm(values[`${prefix}${key}`]),
    );
    const forward = { position: turned((from + to) / 2, y), direction: turned(0, 1), perMm: 1 };
    handles.push({ kind: 'linear', parameter: `${prefix}OffsetMm`, ...forward });
    const outward = { position: turned(to, y), direction: turned(1, 0), perMm: 1 };
    handles.push({ kind: 'linear', parameter: `${prefix}EndMm`, ...outward });
  }
  for (const prefix of ['weight', 'weight2'] as const) {
    if (values[`${prefix}DiameterMm`] === 0) continue;
    const x = metresFromMm(values[`${prefix}StationMm`]);
    const y = metresFromMm(values[`${prefix}OffsetMm`]);
    const outward = { position: turned(x, y), direction: turned(1, 0), perMm: 1 };
    handles.push({ kind: 'linear', parameter: `${prefix}StationMm`, ...outward });
  }
  return handles;
}
