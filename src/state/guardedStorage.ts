/** Small texts that the browser keeps and writes at once. */
export interface GuardedStorage {
  /** Those that begin so. */
  keys(prefix: string): readonly string[];
  read(key: string): string | null;
  /** False where the text could not be kept. */
  write(key: string, text: string): boolean;
  remove(key: string): void;
}

/** One of the browser's storages; where it allows none, or no more, it behaves as an empty one. Never throws. */
export function guardedStorage(storage: () => Storage): GuardedStorage {
  function attempt<T>(act: (held: Storage) => T, otherwise: T): T {
    try {
      return act(storage());
    } catch {
      return otherwise;
    }
  }
  return {
    keys: (prefix) => attempt((held) => keysOf(held).filter((key) => key.startsWith(prefix)), []),
    read: (key) => attempt((held) => held.getItem(key), null),
    write: (key, text) =>
      attempt((held) => {
        held.setItem(key, text);
        return true;
      }, false),
    remove: (key) => attempt((held) => held.removeItem(key), undefined),
  };
}

function keysOf(storage: Storage): string[] {
  return Array.from({ length: storage.length }, (_, i) => storage.key(i) ?? '');
}
