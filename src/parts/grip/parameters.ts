import {
  below,
  densityKgM3,
  lengthMm,
  type ParameterSet,
  type Problem,
  type ValuesOf,
} from '../contract';
import { demand } from '../rules';

/** Defaults: an invented nylon grip of a 260 mm rotor. Stations count outboard from the shaft. */
export const gripParameters = {
  barrelStartMm: lengthMm({
    label: 'Barrel start',
    help: 'Station of the inboard end of the barrel, from the shaft.',
    default: 10,
    min: 0,
    max: 1000,
  }),
  barrelEndMm: lengthMm({
    label: 'Barrel end',
    help: 'Station of the outboard end of the barrel, where the web begins.',
    default: 25,
    min: 0.5,
    max: 1500,
  }),
  barrelDiameterMm: lengthMm({
    label: 'Barrel diameter',
    help: 'Outer diameter of the barrel about the feathering axis.',
    default: 11,
    min: 0.5,
    max: 500,
  }),
  barrelBoreMm: lengthMm({
    label: 'Barrel bore',
    help: 'Diameter of the bore for the bearings; 0 for a solid barrel.',
    default: 8,
    min: 0,
    max: 490,
  }),
  webThicknessMm: lengthMm({
    label: 'Web thickness',
    help: 'Material between the barrel and the bottom of the blade slot, along the feathering axis.',
    default: 3,
    min: 0.1,
    max: 300,
  }),
  boltStationMm: lengthMm({
    label: 'Bolt station',
    help: 'Distance of the bolt axis from the shaft.',
    default: 38,
    min: 1,
    max: 2000,
  }),
  forkWidthMm: lengthMm({
    label: 'Fork width',
    help: 'Width of fork and web along the chord; the outboard end is round about the bolt.',
    default: 9,
    min: 0.5,
    max: 500,
  }),
  slotHeightMm: lengthMm({
    label: 'Slot height',
    help: 'Distance between the cheeks, where the blade root goes.',
    default: 5,
    min: 0.1,
    max: 300,
  }),
  cheekThicknessMm: lengthMm({
    label: 'Cheek thickness',
    help: 'Thickness of each cheek, above and below the slot.',
    default: 2.8,
    min: 0.1,
    max: 200,
  }),
  boltHoleMm: lengthMm({
    label: 'Bolt hole',
    help: 'Diameter of the hole through both cheeks.',
    default: 3.1,
    min: 0.3,
    max: 150,
  }),
  armSeatMm: lengthMm({
    label: 'Arm station',
    help: 'Station on the barrel at which the pitch arm sits.',
    default: 20,
    min: 0,
    max: 1500,
  }),
  densityKgM3: densityKgM3(1140),
} as const satisfies ParameterSet;

export type GripValues = ValuesOf<typeof gripParameters>;

export function gripProblems(values: GripValues): Problem[] {
  const { barrelStartMm, barrelEndMm, armSeatMm } = values;
  const slotBottom = barrelEndMm + values.webThicknessMm;
  return [
    ...below(values, 'barrelStartMm', 'barrelEndMm'),
    ...below(values, 'barrelBoreMm', 'barrelDiameterMm'),
    ...below(values, 'boltHoleMm', 'forkWidthMm'),
    ...demand(
      'boltStationMm',
      values.boltStationMm,
      'above',
      slotBottom + values.boltHoleMm / 2,
      'the bottom of the slot and half the bolt hole',
    ),
    ...demand('armSeatMm', armSeatMm, 'atLeast', barrelStartMm, 'barrelStartMm'),
    ...demand('armSeatMm', armSeatMm, 'atMost', barrelEndMm, 'barrelEndMm'),
  ];
}
