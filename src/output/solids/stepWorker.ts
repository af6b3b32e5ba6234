import type { JobReply } from '../../neutralise/job';
import { holdLife } from '../../worker/life';
import { makeFunctionsPlainly } from '../../worker/plainFunctions';
import { turn } from '../../worker/turn';
import { stepFile } from './stepBodies';
import { loadStepKernel } from './stepKernel';
import type { StepFile, StepRequest } from './stepTypes';

const lives = holdLife();
// Before the kernel is loaded, whose loader would have text evaluated.
makeFunctionsPlainly();

/** Makes one STEP file and says how far it is; loading the kernel counts as one part. The page ends the worker. */
self.addEventListener('message', async ({ data: request }: MessageEvent<StepRequest>) => {
  await lives;
  // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a worker has no origin to name
  const reply = (message: JobReply<StepFile>) => self.postMessage(message);
  try {
    reply({ kind: 'progress', progress: { done: 0, total: request.bodies.length + 2 } });
    await loadStepKernel();
    const tell = (done: number, total: number) =>
      reply({ kind: 'progress', progress: { done: done + 1, total: total + 1 } });
    const result = await stepFile(request, tell, turn);
    reply({ kind: 'done', result });
  } catch (thrown) {
    reply({ kind: 'failed', reason: thrown instanceof Error ? thrown.message : String(thrown) });
  }
});
