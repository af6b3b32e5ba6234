import { type Ref, useEffect, useId, useRef } from 'react';
import { t } from '../../messages';
import { shownUnit } from '../../state/shownUnits';
import { useAppState } from '../../ui/session';

/** The body's name. What is typed first goes here: it takes the focus when it comes. */
export function NameRow(props: {
  readonly value: string;
  readonly onChange: (value: string) => void;
}) {
  const id = useId();
  const input = useFirstFocus();
  return (
    <>
      <label htmlFor={id}>{t('import.name')}</label>
      <input
        ref={input}
        id={id}
        className="import-input"
        maxLength={200}
        value={props.value}
        data-testid="import-name"
        onChange={(event) => props.onChange(event.target.value)}
      />
    </>
  );
}

/** For a dialog that stands open already, and (by the attribute) for one that opens after this. */
function useFirstFocus(): Ref<HTMLInputElement> {
  const input = useRef<HTMLInputElement>(null);
  useEffect(() => {
    input.current?.setAttribute('autofocus', '');
    input.current?.focus();
  }, []);
  return input;
}

/** The mass that a scale showed, in the page's unit; `note` stands below while there is no fault. */
export function MassRow(props: {
  readonly typed: string;
  readonly fault: string | null;
  readonly note: string;
  readonly onChange: (typed: string) => void;
}) {
  const id = useId();
  const unit = shownUnit(
    'g',
    useAppState((state) => state.settings.units),
  );
  return (
    <>
      <label htmlFor={id}>{t('import.weighed', { unit: unit.name })}</label>
      <input
        id={id}
        className="import-input"
        inputMode="decimal"
        autoComplete="off"
        spellCheck={false}
        value={props.typed}
        aria-invalid={props.fault !== null}
        aria-describedby={`${id}-help`}
        data-testid="import-mass"
        onChange={(event) => props.onChange(event.target.value)}
      />
      <p className="import-note" id={`${id}-help`} data-tone={props.fault ? 'fault' : 'plain'}>
        {props.fault ?? props.note}
      </p>
    </>
  );
}
