import { X } from 'lucide-react';
import {
  type KeyboardEvent,
  type MouseEvent,
  type ReactNode,
  useEffect,
  useId,
  useLayoutEffect,
  useRef,
} from 'react';
import { t } from '../messages';

/** A modal dialog with a heading and a way out: button, Escape, or a click beside it. Focus returns by itself. */
export function Dialog(props: {
  readonly open: boolean;
  readonly title: string;
  readonly onClose: () => void;
  readonly children: ReactNode;
}) {
  const dialog = useRef<HTMLDialogElement>(null);
  const title = useId();
  const gone = useRef(false);
  // After every render: one that the browser closed (Escape) is shown again where its owner keeps it open for the next.
  useEffect(() => {
    const element = dialog.current;
    if (props.open && element && !element.open) element.showModal();
    if (!props.open && element?.open) element.close();
  });
  // Taken away while it is open, it still gives the focus back.
  useLayoutEffect(() => {
    const element = dialog.current;
    gone.current = false;
    return () => {
      gone.current = true;
      if (element?.open) element.close();
    };
  }, []);

  function closeBeside(event: MouseEvent): void {
    if (event.target === dialog.current) dialog.current?.close();
  }

  /** It closes this dialog and not also what it was opened from. */
  function keepEscape(event: KeyboardEvent): void {
    if (event.key === 'Escape') event.stopPropagation();
  }

  return (
    <dialog
      ref={dialog}
      className="ui-dialog"
      aria-labelledby={title}
      onClose={() => {
        if (!gone.current) props.onClose();
      }}
      onClick={closeBeside}
      onKeyDown={keepEscape}
    >
      {props.open && (
        <>
          <div className="ui-dialog-head">
            <h2 id={title}>{props.title}</h2>
            <button
              type="button"
              className="ui-button ui-button-icon ui-button-bare"
              aria-label={t('app.close')}
              title={t('app.close')}
              onClick={() => dialog.current?.close()}
            >
              <X aria-hidden="true" />
            </button>
          </div>
          <div className="ui-dialog-body">{props.children}</div>
        </>
      )}
    </dialog>
  );
}
