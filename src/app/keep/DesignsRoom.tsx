import { type FormEvent, useEffect, useRef, useState } from 'react';
import { useStore } from 'zustand';
import { MAX_NAME } from '../../design/limits';
import { addTexts, t } from '../../messages';
import { DESIGNS_ROOM } from '../../messages/en/designsRoom';
import { createKeepDesk, type KeepDesk } from '../../state/keep/desk';
import type { Card } from '../../state/keep/records';
import { focusFirst } from '../../ui/focusFirst';
import { useServices } from '../AppContext';
import { AsideList } from './AsideList';
import { CardRow, nameOf, namesOf, type Said } from './CardRow';
import { StateList } from './StateList';
import './keep.css';

addTexts('designsRoom', DESIGNS_ROOM);

/** Recent designs, earlier states of the open one, and what was set aside. */
export function DesignsRoom(props: { readonly onDone: () => void }) {
  const { keeper, keepPorts } = useServices();
  const [keep] = useState(() => createKeepDesk(keeper, keepPorts, isPromised));
  const { listing, reading, promised } = useStore(keep.state);
  const { id, state } = useStore(keeper.status);
  const [said, setSaid] = useState<Said | null>(null);
  // Anew when what is kept has changed: the present state comes into the list a moment after the dialog opens.
  useEffect(() => {
    if (state !== 'keeping' && id !== '') void keep.load();
  }, [keep, state, id]);

  function remove(card: Card): void {
    void keep.remove(card).then((undo) => {
      if (!undo) return setSaid({ text: t('designs.gone', { name: nameOf(card) }) });
      const back = () => void undo().then(() => setSaid(null));
      setSaid({ text: t('designs.removed', { name: nameOf(card) }), undo: back });
    });
  }
  function open(card: Card, how: (card: Card) => Promise<boolean>): void {
    void how(card).then((opened) => {
      if (opened) props.onDone();
      else setSaid({ text: t('designs.gone', { name: nameOf(card) }) });
    });
  }

  return (
    <div className="keep" data-testid="designs-room">
      {state === 'kept' && <p>{t('designs.kept')}</p>}
      <p className="keep-quiet">
        {t(promised === true ? 'designs.promised' : 'designs.notPromised')}
      </p>
      {reading !== 'read' && reading !== 'not yet' && (
        <p className="keep-warning" role="alert">
          {t('designs.unread', { reason: t(`keep.trouble.${reading}`) })}
        </p>
      )}
      <SaidLine said={said} />
      <section>
        <h3>{t('designs.recent')}</h3>
        {listing.designs.length === 0 && (
          <p className="keep-quiet">
            {t(reading === 'not yet' ? 'designs.loading' : 'designs.noDesigns')}
          </p>
        )}
        <ul className="keep-list" data-testid="designs-list">
          {listing.designs.map((card) => (
            <CardRow
              key={card.key}
              card={card}
              marks={marksOf(card, id)}
              actions={[
                {
                  label: t('designs.open'),
                  name: t('designs.openName', namesOf(card)),
                  act: () => open(card, keep.openDesign),
                  hinder: card.id === id ? t('designs.isOpen') : null,
                },
                {
                  label: t('designs.remove'),
                  name: t('designs.removeName', namesOf(card)),
                  act: () => remove(card),
                  hinder: card.id === id ? t('designs.isOpen') : null,
                },
              ]}
            />
          ))}
        </ul>
        {listing.newer > 0 && (
          <p className="keep-quiet">{t('designs.newer', { count: listing.newer })}</p>
        )}
      </section>
      <section>
        <h3>{t('designs.states')}</h3>
        <NameNow keep={keep} onSaid={setSaid} />
        <StateList keep={keep} onOpen={open} onRemove={remove} />
      </section>
      {listing.aside.length > 0 && (
        <AsideList
          keep={keep}
          cards={listing.aside}
          onOpen={open}
          onRemove={remove}
          onSaid={setSaid}
        />
      )}
    </div>
  );
}

/** Null where the browser does not say. */
async function isPromised(): Promise<boolean | null> {
  return (await navigator.storage?.persisted?.()) ?? null;
}

function marksOf(card: Card, here: string): readonly string[] {
  return [
    card.id === here ? t('designs.here') : '',
    card.copyOf === undefined ? '' : t('designs.copyOf'),
    card.edited ? '' : t('designs.unedited'),
  ].filter((mark) => mark !== '');
}

function SaidLine({ said }: { readonly said: Said | null }) {
  const undo = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    // What was pressed may be gone with its row: the keyboard goes on from here.
    if (said?.undo && document.activeElement?.tagName !== 'BUTTON') undo.current?.focus();
  }, [said]);
  return (
    <div role="status" data-testid="designs-said">
      {said && (
        <div className="keep-said">
          <span>{said.text}</span>
          {said.undo && (
            <button
              type="button"
              ref={undo}
              className="ui-button"
              data-testid="designs-undo"
              onClick={said.undo}
            >
              {t('designs.undo')}
            </button>
          )}
        </div>
      )}
    </div>
  );
}

/** Keeps the present state under a name. */
function NameNow(props: { readonly keep: KeepDesk; readonly onSaid: (said: Said) => void }) {
  const { keep, onSaid } = props;
  const [name, setName] = useState('');

  function onSubmit(event: FormEvent): void {
    event.preventDefault();
    const title = name.trim();
    if (title === '') return;
    void keep.nameNow(title).then((done) => {
      if (done) setName('');
      onSaid({ text: done ? t('designs.named', { name: title }) : t('designs.notNamed') });
    });
  }
  return (
    <form className="keep-form" onSubmit={onSubmit}>
      <input
        ref={focusFirst}
        type="text"
        className="keep-field"
        aria-label={t('designs.nameLabel')}
        placeholder={t('designs.namePlace')}
        maxLength={MAX_NAME}
        autoComplete="off"
        data-testid="designs-name"
        value={name}
        onChange={(event) => setName(event.target.value)}
      />
      <button
        type="submit"
        className="ui-button"
        aria-disabled={name.trim() === ''}
        data-testid="designs-name-now"
      >
        {t('designs.nameNow')}
      </button>
    </form>
  );
}
