import {
  angleDeg,
  densityKgM3,
  lengthMm,
  type NumberParameter,
  type ParameterSet,
  type ValuesOf,
} from '../contract';
import { buildParameters } from './buildParameters';
import { rodParameters } from './rodParameters';

/** Headings of the blade's fields. */
const PLANFORM = 'Planform';
const SECTION = 'Section';
const ROOT = 'Root';

function thicknessPercent(where: string, standard: number): NumberParameter {
  return {
    type: 'number',
    unit: '1',
    group: SECTION,
    label: `Thickness at the ${where}, %`,
    help: `Greatest thickness of the section at the ${where}, in per cent of its chord; own coordinates are stretched in height to it.`,
    default: standard,
    min: 0.5,
    max: 50,
    step: 0.5,
  };
}

/** Longest list of own coordinates: 400 points. */
export const MAX_COORDINATES = 800;

/** Defaults: an invented 92 x 28 mm carbon blade, solid. What came after the first version is optional and off. */
export const bladeParameters = {
  lengthMm: lengthMm({
    label: 'Length',
    help: 'Distance from the bolt axis to the tip.',
    default: 92,
    min: 2,
    max: 3000,
  }),
  rootChordMm: lengthMm({
    label: 'Chord at the root',
    group: PLANFORM,
    help: 'Chord where the airfoil begins, at the end of the root block.',
    default: 28,
    min: 0.5,
    max: 1000,
  }),
  tipChordMm: lengthMm({
    label: 'Chord at the tip',
    group: PLANFORM,
    help: 'Chord at the tip; the chord changes evenly from root to tip.',
    default: 28,
    min: 0.5,
    max: 1000,
  }),
  rootThicknessPercent: thicknessPercent('root', 10),
  tipThicknessPercent: thicknessPercent('tip', 10),
  axisPercent: {
    type: 'number',
    unit: '1',
    label: 'Axis on the chord, %',
    group: PLANFORM,
    help: 'Where the bolt axis lies on the chord, in per cent of it from the leading edge.',
    default: 30,
    min: 0,
    max: 90,
    step: 0.5,
  },
  lagDeg: angleDeg({
    label: 'Lag',
    help: 'Turn of the blade about the bolt, positive toward the trailing edge; 0 points straight out.',
    default: 0,
    min: -90,
    max: 90,
  }),
  rootLengthMm: lengthMm({
    label: 'Root block length',
    group: ROOT,
    help: 'Distance from the bolt axis to where the root block ends and the airfoil begins.',
    default: 12,
    min: 0.5,
    max: 1000,
  }),
  rootWidthMm: lengthMm({
    label: 'Root block width',
    group: ROOT,
    help: 'Width of the root block along the chord; its inboard end is round about the bolt.',
    default: 9,
    min: 0.5,
    max: 500,
  }),
  rootBlockThicknessMm: lengthMm({
    label: 'Root block thickness',
    group: ROOT,
    help: 'Thickness of the root block between the cheeks of the fork.',
    default: 4.8,
    min: 0.1,
    max: 300,
  }),
  boltHoleMm: lengthMm({
    label: 'Bolt hole',
    group: ROOT,
    help: 'Diameter of the hole for the blade bolt.',
    default: 3.1,
    min: 0.3,
    max: 150,
  }),
  densityKgM3: densityKgM3(1500, {
    help: 'Mass of one cubic metre of the blade when it is solid, of the root block when it has a skin over a core.',
    group: 'Build',
  }),
  sweepMm: {
    ...lengthMm({
      label: 'Sweep at the tip',
      help: 'How far the axis of the airfoil is moved toward the trailing edge at the tip; it changes evenly from the root.',
      default: 0,
      min: -1000,
      max: 1000,
    }),
    optional: true,
    group: PLANFORM,
  },
  rootSweepMm: {
    ...lengthMm({
      label: 'Sweep at the root',
      help: 'How far the axis of the airfoil is moved toward the trailing edge where the airfoil begins.',
      default: 0,
      min: -500,
      max: 500,
    }),
    optional: true,
    group: PLANFORM,
  },
  camberPercent: {
    type: 'number',
    unit: '1',
    label: 'Camber, %',
    help: 'Greatest height of the camber line over the chord line, in per cent of the chord: the first digit of a four-digit section. 0 is symmetric; negative bends down.',
    default: 0,
    min: -12,
    max: 12,
    step: 0.5,
    optional: true,
    group: SECTION,
  },
  camberPositionPercent: {
    type: 'number',
    unit: '1',
    label: 'Place of the camber, %',
    help: 'Where the camber line is highest, in per cent of the chord from the leading edge: ten times the second digit of a four-digit section.',
    default: 40,
    usedWhen: { key: 'camberPercent' },
    min: 10,
    max: 90,
    step: 5,
    optional: true,
    group: SECTION,
  },
  sectionCoordinates: {
    type: 'numbers',
    unit: '1',
    label: 'Own coordinates',
    help: 'Outline of an own section in shares of the chord: place from the leading edge and height in turn, from the trailing edge over the top to the leading edge and back along the bottom. Empty: four-digit section.',
    default: [],
    min: -3,
    max: 3,
    maxCount: MAX_COORDINATES,
    optional: true,
    group: SECTION,
  },
  sectionName: {
    type: 'text',
    label: 'Name of the section',
    help: 'What the file of the own coordinates calls the section.',
    default: '',
    maxLength: 120,
    optional: true,
    group: SECTION,
  },
  bushDiameterMm: {
    ...lengthMm({
      label: 'Bushing diameter',
      help: 'Outer diameter of a bushing round the bolt hole, as long as the root block is thick; 0 for none.',
      default: 0,
      min: 0,
      max: 200,
    }),
    optional: true,
    group: ROOT,
  },
  bushDensityKgM3: densityKgM3(8500, {
    label: 'Bushing density',
    help: 'Mass of one cubic metre of the bushing: brass 8500, bronze 8800.',
    materialKey: 'bushMaterial',
    usedWhen: { key: 'bushDiameterMm' },
    optional: true,
    group: ROOT,
  }),
  ...buildParameters,
  ...rodParameters,
} as const satisfies ParameterSet;

export type BladeValues = ValuesOf<typeof bladeParameters>;
