import { readable } from './cards';
import { dropOrphans } from './pasts';
import type { RecordAccess, RecordStore } from './recordStore';
import { ALL_ASIDE, ALL_DESIGNS, pastsOf, stoodAt } from './records';

/** Designs opened and never changed that are kept beyond a week. */
const MOST_UNEDITED = 5;
const WEEK = 7 * 24 * 3_600_000;
const MONTH = 31 * 24 * 3_600_000;

/**
 * Lets go what need not be kept: designs that were only looked at and have no named state, but the five latest, a week
 * after they were last on a stage, and removed ones after a month with their history. `open` are ids that this tab has, or
 * that its undo can bring back; those of other tabs count as looked at when they came onto their stage.
 */
export function tidy(store: RecordStore, now: number, open: ReadonlySet<string>): Promise<void> {
  return store.change(async (access) => {
    await tidyLookedAt(access, now, open);
    for (const card of readable(await access.cards(ALL_ASIDE))) {
      if (card.reason !== 'removed' || now - (card.asideAt ?? now) < MONTH) continue;
      await access.remove(card.key);
      await dropOrphans(access, card.id);
    }
  });
}

async function tidyLookedAt(
  access: RecordAccess,
  now: number,
  open: ReadonlySet<string>,
): Promise<void> {
  const looked = readable(await access.cards(ALL_DESIGNS))
    .filter((card) => !card.edited)
    .toSorted((a, b) => stoodAt(b) - stoodAt(a));
  for (const card of looked.slice(MOST_UNEDITED)) {
    if (open.has(card.id) || now - stoodAt(card) < WEEK) continue;
    const pasts = readable(await access.cards(pastsOf(card.id)));
    if (pasts.some(({ title }) => title !== undefined)) continue;
    await access.remove(card.key);
    await dropOrphans(access, card.id);
  }
}
