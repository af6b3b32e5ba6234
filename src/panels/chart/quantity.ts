import { displayForce, displayMoment } from '../../state/quantities';
import type { CurveSamples, HeadReading } from '../../state/reading';
import type { ChartQuantity, Settings } from '../../state/settings';

/** What the chart draws, and in which unit. */
export interface PlottedQuantity {
  readonly kind: ChartQuantity;
  /** Display units in one SI unit. */
  readonly factor: number;
  readonly unit: string;
  /**
   * The y axis never spans less than this to either side, in SI: a head whose force is a hundredth of a newton must
   * look flat. 1 N at the push rod; what that is elsewhere.
   */
  readonly floor: number;
}

const SMALLEST_FORCE_N = 1;
/** A ball 10 mm from the axis stands in where there is no arm. */
const USUAL_ARM = 0.01;

/**
 * The chosen quantity. Where there is no arm the moment stands in for what hangs on the rod; where the servo's arms are
 * not given, the slider for the servo.
 */
export function plottedQuantity(reading: HeadReading, settings: Settings): PlottedQuantity {
  const { units } = settings;
  const kind = possible(settings.chartQuantity, reading);
  if (kind === 'force' || kind === 'slider') {
    const { value, unit } = displayForce(1, units);
    return { kind, factor: value, unit, floor: SMALLEST_FORCE_N };
  }
  const arm = reading.linkage?.reach || USUAL_ARM;
  const { value, unit } = displayMoment(1, units);
  if (kind !== 'energy') return { kind, factor: value, unit, floor: SMALLEST_FORCE_N * arm };
  // A newton millimetre is a millijoule; ounce-force inches serve for energy too.
  const energyUnit = units.moment === 'N mm' ? 'mJ' : unit;
  return { kind, factor: value, unit: energyUnit, floor: (SMALLEST_FORCE_N * arm) / 2 };
}

function possible(wanted: ChartQuantity, { linkage }: HeadReading): ChartQuantity {
  if (wanted === 'moment' || wanted === 'energy') return wanted;
  if (!linkage) return 'moment';
  return wanted === 'servo' && !linkage.hasServo ? 'slider' : wanted;
}

/** It has poles where the arm goes over centre. */
export function hangsOnRod({ kind }: PlottedQuantity): boolean {
  return kind === 'force' || kind === 'slider' || kind === 'servo';
}

/** What turns a moment into the quantity at each sample; null where it is a moment or an energy itself. */
export function perMoment(
  curve: Omit<CurveSamples, 'pitchDeg'>,
  kind: ChartQuantity,
): Float64Array | null {
  switch (kind) {
    case 'force':
      return curve.forcePerMoment;
    case 'slider':
      return curve.sliderPerMoment;
    case 'servo':
      return curve.servoPerMoment;
    default:
      return null;
  }
}

/** The quantity's value at a pitch in display units; null over centre, out of reach. */
export function plottedValue(
  reading: HeadReading,
  quantity: PlottedQuantity,
  pitchDeg: number,
): number | null {
  const value = valueAt(reading, quantity.kind, pitchDeg);
  return value === null || Number.isNaN(value) ? null : quantity.factor * value;
}

function valueAt(reading: HeadReading, kind: ChartQuantity, pitchDeg: number): number | null {
  switch (kind) {
    case 'force':
      return reading.forceAt(pitchDeg);
    case 'slider':
      return reading.sliderAt(pitchDeg);
    case 'servo': {
      const servo = reading.servoAt(pitchDeg);
      return servo.kind === 'holds' ? servo.torque : null;
    }
    case 'moment':
      return reading.momentAt(pitchDeg);
    default:
      return reading.energyAt(pitchDeg);
  }
}

/** Half the width of the friction band at a pitch in display units; null where there is none. */
export function plottedFriction(
  reading: HeadReading,
  quantity: PlottedQuantity,
  pitchDeg: number,
): number | null {
  const { friction } = reading;
  if (quantity.kind === 'energy' || !friction.counted || !friction.known) return null;
  const moment = friction.at(pitchDeg);
  if (quantity.kind === 'moment') return quantity.factor * moment;
  // The same lever turns friction into force as turns the moment.
  const whole = valueAt(reading, quantity.kind, pitchDeg);
  const total = reading.momentAt(pitchDeg);
  const force = reading.forceOf(moment, pitchDeg);
  if (whole === null || force === null || Number.isNaN(whole)) return null;
  if (quantity.kind === 'force') return quantity.factor * Math.abs(force);
  return total === 0 ? null : quantity.factor * Math.abs((whole / total) * moment);
}
