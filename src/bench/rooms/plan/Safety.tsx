import { SAFETY_NOTE, SAFETY_STEPS } from '../../safety';
import { say } from '../../say';
import { today } from '../../today';
import { useBench, useDesk } from '../useDesk';
import { sayPlan } from './planText';

/** To be ticked before the rotor turns. The ticks are kept with the plan, and the day on which the last was made. */
export function Safety() {
  const desk = useDesk();
  const ticked = useBench((state) => state.ticked);
  const tickedOn = useBench((state) => state.tickedOn);
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
                ticked: SAFETY_STEPS.filter((one) =>
                  one === key ? target.checked : ticked.includes(one),
                ),
                tickedOn: target.checked ? today() : tickedOn,
              })
            }
          />
          {sayPlan(key)}
        </label>
      ))}
      <p role="status">
        {left === 0 ? say('benchRoom.plan.allTicked') : say('benchRoom.plan.left', { count: left })}{' '}
        {ticked.length > 0 && tickedOn !== '' && say('benchRoom.plan.tickedOn', { date: tickedOn })}
      </p>
      {ticked.length > 0 && (
        <button
          type="button"
          className="bench-link"
          data-testid="bench-untick"
          onClick={() => desk.set({ ticked: [], tickedOn: '' })}
        >
          {say('benchRoom.plan.untick')}
        </button>
      )}
      <p className="lower-quiet">{sayPlan(SAFETY_NOTE)}</p>
    </fieldset>
  );
}
