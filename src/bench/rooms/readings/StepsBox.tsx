import { useMemo, useState } from 'react';
import { readingFromSi, siFromReading } from '../../../engine/units';
import { localNumber } from '../../../messages/numbers';
import { Press } from '../../../ui/Press';
import { useAppState } from '../../../ui/session';
import type { StepsDraft } from '../../deskTypes';
import { pitchesForSteps } from '../../namedSteps';
import type { BenchRun } from '../../readings/benchSection';
import type { Reading } from '../../readings/types';
import { say } from '../../say';
import { NumberField } from '../NumberField';
import { useBench, useDesk } from '../useDesk';
import { usePlan } from '../usePlan';
import { PitchRow } from './PitchRow';
import { SeriesPlot } from './SeriesPlot';
import { StepTable } from './StepTable';
import { firstNaming, namedSteps, pitchOf, searched, withPitches } from './stepsDraft';

/** Steps found in a log of time and force alone, to be given their pitches and taken, or not. */
export function StepsBox(props: { readonly run: BenchRun; readonly readings: readonly Reading[] }) {
  const { run, readings } = props;
  const desk = useDesk();
  const naming = useBench((state) => state.naming);
  const gaugeStep = useBench((state) => state.gaugeStepN);
  const found = useMemo(() => firstNaming(run, readings, gaugeStep), [run, readings, gaugeStep]);
  const draft = naming?.run === run.id ? naming : found;
  const put = (next: StepsDraft) => desk.set({ naming: next });
  return (
    <div className="bench-stack bench-steps" data-testid="bench-steps">
      <p>{say('benchRoom.steps.help')}</p>
      <Search draft={draft} readings={readings} onChange={put} />
      <SeriesPlot
        name={run.name}
        readings={readings}
        marks={draft.steps
          .filter(({ counts }) => counts)
          .map(({ from, to, pitch }) => ({ from, to, label: labelOf(pitch) }))}
      />
      {draft.steps.length === 0 ? (
        <p className="bench-fault">{say('benchRoom.steps.none')}</p>
      ) : (
        <>
          <Filling draft={draft} onChange={put} />
          <StepTable draft={draft} readings={readings} onChange={put} />
          <Taking run={run} draft={draft} />
        </>
      )}
    </div>
  );
}

function labelOf(pitch: string): string {
  const deg = pitchOf(pitch);
  return deg === null
    ? '?'
    : `${deg > 0 ? '+' : ''}${localNumber(String(deg)).replace('-', '\u2212')}\u00b0`;
}

interface Part {
  readonly draft: StepsDraft;
  readonly onChange: (draft: StepsDraft) => void;
}

function Search({ draft, readings, onChange }: Part & { readonly readings: readonly Reading[] }) {
  const unit = useAppState((state) => state.settings.units.force);
  const isForce = readings.some(({ force }) => force !== null);
  const own = isForce ? unit : 'N mm';
  const { search, run } = draft;
  const again = (next: Partial<StepsDraft['search']>) =>
    onChange(searched(run, readings, { ...search, ...next }));
  return (
    <div className="bench-fields">
      <NumberField
        label={say('benchRoom.steps.smallest')}
        unit={own}
        min={0.001}
        max={1000}
        value={readingFromSi(search.smallest, own)}
        testId="bench-steps-smallest"
        onChange={(value) => value !== null && again({ smallest: siFromReading(value, own) })}
      />
      <NumberField
        label={say('benchRoom.steps.shortest')}
        unit="s"
        min={0.05}
        max={600}
        value={search.shortest}
        testId="bench-steps-shortest"
        onChange={(value) => value !== null && again({ shortest: value })}
      />
      <NumberField
        label={say('benchRoom.steps.settling')}
        unit="s"
        min={0}
        max={600}
        value={search.settling}
        testId="bench-steps-settling"
        onChange={(value) => value !== null && again({ settling: value })}
      />
    </div>
  );
}

/** Pitches for all steps at once: those of the plan, or typed in the order in which they were set. */
function Filling({ draft, onChange }: Part) {
  const plan = usePlan('everyRung');
  const count = draft.steps.filter(({ counts }) => counts).length;
  const ofPlan = plan.ok ? pitchesForSteps(count, plan.value) : null;
  return (
    <div className="bench-fields">
      {plan.ok && (
        <Press
          off={ofPlan === null}
          testId="bench-steps-plan"
          onPress={() => ofPlan && onChange(withPitches(draft, ofPlan))}
        >
          {say('benchRoom.steps.fromPlan')}
        </Press>
      )}
      <PitchRow count={count} onPitches={(pitches) => onChange(withPitches(draft, pitches))} />
      <p className="lower-quiet bench-wide">
        {say('benchRoom.steps.count', { count })}{' '}
        {plan.ok &&
          ofPlan === null &&
          say('benchRoom.steps.planDiffers', {
            one: plan.value.pitchesDeg.length,
            most: 2 * plan.value.pitchesDeg.length,
          })}
      </p>
    </div>
  );
}

function Taking({ run, draft }: { readonly run: BenchRun; readonly draft: StepsDraft }) {
  const desk = useDesk();
  const [tried, setTried] = useState(false);
  const { steps, wrong } = namedSteps(draft);
  function take(): void {
    setTried(true);
    if (wrong.length > 0 || steps.length === 0) return;
    // Places of readings that were set aside were places of other steps.
    desk.changeRun(run.id, { steps, setAside: undefined });
    desk.set({ naming: null });
  }
  return (
    <>
      {tried && wrong.length > 0 && (
        <p className="bench-fault" role="alert">
          {say('benchRoom.steps.wrong', { list: wrong.join(', ') })}
        </p>
      )}
      <div className="bench-buttons">
        <button
          type="button"
          className="ui-button ui-button-main"
          data-testid="bench-steps-take"
          onClick={take}
        >
          {say('benchRoom.steps.take', { count: steps.length })}
        </button>
        {run.steps && (
          <button type="button" className="ui-button" onClick={() => desk.set({ naming: null })}>
            {say('benchRoom.steps.keep')}
          </button>
        )}
        {run.steps && (
          <button
            type="button"
            className="ui-button"
            data-testid="bench-steps-drop"
            onClick={() => {
              desk.changeRun(run.id, { steps: undefined, setAside: undefined });
              desk.set({ naming: null });
            }}
          >
            {say('benchRoom.steps.drop')}
          </button>
        )}
      </div>
    </>
  );
}
