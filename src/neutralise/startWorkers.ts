import { workerAt } from '../worker/workerAt';
// oxlint-disable-next-line import/default -- made by the build
import slopeAddress from './closeness/slopeWorker.ts?worker&url';
// oxlint-disable-next-line import/default -- made by the build
import toleranceAddress from './closeness/toleranceWorker.ts?worker&url';
// oxlint-disable-next-line import/default -- made by the build
import familyAddress from './familyWorker.ts?worker&url';
// oxlint-disable-next-line import/default -- made by the build
import searchAddress from './searchWorker.ts?worker&url';

/** Starts the worker that searches. */
export function startSearchWorker(): Worker {
  return workerAt('search', searchAddress);
}

/** Starts the worker that works out a family of solutions. */
export function startFamilyWorker(): Worker {
  return workerAt('family', familyAddress);
}

/** Starts the worker that differentiates a head by its numbers. */
export function startSlopeWorker(): Worker {
  return workerAt('slope', slopeAddress);
}

/** Starts the worker that makes up heads within their tolerances. */
export function startToleranceWorker(): Worker {
  return workerAt('tolerance', toleranceAddress);
}
