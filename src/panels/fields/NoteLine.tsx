import { RotateCcw, Split } from 'lucide-react';
import { useState } from 'react';
import { refusalText } from '../../state/refusalText';
import { useAppState, useSession } from '../../ui/session';
import { FieldFault } from './FieldFault';
import type { FieldNote } from './fieldModel';

/** Beneath a field whose value stands in the place of the standard's or the material's: which, and the way back. */
export function NoteLine(props: {
  readonly id: string;
  readonly note: FieldNote;
  readonly partId: string | null;
  /** Id of the field's input: it takes the focus when the way back is gone. */
  readonly input: string;
}) {
  const { note, partId } = props;
  const { store } = useSession();
  const [fault, setFault] = useState<string | null>(null);
  const text = useAppState((state) => note.text(state.settings.units));
  const units = useAppState((state) => state.settings.units);
  if (text === null) return null;
  const label = note.resetLabel(units);

  function reset(): void {
    const refusal = note.reset();
    setFault(refusal && refusalText(refusal, store.getState().design, partId, units));
    if (!refusal) document.getElementById(props.input)?.focus();
  }

  return (
    <>
      <p className="field-note" id={props.id}>
        <Split aria-hidden="true" />
        <span>{text}</span>
        {label !== '' && (
          <button
            type="button"
            className="ui-button ui-button-bare field-reset"
            aria-label={label}
            title={label}
            data-testid="field-reset"
            onClick={reset}
          >
            <RotateCcw aria-hidden="true" />
          </button>
        )}
      </p>
      <FieldFault id={`${props.id}-fault`} text={fault} />
    </>
  );
}
