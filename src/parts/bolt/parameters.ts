import { threadMeanRadius, threadPitchDiameter } from '../../engine/mass/thread';
import { densityKgM3, lengthMm, type ParameterSet, type ValuesOf } from '../contract';

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
    usedWhen: { key: 'extensionLengthMm' },
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
    usedWhen: { key: 'socketDepthMm' },
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
  headForm: {
    type: 'choice',
    label: 'Head form',
    help: 'Cylindrical cap, domed button, hexagon, or none as on a set screw.',
    options: ['cap', 'button', 'hexagon', 'none'],
    optionLabels: { cap: 'Cap', button: 'Button', hexagon: 'Hexagon', none: 'None' },
    default: 'cap',
    optional: true,
    group: 'head',
  },
  headChamferMm: lengthMm({
    label: 'Head chamfer',
    help: 'Height of the chamfer on top: at 45 degrees round a cap, at 30 degrees on the corners of a hexagon; 0 for none.',
    default: 0,
    min: 0,
    max: 50,
    step: 0.05,
    optional: true,
    group: 'head',
  }),
  headTopDiameterMm: lengthMm({
    label: 'Flat on top',
    help: 'Diameter of the flat on top of a button head.',
    default: 3.2,
    usedWhen: { key: 'headForm', is: 'button' },
    min: 0.3,
    max: 200,
    optional: true,
    group: 'head',
  }),
  headRimHeightMm: lengthMm({
    label: 'Rim height',
    help: 'Height of the straight rim under the dome of a button head.',
    default: 1,
    usedWhen: { key: 'headForm', is: 'button' },
    min: 0,
    max: 200,
    optional: true,
    group: 'head',
  }),
  threadForm: {
    type: 'choice',
    label: 'Thread form',
    help: 'Basic profile as drawn, or rolled from a blank of the pitch diameter, as bought screws are.',
    options: ['basic', 'rolled'],
    optionLabels: { basic: 'Basic profile', rolled: 'Rolled' },
    default: 'basic',
    optional: true,
    group: 'thread',
  },
  threadRunOutMm: lengthMm({
    label: 'Thread run-out',
    help: 'Length beyond the thread over which it fades into the plain shank.',
    default: 0,
    min: 0,
    max: 50,
    optional: true,
    group: 'thread',
  }),
  pointDiameterMm: lengthMm({
    label: 'Point diameter',
    help: 'Diameter of the flat at the end, chamfered at 45 degrees from the thread; 0 for no chamfer.',
    default: 0,
    min: 0,
    max: 100,
    optional: true,
    group: 'thread',
  }),
  propertyClass: {
    type: 'choice',
    label: 'Property class',
    help: 'Strength as marked on the head: 8.8, 10.9 or 12.9 of steel (ISO 898-1), A2 or A4 of stainless steel (ISO 3506-1). Not known: the loads are shown without a limit.',
    options: ['unknown', '8.8', '10.9', '12.9', 'A2-50', 'A2-70', 'A4-80'],
    optionLabels: {
      unknown: 'Not known',
      '8.8': '8.8',
      '10.9': '10.9',
      '12.9': '12.9',
      'A2-50': 'A2-50',
      'A2-70': 'A2-70',
      'A4-80': 'A4-80',
    },
    default: 'unknown',
    optional: true,
    group: 'Strength',
  },
} as const satisfies ParameterSet;

export type BoltValues = ValuesOf<typeof boltParameters>;

/**
 * Radius of the cylinder that stands for the thread, in the unit of diameter and pitch. Basic: equal volume to the ISO
 * 68-1 profile. Rolled: the pitch cylinder, since rolling moves metal and removes none, and the blank has about the pitch
 * diameter (common practice); it weighs 1.9 % (M8) to 3.1 % (M1.6) less. Printed masses per length of full-thread screws
 * follow the pitch cylinder (tests/parts/publishedMasses.test.ts); a thread in the middle of its 6g tolerance is
 * another 2 to 4 % lighter.
 */
export function threadRadius(
  form: BoltValues['threadForm'],
  diameter: number,
  pitch: number,
): number {
  return form === 'rolled'
    ? threadPitchDiameter(diameter, pitch) / 2
    : threadMeanRadius(diameter, pitch);
}

export function threadRadiusMm(values: BoltValues): number {
  return threadRadius(values.threadForm, values.shankDiameterMm, values.threadPitchMm);
}
