import { useId } from 'react';
import { t } from '../../messages';
import { shownText, shownUnit } from '../../state/shownUnits';
import { useAppState } from '../../ui/session';
import { FieldLabel } from '../fields/FieldLabel';
import { type OptionalField, useOptionalEntry } from './useOptionalEntry';
import '../fields/fields.css';

/** A row of the numbers panel whose field may stay empty. */
export function OptionalNumberRow(props: {
  readonly field: OptionalField;
  readonly value: number | undefined;
  /** Stands in the empty field. */
  readonly placeholder?: string;
}) {
  const { field, value } = props;
  const id = useId();
  const help = useHelp(field);
  const entry = useOptionalEntry(field, value);
  const refused = entry.fault !== null;
  const { standard } = field.limits;
  return (
    <div className="field" data-help={help} data-testid={`field-${field.key}`}>
      <FieldLabel input={id} field={field} />
      <span className="field-box" data-invalid={refused || undefined}>
        <input
          id={id}
          className="field-input"
          type="text"
          inputMode="decimal"
          autoComplete="off"
          spellCheck={false}
          placeholder={
            standard === undefined
              ? (props.placeholder ?? t('measured.none'))
              : shownText(standard, entry.unit)
          }
          aria-invalid={refused}
          aria-describedby={refused ? `${id}-help ${id}-fault` : `${id}-help`}
          data-testid={`input-${field.key}`}
          value={entry.text}
          onChange={(event) => entry.onChange(event.target.value)}
          onFocus={(event) => event.target.select()}
          onKeyDown={entry.onKeyDown}
          onKeyUp={entry.onKeyUp}
          onBlur={entry.onBlur}
        />
        {entry.text !== '' && entry.unit.name && (
          <span className="field-unit">{entry.unit.name}</span>
        )}
        <span className="ui-unseen" id={`${id}-help`}>
          {help}
        </span>
      </span>
      {refused && (
        <p className="field-fault" role="alert" id={`${id}-fault`}>
          {entry.fault}
        </p>
      )}
    </div>
  );
}

/** The help sentence with the limits, and what holds while the field is empty. */
function useHelp({ help, limits }: OptionalField): string {
  const units = useAppState((state) => state.settings.units);
  const unit = shownUnit(limits.unit, units);
  const { min, max, standard } = limits;
  const limited = t('fields.limits', {
    help,
    min: shownText(min, unit),
    max: shownText(max, unit),
  });
  if (standard === undefined) return limited;
  return t('measured.limitsStandard', { help: limited, standard: shownText(standard, unit) });
}
