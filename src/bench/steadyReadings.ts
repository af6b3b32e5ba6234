import { findSteady } from '../engine/identify/pitchSteps';
import { metresFromMm, type Radians, radiansFromDegrees } from '../engine/units';
import { columnsOf, isTimeSeries } from './readings/series';
import type { Reading, Travel } from './readings/types';

/** A stretch counts from one second on; the half second after a step is settling (common practice). */
const SHORTEST = 1;
const SETTLING = 0.5;
/** Steps of pitch told apart, and of a scale in mm. */
const SMALLEST_PITCH = radiansFromDegrees(0.5);
const SMALLEST_SCALE = metresFromMm(0.1);

export interface SteadyReadings {
  readonly readings: readonly Reading[];
  /** Samples that the stretches rest on, and all there are. */
  readonly samples: number;
  readonly of: number;
  /** Samples of each reading, `to` not included. */
  readonly stretches: readonly { readonly from: number; readonly to: number }[];
}

/**
 * A logged series as one reading for each stretch in which the pitch (or the scale) stood still: medians of its samples, the
 * way of travel from the stretch before. Null where it is no series, or logs neither pitch nor scale; a series whose pitch
 * never rests gives no reading.
 */
export function steadyReadings(readings: readonly Reading[]): SteadyReadings | null {
  if (!isTimeSeries(readings)) return null;
  const columns = columnsOf(readings);
  const byPitch = columns.pitch.every((value) => !Number.isNaN(value));
  const value = byPitch ? columns.pitch : columns.scale;
  if (value.every(Number.isNaN)) return null;
  const stretches = findSteady(columns.time, value, {
    shortest: SHORTEST,
    smallest: byPitch ? SMALLEST_PITCH : SMALLEST_SCALE,
    settling: SETTLING,
  });
  let samples = 0;
  const steady = stretches.map(({ from, to, level }, k): Reading => {
    samples += to - from;
    const first = readings[from];
    const before = stretches[k - 1]?.level ?? level;
    const moved: Travel | null = level === before ? null : level > before ? 'up' : 'down';
    return {
      ...first,
      pitch: byPitch ? (level as Radians) : first.pitch,
      scale: byPitch ? first.scale : level,
      force: first.force === null ? null : median(columns.force.subarray(from, to)),
      moment: first.moment === null ? null : median(columns.moment.subarray(from, to)),
      // "up" by scale is not "up" by pitch where the scale runs the other way: only what the log says counts there.
      travel: first.travel ?? (byPitch ? moved : null),
    };
  });
  return { readings: steady, samples, of: readings.length, stretches };
}

/** Of the values that are there. */
export function median(values: Float64Array): number {
  const sorted = values.filter((value) => !Number.isNaN(value)).toSorted();
  return (sorted[(sorted.length - 1) >> 1] + sorted[sorted.length >> 1]) / 2;
}
