import { BadgeCheck, Copy, Trash2 } from 'lucide-react';
import type { TryOut } from '../../design/design';
import type { DesignFault } from '../../design/fault';
import { MAX_NAME, MAX_NOTE } from '../../design/limits';
import type { Result } from '../../engine/result';
import { t } from '../../messages';
import type { TryOutActions } from '../../state/tryOutActions';
import { KeptText } from './KeptText';

/** Something done with the try-outs, which may be refused. */
export type Act = (actions: TryOutActions) => Result<unknown, DesignFault>;

/** One try-out in the list: its marks, name and note, and what can be done with it. */
export function TryOutItem(props: {
  readonly entry: TryOut;
  readonly compared: boolean;
  readonly only: boolean;
  readonly onCompare: (on: boolean) => void;
  readonly onDo: (act: Act) => void;
  readonly onRemove: () => void;
}) {
  const { entry, onDo } = props;
  const { id, name } = entry;
  const shown = entry.parts === undefined;
  return (
    <li className="try-out" aria-current={shown ? 'true' : undefined} data-testid={`try-out-${id}`}>
      <div className="try-out-line">
        <span className="try-out-mark" data-shown={shown} aria-hidden="true" />
        <KeptText
          label={t('tryOuts.name', { name })}
          text={name}
          maxLength={MAX_NAME}
          className="try-out-name"
          required
          testId={`try-out-name-${id}`}
          onKeep={(text) => onDo((actions) => actions.rename(id, text))}
        />
        {entry.adopted && (
          <span className="try-out-adopted">
            <BadgeCheck aria-hidden="true" />
            {t('tryOuts.adopted')}
          </span>
        )}
        {shown ? (
          <span className="try-out-state">{t('tryOuts.shown')}</span>
        ) : (
          <label className="try-out-compare" title={t('tryOuts.compareName', { name })}>
            <input
              type="checkbox"
              aria-label={t('tryOuts.compareName', { name })}
              checked={props.compared}
              data-testid={`try-out-compare-${id}`}
              onChange={(event) => props.onCompare(event.target.checked)}
            />
            {t('tryOuts.compare')}
          </label>
        )}
      </div>
      <div className="try-out-line">
        <KeptText
          label={t('tryOuts.note', { name })}
          text={entry.note ?? ''}
          maxLength={MAX_NOTE}
          className="try-out-note"
          placeholder={t('tryOuts.noteEmpty')}
          testId={`try-out-note-${id}`}
          onKeep={(text) => onDo((actions) => actions.setNote(id, text))}
        />
        {!shown && (
          <button
            type="button"
            className="ui-button try-out-do"
            aria-label={t('tryOuts.showName', { name })}
            data-testid={`try-out-show-${id}`}
            onClick={() => onDo((actions) => actions.show(id))}
          >
            {t('tryOuts.show')}
          </button>
        )}
        {!(entry.adopted && shown) && (
          <button
            type="button"
            className="ui-button try-out-do"
            aria-label={t('tryOuts.adoptName', { name })}
            title={t('tryOuts.adoptName', { name })}
            data-testid={`try-out-adopt-${id}`}
            onClick={() => onDo((actions) => actions.adopt(id))}
          >
            {t('tryOuts.adopt')}
          </button>
        )}
        <button
          type="button"
          className="ui-button ui-button-icon ui-button-bare"
          aria-label={t('tryOuts.duplicateName', { name })}
          title={t('tryOuts.duplicateName', { name })}
          data-testid={`try-out-duplicate-${id}`}
          onClick={() => onDo((actions) => actions.duplicate(id))}
        >
          <Copy aria-hidden="true" />
        </button>
        <button
          type="button"
          className="ui-button ui-button-icon ui-button-bare"
          aria-label={t('tryOuts.removeName', { name })}
          title={props.only ? t('tryOuts.removeOnly') : t('tryOuts.removeName', { name })}
          data-testid={`try-out-remove-${id}`}
          onClick={props.onRemove}
        >
          <Trash2 aria-hidden="true" />
        </button>
      </div>
    </li>
  );
}
