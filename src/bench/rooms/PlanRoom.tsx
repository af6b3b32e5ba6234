import { useState } from 'react';
import type { Design } from '../../design/design';
import { useAppState, useRestingDesign } from '../../ui/session';
import { RUNG_NAMES } from '../analysis';
import type { BenchPlan } from '../plan';
import type { RungKey } from '../rungs';
import { SAFETY_NOTE, SAFETY_STEPS } from '../safety';
import { say } from '../say';
import './bench.css';
import { displayForce, show } from '../../state/quantities';
import { GaugeFields, PlaceChoice } from './fit/FitChoices';
import { ExpectedTable } from './plan/ExpectedTable';
import { PrintSheets } from './plan/PrintSheets';
import { gaugeFaultText, missingText, partName, planSentences, sayPlan } from './plan/planText';
import { useBench, useDesk } from './useDesk';
import { usePlan } from './usePlan';

/** The runs to be made: build ladder, expected readings, load against the gauge's range, safety. */
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
      <ul className="bench-words" data-testid="bench-plan-words">
        {planSentences(plan, units).map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <table className="lower-table" data-testid="bench-rungs">
        <thead>
          <tr>
            <th scope="col">{say('benchRoom.fit.rung')}</th>
            <th scope="col">{say('benchRoom.plan.added')}</th>
            <th scope="col" className="lower-number">
              {say('benchRoom.head.speed')}
            </th>
            <th scope="col" className="lower-number">
              {say('benchRoom.plan.highestHead')}
            </th>
          </tr>
        </thead>
        <tbody>
          {plan.rungs.map(({ key, added, design: fitted, speedRpm, highest }) => (
            <tr key={key}>
              <th scope="row">
                <button
                  type="button"
                  className="lower-name"
                  aria-pressed={key === rung.key}
                  onClick={() => setChosen(key)}
                >
                  {RUNG_NAMES[key]}
                </button>
              </th>
              <td>
                {key === 'drag'
                  ? say('benchRoom.plan.everything')
                  : added.map((id) => partName(fitted, id)).join(', ')}
              </td>
              <td className="lower-number">
                {speedRpm === 0 ? say('benchRoom.plan.still') : `${speedRpm}\u00a0rpm`}
              </td>
              <td className="lower-number">{show(displayForce(highest, units))}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {plan.missing.map((missing) => (
        <p key={missing.key} className="lower-quiet">
          {missingText(missing, design)}
        </p>
      ))}
      <h3 className="ui-heading">
        {say('benchRoom.plan.expected', { rung: RUNG_NAMES[rung.key] })}
      </h3>
      <ExpectedTable rung={rung} />
      <p className="lower-quiet">{say('benchRoom.plan.expectedHelp')}</p>
    </div>
  );
}

/** To be ticked before the rotor turns; the ticks are kept until the page is closed. */
function Safety() {
  const desk = useDesk();
  const ticked = useBench((state) => state.ticked);
  const left = SAFETY_STEPS.filter((key) => !ticked.includes(key)).length;
  return (
    <fieldset className="bench-safety" data-testid="bench-safety">
      <legend className="ui-heading">{say('benchRoom.plan.safety')}</legend>
      {SAFETY_STEPS.map((key) => (
        <label key={key} className="bench-check">
          <input
            type="checkbox"
            checked={ticked.includes(key)}
            onChange={({ target }) =>
              desk.set({
                ticked: target.checked ? [...ticked, key] : ticked.filter((one) => one !== key),
              })
            }
          />
          {sayPlan(key)}
        </label>
      ))}
      <p role="status">
        {left === 0 ? say('benchRoom.plan.allTicked') : say('benchRoom.plan.left', { count: left })}
      </p>
      <p className="lower-quiet">{sayPlan(SAFETY_NOTE)}</p>
    </fieldset>
  );
}
