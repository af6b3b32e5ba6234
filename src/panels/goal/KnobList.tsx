import { RotateCcw, X } from 'lucide-react';
import { INCH_MM } from '../../engine/units';
import { t } from '../../messages';
import {
  knobKey,
  knobPart,
  knobRange,
  knobsOf,
  knobsOfPart,
  knobValue,
} from '../../neutralise/knobs';
import type { KnobSpec } from '../../neutralise/request';
import { planKnobs } from '../../state/plan';
import { knobFieldText, knobText, knobValueText } from '../../state/words/planText';
import { useAppState, useRestingDesign, useSession } from '../../ui/session';
import { LateSelect } from './LateSelect';
import { PlanNumber } from './PlanNumber';
import { usePlan } from './usePlan';

/** The numbers that a search may turn, each with its limits and steps. */
export function KnobList() {
  const { plan: desk, store } = useSession();
  const plan = usePlan();
  const design = useRestingDesign();
  const knobs = planKnobs(plan, design);
  const write = (next: readonly KnobSpec[]) => desk.set({ knobs: next });

  function add(): void {
    const { selection } = store.getState();
    const free = knobsOf(design).filter(
      (ref) => !knobs.some((one) => knobKey(one.ref) === knobKey(ref)),
    );
    const ref = free.find(({ part }) => part === selection) ?? free[0];
    if (ref) write([...knobs, { ref, ...firstLimits(ref) }]);
  }

  function firstLimits(ref: KnobSpec['ref']): Omit<KnobSpec, 'ref'> {
    const range = knobRange(design, ref);
    const now = knobValue(design, ref) ?? 0;
    const { min = 0, max = 1, unit = 'mm' } = range ?? {};
    const reach = unit === 'mm' ? 10 : unit === 'deg' ? 45 : Math.max(1, Math.abs(now));
    return {
      min: Math.max(min, tidy(now - reach)),
      max: Math.min(max, tidy(now + reach)),
      step: unit === 'mm' ? 0.1 : 0,
    };
  }

  return (
    <section className="goal-section" aria-label={t('goal.knobs')}>
      <div className="goal-head">
        <h3 className="ui-heading">{t('goal.knobs')}</h3>
        {plan.knobs !== null && (
          <button
            type="button"
            className="ui-button ui-button-bare"
            title={t('goal.knobsResetTitle')}
            data-testid="knobs-reset"
            onClick={() => desk.set({ knobs: null })}
          >
            <RotateCcw aria-hidden="true" />
            {t('goal.knobsReset')}
          </button>
        )}
      </div>
      {knobs.length === 0 && <p className="goal-help">{t('goal.knobsNone')}</p>}
      {knobs.map((knob, i) => (
        <KnobCard
          key={`${i} ${knobKey(knob.ref)}`}
          knob={knob}
          onChange={(next) => write(knobs.with(i, next))}
          onRef={(ref) => write(knobs.with(i, { ref, ...firstLimits(ref) }))}
          onRemove={() => write(knobs.filter((_, k) => k !== i))}
        />
      ))}
      <div className="goal-head">
        <button type="button" className="ui-button" data-testid="knob-add" onClick={add}>
          {t('goal.knobAdd')}
        </button>
      </div>
      {knobs.length > 1 && (
        <label className="goal-row">
          <span>{t('goal.together')}</span>
          <select
            className="ui-select"
            data-testid="goal-together"
            value={plan.together ? 'together' : 'alone'}
            onChange={(event) => desk.set({ together: event.target.value === 'together' })}
          >
            <option value="alone">{t('goal.alone')}</option>
            <option value="together">{t('goal.allTogether')}</option>
          </select>
        </label>
      )}
    </section>
  );
}

function tidy(value: number): number {
  return Number(value.toFixed(6));
}

const STEPS_MM: readonly number[] = [0, 0.01, 0.05, 0.1, 0.25, 0.5, 1];
/** 0.001, 0.002, 0.005 and 0.01 in; 1/64 and 1/32 in. */
const STEPS_INCH: readonly number[] = [0, 0.001, 0.002, 0.005, 0.01, 1 / 64, 1 / 32].map(
  (inch) => inch * INCH_MM,
);

function KnobCard(props: {
  readonly knob: KnobSpec;
  readonly onChange: (next: KnobSpec) => void;
  readonly onRef: (ref: KnobSpec['ref']) => void;
  readonly onRemove: () => void;
}) {
  const { knob, onChange } = props;
  const { ref } = knob;
  const design = useRestingDesign();
  const units = useAppState((state) => state.settings.units);
  const range = knobRange(design, ref);
  const part = knobPart(design, ref);
  if (!range || !part) return null;
  const { unit } = range;
  const name = knobText(design, ref);
  const limit = { help: t('goal.limitHelp'), unit, min: range.min, max: range.max, step: 0.1 };
  const now = knobValue(design, ref) ?? 0;
  return (
    <fieldset className="goal-knob" data-testid={`knob-${knobKey(ref)}`}>
      <legend className="ui-unseen">{name}</legend>
      <div className="goal-knob-head">
        <LateSelect
          className="ui-select"
          label={t('goal.knobPart')}
          chosen={{ value: part.id, text: part.name || part.id }}
          choices={() =>
            design.parts
              .filter((one) => !one.hidden && knobsOfPart(design, one).length > 0)
              .map((one) => ({ value: one.id, text: one.name || one.id }))
          }
          onChoose={(value) => {
            const other = design.parts.find(({ id }) => id === value);
            const [first] = other ? knobsOfPart(design, other) : [];
            if (first) props.onRef(first);
          }}
        />
        <button
          type="button"
          className="ui-button ui-button-icon ui-button-bare"
          aria-label={t('goal.knobRemove', { name })}
          title={t('goal.knobRemove', { name })}
          onClick={props.onRemove}
        >
          <X aria-hidden="true" />
        </button>
      </div>
      <select
        className="ui-select goal-wide"
        aria-label={t('goal.knobField')}
        value={knobKey(ref)}
        onChange={(event) => {
          const other = knobsOfPart(design, part).find(
            (one) => knobKey(one) === event.target.value,
          );
          if (other) props.onRef(other);
        }}
      >
        {knobsOfPart(design, part).map((one) => (
          <option key={knobKey(one)} value={knobKey(one)}>
            {knobFieldText(design, one)}
            {knobKey(one) === knobKey(ref)
              ? ` (${t('goal.knobNow', { value: knobValueText(now, unit, units) })})`
              : ''}
          </option>
        ))}
      </select>
      <PlanNumber
        {...limit}
        name={`${knobKey(ref)}-min`}
        label={t('goal.knobMin')}
        value={knob.min}
        onChange={(min) => min !== null && onChange({ ...knob, min })}
      />
      <PlanNumber
        {...limit}
        name={`${knobKey(ref)}-max`}
        label={t('goal.knobMax')}
        value={knob.max}
        onChange={(max) => max !== null && onChange({ ...knob, max })}
      />
      {unit === 'mm' && <StepRow knob={knob} onChange={onChange} />}
      <AlsoRow knob={knob} onChange={onChange} />
    </fieldset>
  );
}

function StepRow(props: { readonly knob: KnobSpec; readonly onChange: (next: KnobSpec) => void }) {
  const { knob } = props;
  const units = useAppState((state) => state.settings.units);
  const usual = units.length === 'in' ? STEPS_INCH : STEPS_MM;
  const known = knob.step === 'bars' || usual.includes(knob.step);
  const steps = known ? usual : [...usual, knob.step as number];
  return (
    <label className="goal-row">
      <span>{t('goal.knobStep')}</span>
      <select
        className="ui-select"
        value={String(knob.step)}
        onChange={({ target }) =>
          props.onChange({ ...knob, step: target.value === 'bars' ? 'bars' : Number(target.value) })
        }
      >
        {steps.map((step) => (
          <option key={step} value={step}>
            {step === 0 ? t('goal.knobStepExact') : knobValueText(step, 'mm', units)}
          </option>
        ))}
        <option value="bars">{t('goal.knobStepBars')}</option>
      </select>
    </label>
  );
}

/** Another number of the same unit that changes by as much. */
function AlsoRow(props: { readonly knob: KnobSpec; readonly onChange: (next: KnobSpec) => void }) {
  const { knob } = props;
  const design = useRestingDesign();
  const unit = knobRange(design, knob.ref)?.unit;
  const others = () =>
    knobsOf(design).filter(
      (ref) => knobKey(ref) !== knobKey(knob.ref) && knobRange(design, ref)?.unit === unit,
    );
  const [also] = knob.also ?? [];
  const none = { value: '', text: t('goal.knobAlsoNone') };
  const choice = (ref: KnobSpec['ref']) => ({ value: knobKey(ref), text: knobText(design, ref) });
  return (
    <label className="goal-row" title={t('goal.knobAlsoHelp')}>
      <span>{t('goal.knobAlso')}</span>
      <LateSelect
        className="ui-select"
        testId={`knob-also-${knobKey(knob.ref)}`}
        chosen={also ? choice(also) : none}
        choices={() => [none, ...others().map(choice)]}
        onChoose={(value) => {
          const { also: _, ...alone } = knob;
          const other = others().find((ref) => knobKey(ref) === value);
          props.onChange(other ? { ...alone, also: [other] } : alone);
        }}
      />
    </label>
  );
}
