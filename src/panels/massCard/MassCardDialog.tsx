import { useState } from 'react';
import { t } from '../../messages';
import { secondMomentText } from '../../state/shownUnits';
import type { Notice } from '../../state/store';
import { Dialog } from '../../ui/Dialog';
import { HelpRow } from '../../ui/help/HelpRow';
import { MathText } from '../../ui/MathText';
import { useAppState, useSession } from '../../ui/session';
import { CardTable } from './CardTable';
import { copyCard, saveCard } from './cardFiles';
import { cardSheet } from './cardSheet';
import { ScaleEntry } from './ScaleEntry';
import { useMassCard } from './useMassCard';
import '../rail/rail.css';
import '../fields/fields.css';
import './massCard.css';

/** Who weighs what and pulls which way, to read, to copy, and to hold against the scale. */
export function MassCardDialog(props: { readonly open: boolean; readonly onClose: () => void }) {
  return (
    <Dialog open={props.open} title={t('massCard.title')} onClose={props.onClose}>
      <CardBody />
    </Dialog>
  );
}

function CardBody() {
  const { store } = useSession();
  const name = useAppState((state) => state.design.name);
  const units = useAppState((state) => state.settings.units);
  const card = useMassCard();
  const [said, setSaid] = useState<Notice | null>(null);
  const sheet = () => cardSheet(card, store.getState().design);
  const say = (result: Promise<Notice | null>) => void result.then((one) => one && setSaid(one));
  if (card.rows.length + card.rods.length + card.hidden.length === 0)
    return <p>{t('massCard.empty')}</p>;
  return (
    <div className="card">
      <CardTable card={card} name={name} units={units} />
      <p className="card-note">
        <MathText text={t('massCard.noteFrame')} />
      </p>
      <p className="card-note">
        <MathText
          text={t('massCard.noteShare', { absolute: secondMomentText(card.absolute, units) })}
        />
      </p>
      <HelpRow ids={['mass', 'difference', 'product', 'featheringInertia', 'massTolerance']} />
      <div className="card-bar">
        <button
          type="button"
          className="ui-button"
          data-testid="card-copy"
          onClick={() => say(copyCard(sheet()))}
        >
          {t('massCard.copy')}
        </button>
        <button
          type="button"
          className="ui-button"
          data-testid="card-save"
          onClick={() => say(saveCard(sheet(), name))}
        >
          {t('massCard.save')}
        </button>
        <span role="status" className="card-said" data-tone={said?.tone}>
          {said?.text}
        </span>
      </div>
      <ScaleEntry weighed={card.weighed} units={units} />
    </div>
  );
}
