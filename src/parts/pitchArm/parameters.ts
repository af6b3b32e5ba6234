import {
  below,
  densityKgM3,
  lengthMm,
  type ParameterSet,
  type Problem,
  type ValuesOf,
} from '../contract';
import { demand } from '../rules';

/** Defaults: an invented nylon arm with a 4.8 mm steel ball, stud along the span. */
export const pitchArmParameters = {
  side: {
    type: 'choice',
    label: 'Side',
    help: 'Whether the arm reaches toward the leading or the trailing edge.',
    options: ['leading', 'trailing'],
    optionLabels: { leading: 'Leading edge', trailing: 'Trailing edge' },
    default: 'leading',
  },
  studAlong: {
    type: 'choice',
    label: 'Stud along',
    help: 'Whether the ball stud stands out from the arm along the span or along the shaft.',
    options: ['span', 'shaft'],
    optionLabels: { span: 'Span', shaft: 'Shaft' },
    default: 'span',
  },
  armReachMm: lengthMm({
    label: 'Arm reach',
    help: 'Distance of the ball centre from the feathering axis along the chord, to either side.',
    default: 17,
    min: 0.5,
    max: 1000,
  }),
  ballHeightMm: lengthMm({
    label: 'Ball height',
    help: 'Height of the ball centre above the feathering axis (+z), at flat pitch.',
    default: 4,
    min: -500,
    max: 500,
  }),
  ballStationMm: lengthMm({
    label: 'Ball station',
    help: 'How far the ball centre lies outboard of the arm seat.',
    default: 4.5,
    min: -500,
    max: 500,
  }),
  armStartMm: lengthMm({
    label: 'Arm start',
    help: 'Distance from the feathering axis at which the arm begins: half the barrel diameter.',
    default: 5.5,
    min: 0,
    max: 500,
  }),
  armRootWidthMm: lengthMm({
    label: 'Arm width at the barrel',
    help: 'Width of the arm where it begins, across stud and reach.',
    default: 7,
    min: 0.2,
    max: 300,
  }),
  armTipWidthMm: lengthMm({
    label: 'Arm width at the ball',
    help: 'Width of the arm at the stud, where its end is round.',
    default: 5,
    min: 0.2,
    max: 300,
  }),
  armThicknessMm: lengthMm({
    label: 'Arm thickness',
    help: 'Thickness of the arm, in the direction of the stud.',
    default: 3,
    min: 0.1,
    max: 200,
  }),
  ballDiameterMm: lengthMm({
    label: 'Ball diameter',
    help: 'Diameter of the ball.',
    default: 4.8,
    min: 0.3,
    max: 150,
  }),
  studDiameterMm: lengthMm({
    label: 'Stud diameter',
    help: 'Diameter of the shank between arm and ball.',
    default: 2.5,
    min: 0.1,
    max: 140,
  }),
  armDensityKgM3: {
    ...densityKgM3(1140),
    label: 'Arm density',
    help: 'Mass of one cubic metre of the arm: nylon 1140, aluminium 2700.',
  },
  studDensityKgM3: {
    ...densityKgM3(7850),
    label: 'Ball density',
    help: 'Mass of one cubic metre of ball and stud: steel 7850, brass 8500.',
  },
} as const satisfies ParameterSet;

export type PitchArmValues = ValuesOf<typeof pitchArmParameters>;

/**
 * The ball stands clear of the arm along the stud; across it the arm leans by 45 degrees at most; the arm's widths are
 * less than twice its free length. Then its outline does not cross itself, whatever the rest.
 */
export function pitchArmProblems(values: PitchArmValues): Problem[] {
  const spanwise = values.studAlong === 'span';
  const out = spanwise ? 'ballStationMm' : 'ballHeightMm';
  const across = spanwise ? 'ballHeightMm' : 'ballStationMm';
  const clear = (values.armThicknessMm + values.ballDiameterMm) / 2;
  const clearance = 'half the arm thickness and half the ball';
  const run = values.armReachMm - values.armStartMm;
  const lean = 'the free length of the arm';
  const widthLimit = 'twice the free length of the arm';
  return [
    ...below(values, 'armStartMm', 'armReachMm'),
    ...below(values, 'studDiameterMm', 'ballDiameterMm'),
    ...(values[out] >= 0
      ? demand(out, values[out], 'atLeast', clear, clearance)
      : demand(out, values[out], 'atMost', -clear, clearance)),
    ...demand(across, values[across], 'atMost', run, lean),
    ...demand(across, values[across], 'atLeast', -run, lean),
    ...demand('armRootWidthMm', values.armRootWidthMm, 'below', 2 * run, widthLimit),
    ...demand('armTipWidthMm', values.armTipWidthMm, 'below', 2 * run, widthLimit),
  ];
}
