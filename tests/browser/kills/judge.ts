import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import type { Doings } from './deeds';
import type { Diary, Sight } from './diary';
import { designIn, type Lying, readStore, tornRecord } from './store';

export interface Verdict {
  /** What must not be: each a sentence. */
  readonly wrongs: readonly string[];
  /** How old the oldest of the work was that is gone, ms; 0 where all is there. */
  readonly goneMs: number;
  /** How long the page's thread stood still in that time: a machine with more to do than it can, ms. */
  readonly stoodMs: number;
  /** The design came back newer than the last picture that the diary has. */
  readonly ahead: boolean;
  readonly begun: number;
  readonly pictures: number;
  readonly claims: number;
  readonly records: number;
  /** Files that were said to be saved, and downloads of them that are not there. */
  readonly filesSaid: number;
  readonly downloadsMissing: number;
}

/** A bolt of this difference is drawn as the same, mm: a tenth of the step of a drag. */
const SAME_MM = 0.01;

/** A visit that ended with a kill. */
export interface Visit {
  /** What all names of the visit begin with. */
  readonly tag: string;
  readonly diary: Diary;
  readonly doings: Doings;
  readonly killedAt: number;
  /** The folder of its downloads. */
  readonly downloads: string;
}

/** Compares what the browser came back with to what the page had shown and said before it was killed. */
export async function judge(page: Page, was: Visit): Promise<Verdict> {
  const { diary, doings, killedAt } = was;
  const wrongs: string[] = [];
  const { records, files } = await readStore(page);
  wrongs.push(...records.map(tornRecord).filter((torn) => torn !== null));
  const back = await sightOf(page);
  const place = placeOf(back, diary, doings);
  const claim = diary.kept.at(-1);
  const kept = claim && diary.seen[claim.place];
  const isOlder = claim !== undefined && place >= 0 && place < claim.place;
  const ahead =
    (place < 0 && isAhead(back, diary, doings)) ||
    (isOlder && kept !== undefined && isAskedAfter(back, kept, doings));
  if (place < 0 && !ahead) wrongs.push(`never seen: ${back.name}, ${back.lengthMm} mm`);
  if (kept && isOlder && !ahead) {
    const claimed = `${kept.name}, ${kept.lengthMm.toFixed(2)} mm`;
    wrongs.push(`called kept: ${claimed}; came back: ${back.name}, ${back.lengthMm.toFixed(2)} mm`);
  }
  const next = ahead ? undefined : diary.seen[place + 1];
  const goneMs = next ? Math.max(0, killedAt - next.at) : 0;
  const stoodMs = next ? stoodStill(diary.beats, next.at, killedAt) : 0;
  if (goneMs - stoodMs > 1000) wrongs.push(`${goneMs} ms of work gone, in ${back.name}`);
  wrongs.push(...designsGone(diary, was.tag, records), ...statesGone(diary, records));
  wrongs.push(...(await warnings(page)));
  const written = filesOf(was, files);
  wrongs.push(...written.wrongs);
  if (wrongs.length > 0) wrongs.push(circumstances(was, back, records));
  return {
    wrongs,
    goneMs,
    stoodMs,
    ahead,
    begun: doings.begun,
    pictures: diary.seen.length,
    claims: diary.kept.length,
    records: records.length,
    filesSaid: written.said,
    downloadsMissing: written.missing,
  };
}

/** What one must know to explain a wrong, on one line: how it came about is not to be had again from the seed alone. */
function circumstances({ diary, doings, killedAt }: Visit, back: Sight, records: readonly Lying[]) {
  const { seen, kept, said } = diary;
  const { asked, begun, drawing, saves } = doings;
  const cards = records.map(({ card }) => card);
  const places = { of: seen.length, first: seen[0], last: seen.slice(-12) };
  const told = { kept: kept.slice(-6), said: said.slice(-6) };
  return JSON.stringify({ killedAt, back, places, told, asked, begun, drawing, saves, cards });
}

/** The part of a time in which the page could do nothing, ms; a beat comes every 100 ms. */
function stoodStill(beats: readonly number[], from: number, to: number): number {
  const inside = [from, ...beats.filter((at) => at > from && at < to), to];
  const gaps = inside.slice(1).map((at, k) => at - inside[k] - 200);
  return gaps.filter((gap) => gap > 0).reduce((sum, gap) => sum + gap, 0);
}

async function sightOf(page: Page): Promise<Sight> {
  const name = await page.getByTestId('design-name').inputValue();
  const box = await page.evaluate(() => window.stillgrip?.scene?.worldPosition('bolt') ?? null);
  return { name, lengthMm: box ? box.max[2] - box.min[2] : Number.NaN };
}

/**
 * Where the diary has what came back, else the last picture before it: what was asked for and replaced before a picture of it
 * was drawn has none. -1 where it is neither.
 */
function placeOf(back: Sight, { seen }: Diary, { asked, dropped }: Doings): number {
  const exact = seen.findLastIndex((one) => isSame(one, back));
  const lengthMm = dropped.get(back.name);
  // The title changes a picture before the stage does: a file that was soon replaced may be seen by its name alone.
  if (exact < 0 && lengthMm !== undefined && isSame({ name: back.name, lengthMm }, back)) {
    const named = seen.findLastIndex(({ name }) => name === back.name);
    if (named >= 0) return named;
  }
  const turn = asked.lastIndexOf(back.name);
  if (exact >= 0 || turn < 0 || seen.some(({ name }) => name === back.name)) return exact;
  const after = seen.findIndex(({ name }) => asked.indexOf(name) > turn);
  return after - 1;
}

/** Gone back to after that was kept: newer, and there may be no picture of it yet. */
function isAskedAfter(back: Sight, kept: Sight, { asked }: Doings): boolean {
  return asked.lastIndexOf(back.name) > asked.lastIndexOf(kept.name);
}

function isSame(one: Sight, other: Sight): boolean {
  return one.name === other.name && Math.abs(one.lengthMm - other.lengthMm) < SAME_MM;
}

/** Newer than what was seen: a name that was asked for and not seen yet, or the bolt of a drag that went on. */
function isAhead(back: Sight, { seen }: Diary, { asked, drawing }: Doings): boolean {
  const last = seen.at(-1);
  if (!last || (drawing && back.name === last.name)) return true;
  const asks = asked.lastIndexOf(back.name);
  return asks >= 0 && !seen.some(({ name }) => name === back.name);
}

/**
 * Designs that stood on the stage when all was called kept, of which nothing as new is stored. Those that were given another
 * name since are looked for under the later ones; demo heads, which are given one as soon as they are opened, are not.
 */
function designsGone({ seen, kept }: Diary, tag: string, records: readonly Lying[]): string[] {
  const stored = new Set(records.map(({ card }) => card.name));
  const isRenamed = (name: string) =>
    name === seen[0]?.name || (name.startsWith(`${tag} `) && !/ (file|demo) /.test(name));
  const lastPlace = new Map(seen.map(({ name }, place) => [name, place]));
  const newest = [...stored]
    .filter((name) => isRenamed(name) && name !== seen[0]?.name)
    .map((name) => lastPlace.get(name) ?? seen.length);
  return kept.flatMap(({ place }) => {
    const name = seen[place]?.name;
    if (name === undefined || stored.has(name) || name.startsWith(DEMO)) return [];
    return isRenamed(name) && newest.some((one) => one >= place)
      ? []
      : [`called kept and gone: ${name}`];
  });
}

/** How the names of the demo heads begin. */
const DEMO = 'Dunlin 260, ';

/** States that the page said are kept under a name. */
function statesGone({ said }: Diary, records: readonly Lying[]): string[] {
  const titles = new Set(records.map(({ card }) => card.title));
  return said.flatMap(({ text }) => {
    const title = /^Kept as \u201c(.*?)\u201d/.exec(text)?.[1];
    return title === undefined || titles.has(title) ? [] : [`state gone: ${title}`];
  });
}

/** The page must have nothing to complain of. */
async function warnings(page: Page): Promise<string[]> {
  const notice = page.locator('[data-testid="notice"][data-tone="warning"]');
  return (await notice.allInnerTexts()).map((text) => `said at the start: ${text}`);
}

/** How the browser calls what it writes before it puts it in a file's place. */
const SWAP = '.crswap';

/** Files are whole, and none is older than one that was said to be saved. */
function filesOf({ doings, downloads }: Visit, files: readonly [string, string][]) {
  const wrongs: string[] = [];
  const order = doings.saves.map(({ name }) => name);
  const places = [-1];
  const lie = readdirSync(downloads).filter((file) => file.endsWith('.json'));
  const downloaded = lie.map((file) => [file, readFileSync(join(downloads, file), 'utf8')]);
  // What the browser itself wrote on beside the file, and would have put in its place, is no file of anybody's.
  const named = files.filter(([file]) => !file.endsWith(SWAP));
  for (const [file, text] of [...named, ...downloaded]) {
    const name = designIn(text);
    if (name === null) wrongs.push(`a file that is not whole: ${file}, ${text.length} characters`);
    else places.push(order.indexOf(name));
  }
  const said = doings.saves.filter((save) => save.said).length;
  const isMissing = Math.max(...places) < said - 1;
  // What becomes of a download is the browser's doing, of which the page hears nothing.
  if (isMissing && doings.byHandle) wrongs.push(`said to be saved and older: ${order[said - 1]}`);
  return { wrongs, said, missing: isMissing ? 1 : 0 };
}
