import { useId } from 'react';
import { t } from '../../messages';
import { lengthNumber, lengthUnitOf } from '../../state/words/catalogueText';

/** The lengths of a size, and a field for any other. `text` is what stands in the field. */
export function LengthChoice(props: {
  readonly size: string;
  readonly lengths: readonly number[];
  readonly text: string;
  readonly lengthMm: number | null;
  readonly fault: string | null;
  /** Said beneath: that the length is no standard one. */
  readonly note: string | null;
  readonly onText: (text: string) => void;
}) {
  const { size, lengths, fault, note } = props;
  const id = useId();
  return (
    <>
      <fieldset className="length-choice">
        <legend>{t('catalogue.lengths')}</legend>
        <div className="length-chips">
          {lengths.map((one) => {
            const text = lengthNumber(size, one);
            return (
              <label className="length-chip" key={one}>
                <input
                  type="radio"
                  name={`${id}-length`}
                  checked={one === props.lengthMm}
                  onChange={() => props.onText(text)}
                />
                {text}
              </label>
            );
          })}
        </div>
      </fieldset>
      <div className="length-free">
        <label htmlFor={`${id}-free`}>{t('catalogue.length')}</label>
        <input
          id={`${id}-free`}
          className="ui-input"
          type="text"
          inputMode="decimal"
          autoComplete="off"
          aria-invalid={fault !== null}
          aria-describedby={`${id}-said`}
          data-testid="catalogue-length"
          value={props.text}
          onChange={(event) => props.onText(event.target.value)}
        />
        <span className="pick-aside">{lengthUnitOf(size)}</span>
      </div>
      <p id={`${id}-said`} role="status" className={fault ? 'pick-fault' : 'pick-note'}>
        {fault ?? note}
      </p>
    </>
  );
}
