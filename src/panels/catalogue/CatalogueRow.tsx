import { useId, useState } from 'react';
import type { Part } from '../../design/design';
import { t } from '../../messages';
import { phrase } from '../../messages/phrases';
import { catalogueRow } from '../../parts/catalogue';
import { partType } from '../../parts/registry';
import { refusalText } from '../../state/refusalText';
import { referenceText } from '../../state/words/catalogueText';
import { lazyRoom } from '../../ui/lazyRoom';
import { useAppState, useSession } from '../../ui/session';
import { FieldFault } from '../fields/FieldFault';
import { useFollowed } from '../fields/useFollowed';
import { leftStandardLines } from './standardText';
import './catalogue.css';

const CataloguePicker = lazyRoom(() =>
  import('./CataloguePicker').then((module) => module.CataloguePicker),
);

/** Which standard part this is and in what it differs from it, or that its dimensions are its own; opens the picker. */
export function CatalogueRow(props: { readonly partId: string }) {
  const { partId } = props;
  const { store, live, actions } = useSession();
  const id = useId();
  const units = useAppState((state) => state.settings.units);
  const [asked, setAsked] = useState(false);
  const [open, setOpen] = useState(false);
  const [fault, setFault] = useState<string | null>(null);
  const now = () => live.model.placed(partId)?.part;
  const name = useFollowed(() => nameOf(now()));
  const title = useFollowed(() => titleOf(now()));
  // Lines of text hold no line break: one string is cheap to compare.
  const left = useFollowed(() => {
    const part = now();
    return part ? leftStandardLines(part, units).join('\n') : '';
  });
  const listed = name !== '';

  function leave(): void {
    const outcome = actions.setCatalogue(partId, null);
    const { design } = store.getState();
    setFault(outcome.ok ? null : refusalText(outcome.error, design, partId, units));
    if (outcome.ok) document.getElementById(`${id}-choose`)?.focus();
  }

  return (
    <section
      className="fields-group catalogue"
      aria-labelledby={`${id}-title`}
      data-help={t('catalogue.chooseHelp')}
      data-testid="catalogue"
    >
      <h3 className="ui-heading" id={`${id}-title`}>
        {t('catalogue.title')}
      </h3>
      <div className="catalogue-head">
        <p className="catalogue-name" data-testid="catalogue-name">
          {listed ? name : t('catalogue.own')}
          {title !== '' && <span>{title}</span>}
        </p>
        <button
          type="button"
          id={`${id}-choose`}
          className="ui-button"
          aria-haspopup="dialog"
          data-testid="catalogue-choose"
          onClick={() => {
            setAsked(true);
            setOpen(true);
          }}
        >
          {t(listed ? 'catalogue.change' : 'catalogue.choose')}
        </button>
      </div>
      {listed && (
        <>
          <LeftStandard lines={left} />
          <button
            type="button"
            className="ui-button catalogue-leave"
            data-testid="catalogue-leave"
            onClick={leave}
          >
            {t('catalogue.leave')}
          </button>
        </>
      )}
      <FieldFault id={`${id}-fault`} text={fault} />
      {asked && (
        <>
          <CataloguePicker open={open} onClose={() => setOpen(false)} partId={partId} />
        </>
      )}
    </section>
  );
}

function LeftStandard(props: { readonly lines: string }) {
  if (props.lines === '') return <p className="catalogue-note">{t('catalogue.asListed')}</p>;
  return (
    <div className="catalogue-left" data-testid="catalogue-left">
      {t('catalogue.left')}
      <ul>
        {props.lines.split('\n').map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </div>
  );
}

function nameOf(part: Part | undefined): string {
  return part?.catalogue ? referenceText(part.catalogue) : '';
}

function titleOf(part: Part | undefined): string {
  if (!part?.catalogue) return '';
  const row = catalogueRow(partType(part.kind), part.catalogue);
  return row.ok ? phrase(row.value.standard.title) : '';
}
