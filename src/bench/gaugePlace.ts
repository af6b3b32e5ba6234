import { metresFromMm } from '../engine/units';
import type { BenchState } from './deskTypes';
import type { GaugePlace } from './gaugeHead';

/** An arm of a metre reads the moment itself: for a plan before any arm is chosen. */
export const PLAN_ARM_MM = 1000;

/** Where the gauge is; null where it pulls at an arm of which nobody says how long it is. */
export function gaugePlace(
  { place, pullsAlong }: Pick<BenchState, 'place' | 'pullsAlong'>,
  armMm: number | undefined,
): GaugePlace | null {
  if (place === 'slider') return { kind: 'slider', pullsAlong };
  if (place === 'rod') return { kind: 'rod' };
  return armMm === undefined ? null : { kind: 'arm', arm: metresFromMm(armMm) };
}
