import { useId, useState } from 'react';
import { localNumber } from '../../../messages/numbers';
import { type ListFault, readNumberList } from '../../numberList';
import type { ListLimits } from '../../planLimits';
import { say } from '../../say';

/** Numbers typed in a row. What is wrong is said, and the last good list stays. */
export function ListField(props: {
  readonly label: string;
  readonly values: readonly number[];
  readonly limits: ListLimits;
  readonly range: 'pitchRange' | 'speedRange';
  readonly isShort?: boolean;
  readonly testId: string;
  readonly onChange: (values: readonly number[]) => void;
}) {
  const { label, values, limits } = props;
  const id = useId();
  const [typed, setTyped] = useState<string | null>(null);
  const [fault, setFault] = useState('');
  const shown = values.map((value) => localNumber(String(value)).replace('-', '\u2212')).join('  ');

  function settle(): void {
    if (typed === null) return;
    const read = readNumberList(typed, limits);
    if (!read.ok) return setFault(faultText(read.error));
    if (read.value.join() !== values.join()) props.onChange(read.value);
    clear();
  }
  function clear(): void {
    setTyped(null);
    setFault('');
  }
  function faultText(found: ListFault): string {
    const { min, max, most } = limits;
    const said = { field: label, min, max, most, ...found };
    return say(`benchRoom.list.${found.kind === 'outOfRange' ? props.range : found.kind}`, said);
  }

  return (
    <>
      <div
        className={
          props.isShort ? 'bench-field bench-list bench-list-short' : 'bench-field bench-list'
        }
      >
        <label htmlFor={id}>{label}</label>
        <input
          id={id}
          className="bench-input"
          value={typed ?? shown}
          spellCheck={false}
          autoComplete="off"
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
      </div>
      {fault !== '' && (
        <p className="bench-fault bench-wide" id={`${id}-fault`} role="alert">
          {fault}
        </p>
      )}
    </>
  );
}
