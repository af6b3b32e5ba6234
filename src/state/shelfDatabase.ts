import { type IDBPDatabase, type IDBPObjectStore, openDB } from 'idb';
import type { ShelfItem } from './shelfItem';

/** Where the shelf lies between visits: one record an item, so that two tabs never overwrite each other's. */
export interface ShelfDatabase {
  /** Every record as it was found; whoever reads checks them. */
  readAll(): Promise<readonly unknown[]>;
  /** Each resolves once the change has reached the disk. */
  put(item: ShelfItem): Promise<void>;
  remove(id: string): Promise<void>;
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
  let database: IDBPDatabase | null = null;

  /** Opened again where it was closed: a newer page wanted to rearrange it, or the browser took it away. */
  async function opened(): Promise<IDBPDatabase> {
    if (database) return database;
    const forget = () => {
      database = null;
    };
    database = await openDB(NAME, VERSION, {
      upgrade(created) {
        created.createObjectStore(STORE, { keyPath: 'id' });
      },
      blocking(_current, _blocked, event) {
        (event.target as IDBDatabase).close();
        forget();
      },
      terminated: forget,
    });
    return database;
  }

  /** What is called kept must have reached the disk: the browser's default promises less. */
  async function change(act: (store: ItemStore) => Promise<unknown>): Promise<void> {
    const transaction = (await opened()).transaction(STORE, 'readwrite', { durability: 'strict' });
    await Promise.all([act(transaction.store), transaction.done]);
  }

  await inTime(opened());
  return {
    readAll: async () => (await opened()).getAll(STORE),
    put: (item) => change((store) => store.put(item)),
    remove: (id) => change((store) => store.delete(id)),
  };
}

function inTime<T>(work: Promise<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    const timer = setTimeout(() => reject(new Error('the database does not answer')), PATIENCE);
    work.finally(() => clearTimeout(timer)).then(resolve, reject);
  });
}
