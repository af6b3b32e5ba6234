import { keptIn, newestFirst, readable } from './cards';
import { orphans } from './pasts';
import type { RecordAccess, RecordStore } from './recordStore';
import {
  ALL_ASIDE,
  ALL_DESIGNS,
  CARD_FORMAT,
  type Card,
  cardFrom,
  designKey,
  type Kept,
  pastKey,
  pastsOf,
} from './records';
import { PAST_EVERY, statesToDrop } from './thinning';

/** One write of a design. */
export interface Saving {
  readonly id: string;
  /** The revision that it replaces; 0 for a design that is not stored yet. */
  readonly revision: number;
  readonly stamp: string;
  /** Stamps of earlier writes of this tab whose answer never came: each may have been made or not. */
  readonly mine: readonly string[];
  readonly writer: string;
  readonly name: string;
  readonly text: string;
  readonly savedAt: number;
  readonly edited: boolean;
  readonly copyOf?: string | undefined;
  /** The state that is replaced is kept in the history whatever its age: it was not reached by one step. */
  readonly jump: boolean;
}

/**
 * `conflict`: the stored design is not the one that was to be replaced, or is gone; nothing was written. `newer`: a later
 * page wrote it; nothing was written.
 */
export type Outcome =
  | { readonly kind: 'saved'; readonly revision: number }
  | { readonly kind: 'conflict' }
  | { readonly kind: 'newer' };

/** What lies in the browser, newest first. */
export interface Listing {
  readonly designs: readonly Card[];
  readonly aside: readonly Card[];
  /** Designs that a later page wrote: not to be read here, and left alone. */
  readonly newer: number;
}

/** Writes a design, if what is stored is what it is to replace. One transaction: all of it or nothing. */
export function saveDesign(store: RecordStore, saving: Saving): Promise<Outcome> {
  return store.change((access) => saveIn(access, saving));
}

async function saveIn(access: RecordAccess, saving: Saving): Promise<Outcome> {
  const { id, text, revision, jump: _, copyOf, mine, ...rest } = saving;
  const key = designKey(id);
  const record = await access.card(key);
  const stored = cardFrom(record);
  if (stored === 'newer') return { kind: 'newer' };
  if (stored?.stamp === saving.stamp) return { kind: 'saved', revision: stored.revision };
  const isOwn = stored !== null && mine.includes(stored.stamp);
  const isThere = record !== undefined;
  const isExpected = isThere ? stored?.revision === revision : revision === 0;
  if (!isExpected && !isOwn) return { kind: 'conflict' };
  if (stored) await keepPast(access, stored, saving);
  const card: Card = {
    ...rest,
    key,
    format: CARD_FORMAT,
    id,
    revision: (stored?.revision ?? 0) + 1,
    length: text.length,
    ...(copyOf === undefined ? {} : { copyOf }),
  };
  await access.put(card, text);
  return { kind: 'saved', revision: card.revision };
}

/**
 * Marks a stored design of the revision that the caller knows, and gives what is stored; the mark is on it if the stamps
 * are the same. From then on a write that was on its way in a tab that had the right before no longer replaces anything.
 */
export function claimDesign(
  store: RecordStore,
  by: {
    readonly id: string;
    readonly revision: number;
    readonly stamp: string;
    readonly openedAt: number;
  },
): Promise<Kept | null> {
  return store.change(async (access) => {
    const kept = await keptIn(access, designKey(by.id));
    if (kept?.card.revision !== by.revision) return kept;
    const { stamp, openedAt } = by;
    const card: Card = { ...kept.card, revision: by.revision + 1, stamp, openedAt };
    await access.putCard(card);
    return { card, text: kept.text };
  });
}

/** Now and then, and before a jump, the state that is about to be replaced goes into the history. */
async function keepPast(access: RecordAccess, stored: Card, saving: Saving): Promise<void> {
  if (!saving.jump && !isSpan(stored.savedAt, saving.savedAt)) return;
  const pasts = readable(await access.cards(pastsOf(stored.id)));
  const text = await access.text(stored.key);
  if (text === null) return;
  const past: Card = { ...stored, key: pastKey(stored) };
  if (!pasts.some((one) => one.key === past.key)) await access.put(past, text);
  // A jump is kept for its own sake; it is thinned with the others later on.
  const spare = statesToDrop([...pasts, past], saving.savedAt).filter(
    (one) => one.key !== past.key,
  );
  for (const one of spare) await access.remove(one.key);
}

/** Whether the clock has gone into another span since: the last state of each is kept. */
function isSpan(before: number, now: number): boolean {
  return Math.floor(before / PAST_EVERY) !== Math.floor(now / PAST_EVERY);
}

export function listDesigns(store: RecordStore): Promise<Listing> {
  return store.read(async (access) => {
    const records = await access.cards(ALL_DESIGNS);
    const aside = readable(await access.cards(ALL_ASIDE));
    return {
      designs: newestFirst(readable(records)),
      aside: aside.toSorted((a, b) => (b.asideAt ?? 0) - (a.asideAt ?? 0)),
      newer: records.filter((record) => cardFrom(record) === 'newer').length,
    };
  });
}

/** Card and text under a key; null where there is nothing (any more). */
export function readKept(store: RecordStore, key: string): Promise<Kept | null> {
  return store.read((access) => keptIn(access, key));
}

/**
 * Takes a record away for good, and with something set aside the history that nothing else has. Gives all of it, so that
 * `putBack` can undo that; null where the record is gone.
 */
export function dropRecord(store: RecordStore, key: string): Promise<readonly Kept[] | null> {
  return store.change(async (access) => {
    const kept = await keptIn(access, key);
    if (!kept) return null;
    await access.remove(key);
    const dropped = [kept];
    const history = key.startsWith(ALL_ASIDE) ? await orphans(access, kept.card.id) : [];
    for (const past of history) {
      dropped.push({ card: past, text: (await access.text(past.key)) ?? '' });
      await access.remove(past.key);
    }
    return dropped;
  });
}

export function putBack(store: RecordStore, dropped: readonly Kept[]): Promise<void> {
  return store.change(async (access) => {
    for (const { card, text } of dropped) await access.put(card, text);
  });
}

/** Whether a text is whole: one of another length than its card says was not written by this page. */
export function isWhole({ card, text }: Kept): boolean {
  return card.length === text.length;
}
