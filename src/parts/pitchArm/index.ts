import { translation } from '../../engine/math/pose';
import { add, type Vec3 } from '../../engine/math/vector';
import { metresFromMm } from '../../engine/units';
import { definePart, type LinearHandle } from '../contract';
import { type PitchArmValues, pitchArmParameters, pitchArmProblems } from './parameters';
import { ballCentre, pitchArmSolids } from './solids';

/**
 * The pitch arm with its ball: origin on the feathering axis at the arm's seat, axes as the grip frame (x outboard, y
 * toward the leading edge, z = x cross y).
 */
export const pitchArm = definePart({
  kind: 'pitchArm',
  label: 'Pitch arm',
  help: 'The arm that turns the grip, with the ball for the pitch link.',
  parameters: pitchArmParameters,
  mates: ['armSeat'],
  solids: pitchArmSolids,
  sockets: (values) => [
    {
      name: 'ball',
      label: 'On the ball',
      mates: 'ball',
      pose: translation(...ballCentre(values)),
      defaultOffsetMm: 0,
      offsetRangeMm: [0, 0],
    },
  ],
  handles: pitchArmHandles,
  problems: pitchArmProblems,
  finish: 'plastic',
});

function pitchArmHandles(values: PitchArmValues): LinearHandle<keyof PitchArmValues>[] {
  const centre = ballCentre(values);
  const radius = metresFromMm(values.ballDiameterMm) / 2;
  const outward = values.side === 'leading' ? 1 : -1;
  // On the ball's surface, each on the side that it pulls to.
  const onBall = (parameter: keyof PitchArmValues, direction: Vec3) => {
    const [x, y, z] = direction;
    const position = add(centre, [radius * x, radius * y, radius * z]);
    return { kind: 'linear', parameter, position, direction, perMm: 1 } as const;
  };
  return [
    onBall('armReachMm', [0, outward, 0]),
    onBall('ballHeightMm', [0, 0, 1]),
    onBall('ballStationMm', [1, 0, 0]),
  ];
}
