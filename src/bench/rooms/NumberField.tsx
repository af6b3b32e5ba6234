import { useId, useState } from 'react';
import { localNumber } from '../../messages/numbers';
import { plainNumber } from '../../state/typed/plainNumber';
import { say } from '../say';

/**
 * A number with its unit, which may be typed after it. What is no number, could be two ("10,200") or lies beyond its limits is
 * refused with the reason, and the last good value stays; empty means not known, where that is allowed.
 */
export function NumberField(props: {
  readonly label: string;
  readonly unit: string;
  readonly value: number | null;
  readonly min: number;
  readonly max: number;
  readonly testId: string;
  readonly isWhole?: boolean;
  /** What an empty field stands for; without it the field may not be empty. */
  readonly empty?: string;
  readonly onChange: (value: number | null) => void;
}) {
  const { label, unit, value, min, max, empty } = props;
  const id = useId();
  const [typed, setTyped] = useState<string | null>(null);
  const [fault, setFault] = useState('');
  const shown = value === null ? '' : plainDigits(value);

  function settle(): void {
    if (typed === null) return;
    const text = withoutUnit(typed, unit);
    if (text === '' && empty !== undefined) {
      props.onChange(null);
      return clear();
    }
    if (text === '') return setFault(say('benchRoom.field.empty', { field: label }));
    const read = plainNumber(text);
    if (!read.ok) return setFault(say(`benchRoom.field.${read.error}`, { field: label, text }));
    if (read.value < min || read.value > max)
      return setFault(
        say('benchRoom.field.range', {
          field: label,
          min: plainDigits(min),
          max: unit === '' ? plainDigits(max) : `${plainDigits(max)}\u00a0${unit}`,
        }),
      );
    if (props.isWhole && !Number.isInteger(read.value))
      return setFault(say('benchRoom.field.whole', { field: label }));
    if (text !== shown) props.onChange(read.value);
    clear();
  }
  function clear(): void {
    setTyped(null);
    setFault('');
  }

  return (
    <div className="bench-field">
      <label htmlFor={id}>{label}</label>
      <span className="bench-field-entry">
        <input
          id={id}
          className="bench-input bench-number"
          inputMode="decimal"
          value={typed ?? shown}
          placeholder={empty ?? ''}
          aria-invalid={fault !== ''}
          aria-describedby={fault === '' ? `${id}-unit` : `${id}-unit ${id}-fault`}
          data-testid={props.testId}
          onChange={(event) => setTyped(event.target.value)}
          onBlur={settle}
          onKeyDown={(event) => {
            if (event.key === 'Enter') settle();
            if (event.key === 'Escape') clear();
          }}
        />
        <span id={`${id}-unit`}>{unit}</span>
      </span>
      {fault !== '' && (
        <p className="bench-fault" id={`${id}-fault`} role="alert">
          {fault}
        </p>
      )}
    </div>
  );
}

/** Six digits, four below 1; a whole number has all of its own. */
function plainDigits(value: number): string {
  if (Number.isSafeInteger(value)) return String(value);
  return localNumber(String(Number(value.toPrecision(Math.abs(value) < 1 ? 4 : 6))));
}

/** What was typed before the field's own unit, if that stands after it; "10 200" is one number, as everywhere on the page. */
function withoutUnit(typed: string, unit: string): string {
  const text = typed
    .trim()
    .replace(/\d{1,3}(?:\s\d{3})+(?!\d)/g, (group) => group.replace(/\s/g, ''));
  const isNamed = unit !== '' && text.toLowerCase().endsWith(unit.toLowerCase());
  return isNamed ? text.slice(0, -unit.length).trim() : text;
}
