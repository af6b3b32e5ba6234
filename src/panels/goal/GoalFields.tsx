import { useId } from 'react';
import type { Design } from '../../design/design';
import { BLADE_BOLT_SECTION } from '../../design/sections/bladeBolt';
import { sectionValues } from '../../design/sections/section';
import { t } from '../../messages';
import { type GoalKind, isSkewed } from '../../neutralise/goal';
import { partType } from '../../parts/registry';
import { planRange } from '../../state/plan';
import { HelpRow } from '../../ui/help/HelpRow';
import { MathText } from '../../ui/MathText';
import { useRestingDesign, useSession } from '../../ui/session';
import { PlanNumber } from './PlanNumber';
import { usePlan } from './usePlan';

const GOALS: readonly GoalKind[] = ['neutral', 'leastForce', 'centring', 'leastServo'];

/** What is wanted: the goal, its numbers, and at which speeds. */
export function GoalFields() {
  const { plan: desk } = useSession();
  const plan = usePlan();
  const design = useRestingDesign();
  const id = useId();
  return (
    <section className="goal-section" aria-labelledby={`${id}-title`}>
      <h3 className="ui-heading" id={`${id}-title`}>
        {t('goal.kind')}
      </h3>
      <select
        className="ui-select goal-wide"
        aria-labelledby={`${id}-title`}
        aria-describedby={`${id}-help`}
        data-testid="goal-kind"
        value={plan.goal}
        onChange={(event) => desk.set({ goal: event.target.value as GoalKind })}
      >
        {GOALS.map((goal) => (
          <option key={goal} value={goal}>
            {t(`goal.${goal}`)}
          </option>
        ))}
      </select>
      <p className="goal-help" id={`${id}-help`}>
        <MathText text={t(`goal.${plan.goal}Help`)} />
      </p>
      <HelpRow ids={['neutral', 'lumpToNeutral', 'neutralise']} />
      {plan.goal === 'neutral' && isSkewed(design) && (
        <p className="goal-warning">{t('goal.skewed')}</p>
      )}
      {plan.goal === 'neutral' && swings(design) && (
        <p className="goal-warning">{t('goal.swings')}</p>
      )}
      {(plan.goal === 'leastForce' || plan.goal === 'leastServo') && <RangeFields />}
      {plan.goal === 'centring' && <CentringFields />}
      {plan.goal !== 'neutral' && (
        <label className="goal-row">
          <span>{t('goal.speeds')}</span>
          <select
            className="ui-select"
            data-testid="goal-speeds"
            value={plan.speeds}
            onChange={(event) => desk.set({ speeds: event.target.value as typeof plan.speeds })}
          >
            <option value="design">{t('goal.speedsDesign')}</option>
            <option value="range" disabled={design.rotor.speedRpm === 0}>
              {t('goal.speedsRange') + (design.rotor.speedRpm === 0 ? t('goal.noSpeeds') : '')}
            </option>
          </select>
        </label>
      )}
    </section>
  );
}

function RangeFields() {
  const { plan: desk } = useSession();
  const plan = usePlan();
  const design = useRestingDesign();
  const [from, to] = planRange({ ...plan, fromDeg: null, toDeg: null }, design);
  const common = { help: t('goal.rangeHelp'), unit: 'deg', min: -90, max: 90, step: 1 } as const;
  return (
    <>
      <PlanNumber
        {...common}
        name="goal-from"
        label={t('goal.fromDeg')}
        value={plan.fromDeg}
        standard={from}
        onChange={(fromDeg) => desk.set({ fromDeg })}
      />
      <PlanNumber
        {...common}
        name="goal-to"
        label={t('goal.toDeg')}
        value={plan.toDeg}
        standard={to}
        onChange={(toDeg) => desk.set({ toDeg })}
      />
    </>
  );
}

function CentringFields() {
  const { plan: desk } = useSession();
  const plan = usePlan();
  return (
    <>
      <PlanNumber
        name="goal-rest"
        label={t('goal.restDeg')}
        help={t('goal.restHelp')}
        unit="deg"
        min={-80}
        max={80}
        step={1}
        value={plan.restDeg}
        onChange={(value) => desk.set({ restDeg: value ?? 0 })}
      />
      <PlanNumber
        name="goal-away"
        label={t('goal.awayDeg')}
        help={t('goal.awayHelp')}
        unit="deg"
        min={0.5}
        max={45}
        step={1}
        value={plan.awayDeg}
        onChange={(value) => desk.set({ awayDeg: value ?? 10 })}
      />
      <PlanNumber
        name="goal-force"
        label={t('goal.forceN')}
        help={t('goal.forceHelp')}
        unit="N"
        min={0}
        max={1e6}
        step={0.1}
        value={plan.forceN}
        onChange={(value) => desk.set({ forceN: value ?? 1 })}
      />
    </>
  );
}

/** A blade hangs free on its bolt, and what that does is counted. */
function swings({ bladeBolt, parts }: Design): boolean {
  const free = sectionValues(BLADE_BOLT_SECTION, bladeBolt).hold === 'free';
  return free && parts.some(({ kind, hidden }) => !hidden && partType(kind).hinged === true);
}
