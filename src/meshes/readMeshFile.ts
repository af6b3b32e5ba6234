import { fail, type Result } from '../engine/result';
import { WORKER_ENDED } from '../worker/life';
import { startMeshWorker } from './startMeshWorker';
import type { MeshFileFault, MeshImport, ReadMeshOptions } from './types';
import type { WorkerReply } from './workerMessages';

/** The part of a Worker that is used here; tests give one of their own. */
export type MeshWorker = Pick<Worker, 'postMessage' | 'terminate' | 'addEventListener'>;

/**
 * Reads a mesh file in a worker of its own. Always settles with a Result: a fault of the file, 'cancelled' when
 * `signal` is aborted (the worker is ended at once), 'readerFailed' when the worker fails or cannot start, 'readerEnded'
 * when it was ended from outside a second time.
 */
export function readMeshFile(
  file: File,
  { onProgress, signal }: ReadMeshOptions = {},
  startWorker: () => MeshWorker = startMeshWorker,
): Promise<Result<MeshImport, MeshFileFault>> {
  return new Promise((settle) => {
    let worker: MeshWorker | undefined;
    function end(result: Result<MeshImport, MeshFileFault>): void {
      signal?.removeEventListener('abort', cancel);
      worker?.terminate();
      settle(result);
    }
    function cancel(): void {
      end(fail({ kind: 'cancelled' }));
    }
    function giveUp(detail: string): void {
      end(fail({ kind: 'readerFailed', detail }));
    }
    function begin(isAgain: boolean): void {
      try {
        const own = startWorker();
        worker = own;
        hear(own, isAgain);
        // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a worker has no origin to name
        own.postMessage(file);
      } catch (thrown) {
        giveUp(thrown instanceof Error ? thrown.message : String(thrown));
      }
    }
    function hear(own: MeshWorker, isAgain: boolean): void {
      own.addEventListener('message', ({ data }: MessageEvent<WorkerReply>) => {
        if (data.kind === 'progress') onProgress?.(data.progress);
        else end(data.result);
      });
      own.addEventListener('error', (event) => {
        event.preventDefault();
        if (worker !== own) return;
        if (event.message !== WORKER_ENDED) giveUp(event.message || 'the worker stopped');
        else if (isAgain) end(fail({ kind: 'readerEnded' }));
        else begin(true);
      });
      own.addEventListener('messageerror', () => giveUp('the answer could not be read'));
    }
    if (signal?.aborted) return cancel();
    signal?.addEventListener('abort', cancel);
    begin(false);
    return undefined;
  });
}
