import { guardedStorage } from './guardedStorage';

/** Small texts that the browser keeps and writes at once. A browser that allows none behaves as an empty one. */
export interface LocalNotes {
  read(name: string): string | null;
  /** False where the text could not be kept. */
  write(name: string, text: string): boolean;
  remove(name: string): void;
}

const PREFIX = 'stillgrip.';

export function localNotes(): LocalNotes {
  const { read, write, remove } = guardedStorage(() => localStorage);
  return {
    read: (name) => read(PREFIX + name),
    write: (name, text) => write(PREFIX + name, text),
    remove: (name) => remove(PREFIX + name),
  };
}
