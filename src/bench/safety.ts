import type { BENCH_PLAN } from '../messages/en/benchPlan';

/** A text of the bench's plan, by key. */
export type PlanKey = keyof typeof BENCH_PLAN;

/** What is ticked before a run, in this order (common practice; the list of the trade, no source). */
export const SAFETY_STEPS = [
  'bench.safety.guard',
  'bench.safety.eyes',
  'bench.safety.plane',
  'bench.safety.bolt',
  'bench.safety.nut',
  'bench.safety.nothingLoose',
  'bench.safety.power',
  'bench.safety.slow',
  'bench.safety.stop',
  'bench.safety.inspect',
] as const satisfies readonly PlanKey[];

/** Said below the list. */
export const SAFETY_NOTE = 'bench.safety.note' satisfies PlanKey;
