import { deleteDB, openDB } from 'idb';
import { keepNote } from './aside';
import { OLD } from './legacyPlaces';
import type { RecordStore } from './recordStore';

/**
 * Brings what an earlier build kept into the store, once; the old places are emptied after that. Does nothing where there
 * is none, and never throws: what cannot be read now stays for the next visit.
 */
export async function bringOver(store: RecordStore): Promise<void> {
  try {
    const saved = [...(await fromDatabase()), localStorage.getItem(OLD.note)].flatMap(savedFrom);
    for (const { text, savedAt } of saved) {
      const note = { id: 'before', revision: 0, writer: 'before', stamps: [`before-${savedAt}`] };
      await keepNote(store, { ...note, key: '', name: nameIn(text), savedAt, text }, null);
    }
    localStorage.removeItem(OLD.note);
    await deleteDB(OLD.database);
  } catch {
    // The next visit tries again; the ids keep it from being brought twice.
  }
}

async function fromDatabase(): Promise<unknown[]> {
  const known = await indexedDB.databases();
  if (!known.some(({ name }) => name === OLD.database)) return [];
  const database = await openDB(OLD.database);
  try {
    if (!database.objectStoreNames.contains(OLD.store)) return [];
    return await database.getAll(OLD.store);
  } finally {
    database.close();
  }
}

function savedFrom(value: unknown): readonly { text: string; savedAt: number }[] {
  let saved = value;
  try {
    if (typeof value === 'string') saved = JSON.parse(value);
  } catch {
    return [];
  }
  const { text, savedAt } = (saved ?? {}) as Record<string, unknown>;
  return typeof text === 'string' && typeof savedAt === 'number' && Number.isFinite(savedAt)
    ? [{ text, savedAt }]
    : [];
}

function nameIn(text: string): string {
  try {
    const { name } = JSON.parse(text) as { name?: unknown };
    return typeof name === 'string' ? name : '';
  } catch {
    return '';
  }
}
