import type { Slip } from './ports';

/** One text in a storage of the browser. One that allows no storage behaves as an empty one. */
export function slip(storage: () => Storage, key: string): Slip {
  return {
    read() {
      try {
        return storage().getItem(key);
      } catch {
        return null;
      }
    },
    write(text) {
      try {
        storage().setItem(key, text);
      } catch {
        // It is a reminder only.
      }
    },
  };
}
