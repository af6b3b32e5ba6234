import {
  densityKgM3,
  forceNewtons,
  lengthMm,
  massGrams,
  type NumberParameter,
  type ParameterSet,
  type ValuesOf,
} from '../contract';

const frictionCoefficient: NumberParameter = {
  type: 'number',
  unit: '1',
  label: 'Friction coefficient',
  help: 'Running friction, for a moment of coefficient x load x half the bore; 0 takes what is usual for the type.',
  default: 0,
  min: 0,
  max: 1,
  step: 0.0005,
  optional: true,
  group: 'Friction and load',
};

/** Defaults: a deep groove bearing of 4 x 8 x 3 mm, weighed from its dimensions, ratings not known. */
export const bearingParameters = {
  bearingType: {
    type: 'choice',
    label: 'Type',
    help: 'Deep groove balls, needles and plain bushes carry loads across the axis, a thrust ball bearing the pull along it.',
    options: ['deepGroove', 'thrustBall', 'needle', 'plain'],
    optionLabels: {
      deepGroove: 'Deep groove ball',
      thrustBall: 'Thrust ball',
      needle: 'Needle',
      plain: 'Plain',
    },
    default: 'deepGroove',
  },
  boreMm: lengthMm({
    label: 'Bore',
    help: 'Diameter of the shaft that it fits.',
    default: 4,
    min: 0.3,
    max: 300,
  }),
  outerDiameterMm: lengthMm({
    label: 'Outer diameter',
    help: 'Diameter of the hole that it sits in.',
    default: 8,
    min: 0.5,
    max: 490,
  }),
  widthMm: lengthMm({
    label: 'Width',
    help: 'Width along its axis; of a thrust bearing the height of both washers and the balls.',
    default: 3,
    min: 0.1,
    max: 300,
  }),
  massFrom: {
    type: 'choice',
    label: 'Mass from',
    help: 'The dimensions, filled as far as bearings of the type usually are (within a tenth), or a mass from a scale or list.',
    options: ['dimensions', 'given'],
    optionLabels: { dimensions: 'Dimensions', given: 'Given mass' },
    default: 'dimensions',
    optional: true,
    group: 'Mass',
  },
  massGrams: massGrams({
    label: 'Mass',
    help: 'Mass of the whole bearing, spread evenly through its ring.',
    default: 1,
    usedWhen: { key: 'massFrom', is: 'given' },
    min: 0.001,
    max: 10000,
    optional: true,
    group: 'Mass',
  }),
  densityKgM3: densityKgM3(7850, {
    help: 'Mass of one cubic metre of rings and balls: steel 7850, bronze 8800, nylon 1140.',
    usedWhen: { key: 'massFrom', is: 'dimensions' },
    optional: true,
    group: 'Mass',
  }),
  frictionCoefficient,
  staticLoadN: forceNewtons({
    label: 'Static load rating',
    help: 'Basic static rating C0 of the list (ISO 76); 0 where it is not known.',
    default: 0,
    min: 0,
    max: 1e7,
    optional: true,
    group: 'Friction and load',
  }),
  dynamicLoadN: forceNewtons({
    label: 'Dynamic load rating',
    help: 'Basic dynamic rating C of the list (ISO 281); 0 where it is not known.',
    default: 0,
    min: 0,
    max: 1e7,
    optional: true,
    group: 'Friction and load',
  }),
} as const satisfies ParameterSet;

export type BearingValues = ValuesOf<typeof bearingParameters>;
