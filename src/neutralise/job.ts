import { holdLife } from '../worker/life';

/** How far a job in a worker is. */
export interface JobProgress {
  readonly done: number;
  readonly total: number;
}

export type JobReply<Result> =
  | { readonly kind: 'progress'; readonly progress: JobProgress }
  | { readonly kind: 'done'; readonly result: Result }
  | { readonly kind: 'failed'; readonly reason: string };

/** Tells of progress at most this often, ms. */
const TELL_EVERY = 80;

/** What the inside of a worker does: waits for one request, runs it, says how far it is. The page ends the worker. */
export function serveJob<Request, Result>(
  run: (request: Request, onProgress: (progress: JobProgress) => void) => Result,
): void {
  const lives = holdLife();
  self.addEventListener('message', async ({ data: request }: MessageEvent<Request>) => {
    await lives;
    // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a worker has no origin to name
    const reply = (message: JobReply<Result>) => self.postMessage(message);
    let last = -Infinity;
    try {
      const result = run(request, (progress) => {
        const now = performance.now();
        if (now - last < TELL_EVERY) return;
        last = now;
        reply({ kind: 'progress', progress });
      });
      reply({ kind: 'done', result });
    } catch (thrown) {
      reply({ kind: 'failed', reason: thrown instanceof Error ? thrown.message : String(thrown) });
    }
  });
}
