import { type KeyboardEvent, useState } from 'react';
import { useStore } from 'zustand';
import { MAX_NAME } from '../../design/limits';
import { t } from '../../messages';
import type { KeepDesk } from '../../state/keep/desk';
import type { Card } from '../../state/keep/records';
import { focusFirst } from '../../ui/focusFirst';
import { CardRow, namesOf } from './CardRow';

/** Earlier states of the design on the stage, newest first. */
export function StateList(props: {
  readonly keep: KeepDesk;
  readonly onOpen: (card: Card, how: (card: Card) => Promise<boolean>) => void;
  readonly onRemove: (card: Card) => void;
}) {
  const { keep } = props;
  const { pasts } = useStore(keep.state);
  const [renaming, setRenaming] = useState<string | null>(null);
  if (pasts.length === 0) return <p className="keep-quiet">{t('designs.noStates')}</p>;

  function rename(card: Card, title: string): void {
    setRenaming(null);
    if (title.trim() !== (card.title ?? '')) void keep.rename(card, title.trim());
  }
  return (
    <ul className="keep-list" data-testid="designs-states">
      {pasts.map((card) => (
        <CardRow
          key={card.key}
          card={card}
          marks={card.title === undefined ? [t('designs.byItself')] : []}
          actions={[
            {
              label: t('designs.goBack'),
              name: t('designs.goBackName', namesOf(card)),
              act: () => props.onOpen(card, keep.goBack),
            },
            {
              label: t('designs.asCopy'),
              name: t('designs.asCopyName', namesOf(card)),
              act: () => props.onOpen(card, keep.openCopy),
            },
            {
              label: t('designs.rename'),
              name: t('designs.renameName', namesOf(card)),
              act: () => setRenaming(card.key),
            },
            {
              label: t('designs.remove'),
              name: t('designs.removeName', namesOf(card)),
              act: () => props.onRemove(card),
            },
          ]}
        >
          {renaming === card.key ? (
            <RenameField card={card} onDone={(title) => rename(card, title)} />
          ) : undefined}
        </CardRow>
      ))}
    </ul>
  );
}

/** Enter or leaving takes the name, Escape leaves the old one. */
function RenameField(props: { readonly card: Card; readonly onDone: (title: string) => void }) {
  const old = props.card.title ?? '';
  function onKeyDown(event: KeyboardEvent<HTMLInputElement>): void {
    if (event.key !== 'Enter' && event.key !== 'Escape') return;
    event.preventDefault();
    event.stopPropagation();
    if (event.key === 'Escape') event.currentTarget.value = old;
    event.currentTarget.blur();
  }
  return (
    <input
      ref={focusFirst}
      type="text"
      className="keep-field"
      aria-label={t('designs.renameField')}
      defaultValue={old}
      maxLength={MAX_NAME}
      autoComplete="off"
      data-testid="designs-rename"
      onKeyDown={onKeyDown}
      onBlur={(event) => props.onDone(event.currentTarget.value)}
    />
  );
}
