import { t } from '../../messages';
import { FindBar } from './FindBar';
import { GoalFields } from './GoalFields';
import { KnobList } from './KnobList';
import { OfferList, WeightFields } from './OfferList';
import './goal.css';

/** The left side of the room Neutralise: what is wanted, what may change, and the search. */
export function GoalPanel() {
  return (
    <section className="goal" aria-label={t('goal.title')} data-testid="goal">
      <div className="goal-scroll">
        <GoalFields />
        <KnobList />
        <WeightFields />
        <OfferList />
      </div>
      <FindBar />
    </section>
  );
}
