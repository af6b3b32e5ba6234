import { useState } from 'react';
import type { Design } from '../../design/design';
import { fixed } from '../../state/quantities';
import { HelpRow } from '../../ui/help/HelpRow';
import { useAppState, useRestingDesign } from '../../ui/session';
import type { BenchPlan, PlannedRung } from '../plan';
import { speedLimits } from '../planLimits';
import { type RungKey, rungName } from '../rungs';
import { say } from '../say';
import './bench.css';
import { GaugeFields, PlaceChoice } from './fit/FitChoices';
import { ExpectedTable } from './plan/ExpectedTable';
import { PlanFields } from './plan/PlanFields';
import { PrintSheets } from './plan/PrintSheets';
import { gaugeFaultText, missingText, planSentences } from './plan/planText';
import { RungTable } from './plan/RungTable';
import { Safety } from './plan/Safety';
import { useBench, useDesk } from './useDesk';
import { usePlan } from './usePlan';

/** The runs to be made: build ladder, pitches and speeds, expected readings, load against the gauge's range, safety. */
export function PlanRoom() {
  const design = useRestingDesign();
  const plan = usePlan();
  return (
    <section
      className="bench-room bench-split"
      aria-label={say('benchRoom.plan')}
      data-testid="bench-plan"
    >
      <div className="bench-side">
        <PlaceChoice />
        <GaugeFields />
        <Safety />
      </div>
      <div
        className="bench-main lower-scroll"
        tabIndex={0}
        role="region"
        aria-label={say('benchRoom.details')}
      >
        {plan.ok ? (
          <Planned plan={plan.value} design={design} />
        ) : (
          <p className="bench-fault">{gaugeFaultText(plan.error)}</p>
        )}
      </div>
    </section>
  );
}

function Planned(props: { readonly plan: BenchPlan; readonly design: Design }) {
  const { plan, design } = props;
  const units = useAppState((state) => state.settings.units);
  const [chosen, setChosen] = useState<RungKey>('asDesigned');
  const rung = plan.rungs.find(({ key }) => key === chosen) ?? plan.rungs[plan.rungs.length - 1];
  return (
    <div className="bench-stack">
      <div className="bench-buttons">
        <PrintSheets plan={plan} rungs={plan.rungs} text={say('benchRoom.plan.print')} />
        <span className="lower-quiet">{say('benchRoom.plan.printHelp')}</span>
      </div>
      <PlanFields plan={plan} design={design} />
      <ul className="bench-words" data-testid="bench-plan-words">
        {planSentences(plan, units, speedLimits(design).max).map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <RungTable plan={plan} chosen={rung.key} onChoose={setChosen} />
      {plan.missing.map((missing) => (
        <p key={missing.key} className="lower-quiet">
          {missingText(missing, design)}
        </p>
      ))}
      <Expected plan={plan} rung={rung} />
    </div>
  );
}

/** The readings of one run: the rung that was chosen, at the speed that was. */
function Expected({ plan, rung }: { readonly plan: BenchPlan; readonly rung: PlannedRung }) {
  const desk = useDesk();
  const typed = useBench((state) => state.plan);
  const [speedRpm, setSpeedRpm] = useState<number | null>(null);
  const { speeds } = rung;
  const at = speeds.find((one) => one.speedRpm === speedRpm) ?? speeds[speeds.length - 1];
  return (
    <>
      <div className="bench-buttons">
        <h3 className="ui-heading">
          {say('benchRoom.plan.expected', { rung: rungName(rung.key) })}
        </h3>
        {speeds.length > 1 && (
          <label>
            {say('benchRoom.plan.speedOf')}{' '}
            <select
              className="ui-select"
              value={at.speedRpm}
              data-testid="bench-plan-speed"
              onChange={({ target }) => setSpeedRpm(Number(target.value))}
            >
              {speeds.map((one) => (
                <option key={one.speedRpm} value={one.speedRpm}>
                  {`${fixed(one.speedRpm, 0)}\u00a0rpm`}
                </option>
              ))}
            </select>
          </label>
        )}
      </div>
      <ExpectedTable
        rung={at}
        senses={plan.senses}
        onLeaveOut={(deg) =>
          desk.set({
            plan: { ...typed, pitchesDeg: plan.pitchesDeg.filter((one) => one !== deg) },
          })
        }
      />
      <p className="lower-quiet">
        {say('benchRoom.plan.expectedHelp')} {say(`benchRoom.plan.band.${rung.bandFrom}`)}
      </p>
      <HelpRow ids={['gaugeStep', 'hysteresis', 'dragAtRest', 'pushRodForce', 'buildLadder']} />
    </>
  );
}
