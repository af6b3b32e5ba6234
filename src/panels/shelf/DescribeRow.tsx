import { type KeyboardEvent, useEffect, useRef } from 'react';
import { MAX_NAME, MAX_NOTE } from '../../design/limits';
import { t } from '../../messages';
import type { ShelfItem } from '../../state/shelfItem';
import { useSession } from '../../ui/session';

/** Name and note of one item, to be typed over. Enter keeps them, Escape does not; an empty name changes nothing. */
export function DescribeRow(props: { readonly item: ShelfItem; readonly onDone: () => void }) {
  const { item, onDone } = props;
  const { shelf } = useSession();
  const name = useRef<HTMLInputElement>(null);
  const note = useRef<HTMLInputElement>(null);
  useEffect(() => name.current?.select(), []);

  function keep(): void {
    const typed = name.current?.value.trim() ?? '';
    const change = {
      name: typed === '' ? item.name : typed,
      note: note.current?.value.trim() ?? '',
    };
    void shelf.describe(item.id, change);
    onDone();
  }
  function onKeyDown(event: KeyboardEvent): void {
    if (event.key === 'Enter') keep();
    else if (event.key === 'Escape') onDone();
    else return;
    // Escape would close the dialog too.
    event.preventDefault();
    event.stopPropagation();
  }

  return (
    <tr>
      <td />
      <td colSpan={4}>
        <div className="shelf-describe" onKeyDown={onKeyDown}>
          <label>
            {t('shelf.name')}
            <input ref={name} defaultValue={item.name} maxLength={MAX_NAME} />
          </label>
          <label>
            {t('shelf.note')}
            <input ref={note} defaultValue={item.note ?? ''} maxLength={MAX_NOTE} />
          </label>
          <button type="button" className="ui-button" onClick={keep}>
            {t('shelf.done')}
          </button>
        </div>
      </td>
    </tr>
  );
}
