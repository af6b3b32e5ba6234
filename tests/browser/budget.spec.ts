import type { Page } from '@playwright/test';
import { type FrameCount, readBudget } from '../timing/page/budget';
import { firstFiles, laterFiles, sentSum } from '../timing/page/built';
import { openEverything } from '../timing/page/drags';
import { firstLoad } from '../timing/page/firstLoad';
import { expect, test } from './fixtures';
import { handleAt, openHead, settled, stageDrawn, verdict } from './head';

// How to change the budget: DEVELOPERS.md, "What the page costs".
const budget = readBudget();

/** Steps of the drag whose counted work is held to the budget. */
const STEPS = 10;

test('the built page sends no more bytes than the budget says, first and with each room', () => {
  const first = sentSum(firstFiles());
  expect(first, 'bytes of the first load').toBeLessThanOrEqual(budget.bytes.first);
  const { later } = budget.bytes;
  const rooms = [...laterFiles()].map(([name, files]) => ({ name, bytes: sentSum(files) }));
  expect(rooms.length).toBeGreaterThan(20);
  const over = rooms.filter(({ name, bytes }) => bytes > (later[name] ?? later.other));
  expect(over, 'rooms over their budget').toEqual([]);
  // A budget that nothing comes near to would let the page grow unseen.
  expect(first).toBeGreaterThan(0.9 * budget.bytes.first);
  const slack = rooms.filter(({ name, bytes }) => bytes < 0.5 * (later[name] ?? 0));
  expect(slack, 'rooms far under their budget').toEqual([]);
});

test('the first load is what the built page names: neither three nor leva is asked for before chart and dial are usable', async ({
  page,
  baseURL,
}) => {
  const load = await firstLoad(page, baseURL ?? '');
  expect(load.first.toSorted()).toEqual([...firstFiles()].toSorted());
  expect(load.after.some((path) => /\/three-/.test(path))).toBe(true);
  expect(load.after.some((path) => /\/Fields-/.test(path))).toBe(true);
  expect(load.usable).toBeLessThan(load.stage);
});

test('chart, dial and verdict answer while three is still on its way', async ({ page }) => {
  let release = () => {};
  const held = new Promise<void>((resolve) => {
    release = resolve;
  });
  await page.route(/\/three-[^/]*\.js/, async (route) => {
    await held;
    await route.continue();
  });
  await page.goto('./');
  const knob = page.getByTestId('dial-knob');
  await knob.focus();
  await page.keyboard.press('PageUp');
  await expect(knob).toHaveAttribute('aria-valuenow', '10');
  await expect(page.getByTestId('chart-cursor')).toHaveAttribute('aria-valuenow', '10');
  const said = await page.getByTestId('set-pitch-table').innerText();
  // A part changed: its bolt taken out of the sum.
  await page.getByTestId('rail-part-bolt').click();
  await page.getByTestId('input-extensionLengthMm').fill('6');
  await page.keyboard.press('Enter');
  await expect(page.getByTestId('set-pitch-table')).not.toHaveText(said);
  expect(await verdict(page)).not.toBe('');
  await expect(page.locator('canvas[data-engine]')).toHaveCount(0);
  release();
  await stageDrawn(page);
});

test('a drag renders nothing in React, and lays out, changes and draws no more than the budget says', async ({
  page,
}) => {
  await countCommits(page);
  await countDrawing(page);
  await stopClockInTasks(page);
  await openEverything(page, 1);
  const from = await handleAt(page, 'bolt', 'extensionLengthMm');
  await page.mouse.move(from.x, from.y);
  const table = page.getByTestId('curve-table');
  const before = await table.innerText();
  await page.mouse.down();
  for (let k = 1; k <= 3; k++) {
    await page.mouse.move(from.x, from.y - 2 * k);
    await settled(page);
  }
  const cdp = await page.context().newCDPSession(page);
  await cdp.send('Performance.enable');
  const start = await counted(page, cdp);
  for (let k = 4; k < 4 + STEPS; k++) {
    await page.mouse.move(from.x, from.y - 2 * k);
    await settled(page);
  }
  const after = await counted(page, cdp);
  // The table follows when the hand rests, still holding; until then it is pale.
  await expect(table).not.toHaveAttribute('data-behind');
  expect(await table.innerText()).not.toBe(before);
  await page.mouse.up();
  const perStep = {
    commits: after.commits - start.commits,
    layouts: (after.layouts - start.layouts) / STEPS,
    changes: (after.changes - start.changes) / STEPS,
    ...drawingPerStep(start, after),
  };
  console.log('counted work of a frame:', JSON.stringify(perStep));
  expect(perStep.commits).toBe(0);
  for (const [name, count] of Object.entries(budget.frame)) {
    const used = perStep[name as FrameCount];
    expect(used, name).toBeLessThanOrEqual(count);
    // It did move something: the counters see what happens.
    if (name !== 'commits') expect(used, name).toBeGreaterThan(count / 4);
  }
});

interface Counters {
  commits: number;
  changes: number;
  pictures: number;
  draws: number;
  uploads: number;
  uploadedBytes: number;
  penStrokes: number;
}

const DRAWN = ['pictures', 'draws', 'uploads', 'uploadedBytes', 'penStrokes'] as const;

/** Pictures of a step, strokes of a step, and what one picture asks of the card. */
function drawingPerStep(start: Counters, after: Counters) {
  const pictures = after.pictures - start.pictures;
  const counts = DRAWN.map((name) => {
    const share = name === 'pictures' || name === 'penStrokes' ? STEPS : pictures;
    return [name, (after[name] - start[name]) / share] as const;
  });
  return Object.fromEntries(counts) as Record<(typeof DRAWN)[number], number>;
}

/** Counts what the stage asks of the card and the chart of its canvas, by their own calls. To be called after `countCommits`. */
async function countDrawing(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const { counters } = window as unknown as { counters: Counters };
    Object.assign(counters, { pictures: 0, draws: 0, uploads: 0, uploadedBytes: 0, penStrokes: 0 });
    type Method = (this: unknown, ...given: unknown[]) => unknown;
    function watch(owner: object, name: string, note: (given: unknown[]) => void): void {
      const own = Reflect.get(owner, name) as Method;
      const watched: Method = function (...given) {
        note(given);
        return Reflect.apply(own, this, given);
      };
      Reflect.set(owner, name, watched);
    }
    const card = WebGL2RenderingContext.prototype;
    watch(card, 'clear', () => counters.pictures++);
    for (const name of [
      'drawArrays',
      'drawElements',
      'drawArraysInstanced',
      'drawElementsInstanced',
    ]) {
      watch(card, name, () => counters.draws++);
    }
    for (const name of ['bufferData', 'bufferSubData']) {
      watch(card, name, ([, first, second, , length]) => {
        const data = (ArrayBuffer.isView(first) ? first : second) as Float32Array;
        counters.uploads++;
        counters.uploadedBytes += length
          ? Number(length) * data.BYTES_PER_ELEMENT
          : data.byteLength;
      });
    }
    for (const pen of [CanvasRenderingContext2D.prototype, Path2D.prototype]) {
      watch(pen, 'lineTo', () => counters.penStrokes++);
    }
  });
}

/** With a clock that moves between tasks only, a picture has time for everybody: what is counted is the same on any machine. */
async function stopClockInTasks(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const real = performance.now.bind(performance);
    let shown = real();
    setInterval(() => {
      shown = real();
    }, 5);
    performance.now = () => shown;
  });
}

/** Counts React's commits by the door that it leaves for its own tools, and every change of the document. */
async function countCommits(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const counters = { commits: 0, changes: 0 };
    Object.assign(window, {
      counters,
      __REACT_DEVTOOLS_GLOBAL_HOOK__: {
        supportsFiber: true,
        inject: () => 1,
        onCommitFiberRoot: () => {
          counters.commits++;
        },
        onCommitFiberUnmount() {},
        onPostCommitFiberRoot() {},
      },
    });
    new MutationObserver((records) => {
      counters.changes += records.length;
    }).observe(document, { subtree: true, childList: true, attributes: true, characterData: true });
  });
}

async function counted(
  page: Page,
  cdp: {
    send(method: 'Performance.getMetrics'): Promise<{ metrics: { name: string; value: number }[] }>;
  },
) {
  const { metrics } = await cdp.send('Performance.getMetrics');
  const layouts = metrics.find(({ name }) => name === 'LayoutCount')?.value ?? Number.NaN;
  const own = await page.evaluate(() => ({
    ...(window as unknown as { counters: Counters }).counters,
  }));
  return { ...own, layouts };
}

test('the counter of renders sees one where something is rendered', async ({ page }) => {
  await countCommits(page);
  await openHead(page);
  const commits = () =>
    page.evaluate(() => (window as unknown as { counters: Counters }).counters.commits);
  const before = await commits();
  await page.getByTestId('rail-part-grip').click();
  await expect.poll(commits).toBeGreaterThan(before);
});
