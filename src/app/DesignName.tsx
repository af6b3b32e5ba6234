import { type KeyboardEvent, useEffect, useRef } from 'react';
import { MAX_NAME } from '../design/limits';
import { t } from '../messages';
import { useAppState, useSession } from '../ui/session';

/** The design's name, to be typed over. Enter or leaving keeps it, Escape does not; an empty name changes nothing. */
export function DesignName() {
  const { store, actions } = useSession();
  const name = useAppState((state) => state.design.name);
  const input = useRef<HTMLInputElement>(null);
  useEffect(() => {
    if (input.current) input.current.value = name;
  }, [name]);

  function keep(): void {
    const typed = input.current?.value.trim() ?? '';
    if (typed !== '' && typed !== name) actions.setDesignName(typed);
    if (input.current) input.current.value = store.getState().design.name;
  }
  function onKeyDown(event: KeyboardEvent<HTMLInputElement>): void {
    if (event.key === 'Escape') event.currentTarget.value = name;
    if (event.key !== 'Enter' && event.key !== 'Escape') return;
    event.preventDefault();
    event.currentTarget.blur();
  }

  return (
    <input
      ref={input}
      className="app-design-name"
      aria-label={t('app.designName')}
      title={t('app.designName')}
      defaultValue={name}
      maxLength={MAX_NAME}
      autoComplete="off"
      spellCheck={false}
      data-testid="design-name"
      onKeyDown={onKeyDown}
      onBlur={keep}
    />
  );
}
