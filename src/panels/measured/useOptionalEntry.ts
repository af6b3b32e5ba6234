import { type KeyboardEvent, useCallback, useEffect, useRef, useState } from 'react';
import { checkNumber } from '../../design/checkNumber';
import type { DesignFault } from '../../design/fault';
import { faultMessage } from '../../design/faultText';
import type { MeasuredLimits } from '../../design/measured';
import { t } from '../../messages';
import type { Hold } from '../../state/gesture';
import {
  documentNumber,
  type ShownUnit,
  shownNumber,
  shownStep,
  shownText,
  shownUnit,
} from '../../state/shownUnits';
import { useAppState, useSession } from '../../ui/session';
import { parseQuantity, type QuantityFault } from '../fields/parseQuantity';

/** A number that may be absent: nothing was measured. In the document's unit. */
export interface OptionalField {
  readonly key: string;
  readonly label: string;
  readonly help: string;
  readonly limits: MeasuredLimits;
  readonly step: number;
  /** Writes a value within its limits, or nothing; says why not, in words, and changes nothing. */
  commit(value: number | undefined): string | null;
}

export interface OptionalEntry {
  readonly text: string;
  readonly unit: ShownUnit;
  readonly fault: string | null;
  onChange(text: string): void;
  onKeyDown(event: KeyboardEvent<HTMLInputElement>): void;
  onKeyUp(event: KeyboardEvent<HTMLInputElement>): void;
  onBlur(): void;
}

/**
 * Typing into a field that may stay empty, by the rules of `useNumberEntry`: Enter or leaving commits, what is refused
 * stays with its reason, Escape puts the last good value back, arrow keys step.
 */
export function useOptionalEntry(field: OptionalField, value: number | undefined): OptionalEntry {
  const { actions } = useSession();
  const units = useAppState((state) => state.settings.units);
  const unit = shownUnit(field.limits.unit, units);
  const shown = value === undefined ? '' : shownNumber(value, unit);
  const [draft, setDraft] = useState<string | null>(null);
  const [fault, setFault] = useState<string | null>(null);
  const stepping = useRef<Hold | null>(null);

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

  function settle(reason: string | null): boolean {
    setFault(reason && withKept(reason, value, unit));
    if (reason === null) setDraft(null);
    return reason === null;
  }

  function write(next: number | undefined): boolean {
    return settle(outOfLimits(field, next, unit) ?? field.commit(next));
  }

  function commit(): boolean {
    if (draft === null) return true;
    if (draft.trim() === shown) return settle(null);
    if (draft.trim() === '') return write(undefined);
    const typed = parsed(draft, field, unit);
    return typed.ok ? write(typed.value) : settle(typedFault(typed.error, field.label));
  }

  function step(direction: 1 | -1, factor: number): void {
    const before =
      draft === null
        ? { ok: true as const, value: value ?? field.limits.standard }
        : parsed(draft, field, unit);
    if (!before.ok) {
      settle(typedFault(before.error, field.label));
      return;
    }
    if (before.value === undefined) return;
    if (!stepping.current?.alive) stepping.current = actions.gesture.begin();
    const size = field.limits.whole ? Math.max(1, factor) : factor;
    const next = before.value / unit.perShown + direction * shownStep(field.step, unit) * size;
    const target = documentNumber(Number(next.toPrecision(10)), unit);
    if (!write(target)) setDraft(shownNumber(target, unit));
  }

  return {
    text: draft ?? shown,
    unit,
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

function isUndo(event: KeyboardEvent): boolean {
  return (event.ctrlKey || event.metaKey) && !event.altKey && event.key.toLowerCase() === 'z';
}

function parsed(draft: string, { limits }: OptionalField, unit: ShownUnit) {
  // Where one unit is shown only, its typed name is the document's own.
  return parseQuantity(draft, limits.unit, limits.unit === 'g mm2' ? limits.unit : unit.name);
}

function withKept(reason: string, value: number | undefined, unit: ShownUnit): string {
  return value === undefined
    ? t('measured.keptNone', { reason })
    : t('fields.kept', { reason, kept: shownText(value, unit) });
}

/** Why a value lies outside the field's own limits, in the units on screen; null where it does not. */
export function outOfLimits(
  { label, limits }: Pick<OptionalField, 'label' | 'limits'>,
  value: number | undefined,
  unit: ShownUnit,
): string | null {
  const found: DesignFault | null = value === undefined ? null : checkNumber(value, limits, '');
  if (!found) return null;
  const { reason } = found;
  const limit = (bound: number) => shownText(Number(bound.toPrecision(6)), unit);
  switch (reason.code) {
    case 'tooSmall':
      return t('fields.atLeast', { field: label, limit: limit(reason.limit) });
    case 'tooLarge':
      return t('fields.atMost', { field: label, limit: limit(reason.limit) });
    case 'notWhole':
      return t('fields.notWhole', { field: label });
    default:
      return t('fields.notAllowed', { field: label, reason: faultMessage(reason) });
  }
}

/** Why typed text was not read, in words. */
export function typedFault(fault: QuantityFault, field: string): string {
  const text = 'text' in fault ? fault.text.slice(0, 40) : '';
  switch (fault.code) {
    case 'ambiguousComma':
      return t('fields.typedAmbiguousComma', { field, text });
    case 'unknownUnit':
      return t('fields.typedUnknownUnit', { field, text });
    case 'wrongUnit':
      return t('fields.typedWrongUnit', { field, text });
    case 'divideByZero':
      return t('fields.typedDivideByZero', { field });
    default:
      return t('measured.typedNotANumber', { field, text });
  }
}
