import { type KeyboardEvent, useLayoutEffect, useRef } from 'react';
import { MAX_NAME } from '../../design/limits';
import { t } from '../../messages';
import { useSession } from '../../ui/session';

/** A name typed over its row. Enter or leaving the field keeps it, Escape does not; an empty name changes nothing. */
export function RenameField(props: { readonly id: string; readonly onDone: () => void }) {
  const { store, actions } = useSession();
  const input = useRef<HTMLInputElement>(null);
  const done = useRef(false);
  const name = store.getState().design.parts.find((part) => part.id === props.id)?.name ?? '';

  useLayoutEffect(() => {
    const field = input.current;
    const row = field?.parentElement?.querySelector<HTMLElement>('[aria-selected="true"]');
    if (field && row) field.style.top = `${row.offsetTop}px`;
    field?.select();
  }, []);

  function finish(keep: boolean): void {
    if (done.current) return;
    done.current = true;
    const typed = input.current?.value.trim() ?? '';
    if (keep && typed !== '' && typed !== name) actions.renamePart(props.id, typed);
    props.onDone();
  }
  function onKeyDown(event: KeyboardEvent): void {
    event.stopPropagation();
    if (event.key === 'Enter') finish(true);
    if (event.key === 'Escape') finish(false);
  }

  return (
    <input
      ref={input}
      className="rail-rename"
      aria-label={t('rail.renameField')}
      defaultValue={name}
      maxLength={MAX_NAME}
      onKeyDown={onKeyDown}
      onBlur={() => finish(true)}
    />
  );
}
