import { type IDBPDatabase, openDB } from 'idb';

/** A design as it is kept in the browser: the text of its file, and when it was kept (ms since 1970). */
export interface SavedDesign {
  readonly text: string;
  readonly savedAt: number;
}

/** Where the page keeps its work between visits. */
export interface DesignDatabase {
  read(): Promise<SavedDesign | null>;
  /** Resolves once the record has reached the disk. */
  write(saved: SavedDesign): Promise<void>;
  /** Keeps a record that is about to be replaced, or that cannot be read, apart from the rest. */
  setAside(saved: SavedDesign): Promise<void>;
}

const NAME = 'stillgrip';
const STORE = 'designs';
const CURRENT = 'current';
const ASIDE = 'aside ';
/** Records set aside that are kept; the oldest go first. */
const ASIDE_LIMIT = 10;

export async function openDesignDatabase(): Promise<DesignDatabase> {
  const database = await openDB(NAME, 1, {
    upgrade(created) {
      created.createObjectStore(STORE);
    },
    blocking(_current, _blocked, event) {
      // A newer page wants to rearrange the database: let it.
      (event.target as IDBDatabase).close();
    },
  });
  return {
    async read() {
      const record: unknown = await database.get(STORE, CURRENT);
      return isSaved(record) ? record : null;
    },
    write: (saved) => put(database, CURRENT, saved),
    async setAside(saved) {
      await put(database, `${ASIDE}${new Date(saved.savedAt).toISOString()}`, saved);
      const keys = (await database.getAllKeys(STORE)).filter((key) =>
        String(key).startsWith(ASIDE),
      );
      const surplus = keys.toSorted().slice(0, Math.max(0, keys.length - ASIDE_LIMIT));
      await Promise.all(surplus.map((key) => database.delete(STORE, key)));
    },
  };
}

/** What is called saved must have reached the disk: the browser's default promises less. */
async function put(database: IDBPDatabase, key: string, saved: SavedDesign): Promise<void> {
  const transaction = database.transaction(STORE, 'readwrite', { durability: 'strict' });
  await Promise.all([transaction.store.put(saved, key), transaction.done]);
}

export function isSaved(value: unknown): value is SavedDesign {
  if (typeof value !== 'object' || value === null) return false;
  const { text, savedAt } = value as Record<string, unknown>;
  return typeof text === 'string' && typeof savedAt === 'number' && Number.isFinite(savedAt);
}
