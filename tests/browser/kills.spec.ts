import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { seeded } from '../support/seeded';
import { expect, test, watchFaults } from './fixtures';
import { stageDrawn } from './head';
import { DEEDS, type Deed, DO, type Doings, rename } from './kills/deeds';
import { type Diary, keepDiary } from './kills/diary';
import { judge, type Verdict, type Visit } from './kills/judge';
import { type Mortal, startMortal } from './kills/mortal';

// Real kills: SIGKILL to every process of a browser with its profile in a real folder, at a seeded moment while something
// is done. A killed process is not a power cut: what it handed to the system is still written.

/** How often a browser is killed; the long mode of DEVELOPERS.md asks for 300. */
const KILLS = Number(process.env.STILLGRIP_KILLS ?? 2);
/** The two of `npm test` live for 1.3 s and more: long enough on a busy machine to be told that something is kept. */
const FIRST = Number(process.env.STILLGRIP_SEED ?? (KILLS > 2 ? 1 : 11));
/** Kills of one profile, one after another. */
const SERIES = 25;

interface Past extends Visit {
  readonly deed: Deed;
}

/** One after another on one profile: each start shows what the last kill has left, and goes on from there. */
async function series(address: string, first: number, count: number) {
  const folder = mkdtempSync(join(tmpdir(), 'stillgrip-kills-'));
  const verdicts: Verdict[] = [];
  const faults: string[][] = [];
  let past: Past | null = null;
  try {
    for (let k = 0; k <= count; k++) {
      const seed = first + k;
      const downloads = join(folder, `downloads-${k}`);
      mkdirSync(downloads);
      const mortal = await startMortal(join(folder, 'profile'), downloads);
      try {
        faults.push(watchFaults(mortal.context, new URL(address).origin));
        const diary = await open(mortal, address, seed);
        if (past) {
          const verdict = await judge(mortal.page, past);
          report(seed - 1, past.deed, verdict);
          verdicts.push(verdict);
        }
        past = k < count ? await workUntilKilled(mortal, { seed, diary, downloads }) : null;
      } finally {
        if (past === null) await mortal.kill();
      }
    }
  } finally {
    rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
  }
  return { verdicts, faults: faults.flat() };
}

async function open({ page }: Mortal, address: string, seed: number): Promise<Diary> {
  const diary = await keepDiary(page);
  await page.addInitScript(writesByHandle, isByHandle(seed));
  await page.goto(address);
  await stageDrawn(page);
  return diary;
}

/** Every other visit, so that each deed is done both ways. */
function isByHandle(seed: number): boolean {
  return seed % 2 === 0;
}

/** With a picker that gives a file of the browser's own file system, which is written as any is, or by download. */
function writesByHandle(handles: boolean): void {
  const pickers = {
    async showSaveFilePicker({ suggestedName }: { suggestedName: string }) {
      const folder = await navigator.storage.getDirectory();
      return folder.getFileHandle(suggestedName, { create: true });
    },
    showOpenFilePicker() {
      throw new DOMException('closed', 'AbortError');
    },
  };
  for (const [name, value] of Object.entries(pickers)) {
    Reflect.deleteProperty(window, name);
    Reflect.deleteProperty(Window.prototype, name);
    if (handles) Object.defineProperty(window, name, { value, configurable: true });
  }
}

async function workUntilKilled(
  mortal: Mortal,
  by: { readonly seed: number; readonly diary: Diary; readonly downloads: string },
): Promise<Past> {
  const { seed, diary, downloads } = by;
  const random = seeded(seed);
  const deed = DEEDS[seed % DEEDS.length];
  const doings: Doings = {
    begun: 0,
    asked: [],
    dropped: new Map(),
    drawing: false,
    saves: [],
    byHandle: isByHandle(seed),
  };
  const tag = `k${seed}`;
  await rename(mortal.page, doings, `${tag} begun`);
  const over = { done: false };
  const fails: string[] = [];
  const work = (async () => {
    while (!over.done) await DO[deed](mortal.page, random, doings, tag);
  })().catch((error: Error) => {
    if (!over.done) fails.push(`${deed}, ${seed}: ${error.message}`);
  });
  await new Promise((resolve) => setTimeout(resolve, random.whole(30, 2500)));
  over.done = true;
  const killedAt = Date.now();
  await mortal.kill();
  await work;
  // A deed that could not be done is a fault of the test: it would have killed an idle page.
  expect(fails).toEqual([]);
  return { deed, tag, diary, doings, killedAt, downloads };
}

function report(seed: number, deed: Deed, verdict: Verdict): void {
  test.info().annotations.push({
    type: 'kill',
    description: `${JSON.stringify({ seed, deed, ...verdict })}`,
  });
}

/** Of a long run, in a line. */
function summed(verdicts: readonly Verdict[]): string {
  const sum = (count: (one: Verdict) => number) =>
    verdicts.reduce((all, one) => all + count(one), 0);
  const gone = verdicts.map(({ goneMs }) => goneMs).toSorted((a, b) => a - b);
  const at = (share: number) => gone[Math.min(gone.length - 1, Math.floor(share * gone.length))];
  return [
    `${verdicts.length} kills, ${sum(({ begun }) => Math.sign(begun))} in the middle of the deed`,
    `${sum(({ claims }) => claims)} times called kept, ${sum(({ filesSaid }) => filesSaid)} files said to be saved`,
    `${sum(({ wrongs }) => wrongs.length)} wrong, work gone: median ${at(0.5)} ms, nine in ten ${at(0.9)} ms, most ${at(1)} ms`,
  ].join('; ');
}

test.describe.configure({ mode: 'parallel' });
for (let from = 0; from < KILLS; from += SERIES) {
  const count = Math.min(SERIES, KILLS - from);
  test(`after each of ${count} kills of the whole browser (from ${FIRST + from}) the design comes back whole, with all that was called kept`, async ({
    baseURL,
  }) => {
    test.setTimeout(60_000 + 30_000 * count);
    const { verdicts, faults } = await series(baseURL ?? '', FIRST + from, count);
    expect(verdicts.length).toBe(count);
    if (KILLS > 2) console.info(summed(verdicts));
    expect(verdicts.flatMap(({ wrongs }) => wrongs)).toEqual([]);
    expect(faults).toEqual([]);
    // The page called things kept, and the browser died while something was done, or nothing was proven.
    expect(verdicts.reduce((sum, { claims }) => sum + claims, 0)).toBeGreaterThan(count);
    expect(verdicts.filter(({ begun }) => begun > 0).length).toBeGreaterThanOrEqual(count / 2);
  });
}
