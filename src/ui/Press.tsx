import type { ReactNode } from 'react';

/**
 * A button that may be off for a while. It stays in the tab order and keeps the focus, which a disabled one would drop; a
 * press then does nothing, and `why` is told as its hint and description.
 */
export function Press(props: {
  readonly off: boolean;
  readonly testId?: string;
  /** What has to be done before it does anything. */
  readonly why?: string | undefined;
  /** Pressed many times in a row: each press counts. */
  readonly quick?: boolean;
  readonly main?: boolean;
  /** Also when Enter is pressed in a field of its form; what is done is the form's. */
  readonly submits?: boolean;
  readonly title?: string;
  readonly describedBy?: string;
  readonly onPress?: () => void;
  readonly children: ReactNode;
}) {
  const { off, why, quick = false, main = false, submits = false, onPress } = props;
  return (
    <button
      type={submits ? 'submit' : 'button'}
      className={main ? 'ui-button ui-button-main' : 'ui-button'}
      title={(off && why) || props.title}
      aria-disabled={off}
      aria-describedby={props.describedBy}
      data-testid={props.testId}
      onClick={(event) => {
        if (off && submits) event.preventDefault();
        // The second press of a double click would be one of what the button has become.
        if (!off && (quick || event.detail < 2)) onPress?.();
      }}
    >
      {props.children}
    </button>
  );
}
