import type { Page } from '@playwright/test';
import { writeStl } from '../../src/meshes/writeStl';
import { boxMesh } from '../support/meshes';
import { expect, test } from './fixtures';
import { openHead, setPitchForces, settled, verdict } from './head';
import { dropFiles, makeStep } from './tour';

/** Losses in a row of each scene, and kills of each kind of worker; `npm run losses` asks for 100 of both. */
const LOSSES = Number(process.env.STILLGRIP_LOSSES ?? 2);
const KILLS = Number(process.env.STILLGRIP_WORKER_KILLS ?? 0);
/**
 * ms: a worker that waits is noticed at once, one that computes when the browser has stopped it, and Chromium lets a busy
 * thread 2 s of grace (seen: 0.7 and 2020 ms on a page with nothing else); the rest is for a busy machine.
 */
const NOTICED = 4000;

// Drawn in software: fewer pixels, and the same page.
test.use({ viewport: { width: 1300, height: 760 } });

function note(what: string, values: readonly number[]): void {
  const text = `${what}: ${values.length} times, ${Math.min(...values).toFixed(0)} to ${Math.max(...values).toFixed(0)} ms (${values.map((one) => one.toFixed(0)).join(' ')})`;
  test.info().annotations.push({ type: 'figures', description: text });
  if (KILLS > 0 || LOSSES > 2) console.log(text);
}

/** Takes a graphics context away and, as a driver does, gives it back: ms until the scene has drawn again. */
async function loseAndRegain(page: Page, canvas: string): Promise<number> {
  return page.evaluate(async (selector) => {
    const found = document.querySelector<HTMLCanvasElement>(selector);
    const context = found?.getContext('webgl2');
    const extension = context?.getExtension('WEBGL_lose_context');
    if (!found || !context || !extension) throw new Error(`there is no scene: ${selector}`);
    const heard = (kind: string) =>
      new Promise((done) => found.addEventListener(kind, done, { once: true }));
    const lost = heard('webglcontextlost');
    extension.loseContext();
    await lost;
    // The browser gives it back only after the event has been heard.
    await new Promise((done) => setTimeout(done, 0));
    const drawn = { calls: 0 };
    const draw = context.drawElements.bind(context);
    context.drawElements = (...given) => {
      drawn.calls++;
      draw(...given);
    };
    const from = performance.now();
    const restored = heard('webglcontextrestored');
    extension.restoreContext();
    await restored;
    while (drawn.calls === 0) {
      if (performance.now() - from > 5000) return Number.POSITIVE_INFINITY;
      await new Promise((done) => requestAnimationFrame(done));
    }
    Reflect.deleteProperty(context, 'drawElements');
    return performance.now() - from;
  }, canvas);
}

/** Waits until two pictures in a row are the same. */
async function stands(page: Page, scene: string): Promise<void> {
  let last: Uint8Array = new Uint8Array();
  await expect
    .poll(async () => {
      const before = last;
      last = await page.locator(scene).screenshot();
      return Buffer.from(last).equals(before);
    })
    .toBe(true);
}

test.describe('a lost graphics context', () => {
  test.use({ allowed: /Context Lost/ });

  test('comes back within a second, time after time, with the same stage and numbers', async ({
    page,
  }) => {
    test.setTimeout(120_000 + 8000 * LOSSES);
    await openHead(page);
    await page.getByTestId('room-learn').click();
    await page.getByTestId('lower-racket').click();
    await page.getByTestId('racket-time').fill('3');
    await settled(page);
    const shown = async () => ({
      verdict: await verdict(page),
      flips: await page.getByTestId('racket-flips').innerText(),
      table: await page.getByTestId('racket-table').innerText(),
    });
    const before = await shown();
    for (const scene of ['.stage-canvas canvas', '.racket-picture canvas']) {
      const canvas = page.locator(scene);
      // The stage gives up its room to the racket for a moment: what is compared stands still.
      await stands(page, scene);
      const picture = await canvas.screenshot();
      const times: number[] = [];
      for (let k = 0; k < LOSSES; k++) {
        times.push(await loseAndRegain(page, scene));
        expect(times[k], `${scene}, loss ${k + 1}`).toBeLessThan(1000);
        await expect(page.locator('.stage-note')).toHaveCount(0);
      }
      await stands(page, scene);
      expect(Buffer.compare(await canvas.screenshot(), picture), `picture of ${scene}`).toBe(0);
      note(scene, times);
    }
    expect(await shown()).toEqual(before);
    await page.getByTestId('lower-pitch').click();
    expect(await setPitchForces(page)).toHaveLength(5);
  });

  test('that does not come back is said where the picture was, and the rest goes on', async ({
    page,
  }) => {
    await openHead(page);
    await page.getByTestId('room-learn').click();
    await page.getByTestId('lower-racket').click();
    for (const scene of ['.stage-canvas', '.racket-picture']) {
      await stands(page, `${scene} canvas`);
      await page.locator(`${scene} canvas`).evaluate((canvas: HTMLCanvasElement) => {
        canvas.getContext('webgl2')?.getExtension('WEBGL_lose_context')?.loseContext();
      });
    }
    await expect(page.locator('.stage-note')).toHaveCount(2);
    for (const said of await page.getByRole('note').allInnerTexts()) {
      expect(said).toContain('waiting for it');
    }
    const before = await verdict(page);
    await page.getByTestId('racket-time').fill('8');
    await expect(page.getByTestId('racket-flips')).not.toBeEmpty();
    await page.getByTestId('input-extensionLengthMm').fill('9');
    await page.getByTestId('input-extensionLengthMm').press('Enter');
    await expect(page.getByTestId('verdict-line')).not.toHaveText(before);
  });
});

interface KnownWorker {
  /** Of its file. */
  readonly name: string;
  readonly startedAt: number;
  lives: boolean;
  /** Its result as JSON, every number to the last bit. */
  result: string | null;
}

interface WorkerWatch {
  readonly all: readonly KnownWorker[];
  /** Ends the last one as the browser would: not by the page's own call. */
  kill(index: number): void;
}

/** To be called before the page opens: knows every worker that the page starts. */
async function watchWorkers(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const all: KnownWorker[] = [];
    const workers: Worker[] = [];
    const Own = window.Worker;
    window.Worker = class extends Own {
      constructor(address: string | URL, how?: WorkerOptions) {
        super(address, how);
        const name = /(\w+)-[\w-]+\.js/.exec(String(address))?.[1] ?? '';
        const known: KnownWorker = {
          name,
          startedAt: performance.now(),
          lives: false,
          result: null,
        };
        all.push(known);
        workers.push(this);
        this.addEventListener('message', ({ data }) => {
          if (data.stillgripLife) known.lives = true;
          else if (data.kind === 'done' || data.derivatives) {
            const { id: _, ...rest } = data;
            // How long it took is no number of the head.
            known.result = JSON.stringify(rest, (key, value) => (key === 'seconds' ? 0 : value));
          }
        });
      }
    };
    const watch: WorkerWatch = {
      all,
      kill: (index) => Own.prototype.terminate.call(workers[index]),
    };
    Object.assign(window, { workerWatch: watch });
  });
}

/** Waits for the latest worker of a kind to live, and for `ms` more; kills it; ms until another of its kind is there. */
async function killMidWork(page: Page, name: string, after: number, ms: number): Promise<number> {
  return page.evaluate(
    async ([kind, known, wait]) => {
      const { workerWatch: watch } = window as unknown as { workerWatch: WorkerWatch };
      const find = () => watch.all.findIndex((one, k) => k >= known && one.name === kind);
      const pause = (time: number) => new Promise((done) => setTimeout(done, time));
      while (find() < 0 || !watch.all[find()].lives) await pause(5);
      await pause(wait);
      const victim = find();
      if (watch.all[victim].result !== null) return -1;
      const from = performance.now();
      watch.kill(victim);
      const next = () => watch.all.some((one, k) => k > victim && one.name === kind);
      while (!next() && performance.now() - from < 20_000) await pause(5);
      return performance.now() - from;
    },
    [name, after, ms] as const,
  );
}

const workerCount = (page: Page) =>
  page.evaluate(() => (window as unknown as { workerWatch: WorkerWatch }).workerWatch.all.length);

/** The result of the latest worker of a kind that was started after so many. */
async function resultOf(page: Page, name: string, after: number): Promise<string> {
  const read = () =>
    page.evaluate(
      ([kind, known]) => {
        const { all } = (window as unknown as { workerWatch: WorkerWatch }).workerWatch;
        return all.slice(known).findLast((one) => one.name === kind)?.result ?? null;
      },
      [name, after] as const,
    );
  await expect.poll(read, { timeout: 90_000 }).not.toBeNull();
  return (await read()) as string;
}

interface Work {
  readonly worker: string;
  /** Brings the page to where the work is started. */
  readonly prepare: (page: Page) => Promise<void>;
  readonly start: (page: Page) => Promise<void>;
  /** Puts away what came of it, so that it can be started again. */
  readonly clear?: (page: Page) => Promise<void>;
}

const closely = async (page: Page) => {
  await page.getByTestId('room-neutralise').click();
  await page.getByTestId('lower-closely').click();
};
let turn = 0;
const WORKS: readonly Work[] = [
  {
    worker: 'searchWorker',
    prepare: async (page) => {
      await page.getByTestId('room-neutralise').click();
      await page.getByTestId('offer-nut-catalogue').check();
    },
    start: (page) => page.getByTestId('goal-find').click(),
  },
  {
    worker: 'toleranceWorker',
    prepare: async (page) => {
      await closely(page);
      await page.getByTestId('input-run-samples').fill('4000');
      await page.getByTestId('input-run-samples').press('Enter');
    },
    start: (page) => page.getByTestId('tolerance-start').click(),
  },
  {
    worker: 'worker',
    prepare: (page) => page.getByTestId('room-head').click(),
    start: (page) => {
      const bodies = Array.from({ length: 3000 }, (_, k) => boxMesh(3, 2, 1 + k / 3000));
      return dropFiles(page, [{ name: 'many.stl', bytes: writeStl(bodies, 1, 'many') }]);
    },
    clear: (page) => page.keyboard.press('Escape'),
  },
  {
    worker: 'offerWorker',
    prepare: async (page) => {
      await page.getByTestId('room-bench').click();
      await page.getByTestId('lower-readings').click();
    },
    start: (page) => {
      const rows = Array.from({ length: 40_000 }, (_, k) => `${k / 20},${Math.sin(k / 99)}`);
      const table = `time [s],force [N]\n${rows.join('\n')}\n`;
      return page.getByTestId('bench-file').setInputFiles({
        name: `log${turn++}.csv`,
        mimeType: 'text/csv',
        buffer: Buffer.from(table),
      });
    },
    clear: (page) => page.getByRole('button', { name: 'Cancel', exact: true }).click(),
  },
  {
    worker: 'stepWorker',
    prepare: async (page) => {
      await page.getByTestId('room-make').click();
      await page.getByTestId('lower-files').click();
    },
    start: makeStep,
  },
];

for (const { worker, prepare, start, clear } of KILLS > 0 ? WORKS : []) {
  test(`${worker}, killed at work, is started anew by itself and gives the same result to the bit`, async ({
    page,
  }) => {
    // Each kill is followed by the whole work once more.
    test.setTimeout(120_000 + 40_000 * KILLS);
    await watchWorkers(page);
    await openHead(page);
    await prepare(page);
    let known = await workerCount(page);
    await start(page);
    const whole = await resultOf(page, worker, known);
    expect(whole.length).toBeGreaterThan(100);
    const times: number[] = [];
    for (let tries = 0; times.length < KILLS && tries < 3 * KILLS; tries++) {
      await clear?.(page);
      known = await workerCount(page);
      await start(page);
      const took = await killMidWork(page, worker, known, (tries * 37) % 200);
      if (took >= 0) {
        times.push(took);
        expect(took, `kill ${times.length}`).toBeLessThan(NOTICED);
      }
      const again = await resultOf(page, worker, known);
      expect(again === whole, `the result after kill ${times.length}`).toBe(true);
    }
    expect(times.length).toBe(KILLS);
    note(worker, times);
  });
}

test('a worker that is killed at work is started anew by itself, and a second time it is said in words', async ({
  page,
}) => {
  await watchWorkers(page);
  await openHead(page);
  await closely(page);
  await page.getByTestId('input-run-samples').fill('1000000');
  await page.getByTestId('input-run-samples').press('Enter');
  const known = await workerCount(page);
  await page.getByTestId('tolerance-start').click();
  const took = await killMidWork(page, 'toleranceWorker', known, 20);
  expect(took).toBeGreaterThanOrEqual(0);
  expect(took).toBeLessThan(NOTICED);
  note('noticed and started anew', [took]);
  await page.evaluate(
    async (from) => {
      const { workerWatch: watch } = window as unknown as { workerWatch: WorkerWatch };
      const last = () => watch.all.findLastIndex(({ name }) => name === 'toleranceWorker');
      while (last() <= from || !watch.all[last()].lives)
        await new Promise((done) => setTimeout(done, 5));
      watch.kill(last());
    },
    await page.evaluate(() =>
      (window as unknown as { workerWatch: WorkerWatch }).workerWatch.all.findIndex(
        ({ name }) => name === 'toleranceWorker',
      ),
    ),
  );
  await expect(page.getByRole('alert')).toContainText('ended the worker');
  await page.getByTestId('input-run-samples').fill('1000');
  await page.getByTestId('input-run-samples').press('Enter');
  await page.getByTestId('tolerance-start').click();
  await expect(page.getByTestId('tolerance-said')).toContainText('1000 heads in', {
    timeout: 60_000,
  });
});
