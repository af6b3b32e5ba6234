import { useStore } from 'zustand';
import { t } from '../../messages';
import type { KeepDesk } from '../../state/keep/desk';
import type { Card } from '../../state/keep/records';
import { isCancelled, reasonOf } from '../../ui/fileErrors';
import { fileSave, savedText } from '../../ui/fileSave';
import { fileStem } from '../../ui/fileStem';
import { CardRow, nameOf, namesOf, type Said } from './CardRow';

/** Removed and damaged designs; of a damaged one, the states before it. */
export function AsideList(props: {
  readonly keep: KeepDesk;
  readonly cards: readonly Card[];
  readonly onOpen: (card: Card, how: (card: Card) => Promise<boolean>) => void;
  readonly onRemove: (card: Card) => void;
  readonly onSaid: (said: Said) => void;
}) {
  const { keep } = props;
  const { pastsOfDamaged } = useStore(keep.state);

  function bringBack(card: Card): void {
    void keep.bringBack(card).then((done) => {
      if (!done) props.onSaid({ text: t('designs.gone', { name: nameOf(card) }) });
    });
  }
  async function save(card: Card): Promise<void> {
    const text = await keep.text(card);
    if (text === null) return props.onSaid({ text: t('designs.gone', { name: nameOf(card) }) });
    const fileName = `${fileStem(card.name, 'design')}-set-aside.json`;
    try {
      const blob = new Blob([text], { type: 'application/json' });
      props.onSaid({ text: savedText(await fileSave(blob, { fileName }), fileName) });
    } catch (error) {
      if (!isCancelled(error)) {
        props.onSaid({ text: t('app.saveFailed', { reason: reasonOf(error) }) });
      }
    }
  }

  return (
    <section>
      <h3>{t('designs.aside')}</h3>
      <p className="keep-quiet">{t('designs.asideNote')}</p>
      <ul className="keep-list" data-testid="designs-aside">
        {props.cards.map((card) => (
          <CardRow
            key={card.key}
            card={card}
            marks={[
              t(card.reason === 'damaged' ? 'designs.reasonDamaged' : 'designs.reasonRemoved'),
            ]}
            actions={[
              card.reason === 'damaged'
                ? {
                    label: t('designs.saveAside'),
                    name: t('designs.saveAsideName', namesOf(card)),
                    act: () => void save(card),
                  }
                : {
                    label: t('designs.bringBack'),
                    name: t('designs.bringBackName', namesOf(card)),
                    act: () => bringBack(card),
                  },
              {
                label: t('designs.delete'),
                name: t('designs.deleteName', namesOf(card)),
                act: () => props.onRemove(card),
              },
            ]}
            below={
              card.reason === 'damaged' && (
                <PastsOf
                  pasts={pastsOfDamaged.get(card.id) ?? []}
                  onOpen={(past) => props.onOpen(past, keep.openCopy)}
                />
              )
            }
          />
        ))}
      </ul>
    </section>
  );
}

/** Earlier states of a design that cannot be opened itself, newest first. */
function PastsOf(props: {
  readonly pasts: readonly Card[];
  readonly onOpen: (past: Card) => void;
}) {
  const { pasts } = props;
  if (pasts.length === 0) return null;
  return (
    <details className="keep-below" data-testid="designs-damaged-states">
      <summary>{t('designs.damagedStates', { count: pasts.length })}</summary>
      <ul className="keep-list">
        {pasts.map((past) => (
          <CardRow
            key={past.key}
            card={past}
            marks={past.title === undefined ? [t('designs.byItself')] : []}
            actions={[
              {
                label: t('designs.asCopy'),
                name: t('designs.asCopyName', namesOf(past)),
                act: () => props.onOpen(past),
              },
            ]}
          />
        ))}
      </ul>
    </details>
  );
}
