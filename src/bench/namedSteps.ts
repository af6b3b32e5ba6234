import { findSteady, type SteadyStretch } from '../engine/identify/pitchSteps';
import { radiansFromDegrees } from '../engine/units';
import type { BenchPlan } from './plan';
import type { BenchStep } from './readings/benchSection';
import { columnsOf, isTimeSeries, type ReadingColumns } from './readings/series';
import type { Reading, Travel } from './readings/types';
import { median, type SteadyReadings } from './steadyReadings';

/*
 * Pitch steps of a log that has neither pitch nor scale. The force tells where the pitch was changed; which pitch it was only
 * the person knows. Two pitches at which the gauge reads the same cannot be told apart by it.
 */

export interface StepSearch {
  /** Smallest jump of the reading that counts, N (N m of a log of moments). */
  readonly smallest: number;
  /** Shortest stretch that counts, s, and what is cut off after a jump. */
  readonly shortest: number;
  readonly settling: number;
}

/** A log over time without pitch and scale: its steps have to be named. */
export function lacksPlace(readings: readonly Reading[]): boolean {
  return (
    readings.every(({ pitch, scale }) => pitch === null && scale === null) && isTimeSeries(readings)
  );
}

/** What is drawn and searched: seconds from the first sample on, and the force (or moment) of each. */
export function seriesOf(readings: readonly Reading[]): {
  readonly time: Float64Array;
  readonly value: Float64Array;
} {
  const columns = columnsOf(readings);
  const first = columns.time[0] ?? 0;
  return { time: columns.time.map((time) => time - first), value: loadOf(columns) };
}

function loadOf({ force, moment }: ReadingColumns): Float64Array {
  return force.some((value) => !Number.isNaN(value)) ? force : moment;
}

/** Stretches in which the reading stood still, in their order. */
export function findLoadSteps(readings: readonly Reading[], search: StepSearch): SteadyStretch[] {
  const { time, value } = seriesOf(readings);
  return findSteady(time, value, search);
}

/**
 * One reading a named step: medians of its samples at the pitch that was given. A step that reaches beyond the log gives
 * none: the table was changed under it.
 */
export function namedReadings(
  readings: readonly Reading[],
  steps: readonly BenchStep[],
): SteadyReadings {
  const columns = columnsOf(readings);
  const whole = steps.filter(({ from, to }) => from < to && to <= readings.length);
  const found = whole.map(({ from, to, pitchDeg, travel }): Reading => {
    const first = readings[from];
    return {
      ...first,
      pitch: radiansFromDegrees(pitchDeg),
      force: first.force === null ? null : median(columns.force.subarray(from, to)),
      moment: first.moment === null ? null : median(columns.moment.subarray(from, to)),
      travel: travel ?? first.travel,
    };
  });
  const samples = whole.reduce((sum, { from, to }) => sum + to - from, 0);
  return { readings: found, samples, of: readings.length, stretches: whole };
}

/** A pitch and the way in which it was come to. */
export interface NamedPitch {
  readonly pitchDeg: number;
  readonly travel: Travel | null;
}

/**
 * The plan's pitches in the order in which the control goes through them, upward and down again; the highest is read twice
 * where that makes the count, else once. Null where the count fits neither both ways nor one.
 */
export function pitchesForSteps(
  count: number,
  { pitchesDeg }: Pick<BenchPlan, 'pitchesDeg'>,
): readonly NamedPitch[] | null {
  const up = pitchesDeg.map((pitchDeg) => ({ pitchDeg, travel: 'up' as const }));
  const down = pitchesDeg.toReversed().map((pitchDeg) => ({ pitchDeg, travel: 'down' as const }));
  if (count === up.length) return up;
  if (count === 2 * up.length) return [...up, ...down];
  return count === 2 * up.length - 1 ? [...up, ...down.slice(1)] : null;
}

/**
 * The way in which each pitch was come to from the one before; where it is the same pitch, the way in which it goes on (the
 * control turned round there). Of the first nothing tells.
 */
export function travelsOf(pitchesDeg: readonly number[]): (Travel | null)[] {
  const way = (step: number): Travel | null => (step === 0 ? null : step > 0 ? 'up' : 'down');
  return pitchesDeg.map((deg, k) => {
    if (k === 0) return null;
    const next = pitchesDeg[k + 1] ?? deg;
    return way(deg - pitchesDeg[k - 1]) ?? way(next - deg);
  });
}
