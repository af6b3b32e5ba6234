import { guardedStorage } from '../guardedStorage';

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
  const { keys, read, write, remove } = guardedStorage(storage);
  return {
    all: () => keys(PREFIX).flatMap((key) => noteFrom(key, read(key)) ?? []),
    write: (note) => write(rescueKey(note), JSON.stringify(note)),
    remove,
  };
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
