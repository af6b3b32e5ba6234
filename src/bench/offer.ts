import type { Result } from '../engine/result';
import type { JobSteps, Tell } from '../neutralise/job';
import type { ReadingsFault } from './readings/fault';
import {
  type PreviewChoices,
  previewReadings,
  previewSteps,
  type ReadingsPreview,
} from './readings/preview';

/** What a worker that reads tables is asked. */
export interface OfferRequest {
  readonly name: string;
  /** A file's bytes, or a pasted text. */
  readonly source: Uint8Array | string;
  readonly choices: PreviewChoices;
}

export type OfferResult = Result<ReadingsPreview, ReadingsFault>;

/** Bytes or characters that are read where the page runs; more go to a worker. At most some tens of milliseconds. */
export const IN_PLACE = 200_000;

/** Reads a table for the eye: nothing is kept of it yet. */
export function runOffer({ source, choices }: OfferRequest): OfferResult {
  return previewReadings(source, choices);
}

/** The same in steps, for a worker. */
export function* offerSteps({ source, choices }: OfferRequest, tell: Tell): JobSteps<OfferResult> {
  const steps = previewSteps(source, choices, (done) => tell({ done, total: 1 }));
  for (let step = steps.next(); ; step = steps.next()) {
    if (step.done) return step.value;
    yield { done: step.value, total: 1 };
  }
}
