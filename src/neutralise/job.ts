import { holdLife } from '../worker/life';
import { turn } from '../worker/turn';

/** How far a job in a worker is. */
export interface JobProgress {
  readonly done: number;
  readonly total: number;
}

/**
 * A job in steps, the result at the end. After each step it says how far it is; a step should take some tens of milliseconds
 * at most, since only between two of them can the worker be ended at once.
 */
export type JobSteps<Result> = Generator<JobProgress, Result, void>;

/** Says how far a job is. */
export type Tell = (progress: JobProgress) => void;

export type JobReply<Result> =
  | { readonly kind: 'progress'; readonly progress: JobProgress }
  | { readonly kind: 'done'; readonly result: Result }
  | { readonly kind: 'failed'; readonly reason: string };

/** Tells of progress at most this often, ms. */
const TELL_EVERY = 80;
/** Time at a stretch, after which the thread does what waits, ms. */
const STRETCH = 100;

/** All steps at once. `onProgress` is called after each; throwing from it ends the job. */
export function allSteps<Result>(steps: JobSteps<Result>, onProgress: Tell = () => {}): Result {
  for (let step = steps.next(); ; step = steps.next()) {
    if (step.done) return step.value;
    onProgress(step.value);
  }
}

/** What the inside of a worker does: waits for one request, runs it, says how far it is. The page ends the worker. */
export function serveJob<Request, Result>(
  run: (request: Request, tell: Tell) => JobSteps<Result>,
): void {
  const lives = holdLife();
  self.addEventListener('message', async ({ data: request }: MessageEvent<Request>) => {
    await lives;
    // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a worker has no origin to name
    const reply = (message: JobReply<Result>) => self.postMessage(message);
    let told = -Infinity;
    const tell: Tell = (progress) => {
      const now = performance.now();
      if (now - told < TELL_EVERY) return;
      told = now;
      reply({ kind: 'progress', progress });
    };
    try {
      reply({ kind: 'done', result: await withRests(run(request, tell), tell) });
    } catch (thrown) {
      reply({ kind: 'failed', reason: thrown instanceof Error ? thrown.message : String(thrown) });
    }
  });
}

async function withRests<Result>(steps: JobSteps<Result>, tell: Tell): Promise<Result> {
  let began = performance.now();
  for (let step = steps.next(); ; step = steps.next()) {
    if (step.done) return step.value;
    tell(step.value);
    if (performance.now() - began < STRETCH) continue;
    await turn();
    began = performance.now();
  }
}
