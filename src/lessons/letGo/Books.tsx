import { useRef } from 'react';
import { t } from '../../messages';
import { bookBalance, bookRows } from '../../state/words/letGoText';
import { setShown, setText } from '../../ui/drawn/svg';
import { useSession } from '../../ui/session';
import { useLetGo } from './useLetGo';

const ROWS = [
  'letGo.bookFallen',
  'letGo.bookGiven',
  'letGo.bookMotion',
  'letGo.bookFriction',
  'letGo.bookDamping',
  'letGo.bookStops',
] as const;

/** The energy ledger of a run. */
export function Books() {
  const { store } = useSession();
  const root = useRef<HTMLDivElement>(null);
  const balance = useRef<HTMLParagraphElement>(null);
  useLetGo((_, { run }) => {
    if (!root.current || !balance.current) return;
    setShown(root.current, run !== null);
    if (!run) return;
    const cells = root.current.querySelectorAll('dd');
    bookRows(run, store.getState().settings.units).forEach(([, text], i) =>
      setText(cells[i], text),
    );
    setText(balance.current, t('letGo.bookBalance', { error: bookBalance(run) }));
  });
  return (
    <div ref={root} data-testid="letgo-books">
      <h3 className="ui-heading">{t('letGo.books')}</h3>
      <dl className="letgo-books">
        {ROWS.map((key) => (
          <div key={key}>
            <dt>{t(key)}</dt>
            <dd />
          </div>
        ))}
      </dl>
      <p className="lower-quiet letgo-small" ref={balance} />
    </div>
  );
}
