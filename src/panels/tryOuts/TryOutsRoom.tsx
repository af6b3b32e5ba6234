import { ChevronLeft, ChevronRight } from 'lucide-react';
import { useEffect, useState } from 'react';
import type { TryOut } from '../../design/design';
import { describeFault } from '../../design/faultText';
import { MAX_TRY_OUTS } from '../../design/limits';
import { materialsOf } from '../../design/resolve';
import { tryOutsOf } from '../../design/tryOuts';
import { t } from '../../messages';
import type { Session } from '../../state/session';
import { MAX_COMPARED } from '../../state/tryOutActions';
import { partRows } from '../../state/words/differences';
import { headRows } from '../../state/words/headRows';
import { useAppState, useSession } from '../../ui/session';
import { useFollowing } from '../fields/useFollowed';
import { variantColumns } from './columns';
import { DifferenceTable } from './DifferenceTable';
import { type Act, TryOutItem } from './TryOutItem';
import { tableText } from './tableText';
import './tryOuts.css';

/** Variants of the head in one design: the list of them, and a table of what differs. */
export function TryOutsRoom() {
  const session = useSession();
  const { actions, store } = session;
  const [said, setSaid] = useState('');
  const entries = tryOutsOf({ tryOuts: useAppState((state) => state.design.tryOuts) });
  const compared = useAppState((state) => state.compared);

  function run(act: Act): void {
    const outcome = act(actions.tryOuts);
    setSaid(outcome.ok ? '' : t('tryOuts.refused', { reason: describeFault(outcome.error) }));
  }
  function compare(id: string, on: boolean): void {
    const done = actions.tryOuts.compare(id, on);
    setSaid(done ? '' : t('tryOuts.compareFull', { limit: MAX_COMPARED }));
  }
  function remove({ id, name }: TryOut): void {
    run((acts) => acts.remove(id));
    setSaid(t('tryOuts.removed', { name }));
  }
  function keep(): void {
    const number = Math.max(1, tryOutsOf(store.getState().design).length);
    run((acts) => acts.keep(t('tryOuts.newName', { number })));
  }

  async function copy(): Promise<void> {
    const { columns, parts, head } = tableOf(session);
    try {
      const { name } = store.getState().design;
      await navigator.clipboard.writeText(tableText(name, columns, parts, head));
      setSaid(t('tryOuts.copied'));
    } catch {
      setSaid(t('tryOuts.copyFailed'));
    }
  }

  return (
    <section className="lower-room" aria-label={t('tryOuts.title')} data-testid="try-outs-room">
      <div className="lower-head">
        <button
          type="button"
          className="ui-button"
          title={t('tryOuts.keepHelp')}
          data-testid="try-outs-keep"
          onClick={keep}
        >
          {t('tryOuts.keep')}
        </button>
        {entries.length > 1 && <Steps onStep={(step) => run((acts) => acts.step(step))} />}
        {entries.length > 1 && (
          <button type="button" className="ui-button" onClick={() => void copy()}>
            {t('tryOuts.copy')}
          </button>
        )}
        {entries.length > 0 && (
          <span className="lower-quiet">
            {t('tryOuts.count', { count: entries.length, limit: MAX_TRY_OUTS })}
          </span>
        )}
        <span role="status">{said}</span>
      </div>
      {entries.length === 0 ? (
        <p className="lower-quiet try-outs-empty">{t('tryOuts.empty')}</p>
      ) : (
        <div className="try-outs">
          <ul className="try-outs-list" aria-label={t('tryOuts.list')}>
            {entries.map((entry) => (
              <TryOutItem
                key={entry.id}
                entry={entry}
                compared={compared.includes(entry.id)}
                only={entries.length === 1}
                onCompare={(on) => compare(entry.id, on)}
                onDo={run}
                onRemove={() => remove(entry)}
              />
            ))}
          </ul>
          {entries.length > 1 && <Differences />}
        </div>
      )}
    </section>
  );
}

function Steps(props: { readonly onStep: (step: 1 | -1) => void }) {
  return (
    <span className="try-outs-steps">
      <button
        type="button"
        className="ui-button ui-button-icon"
        aria-label={t('tryOuts.previous')}
        title={t('tryOuts.previous')}
        onClick={() => props.onStep(-1)}
      >
        <ChevronLeft aria-hidden="true" />
      </button>
      <button
        type="button"
        className="ui-button ui-button-icon"
        aria-label={t('tryOuts.next')}
        title={t('tryOuts.next')}
        data-testid="try-outs-next"
        onClick={() => props.onStep(1)}
      >
        <ChevronRight aria-hidden="true" />
      </button>
    </span>
  );
}

/** The table as it is now. */
function tableOf(session: Session) {
  const { design, settings } = session.store.getState();
  const columns = variantColumns(session);
  const lists = columns.map((column) => column.parts);
  return {
    columns,
    parts: partRows(lists, materialsOf(design), settings.units),
    head: headRows(columns, settings.units),
  };
}

/** The table, which follows a drag ten times a second. */
function Differences() {
  const session = useSession();
  const { actions, store, outlooks } = session;
  // Rendered anew for these; what they are is read from the store below.
  useAppState((state) => state.settings.units);
  useAppState((state) => state.compared);
  useAppState((state) => state.design.tryOuts);
  const [, setSeen] = useState(0);
  useFollowing(() => setSeen((count) => count + 1));
  useEffect(() => outlooks.subscribe(() => setSeen((count) => count + 1)), [outlooks]);

  return (
    <div className="lower-scroll" tabIndex={0} role="region" aria-label={t('tryOuts.table')}>
      <DifferenceTable
        {...tableOf(session)}
        onSelect={(id) => {
          const { parts } = store.getState().design;
          if (parts.some((part) => part.id === id)) actions.select(id);
        }}
      />
      <p className="lower-quiet try-outs-signs">{t('tryOuts.signs')}</p>
    </div>
  );
}
