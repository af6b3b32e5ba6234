import { useId, useState } from 'react';
import { Press } from '../../../ui/Press';
import type { NamedPitch } from '../../namedSteps';
import { say } from '../../say';
import { namedInOrder, pitchOf } from './stepsDraft';

/** Pitches typed in the order in which they were set, for all steps at once. */
export function PitchRow(props: {
  readonly count: number;
  readonly onPitches: (pitches: readonly NamedPitch[]) => void;
}) {
  const { count } = props;
  const id = useId();
  const [typed, setTyped] = useState('');
  const [fault, setFault] = useState('');
  function give(): void {
    const tokens = typed.split(/[\s;]+/).filter((token) => token !== '');
    const pitches = tokens.map((token) => pitchOf(token.replace(/,$/, '')));
    const bad = pitches.indexOf(null);
    if (bad >= 0) return setFault(say('benchRoom.steps.typedBad', { text: tokens[bad] }));
    if (pitches.length !== count)
      return setFault(say('benchRoom.steps.typedCount', { typed: pitches.length, count }));
    setFault('');
    props.onPitches(namedInOrder(pitches.filter((one) => one !== null)));
  }
  return (
    <div className="bench-field bench-list">
      <label htmlFor={id}>{say('benchRoom.steps.typed')}</label>
      <span className="bench-field-entry">
        <input
          id={id}
          className="bench-input"
          autoComplete="off"
          spellCheck={false}
          value={typed}
          aria-invalid={fault !== ''}
          aria-describedby={fault === '' ? undefined : `${id}-fault`}
          data-testid="bench-steps-typed"
          onChange={({ target }) => setTyped(target.value)}
          onKeyDown={(event) => event.key === 'Enter' && give()}
        />
        <Press off={typed.trim() === ''} testId="bench-steps-give" onPress={give}>
          {say('benchRoom.steps.give')}
        </Press>
      </span>
      {fault !== '' && (
        <p className="bench-fault" id={`${id}-fault`} role="alert">
          {fault}
        </p>
      )}
    </div>
  );
}
