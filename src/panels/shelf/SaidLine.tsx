import { X } from 'lucide-react';
import { useEffect, useRef } from 'react';
import { t } from '../../messages';
import type { Said } from './said';

/** What was done last, inside the dialog: the page's own line lies behind it. */
export function SaidLine(props: {
  readonly said: Said | null;
  readonly onSaid: (said: Said | null) => void;
}) {
  const { said, onSaid } = props;
  const undo = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    // What was pressed may be gone with its row: the keyboard goes on from here.
    if (said?.undo && document.activeElement?.tagName !== 'BUTTON') undo.current?.focus();
  }, [said]);
  return (
    <div role="status" className="shelf-said-place" data-testid="shelf-said">
      {said && (
        <div className="shelf-said" data-tone={said.tone}>
          <div className="shelf-said-text">
            {said.text}
            {said.details && (
              <ul>
                {said.details.map((detail) => (
                  <li key={detail}>{detail}</li>
                ))}
              </ul>
            )}
          </div>
          {said.undo && (
            <button
              type="button"
              ref={undo}
              className="ui-button"
              data-testid="shelf-undo"
              onClick={() => {
                said.undo?.();
                onSaid(null);
              }}
            >
              {t('shelf.undo')}
            </button>
          )}
          <button
            type="button"
            className="ui-button ui-button-icon ui-button-bare"
            aria-label={t('shelf.dismiss')}
            title={t('shelf.dismiss')}
            onClick={() => onSaid(null)}
          >
            <X aria-hidden="true" />
          </button>
        </div>
      )}
    </div>
  );
}
