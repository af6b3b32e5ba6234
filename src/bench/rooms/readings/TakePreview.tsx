import { useState } from 'react';
import { Press } from '../../../ui/Press';
import type { Offered } from '../../offerReader';
import { faultText } from '../../readings/faultText';
import type { ReadingsPreview } from '../../readings/preview';
import { say } from '../../say';
import { useBench, useDesk } from '../useDesk';
import { OptionRow } from './OptionRow';
import { PreviewTable } from './PreviewTable';
import { previewWords } from './previewWords';

/** What was understood of a table, before it is taken: columns to be put right, rows beside their readings, refusals. */
export function TakePreview(props: { readonly offered: Offered; readonly onTaken: () => void }) {
  const { offered } = props;
  if (offered.kind === 'reading')
    return (
      <p role="status">
        {say('benchRoom.reading', { name: offered.name })}{' '}
        <progress value={offered.done} aria-label={say('benchRoom.progress')} /> <DismissButton />
      </p>
    );
  if (offered.kind === 'ready')
    return <Ready name={offered.name} preview={offered.preview} onTaken={props.onTaken} />;
  const reason = offered.kind === 'refused' ? faultText(offered.fault) : offered.reason;
  return (
    <div className="bench-stack" data-testid="bench-refused">
      <p className="bench-fault" role="alert">
        {say('benchRoom.refused', { name: offered.name, reason })}
      </p>
      {offered.kind === 'refused' && <OptionRow delimiter={undefined} decimal={undefined} />}
      <DismissButton />
    </div>
  );
}

function DismissButton() {
  const desk = useDesk();
  return (
    <button type="button" className="ui-button" onClick={() => desk.dismiss()}>
      {say('benchRoom.cancel')}
    </button>
  );
}

function Ready(props: {
  readonly name: string;
  readonly preview: ReadingsPreview;
  readonly onTaken: () => void;
}) {
  const desk = useDesk();
  const { preview } = props;
  const { derived, options } = preview;
  const [fault, setFault] = useState('');
  const waiting = useBench((state) => state.waiting.length);
  function take(all: boolean): void {
    const why = all ? desk.takeAll() : desk.take();
    setFault(why === null ? '' : say(`benchRoom.take.${why}`));
    if (why === null) props.onTaken();
  }
  return (
    <div className="bench-stack" data-testid="bench-preview">
      <div className="bench-buttons">
        <strong>{props.name}</strong>
        <Press
          main
          off={!derived.ok || derived.value.readings.length === 0}
          why={say('benchRoom.takeWhy')}
          testId="bench-take"
          onPress={() => take(false)}
        >
          {derived.ok
            ? say('benchRoom.takeCount', { count: derived.value.readings.length })
            : say('benchRoom.takeNone')}
        </Press>
        {waiting > 0 && (
          <Press
            off={!derived.ok}
            why={say('benchRoom.takeWhy')}
            title={say('benchRoom.takeAllHelp')}
            testId="bench-take-all"
            onPress={() => take(true)}
          >
            {say('benchRoom.takeAll', { count: waiting + 1 })}
          </Press>
        )}
        <DismissButton />
        {waiting > 0 && <span>{say('benchRoom.waiting', { count: waiting })}</span>}
        <OptionRow delimiter={options.delimiter} decimal={options.decimal} />
      </div>
      {fault !== '' && (
        <p className="bench-fault" role="alert">
          {fault}
        </p>
      )}
      <Refusals preview={preview} />
      <p className="lower-quiet" data-testid="bench-understood">
        {previewWords(preview).join(' ')}
      </p>
      <PreviewTable preview={preview} />
    </div>
  );
}

const SHOWN_FAULTS = 8;

function Refusals({ preview: { derived } }: { readonly preview: ReadingsPreview }) {
  const faults = derived.ok ? derived.value.refused : derived.error;
  if (faults.length === 0) return null;
  const more = faults.length - SHOWN_FAULTS;
  return (
    <ul className="bench-words bench-fault" data-testid="bench-refusals">
      {faults.slice(0, SHOWN_FAULTS).map((fault) => {
        const text = faultText(fault);
        return <li key={text}>{text}</li>;
      })}
      {more > 0 && <li>{say('benchRoom.moreFaults', { count: more })}</li>}
    </ul>
  );
}
