import { workerAt } from '../worker/workerAt';
// oxlint-disable-next-line import/default -- made by the build
import offerAddress from './offerWorker.ts?worker&url';

/** Starts the worker that reads long tables. */
export function startOfferWorker(): Worker {
  return workerAt('readings', offerAddress);
}
