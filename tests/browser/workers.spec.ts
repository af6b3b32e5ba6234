import type { Page } from '@playwright/test';
import { noteTimes } from './figures';
import { expect, test } from './fixtures';
import { openHead } from './head';
import { answerOf, killAtWork, questionCount, watchWorkers } from './workers/watch';
import { fillSamples, openClosely, WORKS, type Work } from './workers/works';

/** Kills of each kind of worker; `npm run losses` asks for 100. */
const KILLS = Number(process.env.STILLGRIP_WORKER_KILLS ?? 0);
/**
 * ms: a worker that waits is noticed at once, one that computes when the browser has stopped it, and Chromium lets a busy
 * thread 2 s of grace (seen: 0.7 and 2020 ms on a page with nothing else); the rest is for a busy machine.
 */
const NOTICED = 4000;

/** Spreads what it multiplies evenly. */
const GOLDEN = (Math.sqrt(5) - 1) / 2;

// The work is the same without a picture.
test.use({ picture: false });

/** Does the work undisturbed, once for each of its turns. */
async function undisturbed(page: Page, { worker, start, clear, turns = 1 }: Work) {
  const answers: string[] = [];
  for (let turn = 0; turn < turns; turn++) {
    if (turn > 0) await clear?.(page);
    const known = await questionCount(page);
    await start(page, turn);
    answers.push(await answerOf(page, worker, known));
  }
  return answers;
}

for (const work of KILLS > 0 ? WORKS : []) {
  const { worker, prepare, start, clear, turns = 1, within } = work;
  test(`${worker}, killed at work, is started anew by itself and gives the same result to the bit`, async ({
    page,
  }) => {
    // Each kill is followed by the whole work once more.
    test.setTimeout(120_000 + 40_000 * KILLS);
    await watchWorkers(page);
    await openHead(page);
    await prepare(page);
    const whole = await undisturbed(page, work);
    for (const answer of whole) expect(answer.length).toBeGreaterThan(100);
    const times: number[] = [];
    for (let turn = turns; times.length < KILLS && turn < 3 * KILLS + turns; turn++) {
      await clear?.(page);
      const after = await questionCount(page);
      await start(page, turn);
      const took = await killAtWork(page, {
        name: worker,
        after,
        wait: within * ((turn * GOLDEN) % 1),
      });
      if (took !== null) {
        times.push(took);
        expect(took, `kill ${times.length}`).toBeLessThan(NOTICED);
      }
      const again = await answerOf(page, worker, after);
      expect(again === whole[turn % turns], `the result after kill ${times.length}`).toBe(true);
    }
    expect(times.length).toBe(KILLS);
    noteTimes(worker, times, true);
  });
}

test('a worker that is killed at work is started anew by itself, and a second time it is said in words', async ({
  page,
}) => {
  await watchWorkers(page);
  await openHead(page);
  await openClosely(page);
  await fillSamples(page, 1_000_000);
  const name = 'toleranceWorker';
  const after = await questionCount(page);
  await page.getByTestId('tolerance-start').click();
  const took = await killAtWork(page, { name, after, wait: 20 });
  expect(took).not.toBeNull();
  expect(took).toBeLessThan(NOTICED);
  noteTimes('noticed and started anew', [took ?? 0], KILLS > 0);
  // The page asks no third one, which this would wait for.
  void killAtWork(page, { name, after, wait: 0 }).catch(() => {});
  await expect(page.getByRole('alert')).toContainText('ended the worker');
  await fillSamples(page, 1000);
  await page.getByTestId('tolerance-start').click();
  await expect(page.getByTestId('tolerance-said')).toContainText('1000 heads in', {
    timeout: 60_000,
  });
});
