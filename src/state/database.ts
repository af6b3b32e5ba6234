import { type IDBPDatabase, openDB } from 'idb';

/** A connection that is made when it is first asked for, one for all who ask. */
export interface Connection<C> {
  /** Made anew where it was lost; rejects where it cannot be had, or after `close`. */
  opened(): Promise<C>;
  /** For good; what was begun on it is ended first. One that is still on its way is closed when it comes. */
  close(): void;
}

/** The browser will not open the database because another tab still has an older one open. */
export class BlockedError extends Error {}

/** `open` makes one and calls `lost` where it is gone again. */
export function connection<C extends { close(): void }>(
  open: (lost: () => void) => Promise<C>,
): Connection<C> {
  let current: Promise<C> | null = null;
  let closed = false;
  function make(): Promise<C> {
    const made = open(forget);
    made.catch(forget);
    return made;

    function forget(): void {
      if (current === made) current = null;
    }
  }
  return {
    async opened() {
      if (closed) throw new DOMException('the connection was closed', 'InvalidStateError');
      current ??= make();
      return current;
    },
    close() {
      closed = true;
      current?.then((made) => made.close()).catch(() => undefined);
      current = null;
    },
  };
}

/**
 * A database of the browser's. It is lost where a newer page wants to rearrange it, or the browser takes it away. Rejects
 * where the browser refuses: no storage, a broken one, or one that a newer page has changed.
 */
export function databaseConnection(
  name: string,
  version: number,
  arrange: (created: IDBPDatabase) => void,
): Connection<IDBPDatabase> {
  return connection(
    (lost) =>
      new Promise((resolve, reject) => {
        let isBlocked = false;
        openDB(name, version, {
          upgrade: arrange,
          blocked() {
            isBlocked = true;
            reject(new BlockedError('another tab has an older store open'));
          },
          blocking(_current, _wanted, event) {
            (event.target as IDBDatabase).close();
            lost();
          },
          terminated: lost,
          // One that comes after all, when nobody waits for it any more, would stand in the way of others.
        }).then((made) => (isBlocked ? made.close() : resolve(made)), reject);
      }),
  );
}
