import { createJob, type Job, type JobWorker } from '../state/job';
import { IN_PLACE, type OfferRequest, type OfferResult, runOffer } from './offer';
import type { ReadingsFault } from './readings/fault';
import type { ReadingsPreview } from './readings/preview';
import type { ReadingsMapping, ReadOptions } from './readings/types';

/** A table that is looked at and not taken yet. */
export type Offered =
  | { readonly kind: 'reading'; readonly name: string; readonly done: number }
  | { readonly kind: 'refused'; readonly name: string; readonly fault: ReadingsFault }
  | { readonly kind: 'failed'; readonly name: string; readonly reason: string }
  | { readonly kind: 'ready'; readonly name: string; readonly preview: ReadingsPreview };

/** What a person says otherwise about the table that is looked at. */
export interface RereadChange {
  readonly mapping?: ReadingsMapping;
  readonly options?: ReadOptions;
}

/** Reads one table at a time: a short one at once, a long one in a worker. */
export function createReader(
  start: (() => JobWorker) | null,
  put: (offered: Offered | null) => void,
) {
  const job: Job<OfferRequest, OfferResult> | null = start && createJob(start);
  let latest: OfferRequest | null = null;
  const putResult = (name: string, result: OfferResult) =>
    put(
      result.ok
        ? { kind: 'ready', name, preview: result.value }
        : { kind: 'refused', name, fault: result.error },
    );
  job?.store.subscribe(({ job: now }) => {
    if (now.kind === 'done') putResult(now.request.name, now.result);
    if (now.kind === 'running')
      put({ kind: 'reading', name: now.request.name, done: now.progress.done });
    if (now.kind === 'failed' && latest)
      put({ kind: 'failed', name: latest.name, reason: now.reason });
  });
  function read(request: OfferRequest): void {
    latest = request;
    if (job && request.source.length > IN_PLACE) job.start(request);
    else {
      job?.clear();
      putResult(request.name, runOffer(request));
    }
  }
  return {
    read,
    again({ mapping, options }: RereadChange) {
      if (!latest) return;
      const choices = {
        ...latest.choices,
        ...(mapping && { mapping }),
        // Another delimiter makes other columns: a mapping of the old ones means nothing.
        ...(options && { options, mapping: null }),
      };
      read({ ...latest, choices });
    },
    drop() {
      latest = null;
      job?.clear();
      put(null);
    },
  };
}
