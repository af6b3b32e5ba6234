import type { Design, Part } from '../design/design';
import type { DesignFault } from '../design/fault';
import {
  addTryOut,
  adoptTryOut,
  duplicateTryOut,
  keepAsTryOut,
  removeTryOut,
  renameTryOut,
  setTryOutNote,
  shownTryOut,
  showTryOut,
  stepTryOut,
  tryOutsOf,
} from '../design/tryOuts';
import { type Result, succeed } from '../engine/result';
import { forgetMissingSelection } from './forgetMissing';
import type { Gesture } from './gesture';
import type { Live } from './live';
import type { AppStore } from './store';

/** So many curves of other try-outs can be told apart by their dashes. */
export const MAX_COMPARED = 6;

/**
 * Work on the try-outs of the open design; see `design/tryOuts` for what each does. Each call that changes something is
 * one undo step, and ends a drag that is under way; a refused one changes nothing. `add` and `keep` and `duplicate`
 * give the id of the new entry, which is compared from then on where there is room.
 */
export interface TryOutActions {
  /** Keeps what is on the stage and goes on with a copy called `name`. */
  keep(name: string): Result<string, DesignFault>;
  /** Adds parts as an entry without showing it. */
  add(parts: readonly Part[], name: string, note?: string): Result<string, DesignFault>;
  /** The same, and puts it on the stage, with what `also` changes of the design: one undo step. */
  addAndShow(
    parts: readonly Part[],
    name: string,
    note?: string,
    also?: AlongWith,
  ): Result<string, DesignFault>;
  duplicate(id: string): Result<string, DesignFault>;
  rename(id: string, name: string): Result<Design, DesignFault>;
  setNote(id: string, note: string): Result<Design, DesignFault>;
  remove(id: string): Result<Design, DesignFault>;
  show(id: string): Result<Design, DesignFault>;
  adopt(id: string): Result<Design, DesignFault>;
  step(step: 1 | -1): Result<Design, DesignFault>;
  /** Lays an entry's curve over the chart, or takes it away; no part of the design. False: there are enough already. */
  compare(id: string, on: boolean): boolean;
}

/** What else changes when an entry comes on the stage; `before` is the id of the one that was there. */
export type AlongWith = (
  design: Design,
  ids: { readonly before: string; readonly now: string },
) => Design;

export function createTryOutActions(store: AppStore, live: Live, gesture: Gesture): TryOutActions {
  const get = store.getState;

  function write(change: (design: Design) => Design): Result<Design, DesignFault> {
    // What the drag has changed so far belongs to the entry that it was made on.
    gesture.end();
    const { design } = get();
    const next = change(design);
    if (next === design) return succeed(design);
    const outcome = live.commitDesign(next);
    if (outcome.ok) forgetMissingSelection(store);
    return outcome;
  }

  /** Writes a change that adds one entry, or two where there were none; all of them are compared if there is room. */
  function writeNew(
    change: (design: Design) => Design,
    isNew: (entry: { readonly parts?: readonly Part[] }) => boolean,
  ): Result<string, DesignFault> {
    const before = new Set(tryOutsOf(get().design).map((one) => one.id));
    const outcome = write(change);
    if (!outcome.ok) return outcome;
    const added = tryOutsOf(outcome.value).filter((one) => !before.has(one.id));
    for (const { id } of added) compare(id, true);
    const [entry] = added.length === 1 ? added : added.filter(isNew);
    return succeed(entry.id);
  }

  function compare(id: string, on: boolean): boolean {
    const { design, compared } = get();
    if (compared.includes(id) === on) return true;
    if (!on) {
      store.setState({ compared: compared.filter((one) => one !== id) });
      return true;
    }
    // Ids of entries that are gone no longer count.
    const there = compared.filter((one) => tryOutsOf(design).some((entry) => entry.id === one));
    const others = there.filter((one) => one !== shownTryOut(design)?.id);
    if (others.length >= MAX_COMPARED && id !== shownTryOut(design)?.id) return false;
    store.setState({ compared: [...there, id] });
    return true;
  }

  return {
    keep: (name) => {
      const shown = shownTryOut(get().design)?.id;
      const outcome = writeNew(
        (design) => keepAsTryOut(design, name),
        (entry) => entry.parts === undefined,
      );
      // The kept one is what the copy is held against.
      if (outcome.ok && shown !== undefined) compare(shown, true);
      return outcome;
    },
    add: (parts, name, note) =>
      writeNew(
        (design) => addTryOut(design, parts, name, note),
        (entry) => entry.parts !== undefined,
      ),
    addAndShow: (parts, name, note, also) => {
      const before = shownTryOut(get().design)?.id;
      const outcome = writeNew(
        (design) => {
          const added = addTryOut(design, parts, name, note);
          const now = tryOutsOf(added)[tryOutsOf(added).length - 1].id;
          const left = shownTryOut(added)?.id ?? now;
          const shown = showTryOut(added, now);
          return also ? also(shown, { before: left, now }) : shown;
        },
        (entry) => entry.parts === undefined,
      );
      // What it is held against.
      if (outcome.ok && before !== undefined) compare(before, true);
      return outcome;
    },
    duplicate: (id) =>
      writeNew(
        (design) => duplicateTryOut(design, id),
        () => true,
      ),
    rename: (id, name) => write((design) => renameTryOut(design, id, name)),
    setNote: (id, note) => write((design) => setTryOutNote(design, id, note)),
    remove: (id) => write((design) => removeTryOut(design, id)),
    show: (id) => write((design) => showTryOut(design, id)),
    adopt: (id) => write((design) => adoptTryOut(design, id)),
    step: (step) => write((design) => stepTryOut(design, step)),
    compare,
  };
}
