import { checkNumbers } from './checkMeasured';
import { checkNumber } from './checkNumber';
import { type DesignFault, fault } from './fault';
import { MAX_ID, MAX_NAME, MAX_NOTE, type NumberLimits } from './limits';
import {
  BENCH_FIT_LIMITS,
  BENCH_NUMBER_LIMITS,
  BENCH_PAIR_LIMITS,
  BENCH_PLAN_LIMITS,
  BENCH_ROW_LIMITS,
  BENCH_RUN_LIMITS,
  BENCH_STEP_LIMITS,
  type BenchPlanRecord,
  type BenchRecord,
  type BenchRunRecord,
  type BenchStepRecord,
  type BenchTableRecord,
  MAX_BENCH_PAIRS,
  MAX_BENCH_ROWS,
  MAX_BENCH_RUNS,
  MAX_BENCH_STEPS,
  MAX_BENCH_TEXT,
  MAX_PLAN_PITCHES,
  MAX_PLAN_SPEEDS,
} from './sections/bench';

/**
 * The first fault of what the bench keeps, or null: counts, texts, ids, numbers, that a run has a table or rows and not both,
 * that a row has a place, and the length of all tables. `longTexts` is what the parts' own long texts fill of a file already.
 */
export function checkBench(
  bench: BenchRecord | undefined,
  longTexts = 0,
  maxLongText = Number.POSITIVE_INFINITY,
): DesignFault | null {
  if (!bench) return null;
  const { runs = [], calibration, plan, fit } = bench;
  const found =
    checkNumbers(bench, BENCH_NUMBER_LIMITS, 'bench') ??
    checkPairs(calibration) ??
    checkPlan(plan) ??
    (fit ? checkNumbers(fit, BENCH_FIT_LIMITS, 'bench.fit') : null);
  if (found) return found;
  if (runs.length > MAX_BENCH_RUNS) {
    return fault('bench.runs', { code: 'tooMany', count: runs.length, limit: MAX_BENCH_RUNS });
  }
  const first = new Map<string, number>();
  let length = 0;
  for (let i = 0; i < runs.length; i++) {
    const path = `bench.runs[${i}]`;
    const before = first.get(runs[i].id);
    if (before !== undefined) {
      return fault(`${path}.id`, { code: 'repeatedId', id: runs[i].id, first: before });
    }
    first.set(runs[i].id, i);
    const wrong = checkRun(runs[i], path);
    if (wrong) return wrong;
    length += tableLength(runs[i].table);
  }
  const limit = Math.min(MAX_BENCH_TEXT, maxLongText - longTexts);
  return length > limit ? fault('bench.runs', { code: 'tooLong', length, limit }) : null;
}

function checkPairs(calibration: BenchRecord['calibration']): DesignFault | null {
  const pairs = calibration?.pairs ?? [];
  const path = 'bench.calibration.pairs';
  if (pairs.length > MAX_BENCH_PAIRS) {
    return fault(path, { code: 'tooMany', count: pairs.length, limit: MAX_BENCH_PAIRS });
  }
  for (let i = 0; i < pairs.length; i++) {
    const found = checkNumbers(pairs[i], BENCH_PAIR_LIMITS, `${path}[${i}]`);
    if (found) return found;
  }
  return null;
}

function checkPlan(plan: BenchPlanRecord = {}): DesignFault | null {
  const { settleSeconds } = BENCH_PLAN_LIMITS;
  return (
    checkNumbers(plan, { settleSeconds }, 'bench.plan') ??
    checkList(plan, 'pitchesDeg', BENCH_PLAN_LIMITS.pitchDeg, MAX_PLAN_PITCHES) ??
    checkList(plan, 'speedsRpm', BENCH_PLAN_LIMITS.speedRpm, MAX_PLAN_SPEEDS)
  );
}

/** A list of the plan: something in it, not too much, each number within its limits. */
function checkList(
  plan: BenchPlanRecord,
  name: 'pitchesDeg' | 'speedsRpm',
  limits: NumberLimits,
  limit: number,
): DesignFault | null {
  const list = plan[name];
  if (!list) return null;
  const path = `bench.plan.${name}`;
  if (list.length === 0) return fault(path, { code: 'missing' });
  if (list.length > limit) return fault(path, { code: 'tooMany', count: list.length, limit });
  for (let i = 0; i < list.length; i++) {
    const found = checkNumber(list[i], limits, `${path}[${i}]`);
    if (found) return found;
  }
  return null;
}

function checkSteps(steps: readonly BenchStepRecord[], path: string): DesignFault | null {
  if (steps.length > MAX_BENCH_STEPS) {
    return fault(path, { code: 'tooMany', count: steps.length, limit: MAX_BENCH_STEPS });
  }
  for (let i = 0; i < steps.length; i++) {
    const here = `${path}[${i}]`;
    const found = checkNumbers(steps[i], BENCH_STEP_LIMITS, here);
    if (found) return found;
    if (steps[i].to <= steps[i].from) {
      return fault(`${here}.to`, { code: 'unsound', detail: 'a step ends after it begins' });
    }
  }
  return null;
}

function checkRun(run: BenchRunRecord, path: string): DesignFault | null {
  if (run.id === '') return fault(`${path}.id`, { code: 'emptyText' });
  for (const [key, limit] of [
    ['id', MAX_ID],
    ['tryOut', MAX_ID],
    ['name', MAX_NAME],
    ['fitted', MAX_NAME],
    ['gauge', MAX_NAME],
    ['date', MAX_NAME],
    ['note', MAX_NOTE],
  ] as const) {
    const length = run[key]?.length ?? 0;
    if (length > limit) return fault(`${path}.${key}`, { code: 'textTooLong', length, limit });
  }
  const found = checkNumbers(run, BENCH_RUN_LIMITS, path);
  if (found) return found;
  const { table, rows } = run;
  if (table && rows) {
    const detail = 'a run has a table or rows typed by hand, never both';
    return fault(`${path}.rows`, { code: 'unsound', detail });
  }
  return checkRows(rows ?? [], `${path}.rows`) ?? checkSteps(run.steps ?? [], `${path}.steps`);
}

function checkRows(rows: NonNullable<BenchRunRecord['rows']>, path: string): DesignFault | null {
  if (rows.length > MAX_BENCH_ROWS) {
    return fault(path, { code: 'tooMany', count: rows.length, limit: MAX_BENCH_ROWS });
  }
  for (let i = 0; i < rows.length; i++) {
    const here = `${path}[${i}]`;
    const found = checkNumbers(rows[i], BENCH_ROW_LIMITS, here);
    if (found) return found;
    const { pitchDeg, scaleMm, note } = rows[i];
    const length = note?.length ?? 0;
    if (length > MAX_NOTE) {
      return fault(`${here}.note`, { code: 'textTooLong', length, limit: MAX_NOTE });
    }
    if (pitchDeg === undefined && scaleMm === undefined) {
      return fault(`${here}.pitchDeg`, { code: 'missing' });
    }
  }
  return null;
}

const lengths = new WeakMap<BenchTableRecord, number>();

/** As a file has it; worked out once a table. */
function tableLength(table: BenchTableRecord | undefined): number {
  if (!table) return 0;
  const known = lengths.get(table);
  if (known !== undefined) return known;
  const { length } = JSON.stringify(table.text);
  lengths.set(table, length);
  return length;
}
