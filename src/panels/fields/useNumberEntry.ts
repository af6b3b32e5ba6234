import { type KeyboardEvent, useCallback, useEffect, useRef, useState } from 'react';
import { t } from '../../messages';
import type { Hold } from '../../state/gesture';
import { refusalText } from '../../state/refusalText';
import {
  documentNumber,
  shownNumber,
  shownStep,
  shownText,
  shownUnit,
} from '../../state/shownUnits';
import { useAppState, useSession } from '../../ui/session';
import type { NumberField } from './fieldModel';
import { parseQuantity, type QuantityFault } from './parseQuantity';

/** What a number field's input shows and does. */
export interface NumberEntry {
  readonly text: string;
  readonly unitName: string;
  /** The number with its unit, for screen readers. */
  readonly spoken: string;
  /** Why what stands in the field was refused; null when it holds. */
  readonly fault: string | null;
  onChange(text: string): void;
  onKeyDown(event: KeyboardEvent<HTMLInputElement>): void;
  onKeyUp(event: KeyboardEvent<HTMLInputElement>): void;
  onBlur(): void;
}

/**
 * Typing into a number field. Enter or leaving the field commits; what is refused stays in the field with its reason
 * while the design keeps the last good value; Escape puts that back. Arrow keys step (Shift ten times, Alt a tenth);
 * one held key is one undo step. `value` is what the design holds.
 */
export function useNumberEntry(
  field: NumberField,
  value: number,
  partId: string | null,
  onCommitted: (value: number) => void,
): NumberEntry {
  const { store, actions } = useSession();
  const units = useAppState((state) => state.settings.units);
  const unit = shownUnit(field.unit, units);
  const shown = shownNumber(value, unit);
  const [draft, setDraft] = useState<string | null>(null);
  const [fault, setFault] = useState<string | null>(null);
  const stepping = useRef<Hold | null>(null);

  // A value that changed elsewhere (undo, a drag on the stage) takes the place of a refused one.
  // So does another unit: a draft means something else in it.
  const [known, setKnown] = useState({ value, unit: unit.name });
  if (!Object.is(known.value, value) || known.unit !== unit.name) {
    setKnown({ value, unit: unit.name });
    setDraft(null);
    setFault(null);
  }
  const endStepping = useCallback(() => {
    stepping.current?.end();
    stepping.current = null;
  }, []);
  useEffect(() => endStepping, [endStepping]);

  function refuse(reason: string): boolean {
    setFault(reason);
    return false;
  }

  function write(next: number): boolean {
    const refusal = field.commit(next);
    if (refusal) {
      const reason = refusalText(refusal, store.getState().design, partId, units);
      return refuse(t('fields.kept', { reason, kept: shownText(field.read(), unit) }));
    }
    setDraft(null);
    setFault(null);
    onCommitted(next);
    return true;
  }

  function commit(): boolean {
    if (draft === null) return true;
    if (draft.trim() === shown) {
      setDraft(null);
      setFault(null);
      return true;
    }
    const parsed = parseQuantity(draft, field.unit, unit.name);
    return parsed.ok
      ? write(parsed.value)
      : refuse(typedFault(parsed.error, field, shownText(value, unit)));
  }

  function step(direction: 1 | -1, factor: number): void {
    const before =
      draft === null
        ? { ok: true as const, value: field.read() }
        : parseQuantity(draft, field.unit, unit.name);
    if (!before.ok) {
      refuse(typedFault(before.error, field, shownText(value, unit)));
      return;
    }
    if (!stepping.current?.alive) stepping.current = actions.gesture.begin();
    const size = field.unit === '1' ? Math.max(1, factor) : factor;
    const shownBefore = before.value / unit.perShown;
    const next = shownBefore + direction * shownStep(field.step, unit) * size;
    const target = documentNumber(Number(next.toPrecision(10)), unit);
    // At a limit the text shows what was asked for, beside the reason why not.
    if (!write(target)) setDraft(shownNumber(target, unit));
  }

  return {
    text: draft ?? shown,
    unitName: unit.name,
    spoken: shownText(value, unit),
    fault,
    onChange: setDraft,
    onKeyDown(event) {
      if (event.key === 'ArrowUp' || event.key === 'ArrowDown') {
        step(event.key === 'ArrowUp' ? 1 : -1, event.shiftKey ? 10 : event.altKey ? 0.1 : 1);
      } else if (event.key === 'Enter') {
        if (commit()) event.currentTarget.select();
      } else if (event.key === 'Escape' && (draft !== null || fault !== null)) {
        setDraft(null);
        setFault(null);
      } else if (draft === null && isUndo(event)) {
        if (event.shiftKey) actions.redo();
        else actions.undo();
      } else return;
      event.preventDefault();
      event.stopPropagation();
    },
    onKeyUp(event) {
      if (event.key === 'ArrowUp' || event.key === 'ArrowDown') endStepping();
    },
    onBlur() {
      endStepping();
      commit();
    },
  };
}

/** Nothing is being typed: the keys of the page hold, not the browser's own undo of an empty history. */
function isUndo(event: KeyboardEvent): boolean {
  return (event.ctrlKey || event.metaKey) && !event.altKey && event.key.toLowerCase() === 'z';
}

function typedFault(fault: QuantityFault, { label: field }: NumberField, kept: string): string {
  const text = 'text' in fault ? fault.text : '';
  switch (fault.code) {
    case 'empty':
      return t('fields.typedEmpty', { field, kept });
    case 'notANumber':
      return t('fields.typedNotANumber', { field, text: text.slice(0, 40), kept });
    case 'ambiguousComma':
      return t('fields.typedAmbiguousComma', { field, text });
    case 'unknownUnit':
      return t('fields.typedUnknownUnit', { field, text: text.slice(0, 40) });
    case 'wrongUnit':
      return t('fields.typedWrongUnit', { field, text });
    case 'divideByZero':
      return t('fields.typedDivideByZero', { field });
  }
}
