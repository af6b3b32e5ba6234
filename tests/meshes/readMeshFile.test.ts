import { describe, expect, it } from 'vitest';
import { type MeshWorker, readMeshFile } from '../../src/meshes/readMeshFile';
import type { WorkerReply } from '../../src/meshes/workerMessages';

class FakeWorker extends EventTarget implements MeshWorker {
  ended = 0;
  asked: unknown[] = [];
  postMessage(message: unknown): void {
    this.asked.push(message);
  }
  terminate(): void {
    this.ended++;
  }
  reply(data: WorkerReply): void {
    this.dispatchEvent(new MessageEvent('message', { data }));
  }
}
const file = new File(['solid'], 'a.stl');

describe('reading a mesh file beside the page', () => {
  it('hands on progress and the answer, and ends the worker', async () => {
    const worker = new FakeWorker();
    const seen: unknown[] = [];
    const read = readMeshFile(file, { onProgress: (one) => seen.push(one) }, () => worker);
    expect(worker.asked).toEqual([file]);
    worker.reply({ kind: 'progress', progress: { step: 'read', share: 0.5 } });
    worker.reply({ kind: 'done', result: { ok: false, error: { kind: 'empty' } } });
    expect(await read).toEqual({ ok: false, error: { kind: 'empty' } });
    expect(seen).toEqual([{ step: 'read', share: 0.5 }]);
    expect(worker.ended).toBe(1);
  });

  it('ends the worker at once when it is called off, before or during', async () => {
    const worker = new FakeWorker();
    const control = new AbortController();
    const read = readMeshFile(file, { signal: control.signal }, () => worker);
    control.abort();
    expect(await read).toEqual({ ok: false, error: { kind: 'cancelled' } });
    expect(worker.ended).toBe(1);
    const again = await readMeshFile(file, { signal: control.signal }, () => {
      throw new Error('was started');
    });
    expect(again).toEqual({ ok: false, error: { kind: 'cancelled' } });
  });

  it('ends in a fault when the worker dies or does not start', async () => {
    const worker = new FakeWorker();
    const read = readMeshFile(file, {}, () => worker);
    worker.dispatchEvent(Object.assign(new Event('error'), { message: 'out of memory' }));
    expect(await read).toEqual({
      ok: false,
      error: { kind: 'readerFailed', detail: 'out of memory' },
    });
    const never = await readMeshFile(file, {}, () => {
      throw new TypeError('refused');
    });
    expect(never).toMatchObject({ error: { kind: 'readerFailed', detail: 'refused' } });
  });
});
