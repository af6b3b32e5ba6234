import type { BenchPlanRecord, BenchRecord } from '../design/sections/bench';
import type { BenchState } from './deskTypes';
import { fitOf, recordedFit } from './fitChoice';
import type { BenchRun } from './readings/benchSection';
import { unitFromText } from './readings/unitNames';
import { SAFETY_STEPS } from './safety';

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
  | 'plan'
  | 'ticked'
  | 'tickedOn'
>;

/** Half an ounce-force, a usual step (common practice, trade facts), N. */
export const USUAL_STEP_N = 0.14;

/** What a design keeps of the bench; undefined where all is as it was at first. */
export function recordOf(state: Kept): BenchRecord | undefined {
  const { runs, pairs, place, pullsAlong, gaugeStepN, gaugeLimitN, scaleUnit, calibration } = state;
  const plan = planOf(state);
  const fit = recordedFit(state.fit);
  const record: BenchRecord = {
    place,
    ...(pullsAlong === 1 ? {} : { pullsAlong }),
    gaugeStepN,
    ...(gaugeLimitN === null ? {} : { gaugeLimitN }),
    ...(state.fit.noiseN === null ? {} : { gaugeNoiseN: state.fit.noiseN }),
    ...(pairs.length === 0 ? {} : { calibration: { kind: calibration, scaleUnit, pairs } }),
    ...(fit === undefined ? {} : { fit }),
    ...(Object.keys(plan).length === 0 ? {} : { plan }),
    ...(runs.length === 0 ? {} : { runs }),
  };
  const isAsAtFirst =
    place === 'rod' && gaugeStepN === USUAL_STEP_N && Object.keys(record).length === 2;
  return isAsAtFirst ? undefined : record;
}

function planOf({ plan, ticked, tickedOn }: Kept): BenchPlanRecord {
  const said = Object.entries(plan).filter(([, value]) => value !== undefined);
  return {
    ...(Object.fromEntries(said) as BenchPlanRecord),
    ...(ticked.length === 0 ? {} : { ticked, ...(tickedOn === '' ? {} : { tickedOn }) }),
  };
}

/** The way back; what the record does not say is as at first, for what it does not hold at all `standard`. */
export function keptOf(record: BenchRecord | undefined, standard: Kept): Kept {
  const { place, pullsAlong, gaugeStepN, gaugeLimitN, gaugeNoiseN, calibration, runs } =
    record ?? {};
  const { ticked = [], tickedOn = '', ...plan } = record?.plan ?? {};
  return {
    runs: (runs ?? []).map(runOf),
    place: place ?? 'rod',
    pullsAlong: pullsAlong ?? 1,
    gaugeStepN: gaugeStepN ?? USUAL_STEP_N,
    gaugeLimitN: gaugeLimitN ?? null,
    pairs: calibration?.pairs ?? [],
    scaleUnit: calibration?.scaleUnit ?? standard.scaleUnit,
    calibration: calibration?.kind ?? standard.calibration,
    fit: fitOf(record?.fit, gaugeNoiseN),
    plan,
    ticked: SAFETY_STEPS.filter((key) => ticked.includes(key)),
    tickedOn,
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
