import type { RecordAccess } from './recordStore';
import { type Card, cardFrom, type Kept } from './records';

/** Card and text under a key, inside a transaction; null where there is nothing that this page can read. */
export async function keptIn(access: RecordAccess, key: string): Promise<Kept | null> {
  const card = cardFrom(await access.card(key));
  if (card === null || card === 'newer') return null;
  const text = await access.text(key);
  return { card, text: text ?? '' };
}

/** Those of the records that are cards of this page. */
export function readable(records: readonly unknown[]): readonly Card[] {
  return records.flatMap((record) => {
    const card = cardFrom(record);
    return card === null || card === 'newer' ? [] : [card];
  });
}

export function newestFirst(cards: readonly Card[]): readonly Card[] {
  return cards.toSorted((a, b) => b.savedAt - a.savedAt);
}
