import { afterEach, describe, expect, it, vi } from 'vitest';
import { holdLife, tellIfEnded, WORKER_ENDED } from '../../src/worker/life';

/** Locks in the hands of a test: each request waits until it is granted, or is refused (Web Locks, W3C). */
function handLocks() {
  const asked: { readonly name: string; readonly grant: () => void; refuse(): void }[] = [];
  const request = (name: string, ...rest: unknown[]) =>
    new Promise<unknown>((_, reject) => {
      const hold = rest.at(-1) as () => unknown;
      asked.push({ name, grant: () => void hold(), refuse: () => reject(new Error('refused')) });
    });
  return { asked, request };
}

/** What a worker posts, and its locks. */
function insideWorker(locks: unknown) {
  const posted: { stillgripLife: string }[] = [];
  vi.stubGlobal('navigator', { locks });
  vi.stubGlobal('self', { postMessage: (message: (typeof posted)[0]) => posted.push(message) });
  return posted;
}

function pageWith(locks: unknown) {
  vi.stubGlobal('navigator', { locks });
  vi.stubGlobal(
    'ErrorEvent',
    class extends Event {
      readonly message: string;
      constructor(kind: string, { message }: { message: string }) {
        super(kind);
        this.message = message;
      }
    },
  );
  const worker = Object.assign(new EventTarget(), { terminate: vi.fn() }) as unknown as Worker;
  const heard: unknown[] = [];
  tellIfEnded(worker);
  worker.addEventListener('error', ({ message }) => heard.push(message));
  worker.addEventListener('message', ({ data }) => heard.push(data));
  const say = (data: unknown) => worker.dispatchEvent(new MessageEvent('message', { data }));
  return { worker, heard, say };
}

afterEach(() => {
  vi.unstubAllGlobals();
  vi.useRealTimers();
});

describe('a worker', () => {
  it('begins to work when it holds its lock and not before, or it would be taken for ended while it computes', async () => {
    const locks = handLocks();
    const posted = insideWorker(locks);
    let begun = false;
    const lives = holdLife().then(() => {
      begun = true;
    });
    await new Promise((turn) => setTimeout(turn, 0));
    expect([begun, posted]).toEqual([false, []]);
    locks.asked[0].grant();
    await lives;
    expect(posted).toEqual([{ stillgripLife: locks.asked[0].name }]);
  });

  it('works without a lock where none is to be had, and says so', async () => {
    const locks = handLocks();
    const posted = insideWorker(locks);
    const lives = holdLife();
    locks.asked[0].refuse();
    await lives;
    expect(posted).toEqual([{ stillgripLife: '' }]);
    insideWorker(undefined);
    await holdLife();
  });
});

describe('the page', () => {
  it('is told that a worker has ended when it comes to hold its lock', () => {
    const locks = handLocks();
    const { heard, say } = pageWith(locks);
    say({ stillgripLife: 'a' });
    expect(locks.asked.map(({ name }) => name)).toEqual(['a']);
    expect(heard).toEqual([]);
    locks.asked[0].grant();
    expect(heard).toEqual([WORKER_ENDED]);
  });

  it('takes a worker that never says that it lives for ended, but not one that has no lock', () => {
    vi.useFakeTimers();
    const locks = handLocks();
    const silent = pageWith(locks);
    const without = pageWith(locks);
    without.say({ stillgripLife: '' });
    without.say('an answer');
    vi.advanceTimersByTime(60_000);
    expect(silent.heard).toEqual([WORKER_ENDED]);
    expect(without.heard).toEqual(['an answer']);
    expect(locks.asked).toEqual([]);
  });
});
