import { useId, useState } from 'react';
import { say } from '../say';

/**
 * A number with its unit. What is no number or beyond its limits is refused with the reason, and the last good value stays;
 * empty means not known, where that is allowed.
 */
export function NumberField(props: {
  readonly label: string;
  readonly unit: string;
  readonly value: number | null;
  readonly min: number;
  readonly max: number;
  readonly testId: string;
  /** What an empty field stands for; without it the field may not be empty. */
  readonly empty?: string;
  readonly onChange: (value: number | null) => void;
}) {
  const { label, unit, value, min, max, empty } = props;
  const id = useId();
  const [typed, setTyped] = useState<string | null>(null);
  const [fault, setFault] = useState('');
  const shown = value === null ? '' : String(Number(value.toPrecision(6)));

  function settle(): void {
    if (typed === null) return;
    const plain = typed.trim().replace('\u2212', '-').replace(',', '.');
    if (plain === '' && empty !== undefined) {
      props.onChange(null);
      return clear();
    }
    const number = Number(plain);
    if (plain === '' || !Number.isFinite(number))
      return setFault(say('benchRoom.field.noNumber', { field: label }));
    if (number < min || number > max)
      return setFault(say('benchRoom.field.range', { field: label, min, max, unit }));
    if (plain !== shown) props.onChange(number);
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
          aria-describedby={fault === '' ? undefined : `${id}-fault`}
          data-testid={props.testId}
          onChange={(event) => setTyped(event.target.value)}
          onBlur={settle}
          onKeyDown={(event) => {
            if (event.key === 'Enter') settle();
            if (event.key === 'Escape') clear();
          }}
        />
        <span>{unit}</span>
      </span>
      {fault !== '' && (
        <p className="bench-fault" id={`${id}-fault`} role="alert">
          {fault}
        </p>
      )}
    </div>
  );
}
