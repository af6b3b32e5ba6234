/** Small texts that the browser keeps and writes at once. A browser that allows none behaves as an empty one. */
export interface LocalNotes {
  read(name: string): string | null;
  /** False where the text could not be kept. */
  write(name: string, text: string): boolean;
  remove(name: string): void;
}

const PREFIX = 'stillgrip.';

export function localNotes(): LocalNotes {
  return {
    read(name) {
      try {
        return localStorage.getItem(PREFIX + name);
      } catch {
        return null;
      }
    },
    write(name, text) {
      try {
        localStorage.setItem(PREFIX + name, text);
        return true;
      } catch {
        return false;
      }
    },
    remove(name) {
      try {
        localStorage.removeItem(PREFIX + name);
      } catch {
        // Nothing was kept, so nothing is left.
      }
    },
  };
}
