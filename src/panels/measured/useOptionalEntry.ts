import type { MeasuredLimits } from '../../design/measured';
import { t } from '../../messages';
import { type ShownUnit, shownText, shownUnit } from '../../state/shownUnits';
import { outOfLimits, readTyped } from '../../state/typed/readTyped';
import { useAppState } from '../../ui/session';
import { type Entry, useEntry } from '../fields/useEntry';

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

export interface OptionalEntry extends Entry {
  readonly unit: ShownUnit;
}

/** Typing into a field that may stay empty, by the rules of `useEntry`. */
export function useOptionalEntry(field: OptionalField, value: number | undefined): OptionalEntry {
  const units = useAppState((state) => state.settings.units);
  const { limits, label } = field;
  const unit = shownUnit(limits.unit, units);
  const withKept = (reason: string) =>
    value === undefined
      ? t('measured.keptNone', { reason })
      : t('fields.kept', { reason, kept: shownText(value, unit) });
  const entry = useEntry({
    unit,
    value,
    step: field.step,
    leastFactor: limits.whole ? 1 : 0,
    start: (key) => key.from(value ?? limits.standard),
    read(text) {
      if (text.trim() === '') return { ok: true, value: undefined };
      const typed = readTyped(text, { label, unit: limits.unit }, unit, null);
      return typed.ok ? typed : { ok: false, reason: withKept(typed.reason) };
    },
    write(next) {
      const reason = outOfLimits(field, next, unit) ?? field.commit(next);
      return reason && withKept(reason);
    },
  });
  return { ...entry, unit };
}
