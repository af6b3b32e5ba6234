import { transformPoint } from '../../engine/math/pose';
import type { LiftingStation } from '../facts';
import { airfoilEnds, sectionOf } from './airfoilShape';
import { lagPose } from './bladeSolids';
import { type ChordLine, chordLineOf } from './chordLine';
import type { BladeValues } from './parameters';

const remembered = new WeakMap<BladeValues, readonly LiftingStation[]>();

/**
 * The aerofoil where it begins and at the tip, part frame (lag turned in), m; between the two everything is linear. The
 * root block does not lift. Camber is its size: which way it bends is not told. Remembered by the values' identity.
 */
export function bladeStations(values: BladeValues): readonly LiftingStation[] {
  const known = remembered.get(values);
  if (known) return known;
  const pose = lagPose(values);
  const { root, tip } = airfoilEnds(values);
  const stations = [root, tip].map((end): LiftingStation => {
    const { nose, tail, camber } = lineOf(values, end);
    const place = (along: number, height: number) =>
      transformPoint(pose, [end.x, end.leadingEdgeY - along, height]);
    return {
      leadingEdge: place(...nose),
      trailingEdge: place(...tail),
      thicknessRatio: end.thickness / end.chord,
      camberRatio: camber / end.chord,
    };
  });
  remembered.set(values, stations);
  return stations;
}

/** A four-digit section says what its chord line and camber are; of own coordinates they are measured. */
function lineOf(values: BladeValues, end: ReturnType<typeof airfoilEnds>['root']): ChordLine {
  if (values.sectionCoordinates.length > 0) return chordLineOf(sectionOf(values, end));
  const camber = (Math.abs(values.camberPercent) / 100) * end.chord;
  return { nose: [0, 0], tail: [end.chord, 0], camber };
}
