import { useId, useState } from 'react';
import { t } from '../../messages';
import { refusalText } from '../../state/refusalText';
import { shownText, shownUnit } from '../../state/shownUnits';
import { useAppState, useSession } from '../../ui/session';
import { FieldFault } from './FieldFault';
import { FieldLabel } from './FieldLabel';
import type { ChoiceField, NumberField, VectorField } from './fieldModel';
import { NoteLine } from './NoteLine';
import { type NumberEntry, useNumberEntry } from './useNumberEntry';
import { useWrittenNumber } from './useWrittenNumber';

/** The rows of the numbers panel: label, input, unit, and beneath it the reason when what was typed is refused. */

export function NumberRow(props: {
  readonly field: NumberField;
  readonly partId: string | null;
  readonly value: number;
  readonly onCommitted: (value: number) => void;
}) {
  const { field, value } = props;
  const id = useId();
  const help = useHelp(field);
  const entry = useNumberEntry(field, value, props.partId, props.onCommitted);
  return (
    <div className="field" data-help={help} data-testid={`field-${field.key}`}>
      <FieldLabel input={id} field={field} />
      <NumberBox field={field} value={value} id={id} help={help} entry={entry} />
      {field.note && (
        <NoteLine id={`${id}-note`} note={field.note} partId={props.partId} input={id} />
      )}
      <FieldFault id={`${id}-fault`} text={entry.fault} />
    </div>
  );
}

export function VectorRow(props: {
  readonly field: VectorField;
  readonly partId: string | null;
  readonly value: readonly number[];
  readonly onCommitted: (value: readonly number[]) => void;
}) {
  const { field, value, partId } = props;
  const [x, y, z] = field.components;
  const id = useId();
  const help = useHelp(x);
  const replace = (at: number) => (next: number) =>
    props.onCommitted(value.map((old, i) => (i === at ? next : old)));
  const entries = [
    useNumberEntry(x, value[0], partId, replace(0)),
    useNumberEntry(y, value[1], partId, replace(1)),
    useNumberEntry(z, value[2], partId, replace(2)),
  ];
  return (
    <div
      className="field field-vector"
      role="group"
      aria-labelledby={`${id}-label`}
      data-help={help}
      data-testid={`field-${field.key}`}
    >
      <span className="field-label" id={`${id}-label`}>
        {field.label}
      </span>
      {field.components.map((component, at) => (
        <NumberBox
          key={component.key}
          field={component}
          value={value[at]}
          id={`${id}-${at}`}
          axis={field.axes[at]}
          help={help}
          entry={entries[at]}
        />
      ))}
      {entries.map((entry, at) => (
        <FieldFault key={field.components[at].key} id={`${id}-${at}-fault`} text={entry.fault} />
      ))}
    </div>
  );
}

function NumberBox(props: {
  readonly field: NumberField;
  readonly value: number;
  readonly id: string;
  readonly axis?: string | undefined;
  readonly help: string;
  readonly entry: NumberEntry;
}) {
  const { field, id, axis, entry } = props;
  const refused = entry.fault !== null;
  const input = useWrittenNumber(field, entry.unit, entry.typing);
  return (
    <span className="field-box" data-invalid={refused || undefined}>
      {axis && (
        <span className="field-axis" aria-hidden="true">
          {axis}
        </span>
      )}
      <input
        ref={input}
        id={id}
        className="field-input"
        type="text"
        role="spinbutton"
        inputMode="decimal"
        autoComplete="off"
        spellCheck={false}
        aria-label={axis && field.label}
        aria-valuenow={props.value}
        aria-valuemin={field.min}
        aria-valuemax={field.max}
        aria-valuetext={entry.spoken}
        aria-invalid={refused}
        aria-describedby={[
          `${id}-help`,
          ...(field.note ? [`${id}-note`] : []),
          ...(refused ? [`${id}-fault`] : []),
        ].join(' ')}
        data-testid={`input-${field.key}`}
        value={entry.text}
        onChange={(event) => entry.onChange(event.target.value)}
        onFocus={(event) => event.target.select()}
        onKeyDown={entry.onKeyDown}
        onKeyUp={entry.onKeyUp}
        onBlur={entry.onBlur}
      />
      {entry.unitName && <span className="field-unit">{entry.unitName}</span>}
      <span className="ui-unseen" id={`${id}-help`}>
        {props.help}
      </span>
    </span>
  );
}

export function ChoiceRow(props: {
  readonly field: ChoiceField;
  readonly partId: string | null;
  readonly value: string;
  readonly onCommitted: (value: string) => void;
}) {
  const { field } = props;
  const { store } = useSession();
  const id = useId();
  const [fault, setFault] = useState<string | null>(null);

  function choose(value: string): void {
    const refusal = field.commit(value);
    const { design, settings } = store.getState();
    setFault(refusal && refusalText(refusal, design, props.partId, settings.units));
    if (!refusal) props.onCommitted(value);
  }

  return (
    <div
      className={field.wide ? 'field field-wide' : 'field'}
      data-help={field.help}
      data-testid={`field-${field.key}`}
    >
      <label className="field-label" htmlFor={id}>
        {field.label}
      </label>
      <select
        id={id}
        className="ui-select field-choice"
        aria-describedby={field.note ? `${id}-help ${id}-note` : `${id}-help`}
        data-testid={`input-${field.key}`}
        value={props.value}
        onChange={(event) => choose(event.target.value)}
      >
        {field.options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.label}
          </option>
        ))}
      </select>
      <span className="ui-unseen" id={`${id}-help`}>
        {field.help}
      </span>
      {field.note && (
        <NoteLine id={`${id}-note`} note={field.note} partId={props.partId} input={id} />
      )}
      <FieldFault id={`${id}-fault`} text={fault} />
    </div>
  );
}

/** The help sentence with the limits in the units on screen. */
function useHelp(field: NumberField): string {
  const units = useAppState((state) => state.settings.units);
  const unit = shownUnit(field.unit, units);
  return t('fields.limits', {
    help: field.help,
    min: shownText(field.min, unit),
    max: shownText(field.max, unit),
  });
}
