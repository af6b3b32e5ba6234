import type { BenchRecord } from '../design/sections/bench';
import type { BenchState } from './deskTypes';
import type { BenchRun } from './readings/benchSection';
import { unitFromText } from './readings/unitNames';

/** What of the desk a design keeps. */
type Kept = Pick<
  BenchState,
  | 'runs'
  | 'place'
  | 'pullsAlong'
  | 'gaugeStepN'
  | 'gaugeLimitN'
  | 'pairs'
  | 'scaleUnit'
  | 'calibration'
  | 'fit'
>;

/** What a design keeps of the bench; undefined where nothing was measured. */
export function recordOf(state: Kept): BenchRecord | undefined {
  const { runs, pairs, place, pullsAlong, gaugeStepN, gaugeLimitN, scaleUnit, calibration, fit } =
    state;
  if (runs.length === 0 && pairs.length === 0) return undefined;
  return {
    place,
    ...(pullsAlong === 1 ? {} : { pullsAlong }),
    gaugeStepN,
    ...(gaugeLimitN === null ? {} : { gaugeLimitN }),
    ...(fit.noiseN === null ? {} : { gaugeNoiseN: fit.noiseN }),
    ...(pairs.length === 0 ? {} : { calibration: { kind: calibration, scaleUnit, pairs } }),
    ...(runs.length === 0 ? {} : { runs }),
  };
}

/** The way back; what the record does not say is as in `standard`. */
export function keptOf(record: BenchRecord | undefined, standard: Kept): Kept {
  const { place, pullsAlong, gaugeStepN, gaugeLimitN, gaugeNoiseN, calibration, runs } =
    record ?? {};
  return {
    runs: (runs ?? []).map(runOf),
    place: place ?? standard.place,
    pullsAlong: pullsAlong ?? 1,
    gaugeStepN: gaugeStepN ?? standard.gaugeStepN,
    gaugeLimitN: gaugeLimitN ?? null,
    pairs: calibration?.pairs ?? [],
    scaleUnit: calibration?.scaleUnit ?? standard.scaleUnit,
    calibration: calibration?.kind ?? standard.calibration,
    fit: { ...standard.fit, noiseN: gaugeNoiseN ?? null },
  };
}

/** A unit that this program does not know is none: the column then says that it has none. */
function runOf(run: NonNullable<BenchRecord['runs']>[number]): BenchRun {
  const { table, ...rest } = run;
  if (!table) return rest;
  const columns = table.columns.map((column) => ({
    ...column,
    unit: column.unit === null ? null : unitFromText(column.unit),
  }));
  return { ...rest, table: { ...table, columns } };
}
