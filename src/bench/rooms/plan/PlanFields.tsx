import { useMemo } from 'react';
import type { Design } from '../../../design/design';
import { BENCH_PLAN_LIMITS, BENCH_SENSES, type BenchSense } from '../../../design/sections/bench';
import { Press } from '../../../ui/Press';
import type { PlanTyped } from '../../deskTypes';
import type { BenchPlan } from '../../plan';
import { pitchLimits, speedLimits } from '../../planLimits';
import { say } from '../../say';
import { NumberField } from '../NumberField';
import { useBench, useDesk } from '../useDesk';
import { ListField } from './ListField';

/** Pitches, speeds, ways of reading and settling of the runs; what is not said follows from the design. */
export function PlanFields(props: { readonly plan: BenchPlan; readonly design: Design }) {
  const { plan, design } = props;
  const desk = useDesk();
  const typed = useBench((state) => state.plan);
  const pitches = useMemo(() => pitchLimits(design, plan.place), [design, plan.place]);
  const change = (next: PlanTyped) => desk.set({ plan: { ...typed, ...next } });
  return (
    <div className="bench-fields" data-testid="bench-plan-fields">
      <ListField
        label={say('benchRoom.plan.pitches')}
        values={plan.pitchesDeg}
        limits={pitches}
        range="pitchRange"
        testId="bench-plan-pitches"
        onChange={(pitchesDeg) => change({ pitchesDeg })}
      />
      <ListField
        label={say('benchRoom.plan.speeds')}
        values={plan.speedsRpm}
        limits={speedLimits(design)}
        isShort
        range="speedRange"
        testId="bench-plan-speeds"
        onChange={(speedsRpm) => change({ speedsRpm })}
      />
      <Senses senses={plan.senses} onChange={(senses) => change({ senses })} />
      <NumberField
        label={say('benchRoom.plan.settle')}
        {...BENCH_PLAN_LIMITS.settleSeconds}
        value={plan.settleSeconds}
        testId="bench-plan-settle"
        onChange={(value) => value !== null && change({ settleSeconds: value })}
      />
      <Press
        title={say('benchRoom.plan.usualHelp')}
        off={Object.keys(typed).length === 0}
        testId="bench-plan-usual"
        onPress={() => desk.set({ plan: {} })}
      >
        {say('benchRoom.plan.usual')}
      </Press>
    </div>
  );
}

/** At least one way stays. */
function Senses(props: {
  readonly senses: readonly BenchSense[];
  readonly onChange: (senses: readonly BenchSense[]) => void;
}) {
  const { senses } = props;
  const isLast = (sense: BenchSense) => senses.length === 1 && senses[0] === sense;
  return (
    <fieldset className="bench-choices">
      <legend>{say('benchRoom.plan.senses')}</legend>
      {BENCH_SENSES.map((sense) => (
        <label key={sense} className="bench-check">
          <input
            type="checkbox"
            checked={senses.includes(sense)}
            aria-disabled={isLast(sense)}
            title={isLast(sense) ? say('benchRoom.plan.oneSense') : undefined}
            data-testid={`bench-plan-${sense}`}
            onChange={({ target }) =>
              !isLast(sense) &&
              props.onChange(
                BENCH_SENSES.filter((one) =>
                  one === sense ? target.checked : senses.includes(one),
                ),
              )
            }
          />
          {say(`benchRoom.plan.sense.${sense}`)}
        </label>
      ))}
    </fieldset>
  );
}
