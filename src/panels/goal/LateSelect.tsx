import { useState } from 'react';

interface Choice {
  readonly value: string;
  readonly text: string;
}

/**
 * A select whose list is made when it is first pointed at or focused: with a hundred of its kind, each listing hundreds of
 * numbers, the lists would be most of the page. Until then it holds what is chosen.
 */
export function LateSelect(props: {
  readonly className: string;
  readonly label?: string;
  readonly testId?: string;
  readonly chosen: Choice;
  /** All of them, the chosen one too. */
  readonly choices: () => readonly Choice[];
  readonly onChoose: (value: string) => void;
}) {
  const { chosen, onChoose } = props;
  const [isMade, setMade] = useState(false);
  const make = () => setMade(true);
  const choices = isMade ? props.choices() : [chosen];
  return (
    <select
      className={props.className}
      aria-label={props.label}
      data-testid={props.testId}
      value={chosen.value}
      onFocus={make}
      onPointerEnter={make}
      onPointerDown={make}
      onChange={({ target }) => onChoose(target.value)}
    >
      {choices.map(({ value, text }) => (
        <option key={value} value={value}>
          {text}
        </option>
      ))}
    </select>
  );
}
