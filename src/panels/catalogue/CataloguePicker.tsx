import { useState } from 'react';
import { createPortal } from 'react-dom';
import type { Part } from '../../design/design';
import { partText, t } from '../../messages';
import { inSentence } from '../../messages/inSentence';
import { phrase } from '../../messages/phrases';
import type { PartCatalogue } from '../../parts/catalogue';
import { partType } from '../../parts/registry';
import { refusalText } from '../../state/refusalText';
import { lengthNumber, referenceText, sizeName } from '../../state/words/catalogueText';
import { Dialog } from '../../ui/Dialog';
import { PickList } from '../../ui/PickList';
import { useSession } from '../../ui/session';
import { type CatalogueHit, searchCatalogue } from './catalogueSearch';
import { keyOf, keyOfReference, lengthOf, nearestRow, oddNote, referenceOf } from './chosenRow';
import { LengthChoice } from './LengthChoice';
import { RowPreview } from './RowPreview';

/** Chooses a row of a standard for a part: search, length, what it would be, one press to take it. */
export function CataloguePicker(props: {
  readonly open: boolean;
  readonly onClose: () => void;
  readonly partId: string;
}) {
  const { live } = useSession();
  const placed = props.open ? live.model.placed(props.partId) : undefined;
  const kind = placed?.part.kind;
  const label = kind ? partText(`part.${kind}.label`, partType(kind).label) : '';
  const catalogue = kind && partType(kind).catalogue;
  return createPortal(
    <Dialog
      open={props.open}
      title={t('catalogue.pick', { kind: inSentence(label) })}
      onClose={props.onClose}
    >
      {placed && catalogue && (
        <Picker part={placed.part} catalogue={catalogue} onTaken={props.onClose} />
      )}
    </Dialog>,
    document.body,
  );
}

function Picker(props: {
  readonly part: Part;
  readonly catalogue: PartCatalogue;
  readonly onTaken: () => void;
}) {
  const { part, catalogue } = props;
  const { store, live, actions } = useSession();
  const [query, setQuery] = useState('');
  const [chosen, setChosen] = useState(() =>
    part.catalogue
      ? keyOfReference(part.catalogue)
      : nearestRow(catalogue, live.model.placed(part.id)?.values ?? {}),
  );
  /** A length typed or pressed; null: the one that goes with the row. */
  const [typed, setTyped] = useState<string | null>(null);
  const [refused, setRefused] = useState<string | null>(null);
  const hits = searchCatalogue(catalogue, query);
  const hit = hits.find((one) => keyOf(one) === chosen) ?? hits[0];
  const length = hit && lengthOf(hit, typed, part, catalogue, live.model.placed(part.id)?.values);
  const reference = hit && length && referenceOf(hit, length.lengthMm);

  function search(text: string): void {
    setQuery(text);
    setTyped(null);
    setRefused(null);
    const found = searchCatalogue(catalogue, text);
    setChosen(found[0] ? keyOf(found[0]) : null);
  }

  function activate(key: string): void {
    setChosen(key);
    setTyped(null);
    setRefused(null);
  }

  function take(): void {
    if (!reference) return;
    const outcome = actions.setCatalogue(part.id, reference);
    if (outcome.ok) return props.onTaken();
    const { design, settings } = store.getState();
    setRefused(refusalText(outcome.error, design, part.id, settings.units));
  }

  return (
    <form
      className="pick-panes"
      onSubmit={(event) => {
        event.preventDefault();
        take();
      }}
    >
      <PickList
        label={t('catalogue.search')}
        placeholder={t('catalogue.searchExample')}
        listLabel={t('catalogue.rows')}
        count={t(hits.length > 0 ? 'catalogue.found' : 'catalogue.none', { count: hits.length })}
        query={query}
        onQuery={search}
        items={hits}
        keyOf={keyOf}
        groupOf={({ standard }) => `${phrase(standard.standard)}, ${phrase(standard.title)}`}
        active={hit ? keyOf(hit) : null}
        onActive={activate}
        onTake={take}
      >
        {(one) => <RowItem hit={one} />}
      </PickList>
      {hit && length && (
        <div className="pick-detail">
          {hit.size.lengthsMm && (
            <LengthChoice
              size={hit.size.size}
              lengths={hit.size.lengthsMm}
              text={length.text}
              lengthMm={length.lengthMm ?? null}
              fault={length.fault}
              note={oddNote(hit, length.lengthMm)}
              onText={(text) => {
                setTyped(text);
                setRefused(null);
              }}
            />
          )}
          {reference && <RowPreview part={part} hit={hit} reference={reference} />}
          {refused !== null && (
            <p className="pick-fault" role="alert">
              {refused}
            </p>
          )}
          <div className="pick-actions">
            <button
              type="submit"
              className="ui-button pick-take"
              aria-disabled={!reference}
              title={reference ? undefined : t('catalogue.takeWhy')}
              data-testid="catalogue-take"
            >
              {t('catalogue.take', {
                name: reference ? referenceText(reference) : sizeName(hit.size.size),
              })}
            </button>
          </div>
        </div>
      )}
    </form>
  );
}

function RowItem({ hit }: { readonly hit: CatalogueHit }) {
  const { size, lengthMm } = hit;
  const odd = oddNote(hit, lengthMm) !== null;
  return (
    <>
      <span>
        {sizeName(size.size)}
        {lengthMm !== undefined && ` \u00d7 ${lengthNumber(size.size, lengthMm)}`}
        {odd && <span className="pick-aside"> {t('catalogue.notListed')}</span>}
      </span>
      {size.fromMemory && <span className="pick-memory">{t('catalogue.fromMemory')}</span>}
    </>
  );
}
