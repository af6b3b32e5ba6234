import { type Result, succeed } from '../engine/result';
import { namedReadings } from './namedSteps';
import type { BenchRun, BenchStep, BenchTable } from './readings/benchSection';
import type { ReadingsFault } from './readings/fault';
import type { Reading } from './readings/types';
import { readingsOfRun } from './runs';
import { type SteadyReadings, steadyReadings } from './steadyReadings';

type RunRead = Result<readonly Reading[], readonly ReadingsFault[]>;

const ofTable = new WeakMap<BenchTable, RunRead>();

/** The readings of a run as `readingsOfRun` gives them; a table is read once as long as it is the same. */
export function runReadings(run: BenchRun): RunRead {
  if (!run.table) return readingsOfRun(run);
  const known = ofTable.get(run.table);
  if (known) return known;
  const read = readingsOfRun(run);
  ofTable.set(run.table, read);
  return read;
}

const ofSteps = new WeakMap<readonly BenchStep[], SteadyReadings>();
const ofSeries = new WeakMap<readonly Reading[], SteadyReadings | null>();

/** The same with a logged series as one reading a pitch step: what is shown, set aside and fitted. */
export function countedReadings(run: BenchRun): {
  readonly readings: RunRead;
  /** Null: no series. */
  readonly steady: SteadyReadings | null;
} {
  const read = runReadings(run);
  if (!read.ok) return { readings: read, steady: null };
  if (run.steps) {
    const known = ofSteps.get(run.steps);
    const named = known ?? namedReadings(read.value, run.steps);
    ofSteps.set(run.steps, named);
    return { readings: succeed(named.readings), steady: named };
  }
  let steady = ofSeries.get(read.value);
  if (steady === undefined) {
    steady = steadyReadings(read.value);
    ofSeries.set(read.value, steady);
  }
  return { readings: steady ? succeed(steady.readings) : read, steady };
}
