import { type KeyboardEvent, useEffect, useRef } from 'react';

/** A line of text that is typed over in place. Enter or leaving keeps it, Escape does not. */
export function KeptText(props: {
  readonly label: string;
  readonly text: string;
  readonly maxLength: number;
  readonly className: string;
  readonly placeholder?: string;
  /** An empty text changes nothing. */
  readonly required?: boolean;
  readonly testId: string;
  readonly onKeep: (text: string) => void;
}) {
  const { text, required = false, onKeep } = props;
  const input = useRef<HTMLInputElement>(null);
  useEffect(() => {
    if (input.current) input.current.value = text;
  }, [text]);

  function keep(): void {
    if (!input.current) return;
    const typed = input.current.value.trim();
    if (typed === '' && required) input.current.value = text;
    else if (typed !== text) onKeep(typed);
  }
  function onKeyDown(event: KeyboardEvent<HTMLInputElement>): void {
    if (event.key === 'Escape') event.currentTarget.value = text;
    if (event.key !== 'Enter' && event.key !== 'Escape') return;
    event.preventDefault();
    event.stopPropagation();
    event.currentTarget.blur();
  }

  return (
    <input
      ref={input}
      className={props.className}
      aria-label={props.label}
      title={text}
      placeholder={props.placeholder}
      defaultValue={text}
      maxLength={props.maxLength}
      autoComplete="off"
      spellCheck={false}
      data-testid={props.testId}
      onKeyDown={onKeyDown}
      onBlur={keep}
    />
  );
}
