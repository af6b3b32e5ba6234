import type { WorkState } from './ports';
import type { RescueNote } from './rescue';

/** Where the keeper stands with one design that this tab has or had open. */
export interface Slot {
  id: string;
  copyOf: string | undefined;
  /** The stored revision that this tab knows; 0 while it is not stored. */
  revision: number;
  /** Stamps of writes that may or may not have been made since. */
  mine: string[];
  /** Stamp of a mark on that revision that may or may not have been made: it changes nothing but who may write. */
  claim: string | null;
  /**
   * Whether this tab may write it: `asked` until the browser has answered, `elsewhere` while another tab may, `left` once
   * another design has taken its place here.
   */
  right: 'asked' | 'mine' | 'elsewhere' | 'left';
  /** Of the right as it is held or stood in line for; null where it is neither. */
  ticket: object | null;
  /** Gives the right back, or leaves the line for it. */
  release: () => void;
  /** The state that is to be stored, and the one that is; a slot is behind while they are two. */
  wanted: WorkState;
  kept: WorkState | null;
  /** When `wanted` came about, ms since 1970; no two of a tab are the same. */
  changedAt: number;
  /** The design as it was opened, to tell whether anything was changed. */
  readonly opened: { design: object };
  edited: boolean;
  /** The stamp that the write of `wanted` will bear; one for each state, also when it is tried again. */
  next: { readonly design: object; readonly stamp: string } | null;
  /** Keys of rescue notes that are no longer needed once this is stored. */
  notes: string[];
}

/** What a slot begins with where the design comes from the store or a note. */
export interface Origin {
  readonly id: string;
  readonly revision: number;
  readonly stamps: readonly string[];
  readonly edited: boolean;
  readonly copyOf?: string | undefined;
  /** False where the store does not have this very state. */
  readonly stored: boolean;
  readonly notes: readonly string[];
}

export function newOrigin(id: string): Origin {
  return { id, revision: 0, stamps: [], edited: false, stored: false, notes: [] };
}

export function createSlot(origin: Origin, state: WorkState, now: number): Slot {
  return {
    id: origin.id,
    copyOf: origin.copyOf,
    revision: origin.revision,
    mine: [...origin.stamps],
    claim: null,
    // Nobody else can have a design that is stored nowhere.
    right: origin.revision === 0 ? 'mine' : 'left',
    ticket: null,
    release: () => undefined,
    wanted: state,
    kept: origin.stored ? state : null,
    changedAt: now,
    opened: { design: state.design },
    edited: origin.edited,
    next: null,
    notes: [...origin.notes],
  };
}

/** Also where a write failed whose answer alone may have been lost: the store may hold what was since taken back. */
export function isBehind(slot: Slot): boolean {
  return slot.wanted.design !== slot.kept?.design || slot.mine.length > 0;
}

/** The stamps that the store may bear, besides the revision, where nobody else has written since. */
export function ownStamps({ mine, claim }: Slot): readonly string[] {
  return claim === null ? mine : [...mine, claim];
}

/** The stamp of the state that is to be written. */
export function stampOf(slot: Slot, newId: () => string): string {
  if (slot.next?.design !== slot.wanted.design) {
    slot.next = { design: slot.wanted.design, stamp: newId() };
  }
  return slot.next.stamp;
}

/** What would be left of the slot if the page were gone in this moment. */
export function noteOf(
  slot: Slot,
  by: { writer: string; stamp: string; text: string },
): Omit<RescueNote, 'key'> {
  const { writer, stamp, text } = by;
  return {
    id: slot.id,
    revision: slot.revision,
    writer,
    stamps: [...ownStamps(slot).filter((one) => one !== stamp), stamp],
    name: slot.wanted.design.name,
    savedAt: slot.changedAt,
    text,
  };
}
