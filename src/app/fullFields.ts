import { t } from '../messages';
import type { Session } from '../state/session';

type Fields = Pick<Document, 'addEventListener' | 'removeEventListener'>;

/** Says so where text is typed or pasted that a field has no room for: browsers leave it out in silence. Returns the way to stop. */
export function tellFullFields(
  { actions }: { readonly actions: Pick<Session['actions'], 'notify'> },
  page: Fields = document,
): () => void {
  const tell = ({ target, data }: InputEvent) => {
    const field = target as Partial<HTMLInputElement> | null;
    const { value = '', maxLength = -1, selectionStart, selectionEnd } = field ?? {};
    if (maxLength < 0 || data === null) return;
    const replaced = (selectionEnd ?? 0) - (selectionStart ?? 0);
    if (value.length - replaced + data.length <= maxLength) return;
    actions.notify({ tone: 'warning', text: t('app.fieldFull', { count: maxLength }) });
  };
  page.addEventListener('beforeinput', tell);
  return () => page.removeEventListener('beforeinput', tell);
}
