import { useMemo } from 'react';
import { materialsOf } from '../../design/resolve';
import { t } from '../../messages';
import { boltsOf, type Offer, offersOf, TURNED_MATERIALS } from '../../neutralise/offers';
import { usualWeight } from '../../state/plan';
import { materialName } from '../../state/words/materialText';
import { offerText } from '../../state/words/planText';
import { useRestingDesign, useSession } from '../../ui/session';
import { PlanNumber } from './PlanNumber';
import { usePlan } from './usePlan';

/** What may be chosen from lists: standard parts that fit, washers, materials, forms. */
export function OfferList() {
  const { plan: desk } = useSession();
  const plan = usePlan();
  const design = useRestingDesign();
  const offers = useMemo(() => offersOf(design), [design]);
  if (offers.length === 0) return null;

  function tick(offer: Offer) {
    return (
      <label key={offer.key} className="goal-tick">
        <input
          type="checkbox"
          data-testid={`offer-${offer.key.replaceAll(' ', '-')}`}
          checked={plan.offers.includes(offer.key)}
          onChange={({ target }) =>
            desk.set({
              offers: target.checked
                ? [...plan.offers, offer.key]
                : plan.offers.filter((key) => key !== offer.key),
            })
          }
        />
        {offerText(offer, design)}
      </label>
    );
  }

  return (
    <section className="goal-section" aria-label={t('goal.offers')}>
      <h3 className="ui-heading">{t('goal.offers')}</h3>
      <p className="goal-help">{t('goal.offersNote')}</p>
      {offers.filter(({ usual }) => usual).map(tick)}
      {offers.some(({ usual }) => !usual) && (
        <details>
          <summary>{t('goal.offersMore')}</summary>
          {offers.filter(({ usual }) => !usual).map(tick)}
        </details>
      )}
    </section>
  );
}

const SIDES = ['none', 'headTop', 'boltEnd', 'both'] as const;

/** A weight that is not there yet: on which side of the bolt, from which bars. */
export function WeightFields() {
  const { plan: desk } = useSession();
  const plan = usePlan();
  const design = useRestingDesign();
  const usual = usualWeight(design);
  const bar = { unit: 'mm', min: 2, max: 60, step: 1, help: t('goal.weightBarHelp') } as const;
  if (boltsOf(design).length === 0) return null;
  return (
    <section className="goal-section" aria-label={t('goal.weight')}>
      <h3 className="ui-heading">{t('goal.weight')}</h3>
      <label className="goal-row">
        <span>{t('goal.weightSide')}</span>
        <select
          className="ui-select"
          data-testid="goal-weight"
          value={plan.weightSide}
          onChange={({ target }) =>
            desk.set({ weightSide: target.value as typeof plan.weightSide })
          }
        >
          {SIDES.map((side) => (
            <option key={side} value={side}>
              {t(`goal.weight.${side}`)}
            </option>
          ))}
        </select>
      </label>
      {plan.weightSide !== 'none' && (
        <>
          <p className="goal-help">{t('goal.weightNote')}</p>
          <PlanNumber
            {...bar}
            name="weight-from"
            label={t('goal.weightFrom')}
            value={plan.weightFromMm}
            standard={usual.fromMm}
            onChange={(weightFromMm) => desk.set({ weightFromMm })}
          />
          <PlanNumber
            {...bar}
            name="weight-to"
            label={t('goal.weightTo')}
            value={plan.weightToMm}
            standard={usual.toMm}
            onChange={(weightToMm) => desk.set({ weightToMm })}
          />
          <PlanNumber
            name="weight-longest"
            label={t('goal.weightLongest')}
            help={t('goal.weightLongestHelp')}
            unit="mm"
            min={0.6}
            max={300}
            step={1}
            value={plan.weightLongestMm}
            standard={usual.longestMm}
            onChange={(weightLongestMm) => desk.set({ weightLongestMm })}
          />
          <fieldset className="goal-materials">
            <legend>{t('goal.weightMaterials')}</legend>
            {TURNED_MATERIALS.map((id) => (
              <label key={id} className="goal-tick">
                <input
                  type="checkbox"
                  checked={plan.weightMaterials.includes(id)}
                  onChange={({ target }) =>
                    desk.set({
                      weightMaterials: target.checked
                        ? [...plan.weightMaterials, id]
                        : plan.weightMaterials.filter((one) => one !== id),
                    })
                  }
                />
                {materialName(id, materialsOf(design))}
              </label>
            ))}
          </fieldset>
        </>
      )}
    </section>
  );
}
