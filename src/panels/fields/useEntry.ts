import { type KeyboardEvent, useEffect, useRef, useState } from 'react';
import { documentNumber, type ShownUnit, shownNumber, shownStep } from '../../state/shownUnits';
import type { TypedNumber } from '../../state/typed/readTyped';
import { useSession } from '../../ui/session';
import { HeldKey } from './heldKey';

/** What an input shows and does while a number is typed into it. */
export interface Entry {
  readonly text: string;
  /** Something stands there that has not been taken over yet. */
  readonly typing: boolean;
  /** Why what stands in the field was refused; null when it holds. */
  readonly fault: string | null;
  onChange(text: string): void;
  onKeyDown(event: KeyboardEvent<HTMLInputElement>): void;
  onKeyUp(event: KeyboardEvent<HTMLInputElement>): void;
  onBlur(): void;
}

/** What a kind of field does with what was typed. Values in the document's unit; undefined: nothing stands there. */
export interface EntryRules {
  readonly unit: ShownUnit;
  readonly step: number;
  /** Smallest share of a step that a key makes: 1 for whole numbers. */
  readonly leastFactor: number;
  readonly value: number | undefined;
  /** From where the arrow keys step; undefined: they do nothing. `key`: for who knows only what is shown. */
  start(key: HeldKey): number | undefined;
  /** Writes the value, or gives the reason why not and changes nothing. */
  write(next: number | undefined): string | null;
  /** Reads what was typed; an empty text comes here too. */
  read(text: string): TypedNumber;
}

/**
 * Typing a number. Enter or leaving the field commits; what is refused stays in the field with its reason while the
 * design keeps the last good value; Escape puts that back. Arrow keys step (Shift ten times, Alt a tenth); one held key
 * is one undo step.
 */
export function useEntry(rules: EntryRules): Entry {
  const { actions } = useSession();
  const { unit, value } = rules;
  const shown = value === undefined ? '' : shownNumber(value, unit);
  const [draft, setDraft] = useState<string | null>(null);
  const [fault, setFault] = useState<string | null>(null);
  const [held] = useState(() => new HeldKey(actions.gesture));

  // A value that changed elsewhere (undo, a drag on the stage) takes the place of a refused one.
  // So does another unit: a draft means something else in it.
  const [known, setKnown] = useState({ value, unit: unit.name });
  if (!Object.is(known.value, value) || known.unit !== unit.name) {
    setKnown({ value, unit: unit.name });
    setDraft(null);
    setFault(null);
  }
  useEffect(() => () => held.release(), [held]);
  // A field that goes while something stands in it (the page is laid out anew) was left, like any other.
  const leave = useRef(() => {});
  useEffect(() => {
    leave.current = commit;
  });
  useEffect(() => () => leave.current(), []);

  function settle(reason: string | null): boolean {
    setFault(reason);
    if (reason === null) setDraft(null);
    return reason === null;
  }

  function commit(): boolean {
    if (draft === null) return true;
    if (draft.trim() === shown) return settle(null);
    const typed = rules.read(draft);
    return settle(typed.ok ? rules.write(typed.value) : typed.reason);
  }

  function step(direction: 1 | -1, factor: number): void {
    const before: TypedNumber =
      draft === null ? { ok: true, value: rules.start(held) } : rules.read(draft);
    if (!before.ok) {
      settle(before.reason);
      return;
    }
    if (before.value === undefined) return;
    held.press();
    const size = Math.max(rules.leastFactor, factor);
    const next = before.value / unit.perShown + direction * shownStep(rules.step, unit) * size;
    const target = documentNumber(Number(next.toPrecision(10)), unit);
    // At a limit the text shows what was asked for, beside the reason why not.
    if (settle(rules.write(target))) held.wrote(target);
    else setDraft(shownNumber(target, unit));
  }

  return {
    text: draft ?? shown,
    typing: draft !== null,
    fault,
    onChange: setDraft,
    onKeyDown(event) {
      if (event.key === 'ArrowUp' || event.key === 'ArrowDown') {
        step(event.key === 'ArrowUp' ? 1 : -1, event.shiftKey ? 10 : event.altKey ? 0.1 : 1);
      } else if (event.key === 'Enter') {
        if (commit()) event.currentTarget.select();
      } else if (event.key === 'Escape' && (draft !== null || fault !== null)) {
        settle(null);
      } else if (draft === null && isUndo(event)) {
        if (event.shiftKey) actions.redo();
        else actions.undo();
      } else return;
      event.preventDefault();
      event.stopPropagation();
    },
    onKeyUp(event) {
      if (event.key === 'ArrowUp' || event.key === 'ArrowDown') held.release();
    },
    onBlur() {
      held.release();
      commit();
    },
  };
}

/** Nothing is being typed: the keys of the page hold, not the browser's own undo of an empty history. */
function isUndo(event: KeyboardEvent): boolean {
  return (event.ctrlKey || event.metaKey) && !event.altKey && event.key.toLowerCase() === 'z';
}
