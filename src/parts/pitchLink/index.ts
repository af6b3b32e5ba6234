import type { Solid } from '../../engine/mass/solid';
import { metresFromMm } from '../../engine/units';
import {
  atMost,
  below,
  definePart,
  densityKgM3,
  lengthMm,
  type ParameterSet,
  type ValuesOf,
} from '../contract';
import { demand } from '../rules';
import { ballRingProfile, facingOutboard, revolution, tubeProfile } from '../shapes';

const parameters = {
  slider: {
    type: 'choice',
    label: 'Slider',
    help: 'On which side of the arm the slider is: the rod runs along -z (below) or +z (above).',
    options: ['below', 'above'],
    optionLabels: { below: 'Below', above: 'Above' },
    default: 'below',
  },
  lengthMm: lengthMm({
    label: 'Length',
    help: 'Distance between the centres of the two balls.',
    default: 24,
    min: 1,
    max: 2000,
  }),
  rodDiameterMm: lengthMm({
    label: 'Rod diameter',
    help: 'Diameter of the rod between the two cups.',
    default: 2,
    min: 0.1,
    max: 100,
  }),
  ballDiameterMm: lengthMm({
    label: 'Ball diameter',
    help: 'Diameter of the balls that the cups close on.',
    default: 4.8,
    min: 0.3,
    max: 150,
  }),
  cupDiameterMm: lengthMm({
    label: 'Cup diameter',
    help: 'Outer diameter of the cups at both ends.',
    default: 7,
    min: 0.4,
    max: 200,
  }),
  cupWidthMm: lengthMm({
    label: 'Cup width',
    help: 'Width of the cups along the axis of their opening.',
    default: 3.2,
    min: 0.1,
    max: 140,
  }),
  densityKgM3: densityKgM3(1140),
} as const satisfies ParameterSet;

type PitchLinkValues = ValuesOf<typeof parameters>;

/**
 * The pitch link (push rod): origin in the centre of the ball on the pitch arm, axes as the grip frame at flat pitch;
 * the rod runs along z toward the slider. Two equal cups with spherical bores open along x. It stays parallel to the
 * shaft while the grip turns.
 */
export const pitchLink = definePart({
  kind: 'pitchLink',
  label: 'Pitch link',
  help: 'The push rod between the ball on the pitch arm and the slider.',
  parameters,
  mates: ['ball'],
  solids: pitchLinkSolids,
  sockets: () => [],
  handles: (values) => {
    const toward = sideOf(values);
    const length = toward * metresFromMm(values.lengthMm);
    const cup = metresFromMm(values.cupDiameterMm) / 2;
    return [
      {
        kind: 'linear',
        parameter: 'lengthMm',
        position: [0, 0, length],
        direction: [0, 0, toward],
        perMm: 1,
      },
      {
        kind: 'linear',
        parameter: 'cupDiameterMm',
        position: [0, cup, 0],
        direction: [0, 1, 0],
        perMm: 2,
      },
      {
        kind: 'linear',
        parameter: 'rodDiameterMm',
        position: [0, metresFromMm(values.rodDiameterMm) / 2, length / 2],
        direction: [0, 1, 0],
        perMm: 2,
      },
    ];
  },
  problems: (values) => [
    ...below(values, 'ballDiameterMm', 'cupDiameterMm'),
    ...below(values, 'cupWidthMm', 'ballDiameterMm'),
    ...atMost(values, 'rodDiameterMm', 'cupDiameterMm'),
    ...demand('lengthMm', values.lengthMm, 'above', values.cupDiameterMm, 'cupDiameterMm'),
  ],
  carriedBy: 'rod',
  rodDirection: sideOf,
  rod: (values) => ({ side: sideOf(values), length: metresFromMm(values.lengthMm) }),
  finish: 'metal',
});

function sideOf(values: PitchLinkValues): 1 | -1 {
  return values.slider === 'above' ? 1 : -1;
}

/**
 * Two cups and the rod between them. The rod ends flat where it first touches the round of a cup, so a sliver is
 * missing: a mean thickness of rodDiameter^2 / (16 cupDiameter) over the rod's section, 0.04 mm at the defaults.
 */
function pitchLinkSolids(values: PitchLinkValues): Solid[] {
  const density = values.densityKgM3;
  const toward = sideOf(values);
  const far = toward * metresFromMm(values.lengthMm);
  const cup = metresFromMm(values.cupDiameterMm) / 2;
  const ring = ballRingProfile(
    metresFromMm(values.ballDiameterMm) / 2,
    cup,
    metresFromMm(values.cupWidthMm),
  );
  const near = toward * cup;
  const rod = tubeProfile(
    0,
    metresFromMm(values.rodDiameterMm) / 2,
    Math.min(near, far - near),
    Math.max(near, far - near),
  );
  return [
    revolution('cup on the arm', density, ring, facingOutboard(0, 0, 0)),
    revolution('rod', density, rod),
    revolution('cup on the slider', density, ring, facingOutboard(0, 0, far)),
  ];
}
