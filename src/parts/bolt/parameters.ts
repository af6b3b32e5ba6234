import {
  atMost,
  densityKgM3,
  lengthMm,
  type ParameterSet,
  type Problem,
  type ValuesOf,
} from '../contract';
import { demand, requirePitch } from '../rules';
import { HEXAGON_CORNERS } from '../shapes';

/** Defaults: an M3 x 14 cap screw (head and socket of ISO 4762), threaded over its last 8 mm. */
export const boltParameters = {
  lengthMm: lengthMm({
    label: 'Length',
    help: 'Length under the head, from the bearing face to the end of the thread.',
    default: 14,
    min: 1,
    max: 500,
  }),
  extensionLengthMm: lengthMm({
    label: 'Head extension',
    help: 'How far the head is lengthened beyond its height; 0 for a plain head.',
    default: 0,
    min: 0,
    max: 300,
  }),
  extensionDiameterMm: lengthMm({
    label: 'Extension diameter',
    help: 'Diameter of the part turned on top of the head.',
    default: 5.5,
    min: 0.3,
    max: 200,
  }),
  headDiameterMm: lengthMm({
    label: 'Head diameter',
    help: 'Diameter of the head.',
    default: 5.5,
    min: 0.6,
    max: 200,
  }),
  headHeightMm: lengthMm({
    label: 'Head height',
    help: 'Height of the head above its bearing face, without the extension.',
    default: 3,
    min: 0.1,
    max: 200,
  }),
  threadLengthMm: lengthMm({
    label: 'Thread length',
    help: 'Length of the thread, from the end of the bolt toward the head.',
    default: 8,
    min: 0.2,
    max: 500,
  }),
  shankDiameterMm: lengthMm({
    label: 'Thread diameter',
    help: 'Nominal (major) diameter of the thread, which is also that of the plain shank.',
    default: 3,
    min: 0.5,
    max: 100,
  }),
  threadPitchMm: lengthMm({
    label: 'Thread pitch',
    help: 'Distance from one thread crest to the next.',
    default: 0.5,
    min: 0.05,
    max: 12,
    step: 0.05,
  }),
  socketAcrossMm: lengthMm({
    label: 'Socket across flats',
    help: 'Size of the hexagon key that fits.',
    default: 2.5,
    min: 0.2,
    max: 100,
  }),
  socketDepthMm: lengthMm({
    label: 'Socket depth',
    help: 'Depth of the key socket from the top of the head or of its extension; 0 for none.',
    default: 1.3,
    min: 0,
    max: 100,
  }),
  densityKgM3: densityKgM3(7850),
} as const satisfies ParameterSet;

export type BoltValues = ValuesOf<typeof boltParameters>;

/** Corners of the key socket over the diameter around it, at most: some wall is left, also when drawn with 12 chords. */
const WIDEST_SOCKET = 0.95;

export function boltProblems(values: BoltValues): Problem[] {
  const { headDiameterMm, extensionDiameterMm, extensionLengthMm, socketDepthMm } = values;
  const problems = [
    ...atMost(values, 'threadLengthMm', 'lengthMm'),
    ...requirePitch(values.threadPitchMm, values.shankDiameterMm),
    ...demand('headDiameterMm', headDiameterMm, 'above', values.shankDiameterMm, 'shankDiameterMm'),
  ];
  if (socketDepthMm === 0) return problems;
  const height = values.headHeightMm + extensionLengthMm;
  const acrossLimit = (diameterMm: number, against: string) => {
    const limit = (WIDEST_SOCKET * diameterMm) / HEXAGON_CORNERS;
    return demand('socketAcrossMm', values.socketAcrossMm, 'atMost', limit, against);
  };
  problems.push(
    ...demand('socketDepthMm', socketDepthMm, 'below', height, 'the height of the head'),
  );
  if (extensionLengthMm > 0) {
    problems.push(
      ...acrossLimit(extensionDiameterMm, 'the extension, less a thin wall round the corners'),
    );
  }
  if (socketDepthMm > extensionLengthMm) {
    problems.push(...acrossLimit(headDiameterMm, 'the head, less a thin wall round the corners'));
  }
  return problems;
}
