import type { Design } from '../../design/design';
import { fail, type Result, succeed } from '../../engine/result';
import { allSteps, type JobProgress, type JobSteps } from '../job';
import { ToleranceRun } from './toleranceRun';
import { toleranceValues } from './tolerances';
import type { ToleranceFault, ToleranceResult } from './toleranceTypes';

export interface ToleranceAnswer {
  readonly outcome: Result<ToleranceResult, ToleranceFault>;
  /** How long it took, s. */
  readonly seconds: number;
}

/** Heads between two looks at the clock: some tens of milliseconds. */
const BATCH = 50;

/** A whole tolerance run of a design, as its section `tolerance` says. */
export function runTolerances(
  design: Design,
  onProgress: (progress: JobProgress) => void,
): ToleranceAnswer {
  return allSteps(toleranceSteps(design), onProgress);
}

/** The same in steps of some tens of milliseconds. */
export function* toleranceSteps(design: Design): JobSteps<ToleranceAnswer> {
  const began = performance.now();
  const seconds = () => (performance.now() - began) / 1000;
  const total = toleranceValues(design.tolerance).samples;
  const making = ToleranceRun.making(design);
  let step = making.next();
  for (; !step.done; step = making.next()) yield { done: 0, total };
  const made = step.value;
  if (!made.ok) return { outcome: fail(made.error), seconds: seconds() };
  const run = made.value;
  while (run.done < run.total) {
    run.step(BATCH);
    yield { done: run.done, total: run.total };
  }
  return { outcome: succeed(run.result()), seconds: seconds() };
}
