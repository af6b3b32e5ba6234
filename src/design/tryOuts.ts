import { t } from '../messages';
import type { Design, Part, TryOut } from './design';
import { freshIdAmong, freshNameAmong } from './freshName';

/**
 * Work on the try-outs of a design: every function gives a new design (or the same object where nothing changes) and
 * never loses a list of parts but the one that `removeTryOut` is asked to take away. One entry has no parts of its own:
 * it is on the stage, and the design's parts are its parts. An id that is not there is a programmer's fault and throws.
 */

const NONE: readonly TryOut[] = [];

interface Listed {
  readonly tryOuts?: readonly TryOut[] | undefined;
}

export function tryOutsOf(design: Listed): readonly TryOut[] {
  return design.tryOuts ?? NONE;
}

/** The one on the stage; null where there are no try-outs. */
export function shownTryOut(design: Listed): TryOut | null {
  return tryOutsOf(design).find((one) => one.parts === undefined) ?? null;
}

/** The parts of an entry, on the stage or not. */
export function partsOfTryOut(design: Design, id: string): readonly Part[] {
  return entryAt(design, id).parts ?? design.parts;
}

/**
 * Keeps what is on the stage under its name (the first time "Head as it was") and goes on with a copy of it, called
 * `name`, which is from now on the one on the stage.
 */
export function keepAsTryOut(design: Design, name: string): Design {
  const before = tryOutsOf(listed(design));
  const at = before.findIndex((one) => one.parts === undefined);
  const kept = withParts(before[at], design.parts);
  return {
    ...design,
    tryOuts: [...before.slice(0, at), kept, fresh(before, name), ...before.slice(at + 1)],
  };
}

/** Adds a list of parts as the last entry, without showing it. The first time the head as it is becomes an entry too. */
export function addTryOut(design: Design, parts: readonly Part[], name: string, note = ''): Design {
  const before = tryOutsOf(listed(design));
  const added = { ...fresh(before, name), ...(note === '' ? {} : { note }), parts };
  return { ...design, tryOuts: [...before, added] };
}

/** A copy beside the original, not shown and not adopted. */
export function duplicateTryOut(design: Design, id: string): Design {
  const before = tryOutsOf(design);
  const at = before.indexOf(entryAt(design, id));
  const { name, note } = before[at];
  const copy = {
    ...fresh(before, name),
    ...(note === undefined ? {} : { note }),
    parts: partsOfTryOut(design, id),
  };
  return { ...design, tryOuts: [...before.slice(0, at + 1), copy, ...before.slice(at + 1)] };
}

export function renameTryOut(design: Design, id: string, name: string): Design {
  const entry = entryAt(design, id);
  return entry.name === name ? design : replaced(design, entry, { ...entry, name });
}

/** An empty note is none. */
export function setTryOutNote(design: Design, id: string, note: string): Design {
  const entry = entryAt(design, id);
  if ((entry.note ?? '') === note) return design;
  const { note: _, ...rest } = entry;
  return replaced(design, entry, note === '' ? rest : { ...rest, note });
}

/**
 * Takes an entry away with its parts. Of the one on the stage: the next (or the one before) is shown first. The only one
 * left: the list goes, and its parts stay as the head.
 */
export function removeTryOut(design: Design, id: string): Design {
  const entry = entryAt(design, id);
  const before = tryOutsOf(design);
  if (before.length === 1) {
    const { tryOuts: _, ...rest } = design;
    return rest;
  }
  const at = before.indexOf(entry);
  const neighbour = before[at + 1] ?? before[at - 1];
  const shown = entry.parts === undefined ? showTryOut(design, neighbour.id) : design;
  return { ...shown, tryOuts: tryOutsOf(shown).filter((one) => one.id !== id) };
}

/** Puts an entry on the stage; the one that was there takes the design's parts with it. */
export function showTryOut(design: Design, id: string): Design {
  const chosen = entryAt(design, id);
  if (chosen.parts === undefined) return design;
  const tryOuts = tryOutsOf(design).map((one) => {
    if (one === chosen) return withoutParts(one);
    return one.parts === undefined ? withParts(one, design.parts) : one;
  });
  return { ...design, tryOuts, parts: chosen.parts };
}

/** Shows an entry and marks it as the adopted one; no other keeps the mark. */
export function adoptTryOut(design: Design, id: string): Design {
  const shown = showTryOut(design, id);
  if (entryAt(shown, id).adopted) return shown;
  const tryOuts = tryOutsOf(shown).map((one): TryOut => {
    const { adopted: _, parts, ...rest } = one;
    return {
      ...rest,
      ...(one.id === id ? { adopted: true } : {}),
      ...(parts === undefined ? {} : { parts }),
    };
  });
  return { ...shown, tryOuts };
}

/** Shows the next entry, or the one before; after the last comes the first. */
export function stepTryOut(design: Design, step: 1 | -1): Design {
  const all = tryOutsOf(design);
  if (all.length < 2) return design;
  const at = all.findIndex((one) => one.parts === undefined);
  return showTryOut(design, all[(at + step + all.length) % all.length].id);
}

/** With a first entry for the head as it is, where there was none. */
function listed(design: Design): Design {
  if (tryOutsOf(design).length > 0) return design;
  return { ...design, tryOuts: [fresh(NONE, t('tryOuts.asItWas'))] };
}

function fresh(others: readonly TryOut[], name: string): TryOut {
  return {
    id: freshIdAmong(new Set(others.map((one) => one.id)), 'try'),
    name: freshNameAmong(new Set(others.map((one) => one.name)), name),
  };
}

function entryAt(design: Design, id: string): TryOut {
  const entry = tryOutsOf(design).find((one) => one.id === id);
  if (!entry) throw new RangeError(`tryOuts: there is no try-out ${id}`);
  return entry;
}

function replaced(design: Design, entry: TryOut, next: TryOut): Design {
  return { ...design, tryOuts: tryOutsOf(design).map((one) => (one === entry ? next : one)) };
}

function withParts(entry: TryOut, parts: readonly Part[]): TryOut {
  return { ...entry, parts };
}

function withoutParts(entry: TryOut): TryOut {
  const { parts: _, ...rest } = entry;
  return rest;
}
