import { useEffect, useMemo, useState } from 'react';
import { useStore } from 'zustand';
import { partText, t } from '../../messages';
import { PART_TYPES } from '../../parts/registry';
import { Dialog } from '../../ui/Dialog';
import { MathText } from '../../ui/MathText';
import { Press } from '../../ui/Press';
import { useAppState, useSession } from '../../ui/session';
import { listedItems } from './comparison';
import { SaidLine } from './SaidLine';
import { ShelfList } from './ShelfList';
import { SideBySide } from './SideBySide';
import { type Said, told } from './said';
import { keepPart } from './shelfDesk';
import { openShelf, saveShelf } from './shelfFiles';
import './shelf.css';

/** The maker's own parts: keep, find, put in, swap in, hold against each other. */
export function ShelfDialog(props: { readonly open: boolean; readonly onClose: () => void }) {
  return (
    <Dialog open={props.open} title={t('shelf.title')} onClose={props.onClose}>
      <ShelfBody />
    </Dialog>
  );
}

/** As many as are held against each other. */
const COMPARED = 2;

function ShelfBody() {
  const session = useSession();
  const { shelf } = session;
  const { items, home, unreadable } = useStore(shelf.state);
  const selected = useAppState((state) =>
    state.design.parts.find((part) => part.id === state.selection),
  );
  const [words, setWords] = useState('');
  const [kind, setKind] = useState('');
  const [ticked, setTicked] = useState<readonly string[]>([]);
  const [said, setSaid] = useState<Said | null>(null);
  useEffect(() => void shelf.load(), [shelf]);

  const listed = useMemo(
    () => listedItems(items, words, kind, selected?.kind ?? null),
    [items, words, kind, selected?.kind],
  );
  const compared = useMemo(
    () => ticked.flatMap((id) => items.find((item) => item.id === id) ?? []),
    [ticked, items],
  );

  function tick(id: string): void {
    setTicked((before) =>
      before.includes(id) ? before.filter((one) => one !== id) : [...before, id].slice(-COMPARED),
    );
  }
  function remove(id: string): void {
    void shelf.remove(id).then((item) => {
      if (!item) return;
      const back = () => void shelf.restore(item);
      setSaid(told(t('shelf.removed', { name: item.name }), back));
    });
  }
  const say = (result: Promise<Said | null>) => void result.then((one) => one && setSaid(one));

  return (
    <div className="shelf" data-testid="shelf">
      {home === 'page' && <p className="shelf-warning">{t('shelf.onlyPage')}</p>}
      {unreadable > 0 && (
        <p className="shelf-warning">{t('shelf.unreadable', { count: unreadable })}</p>
      )}
      <div className="shelf-bar">
        <Press
          off={!selected}
          why={t('shelf.keepWhy')}
          testId="shelf-keep"
          onPress={() => selected && say(keepPart(session, selected.id))}
        >
          {selected ? t('shelf.keepSelected', { name: selected.name }) : t('shelf.keepNothing')}
        </Press>
        <span className="shelf-bar-end">
          <button
            type="button"
            className="ui-button"
            data-testid="shelf-import"
            onClick={() => say(openShelf(shelf))}
          >
            {t('shelf.import')}
          </button>
          <Press
            off={items.length === 0}
            why={t('shelf.saveWhy')}
            testId="shelf-save"
            onPress={() => say(saveShelf(items))}
          >
            {t('shelf.saveAll')}
          </Press>
        </span>
      </div>
      <SaidLine said={said} onSaid={setSaid} />
      {items.length > 0 && (
        <div className="shelf-bar">
          <input
            type="search"
            className="shelf-search"
            aria-label={t('shelf.search')}
            placeholder={t('shelf.search')}
            value={words}
            onChange={(event) => setWords(event.target.value)}
          />
          <select
            className="ui-select"
            aria-label={t('shelf.kind')}
            value={kind}
            onChange={(event) => setKind(event.target.value)}
          >
            <option value="">{t('shelf.allKinds')}</option>
            {PART_TYPES.map((type) => (
              <option key={type.kind} value={type.kind}>
                {partText(`part.${type.kind}.label`, type.label)}
              </option>
            ))}
          </select>
        </div>
      )}
      {listed.length > 0 ? (
        <>
          <ShelfList
            items={listed}
            selected={selected ?? null}
            ticked={ticked}
            onTick={tick}
            onRemove={remove}
            onSaid={setSaid}
          />
          <p className="shelf-note">
            <MathText text={t('shelf.ownFrame')} />
          </p>
        </>
      ) : (
        <p className="shelf-empty">{emptyText(home === 'opening', items.length)}</p>
      )}
      {items.length > 0 && <SideBySide items={compared} />}
    </div>
  );
}

function emptyText(opening: boolean, held: number): string {
  if (opening) return t('shelf.loading');
  return t(held === 0 ? 'shelf.empty' : 'shelf.noneFound');
}
