import { keptIn } from './cards';
import type { RecordStore } from './recordStore';
import { type AsideReason, asideKey, CARD_FORMAT, type Card, designKey } from './records';
import type { RescueNote } from './rescue';

/** Moves a design to what is set aside, where it stays a month; its history stays with it. Gives the new key. */
export function setDesignAside(
  store: RecordStore,
  id: string,
  reason: AsideReason,
  now: number,
): Promise<string | null> {
  return store.change(async (access) => {
    const kept = await keptIn(access, designKey(id));
    if (!kept) return null;
    const key = asideKey(kept.card, now);
    await access.put({ ...kept.card, key, reason, asideAt: now } as Card, kept.text);
    await access.remove(kept.card.key);
    return key;
  });
}

/** Brings a design back from what is set aside; under `spareId` where its own is taken. Gives the id. */
export function bringBack(
  store: RecordStore,
  key: string,
  spareId: string,
): Promise<string | null> {
  return store.change(async (access) => {
    const kept = await keptIn(access, key);
    if (!kept) return null;
    const { reason: _, asideAt: __, ...card } = kept.card;
    const taken = (await access.card(designKey(card.id))) !== undefined;
    const id = taken ? spareId : card.id;
    await access.put({ ...card, id, key: designKey(id) }, kept.text);
    await access.remove(key);
    return id;
  });
}

/**
 * Stores a rescue note that nothing stored continues: as a design of its own, or, where its text cannot be read, among
 * what is set aside. Its id comes from the note, so that two tabs that do this at once make one of it.
 */
export function keepNote(
  store: RecordStore,
  note: RescueNote,
  damagedAt: number | null,
): Promise<void> {
  return store.change(async (access) => {
    const stamp = note.stamps.at(-1) ?? note.writer;
    const id = `note-${stamp}`;
    const key = damagedAt === null ? designKey(id) : asideKey({ stamp }, damagedAt);
    if ((await access.card(key)) !== undefined) return;
    const { name, writer, savedAt, text } = note;
    const card: Card = {
      key,
      format: CARD_FORMAT,
      id,
      revision: 1,
      stamp,
      writer,
      name,
      savedAt,
      length: text.length,
      edited: true,
      copyOf: note.id,
      ...(damagedAt === null ? {} : { reason: 'damaged', asideAt: damagedAt }),
    };
    await access.put(card, text);
  });
}
