import { fail, type Result } from '../engine/result';
import { startMeshWorker } from './startMeshWorker';
import type { MeshFileFault, MeshImport, ReadMeshOptions } from './types';
import type { WorkerReply } from './workerMessages';

/** The part of a Worker that is used here; tests give one of their own. */
export type MeshWorker = Pick<Worker, 'postMessage' | 'terminate' | 'addEventListener'>;

/**
 * Reads a mesh file in a worker of its own. Always settles with a Result: a fault of the file, 'cancelled' when
 * `signal` is aborted (the worker is ended at once), 'readerFailed' when the worker dies or cannot start.
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
    if (signal?.aborted) return cancel();
    signal?.addEventListener('abort', cancel);
    try {
      worker = startWorker();
      worker.addEventListener('message', ({ data }: MessageEvent<WorkerReply>) => {
        if (data.kind === 'progress') onProgress?.(data.progress);
        else end(data.result);
      });
      worker.addEventListener('error', (event) => {
        event.preventDefault();
        giveUp(event.message || 'the worker stopped');
      });
      worker.addEventListener('messageerror', () => giveUp('the answer could not be read'));
      // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a worker has no origin to name
      worker.postMessage(file);
    } catch (thrown) {
      giveUp(thrown instanceof Error ? thrown.message : String(thrown));
    }
    return undefined;
  });
}
