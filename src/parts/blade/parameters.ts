import {
  angleDeg,
  below,
  densityKgM3,
  lengthMm,
  type NumberParameter,
  type ParameterSet,
  type Problem,
  type ValuesOf,
} from '../contract';
import { demand } from '../rules';

function thicknessPercent(where: string, standard: number): NumberParameter {
  return {
    type: 'number',
    unit: '1',
    label: `Thickness at the ${where}, %`,
    help: `Greatest thickness of the section at the ${where}, in per cent of its chord.`,
    default: standard,
    min: 0.5,
    max: 50,
    step: 0.5,
  };
}

/** Defaults: an invented 92 x 28 mm carbon blade. */
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
    help: 'Chord where the airfoil begins, at the end of the root block.',
    default: 28,
    min: 0.5,
    max: 1000,
  }),
  tipChordMm: lengthMm({
    label: 'Chord at the tip',
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
    help: 'Distance from the bolt axis to where the root block ends and the airfoil begins.',
    default: 12,
    min: 0.5,
    max: 1000,
  }),
  rootWidthMm: lengthMm({
    label: 'Root block width',
    help: 'Width of the root block along the chord; its inboard end is round about the bolt.',
    default: 9,
    min: 0.5,
    max: 500,
  }),
  rootBlockThicknessMm: lengthMm({
    label: 'Root block thickness',
    help: 'Thickness of the root block between the cheeks of the fork.',
    default: 4.8,
    min: 0.1,
    max: 300,
  }),
  boltHoleMm: lengthMm({
    label: 'Bolt hole',
    help: 'Diameter of the hole for the blade bolt.',
    default: 3.1,
    min: 0.3,
    max: 150,
  }),
  densityKgM3: densityKgM3(1500),
} as const satisfies ParameterSet;

export type BladeValues = ValuesOf<typeof bladeParameters>;

export function bladeProblems(values: BladeValues): Problem[] {
  return [
    ...below(values, 'boltHoleMm', 'rootWidthMm'),
    ...demand(
      'rootLengthMm',
      values.rootLengthMm,
      'above',
      values.boltHoleMm / 2,
      'half the bolt hole',
    ),
    ...below(values, 'rootLengthMm', 'lengthMm'),
  ];
}
