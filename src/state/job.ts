import { createStore, type StoreApi } from 'zustand/vanilla';
import { t } from '../messages';
import type { JobProgress, JobReply } from '../neutralise/job';
import { WORKER_ENDED } from '../worker/life';

/** A job in a worker as the page sees it. The result says which request it answers. */
export type JobState<Request, Result> =
  | { readonly kind: 'idle' }
  | { readonly kind: 'running'; readonly request: Request; readonly progress: JobProgress }
  | { readonly kind: 'cancelled'; readonly progress: JobProgress }
  | { readonly kind: 'failed'; readonly reason: string }
  | { readonly kind: 'done'; readonly request: Request; readonly result: Result };

/** What a job asks of a worker, which answers with `JobReply` messages. */
export type JobWorker = Pick<Worker, 'addEventListener' | 'postMessage' | 'terminate'>;

/**
 * One job at a time; starting another ends the one under way. A worker that is ended from outside is started anew, once;
 * the same request gives the same result.
 */
export interface Job<Request, Result> {
  readonly store: StoreApi<{ readonly job: JobState<Request, Result> }>;
  start(request: Request): void;
  /** Ends the job under way; what was found so far is dropped. */
  cancel(): void;
  /** Forgets the result too. */
  clear(): void;
}

export function createJob<Request, Result>(startWorker: () => JobWorker): Job<Request, Result> {
  type State = JobState<Request, Result>;
  const store = createStore<{ readonly job: State }>(() => ({ job: { kind: 'idle' } }));
  let worker: JobWorker | null = null;

  function end(): void {
    worker?.terminate();
    worker = null;
  }
  const put = (job: State) => store.setState({ job });

  function begin(request: Request, isAgain: boolean): void {
    end();
    put({ kind: 'running', request, progress: { done: 0, total: 0 } });
    const own = startWorker();
    worker = own;
    const finish = (job: State) => {
      if (worker !== own) return;
      end();
      put(job);
    };
    own.addEventListener('message', ({ data }: MessageEvent<JobReply<Result>>) => {
      if (worker !== own) return;
      if (data.kind === 'done') finish({ kind: 'done', request, result: data.result });
      else if (data.kind === 'failed') finish({ kind: 'failed', reason: data.reason });
      else put({ kind: 'running', request, progress: data.progress });
    });
    own.addEventListener('error', ({ message }) => {
      if (worker !== own) return;
      if (message === WORKER_ENDED && !isAgain) begin(request, true);
      else finish({ kind: 'failed', reason: workerFault(message) });
    });
    // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a worker has no origin to name
    own.postMessage(request);
  }

  return {
    store,
    start: (request) => begin(request, false),
    cancel() {
      const { job } = store.getState();
      if (job.kind !== 'running') return;
      end();
      put({ kind: 'cancelled', progress: job.progress });
    },
    clear() {
      end();
      put({ kind: 'idle' });
    },
  };
}

/** What a person reads about a worker's `error` event. */
export function workerFault(message: string): string {
  if (message === WORKER_ENDED) return t('app.workerEnded');
  return message === '' ? t('app.workerFailed') : message;
}
