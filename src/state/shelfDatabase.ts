import type { IDBPObjectStore } from 'idb';
import { databaseConnection } from './database';
import { browserLater, inTime } from './inTime';
import type { ShelfItem } from './shelfItem';

/** Where the shelf lies between visits: one record an item, so that two tabs never overwrite each other's. */
export interface ShelfDatabase {
  /** Every record as it was found; whoever reads checks them. */
  readAll(): Promise<readonly unknown[]>;
  /** Each resolves once the change has reached the disk. */
  put(item: ShelfItem): Promise<void>;
  remove(id: string): Promise<void>;
  /** For good. */
  close(): void;
}

/**
 * A database of its own, beside that of the open design. In that one a new object store would need a new version, and
 * a tab that an older page still has open could not get at its own design again: the browser refuses a database that
 * is newer than asked for.
 */
const NAME = 'stillgrip-shelf';
const VERSION = 1;
const STORE = 'items';
/** A database that does not answer in this time counts as refused, ms. */
const PATIENCE = 3000;

type ItemStore = IDBPObjectStore<unknown, [typeof STORE], typeof STORE, 'readwrite'>;

export async function openShelfDatabase(): Promise<ShelfDatabase> {
  const { opened, close } = databaseConnection(NAME, VERSION, (created) => {
    created.createObjectStore(STORE, { keyPath: 'id' });
  });

  /** What is called kept must have reached the disk: the browser's default promises less. */
  async function change(act: (store: ItemStore) => Promise<unknown>): Promise<void> {
    const transaction = (await opened()).transaction(STORE, 'readwrite', { durability: 'strict' });
    await Promise.all([act(transaction.store), transaction.done]);
  }

  const late = () => new Error('the database does not answer');
  await inTime(opened(), PATIENCE, late, browserLater).catch((error: unknown) => {
    close();
    throw error;
  });
  return {
    readAll: async () => (await opened()).getAll(STORE),
    put: (item) => change((store) => store.put(item)),
    remove: (id) => change((store) => store.delete(id)),
    close,
  };
}
