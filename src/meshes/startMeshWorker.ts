import { workerAt } from '../worker/workerAt';
// oxlint-disable-next-line import/default -- made by the build
import address from './worker.ts?worker&url';

/** Starts the worker that reads one mesh file. */
export function startMeshWorker(): Worker {
  return workerAt('mesh', address);
}
