/**
 * The last moment of a page that is being left: a database write begun then may never finish, a local note is written at
 * once. One note for each tab and design, so that tabs do not write over each other's.
 */
export interface RescueNote {
  readonly key: string;
  readonly id: string;
  /** The revision of the stored design that this continues. */
  readonly revision: number;
  readonly writer: string;
  /** Of the writes that may have been made since that revision; the last is that of this text. */
  readonly stamps: readonly string[];
  readonly name: string;
  readonly savedAt: number;
  readonly text: string;
}

export interface RescueNotes {
  all(): readonly RescueNote[];
  /** False where it could not be kept. */
  write(note: Omit<RescueNote, 'key'>): boolean;
  remove(key: string): void;
}

const PREFIX = 'stillgrip.rescue.';

export function rescueKey(note: Pick<RescueNote, 'writer' | 'id'>): string {
  return `${PREFIX}${note.writer}.${note.id}`;
}

/** In the storage that is given; a browser that allows none behaves as one without notes. */
export function rescueNotes(storage: () => Storage): RescueNotes {
  return {
    all() {
      try {
        const held = storage();
        return keysOf(held).flatMap((key) => noteFrom(key, held.getItem(key)) ?? []);
      } catch {
        return [];
      }
    },
    write(note) {
      try {
        storage().setItem(rescueKey(note), JSON.stringify(note));
        return true;
      } catch {
        return false;
      }
    },
    remove(key) {
      try {
        storage().removeItem(key);
      } catch {
        // Nothing was kept, so nothing is left.
      }
    },
  };
}

function keysOf(storage: Storage): string[] {
  const keys: string[] = [];
  for (let i = 0; i < storage.length; i++) {
    const key = storage.key(i);
    if (key?.startsWith(PREFIX)) keys.push(key);
  }
  return keys;
}

/** What is cut off or foreign is nothing; it is left where it is. */
function noteFrom(key: string, text: string | null): RescueNote | null {
  try {
    const note = JSON.parse(text ?? '') as Record<string, unknown>;
    const { stamps } = note;
    const texts = [note.id, note.writer, note.name, note.text];
    const numbers = [note.revision, note.savedAt];
    const sound =
      Array.isArray(stamps) &&
      [...texts, ...stamps].every((one) => typeof one === 'string') &&
      numbers.every((one) => Number.isFinite(one));
    return sound ? ({ ...note, key } as unknown as RescueNote) : null;
  } catch {
    return null;
  }
}
