import type { Design } from '../../design/design';
import { fail, type Result, succeed } from '../../engine/result';
import type { JobProgress } from '../job';
import { ToleranceRun } from './toleranceRun';
import type { ToleranceFault, ToleranceResult } from './toleranceTypes';

export interface ToleranceAnswer {
  readonly outcome: Result<ToleranceResult, ToleranceFault>;
  /** How long it took, s. */
  readonly seconds: number;
}

/** Heads between two looks at the clock: some tens of milliseconds. */
const BATCH = 100;

/** A whole tolerance run of a design, as its section `tolerance` says. */
export function runTolerances(
  design: Design,
  onProgress: (progress: JobProgress) => void,
): ToleranceAnswer {
  const began = performance.now();
  const seconds = () => (performance.now() - began) / 1000;
  const made = ToleranceRun.of(design);
  if (!made.ok) return { outcome: fail(made.error), seconds: seconds() };
  const run = made.value;
  while (run.done < run.total) {
    run.step(BATCH);
    onProgress({ done: run.done, total: run.total });
  }
  return { outcome: succeed(run.result()), seconds: seconds() };
}
