import type { DesignFault } from '../../design/fault';
import { faultMessage } from '../../design/faultText';
import { MODEL_SHARE, type WeighedComparison } from '../../design/massCard';
import { WEIGHED_TOTAL_LIMITS } from '../../design/measured';
import type { Result } from '../../engine/result';
import { t } from '../../messages';
import { displayMass, fixed, show } from '../../state/quantities';
import type { DisplayUnits } from '../../state/settings';
import { useAppState, useSession } from '../../ui/session';
import { OptionalNumberRow } from '../measured/OptionalNumberRow';
import type { OptionalField } from '../measured/useOptionalEntry';

/** The whole grip on the scale, and what that says of the sum. */
export function ScaleEntry(props: {
  readonly weighed: WeighedComparison | null;
  readonly units: DisplayUnits;
}) {
  const { actions } = useSession();
  const total = useAppState((state) => state.design.weighedTotal);
  const massGrams = total?.massGrams;
  const massStepGrams = total?.massStepGrams;
  const write = (mass: number | undefined, step: number | undefined) =>
    wordsOf(
      actions.setWeighedTotal(
        mass === undefined
          ? null
          : { massGrams: mass, ...(step === undefined ? {} : { massStepGrams: step }) },
      ),
    );
  const mass: OptionalField = {
    key: 'weighed-total',
    label: t('massCard.scaleMass'),
    help: t('massCard.scaleMassHelp'),
    limits: WEIGHED_TOTAL_LIMITS.massGrams,
    step: 0.1,
    commit: (value) => write(value, massStepGrams),
  };
  const step: OptionalField = {
    key: 'weighed-step',
    label: t('massCard.scaleStep'),
    help: t('massCard.scaleStepHelp'),
    limits: WEIGHED_TOTAL_LIMITS.massStepGrams,
    step: 0.01,
    commit: (value) => write(massGrams, value),
  };
  return (
    <section className="card-scale" aria-label={t('massCard.scaleTitle')}>
      <h3>{t('massCard.scaleTitle')}</h3>
      <div className="card-scale-fields">
        <OptionalNumberRow field={mass} value={massGrams} />
        {massGrams !== undefined && <OptionalNumberRow field={step} value={massStepGrams} />}
      </div>
      <p
        className="card-scale-words"
        data-beyond={props.weighed?.within === false || undefined}
        role="status"
        data-testid="scale-words"
      >
        {scaleText(props.weighed, props.units)}
      </p>
      {props.weighed && (
        <p className="card-note">{t('massCard.scaleNote', { percent: 100 * MODEL_SHARE })}</p>
      )}
    </section>
  );
}

function wordsOf(outcome: Result<unknown, DesignFault>): string | null {
  return outcome.ok ? null : faultMessage(outcome.error.reason);
}

/** The difference between scale and sum in words. */
export function scaleText(weighed: WeighedComparison | null, units: DisplayUnits): string {
  if (!weighed) return t('massCard.scaleNone');
  const { difference, percent, allowance, within } = weighed;
  if (difference === 0) return t('massCard.scaleSame');
  const mass = (kilograms: number) => show(displayMass(Math.abs(kilograms), units));
  return t(within ? 'massCard.scaleWithin' : 'massCard.scaleBeyond', {
    size: mass(difference),
    percent: percent === null ? t('massCard.none') : `${fixed(Math.abs(percent), 1)}\u00a0%`,
    more: t(difference > 0 ? 'massCard.more' : 'massCard.less'),
    allowance: mass(allowance),
  });
}
