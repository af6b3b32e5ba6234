import type { Page } from '@playwright/test';
import { expect } from '../fixtures';

interface KnownWorker {
  /** Of its file. */
  readonly name: string;
  /** It has said that it lives. */
  lives: boolean;
  /** Which of the page's questions to workers was its latest; 0 before the first. */
  asked: number;
  /** Its answer to that as JSON, every number to the last bit. */
  result: string | null;
}

interface WorkerWatch {
  readonly all: readonly KnownWorker[];
  /** Questions of the page to all its workers so far. */
  questions: number;
  /** Ends one as the browser would: not by the page's own call. */
  kill(index: number): void;
}

type Watched = Window & { workerWatch: WorkerWatch };

/** To be called before the page opens: knows every worker that the page starts. */
export async function watchWorkers(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const all: KnownWorker[] = [];
    const workers: Worker[] = [];
    const Own = window.Worker;
    const watch: WorkerWatch = {
      all,
      questions: 0,
      kill: (index) => Own.prototype.terminate.call(workers[index]),
    };
    window.Worker = class extends Own {
      readonly #known: KnownWorker;
      constructor(address: string | URL, how?: WorkerOptions) {
        super(address, how);
        const name = /(\w+)-[\w-]+\.js/.exec(String(address))?.[1] ?? '';
        const known: KnownWorker = { name, lives: false, asked: 0, result: null };
        this.#known = known;
        all.push(known);
        workers.push(this);
        this.addEventListener('message', ({ data }) => {
          if (data.stillgripLife) known.lives = true;
          // Slopes come twice: with the air as it was, and anew.
          else if (data.kind === 'done' || data.terms === 'anew') {
            const { id: _, ...rest } = data;
            // How long it took, and the hour in the head of a STEP file, are no numbers of the head.
            known.result = JSON.stringify(rest, (key, value) =>
              key === 'seconds' ? 0 : value,
            ).replace(/\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d/, '');
          }
        });
      }
      override postMessage(...given: [never]) {
        watch.questions++;
        this.#known.asked = watch.questions;
        this.#known.result = null;
        super.postMessage(...given);
      }
    };
    Object.assign(window, { workerWatch: watch });
  });
}

/** Questions of the page to its workers so far. */
export const questionCount = (page: Page) =>
  page.evaluate(() => (window as unknown as Watched).workerWatch.questions);

/**
 * Waits for the latest worker of a kind that was asked after so many questions, and for `wait` ms more, and kills it.
 * `noticed`: ms until the page has asked another one of its kind. Null where its answer was there before.
 */
export async function killAtWork(
  page: Page,
  { name, after, wait }: { readonly name: string; readonly after: number; readonly wait: number },
): Promise<number | null> {
  return page.evaluate(
    async ([kind, known, rest]) => {
      const { workerWatch: watch } = window as unknown as Watched;
      const pause = (time: number) => new Promise((done) => setTimeout(done, time));
      const find = () => watch.all.findLastIndex((one) => one.asked > known && one.name === kind);
      while (find() < 0 || !watch.all[find()].lives) await pause(5);
      await pause(rest);
      const victim = find();
      if (watch.all[victim].result !== null) return null;
      const from = performance.now();
      watch.kill(victim);
      const next = () => watch.all.some(({ name: its }, k) => k > victim && its === kind);
      while (!next() && performance.now() - from < 20_000) await pause(5);
      return performance.now() - from;
    },
    [name, after, wait] as const,
  );
}

/** The answer of the latest worker of a kind that was asked after so many questions. */
export async function answerOf(page: Page, name: string, after: number): Promise<string> {
  const read = () =>
    page.evaluate(
      ([kind, known]) => {
        const { all } = (window as unknown as Watched).workerWatch;
        return all.findLast((one) => one.name === kind && one.asked > known)?.result ?? null;
      },
      [name, after] as const,
    );
  await expect.poll(read, { timeout: 90_000, intervals: [50] }).not.toBeNull();
  return (await read()) as string;
}
