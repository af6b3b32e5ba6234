import { inTime } from '../inTime';
import { keepNote, setDesignAside } from './aside';
import { isWhole, listDesigns, readKept } from './designs';
import type { KeepPorts } from './ports';
import type { RecordStore } from './recordStore';
import { type Card, designKey, stoodAt } from './records';
import type { RescueNote } from './rescue';
import type { Origin } from './slot';
import { SilentError, type Trouble, troubleOf } from './trouble';

/** What is said of the work of the last visit. */
export type Found =
  /** Nothing was ever kept here. */
  | { readonly kind: 'nothing' }
  | { readonly kind: 'fine' }
  /** Designs were kept here and the browser has thrown them away. */
  | { readonly kind: 'lost' }
  /** The store cannot be read now; nothing in it is touched. */
  | { readonly kind: 'unread'; readonly trouble: Trouble }
  /** The latest design is damaged and was set aside. */
  | { readonly kind: 'damaged'; readonly reason: string }
  /** A later page made the latest design; it was left alone. */
  | { readonly kind: 'newer' };

export interface Restored<D> {
  readonly design: D | null;
  readonly origin: Origin | null;
  readonly found: Found;
  /** When the latest of what lies here was worked on or looked at, ms since 1970 by the clock of that time; 0 for nothing. */
  readonly latest: number;
}

/** Reads a design's text. */
export type Reader<D> = (
  text: string,
) =>
  | { readonly ok: true; readonly design: D }
  | { readonly ok: false; readonly newer: boolean; readonly reason: string };

/** A store that does not answer must not keep the page from opening, ms. */
export const PATIENCE = 3000;

/** The work of the last visit: that of this tab where it is a reload, else the latest. Never throws. */
export async function restoreWork<D>(ports: KeepPorts, read: Reader<D>): Promise<Restored<D>> {
  const notes = ports.notes.all();
  const opening = ports.store();
  const inPatience = <T>(work: Promise<T>) =>
    inTime(work, PATIENCE, () => new SilentError(), ports.later);
  try {
    return await inPatience(fromStore(await inPatience(opening), notes, ports, read));
  } catch (error) {
    return fromNotes(notes, read, { kind: 'unread', trouble: troubleOf(error) });
  } finally {
    opening.then((store) => store.close()).catch(() => undefined);
  }
}

async function fromStore<D>(
  store: RecordStore,
  notes: readonly RescueNote[],
  ports: KeepPorts,
  read: Reader<D>,
): Promise<Restored<D>> {
  const going: RescueNote[] = [];
  for (const note of notes) {
    if (await goesOn(store, note)) going.push(note);
    else {
      if (!(await isIn(store, note))) await keepNote(store, note, null);
      forget(ports, note);
    }
  }
  const fresh = await listDesigns(store);
  const last = ports.lastOpen.read();
  const order = candidates(fresh.designs, going, last);
  const latest = latestOf(fresh.designs, notes);
  let found: Found = { kind: 'fine' };
  if (order.length === 0 && fresh.newer > 0) found = { kind: 'newer' };
  else if (order.length === 0 && fresh.aside.length === 0) {
    found = { kind: ports.canary.read() ? 'lost' : 'nothing' };
    // Said once.
    ports.canary.write('');
  }
  for (const { card, note } of order) {
    const text = note ? note.text : await wholeText(store, card as Card);
    const outcome = text === null ? CUT : read(text);
    if (outcome.ok) return { design: outcome.design, origin: originOf(card, note), found, latest };
    if (outcome.newer) {
      found = { kind: 'newer' };
      continue;
    }
    found = { kind: 'damaged', reason: outcome.reason };
    if (note) {
      await keepNote(store, note, ports.now());
      forget(ports, note);
    } else if (card) await setDesignAside(store, card.id, 'damaged', ports.now());
  }
  return { design: null, origin: null, found, latest };
}

function latestOf(designs: readonly Card[], notes: readonly RescueNote[]): number {
  return Math.max(0, ...designs.map(stoodAt), ...notes.map(({ savedAt }) => savedAt));
}

/** Unless its tab has written another meanwhile. */
function forget(ports: KeepPorts, note: RescueNote): void {
  const now = ports.notes.all().find(({ key }) => key === note.key);
  if (now?.stamps.at(-1) === note.stamps.at(-1)) ports.notes.remove(note.key);
}

const CUT = { ok: false, newer: false, reason: '' } as const;

interface Candidate {
  readonly card: Card | null;
  readonly note: RescueNote | null;
}

function candidates(
  designs: readonly Card[],
  notes: readonly RescueNote[],
  last: string | null,
): readonly Candidate[] {
  const free = notes.filter((note) => !designs.some(({ id }) => id === note.id));
  // A note before what it continues, which is opened where the note cannot be read.
  const all: Candidate[] = [
    ...designs.flatMap((card) => {
      const note = newestOf(notes.filter(({ id }) => id === card.id));
      return note
        ? [
            { card, note },
            { card, note: null },
          ]
        : [{ card, note: null }];
    }),
    ...free.map((note) => ({ card: null, note })),
  ];
  const at = ({ card, note }: Candidate) => note?.savedAt ?? (card ? stoodAt(card) : 0);
  const isLast = ({ card, note }: Candidate) => Number((card ?? note)?.id === last);
  return all.toSorted((a, b) => isLast(b) - isLast(a) || at(b) - at(a));
}

function newestOf(notes: readonly RescueNote[]): RescueNote | null {
  return notes.toSorted((a, b) => b.savedAt - a.savedAt)[0] ?? null;
}

/** Whether a note continues what is stored, and the store has it not yet. */
async function goesOn(store: RecordStore, note: RescueNote): Promise<boolean> {
  const kept = await readKept(store, designKey(note.id));
  if (!kept) return note.revision === 0;
  if (kept.card.stamp === note.stamps.at(-1)) return false;
  return kept.card.revision === note.revision || note.stamps.includes(kept.card.stamp);
}

/** Whether the store has it: this very write, or a later one of the same tab, which went on from it. */
async function isIn(store: RecordStore, note: RescueNote): Promise<boolean> {
  const kept = await readKept(store, designKey(note.id));
  if (!kept) return false;
  const { card } = kept;
  if (kept.text === note.text) return true;
  return (
    card.stamp === note.stamps.at(-1) ||
    (card.writer === note.writer && card.savedAt > note.savedAt)
  );
}

async function wholeText(store: RecordStore, card: Card): Promise<string | null> {
  const kept = await readKept(store, card.key);
  return kept && isWhole(kept) ? kept.text : null;
}

function originOf(card: Card | null, note: RescueNote | null): Origin {
  const copyOf = card?.copyOf;
  if (!note) {
    const { id, revision, edited } = card as Card;
    return { id, revision, edited, copyOf, stamps: [], stored: true, notes: [] };
  }
  const { id, revision, stamps, key } = note;
  return { id, revision, edited: true, copyOf, stamps, stored: false, notes: [key] };
}

function fromNotes<D>(notes: readonly RescueNote[], read: Reader<D>, found: Found): Restored<D> {
  const latest = latestOf([], notes);
  for (const note of notes.toSorted((a, b) => b.savedAt - a.savedAt)) {
    const outcome = read(note.text);
    if (outcome.ok) return { design: outcome.design, origin: originOf(null, note), found, latest };
  }
  return { design: null, origin: null, found, latest };
}
