/** What an `error` event of a worker says where the worker was ended from outside, by the browser or its task manager. */
export const WORKER_ENDED = 'the worker was ended from outside';

/** A worker that has not said that it lives after this long is taken for ended, ms. */
const LATEST_START = 30_000;

interface LockDesk {
  request(name: string, hold: () => unknown): Promise<unknown>;
  request(
    name: string,
    how: { readonly signal: AbortSignal },
    hold: () => unknown,
  ): Promise<unknown>;
}

/** None where the page does not come by a safe connection: then a worker that is ended from outside is not noticed. */
function lockDesk(): LockDesk | undefined {
  return (globalThis as { navigator?: { locks?: LockDesk } }).navigator?.locks;
}

interface LifeMessage {
  /** Name of the lock; empty where there is none to be had. */
  readonly stillgripLife: string;
}

/**
 * Inside a worker, first of all: holds a lock for as long as it lives, and tells the page its name. Work must not begin
 * before what comes back is settled (it never rejects): a thread that computes cannot take the lock, and would be taken
 * for ended.
 */
export function holdLife(): Promise<void> {
  const name = `stillgrip-worker-${Math.random().toString(36).slice(2)}-${performance.timeOrigin}`;
  // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a worker has no origin to name
  const tell = (life: string) => self.postMessage({ stillgripLife: life } satisfies LifeMessage);
  const locks = lockDesk();
  if (!locks) return Promise.resolve();
  return new Promise((holds) => {
    const taken = locks.request(name, () => {
      tell(name);
      holds();
      return new Promise(() => {});
    });
    taken.catch(() => {
      tell('');
      holds();
    });
  });
}

/**
 * In the page, before anybody else hears the worker: sends it an `error` event with `WORKER_ENDED` if it ends without
 * having been told to. Browsers say nothing of that; but they let go of the locks of what has ended at once.
 */
export function tellIfEnded(worker: Worker): void {
  const locks = lockDesk();
  if (!locks) return;
  const stop = new AbortController();
  const tell = () => worker.dispatchEvent(new ErrorEvent('error', { message: WORKER_ENDED }));
  const late = setTimeout(tell, LATEST_START);
  worker.addEventListener('message', (event: MessageEvent<LifeMessage | null | undefined>) => {
    const name = event.data?.stillgripLife;
    if (name === undefined) return;
    event.stopImmediatePropagation();
    clearTimeout(late);
    if (name === '') return;
    // Rejects when the page itself ends the worker.
    locks.request(name, { signal: stop.signal }, tell).catch(() => {});
  });
  worker.addEventListener('error', () => clearTimeout(late));
  const end = worker.terminate.bind(worker);
  worker.terminate = () => {
    clearTimeout(late);
    stop.abort();
    end();
  };
}
