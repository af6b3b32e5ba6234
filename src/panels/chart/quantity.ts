import { displayForce, displayMoment } from '../../state/quantities';
import type { HeadReading } from '../../state/reading';
import type { ChartQuantity, Settings } from '../../state/settings';

/** What the chart draws, and in which unit. */
export interface PlottedQuantity {
  readonly kind: ChartQuantity;
  /** Display units in one SI unit. */
  readonly factor: number;
  readonly unit: string;
  /**
   * The y axis never spans less than this to either side, in SI: a head whose force is a hundredth of a newton must
   * look flat. 1 N at the push rod; the moment that makes it there.
   */
  readonly floor: number;
}

const SMALLEST_FORCE_N = 1;
/** A ball 10 mm from the axis stands in where there is no arm. */
const USUAL_ARM = 0.01;

/** The chosen quantity; the moment in place of the force where there is no arm. */
export function plottedQuantity(reading: HeadReading, settings: Settings): PlottedQuantity {
  const { units, chartQuantity } = settings;
  const kind = chartQuantity === 'force' && !reading.linkage ? 'moment' : chartQuantity;
  if (kind === 'force') {
    const { value, unit } = displayForce(1, units);
    return { kind, factor: value, unit, floor: SMALLEST_FORCE_N };
  }
  const arm = reading.linkage?.reach || USUAL_ARM;
  const { value, unit } = displayMoment(1, units);
  if (kind === 'moment') return { kind, factor: value, unit, floor: SMALLEST_FORCE_N * arm };
  // A newton millimetre is a millijoule; ounce-force inches serve for energy too.
  const energyUnit = units.moment === 'N mm' ? 'mJ' : unit;
  return { kind, factor: value, unit: energyUnit, floor: (SMALLEST_FORCE_N * arm) / 2 };
}

/** The quantity's value at a pitch in display units; null over centre. */
export function plottedValue(
  reading: HeadReading,
  quantity: PlottedQuantity,
  pitchDeg: number,
): number | null {
  if (quantity.kind === 'moment') return quantity.factor * reading.momentAt(pitchDeg);
  if (quantity.kind === 'energy') return quantity.factor * reading.energyAt(pitchDeg);
  const force = reading.forceAt(pitchDeg);
  return force === null ? null : quantity.factor * force;
}
