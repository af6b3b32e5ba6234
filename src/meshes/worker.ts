import { holdLife } from '../worker/life';
import { makeFunctionsPlainly } from '../worker/plainFunctions';
import { turn } from '../worker/turn';
import { importMesh } from './importMesh';
import { faultOf } from './readers/signal';
import { seldom } from './rest';
import { MAX_FILE_BYTES, type MeshProgress } from './types';
import type { WorkerReply } from './workerMessages';

const lives = holdLife();
// Before the CAD kernel is loaded, whose loader would have text evaluated.
makeFunctionsPlainly();

/** Reads one file and says how far it is; the page ends the worker when it has the answer or wants none. */
self.addEventListener('message', async ({ data: file }: MessageEvent<File>) => {
  await lives;
  // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a worker has no origin to name
  const reply = (message: WorkerReply) => self.postMessage(message);
  let last = -Infinity;
  try {
    if (file.size > MAX_FILE_BYTES) {
      const error = { kind: 'fileTooLarge', bytes: file.size, limit: MAX_FILE_BYTES } as const;
      reply({ kind: 'done', result: { ok: false, error } });
      return;
    }
    reply({ kind: 'progress', progress: { step: 'open' } });
    const bytes = new Uint8Array(await file.arrayBuffer());
    const tell = (progress: MeshProgress) => {
      const now = performance.now();
      if (progress.share !== undefined && now - last < 50) return;
      last = now;
      reply({ kind: 'progress', progress });
    };
    const result = await importMesh(file.name, bytes, tell, seldom(turn));
    reply({ kind: 'done', result });
  } catch (thrown) {
    reply({ kind: 'done', result: { ok: false, error: faultOf(thrown) } });
  }
});
