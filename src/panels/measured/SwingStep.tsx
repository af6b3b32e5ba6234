import { SWING_REQUIRED, type SwingAxis } from '../../design/measured';
import { materialsOf } from '../../design/resolve';
import { t } from '../../messages';
import { useAppState, useSession } from '../../ui/session';
import { OptionalNumberRow } from './OptionalNumberRow';
import { RuleList } from './RuleList';
import { SwingDrawing } from './SwingDrawing';
import { completed, missingOf, type SwingNumber } from './swingDraft';
import { swingField, swingLabel } from './swingFields';
import { SWING_RULES } from './swingRules';
import { swingResult } from './swingText';
import { type SwingEntry, useSwing } from './useSwing';

const READINGS = [
  'amplitudeDeg',
  'cradleGrams',
  'cradleMomentGMm2',
  'spacingStepMm',
  'timeStepSeconds',
] as const satisfies readonly SwingNumber[];

/** One axis of the sheet: how to hang the part, what to fill in, what it comes to. */
export function SwingStep(props: { readonly partId: string; readonly about: SwingAxis }) {
  const { partId, about } = props;
  const entry = useSwing(partId, about);
  const row = (name: SwingNumber) => (
    <OptionalNumberRow
      key={name}
      field={swingField(name, (value) => entry.set(name, value))}
      value={entry.numbers[name]}
    />
  );
  return (
    <div className="swing-step" data-testid={`swing-${about}`}>
      <div className="swing-columns">
        <div>
          <SwingDrawing about={about} />
          <p>{t(`measured.hang.${about}`)}</p>
        </div>
        <div>
          {SWING_REQUIRED.map(row)}
          <h3>{t('measured.readings')}</h3>
          {READINGS.map(row)}
        </div>
      </div>
      <SwingOutcome partId={partId} about={about} entry={entry} />
      <RuleList rules={SWING_RULES} />
    </div>
  );
}

function SwingOutcome(props: {
  readonly partId: string;
  readonly about: SwingAxis;
  readonly entry: SwingEntry;
}) {
  const { partId, about, entry } = props;
  const { live } = useSession();
  const design = useAppState((state) => state.design);
  const units = useAppState((state) => state.settings.units);
  const placed = live.model.placed(partId);
  const swing = completed(about, entry.numbers);
  const begun = Object.values(entry.numbers).some((value) => value !== undefined);
  const result =
    swing && placed
      ? swingResult(placed.part, placed.values, materialsOf(design), swing, units)
      : null;
  return (
    <section className="swing-result" aria-live="polite" data-testid="swing-result">
      <h3>{t('measured.result')}</h3>
      {!swing && (
        <p>
          {t('measured.missing', {
            fields: missingOf(entry.numbers).map(swingLabel).join(', '),
          })}
        </p>
      )}
      {swing && !result && <p>{t('measured.noMass')}</p>}
      {result?.verdict && (
        <p className="swing-verdict" data-disagrees={result.disagrees || undefined}>
          <span className="measured-mark" aria-hidden="true" />
          {result.verdict}
        </p>
      )}
      {result?.sentences.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      {entry.fault && (
        <p className="field-fault" role="alert">
          {entry.fault}
        </p>
      )}
      {begun && (
        <button type="button" className="ui-button" onClick={entry.remove}>
          {t('measured.remove')}
        </button>
      )}
    </section>
  );
}
