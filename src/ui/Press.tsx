import type { ReactNode } from 'react';

/**
 * A button that may be off for a while. It stays in the tab order and keeps the focus, which a disabled one would drop, and
 * a press then does nothing.
 */
export function Press(props: {
  readonly off: boolean;
  readonly testId: string;
  /** Pressed many times in a row: each press counts. */
  readonly quick?: boolean;
  readonly title?: string;
  readonly describedBy?: string;
  readonly onPress: () => void;
  readonly children: ReactNode;
}) {
  const { off, testId, quick = false, title, describedBy, onPress, children } = props;
  return (
    <button
      type="button"
      className="ui-button"
      title={title}
      aria-disabled={off}
      aria-describedby={describedBy}
      data-testid={testId}
      onClick={(event) => {
        // The second press of a double click would be one of what the button has become.
        if (!off && (quick || event.detail < 2)) onPress();
      }}
    >
      {children}
    </button>
  );
}
