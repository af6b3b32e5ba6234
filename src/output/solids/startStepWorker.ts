import { workerAt } from '../../worker/workerAt';
// oxlint-disable-next-line import/default -- made by the build
import address from './stepWorker.ts?worker&url';

/** Starts the worker that holds the CAD kernel. */
export function startStepWorker(): Worker {
  return workerAt('step', address);
}
