import { useId, useState } from 'react';
import { t } from '../../messages';
import { type ShownUnit, shownNumber, shownText } from '../../state/shownUnits';
import { outOfLimits, readTyped } from '../../state/typed/readTyped';
import { TYPED } from './pictureChoice';

/** What a row's number is: a length in mm as the page shows lengths, or whole pixels. */
export interface RowUnit {
  readonly field: 'mm' | '1';
  readonly shown: ShownUnit;
}

/**
 * A number that takes effect when the field is left or Enter pressed, read as the page's other fields are ("1/8 in",
 * "0,5"). What cannot be read stays typed, with the reason under it, and changes nothing; Escape drops it.
 */
export function NumberRow(props: {
  readonly label: string;
  /** As messages call it. */
  readonly name: string;
  /** In mm or pixels. */
  readonly value: number;
  readonly unit: RowUnit;
  /** Id of what says that the value cannot be drawn; null where it can. */
  readonly outside: string | null;
  readonly testId: string;
  readonly onEnter: (value: number) => void;
}) {
  const { label, name, value, unit, outside, testId, onEnter } = props;
  const id = useId();
  const [typed, setTyped] = useState<string | null>(null);
  const [fault, setFault] = useState<string | null>(null);
  const shown = shownNumber(value, unit.shown);

  function drop(): void {
    setTyped(null);
    setFault(null);
  }
  function enter(): void {
    if (typed === null) return;
    if (typed.trim() === shown) return drop();
    const read = readNumber(typed, name, value, unit);
    if (typeof read === 'string') return setFault(read);
    drop();
    onEnter(read);
  }
  return (
    <div className="files-row">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        type="text"
        inputMode="decimal"
        autoComplete="off"
        className="files-number"
        value={typed ?? shown}
        aria-invalid={fault !== null || outside !== null}
        aria-describedby={fault === null ? (outside ?? undefined) : `${id}-fault`}
        data-testid={testId}
        onChange={(event) => {
          setTyped(event.target.value);
          setFault(null);
        }}
        onFocus={(event) => event.target.select()}
        onBlur={enter}
        onKeyDown={(event) => {
          if (event.key === 'Enter') enter();
          if (event.key !== 'Escape' || typed === null) return;
          event.stopPropagation();
          drop();
        }}
      />
      {fault !== null && (
        <p className="files-note files-fault" data-tone="fault" role="alert" id={`${id}-fault`}>
          {fault}
        </p>
      )}
    </div>
  );
}

/** The number, or in words why it is not taken on. */
export function readNumber(
  typed: string,
  name: string,
  value: number,
  unit: RowUnit,
): number | string {
  const kept = shownText(value, unit.shown);
  const read = readTyped(typed, { label: name, unit: unit.field }, unit.shown, kept);
  if (!read.ok) return read.reason;
  const number = read.value as number;
  const reason = outOfLimits({ label: name, limits: TYPED[unit.field] }, number, unit.shown);
  return reason === null ? number : t('fields.kept', { reason, kept });
}
