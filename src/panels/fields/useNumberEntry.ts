import { t } from '../../messages';
import { refusalText } from '../../state/refusalText';
import { type ShownUnit, shownText, shownUnit } from '../../state/shownUnits';
import { readTyped } from '../../state/typed/readTyped';
import { useAppState, useSession } from '../../ui/session';
import type { NumberField } from './fieldModel';
import { type Entry, useEntry } from './useEntry';

/** What a number field's input shows and does. */
export interface NumberEntry extends Entry {
  readonly unitName: string;
  readonly unit: ShownUnit;
  /** The number with its unit, for screen readers. */
  readonly spoken: string;
}

/** Typing into a number field, by the rules of `useEntry`. `value` is what the design holds. */
export function useNumberEntry(
  field: NumberField,
  value: number,
  partId: string | null,
  onCommitted: (value: number) => void,
): NumberEntry {
  const { store } = useSession();
  const units = useAppState((state) => state.settings.units);
  const unit = shownUnit(field.unit, units);
  const entry = useEntry({
    unit,
    value,
    step: field.step,
    leastFactor: field.unit === '1' ? 1 : 0,
    start: () => field.read(),
    read: (text) => readTyped(text, field, unit, shownText(value, unit)),
    write(next) {
      if (next === undefined) return null;
      const refusal = field.commit(next);
      if (!refusal) {
        onCommitted(next);
        return null;
      }
      const reason = refusalText(refusal, store.getState().design, partId, units);
      return t('fields.kept', { reason, kept: shownText(field.read(), unit) });
    },
  });
  return { ...entry, unit, unitName: unit.name, spoken: shownText(value, unit) };
}
