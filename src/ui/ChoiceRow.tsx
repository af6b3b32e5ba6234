import { useId } from 'react';

/** One choice of a list, with its name before it. */
export function ChoiceRow<T extends string>(props: {
  readonly label: string;
  readonly value: T;
  readonly options: readonly { readonly value: T; readonly text: string }[];
  readonly testId: string;
  readonly onChoose: (value: T) => void;
}) {
  const id = useId();
  return (
    <>
      <label htmlFor={id}>{props.label}</label>
      <select
        id={id}
        className="ui-select"
        value={props.value}
        data-testid={props.testId}
        onChange={(event) => props.onChoose(event.target.value as T)}
      >
        {props.options.map(({ value, text }) => (
          <option key={value} value={value}>
            {text}
          </option>
        ))}
      </select>
    </>
  );
}
