import type { Result } from '../engine/result';
import type { ReadingsFault } from './readings/fault';
import { type PreviewChoices, previewReadings, type ReadingsPreview } from './readings/preview';

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
export function runOffer(
  { source, choices }: OfferRequest,
  onProgress?: (progress: { readonly done: number; readonly total: number }) => void,
): OfferResult {
  return previewReadings(source, choices, (done) => onProgress?.({ done, total: 1 }));
}
