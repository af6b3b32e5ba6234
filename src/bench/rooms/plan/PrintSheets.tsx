import { useState } from 'react';
import { createPortal, flushSync } from 'react-dom';
import { useAppState } from '../../../ui/session';
import { RUNG_NAMES } from '../../analysis';
import type { BenchPlan, PlannedRung } from '../../plan';
import { SAFETY_NOTE, SAFETY_STEPS } from '../../safety';
import { say } from '../../say';
import { ExpectedTable } from './ExpectedTable';
import { planSentences, sayPlan } from './planText';

/** Prints the safety sheet and a blank sheet for each run; on the page there is only the button. */
export function PrintSheets(props: {
  readonly plan: BenchPlan;
  readonly rungs: readonly PlannedRung[];
  readonly text: string;
}) {
  const { plan, rungs } = props;
  const [printing, setPrinting] = useState(false);
  const name = useAppState((state) => state.design.name);
  const units = useAppState((state) => state.settings.units);
  function print(): void {
    // The sheets have to be there before the browser looks.
    flushSync(() => setPrinting(true));
    globalThis.print();
    setPrinting(false);
  }
  return (
    <>
      <button type="button" className="ui-button" data-testid="bench-print" onClick={print}>
        {props.text}
      </button>
      {printing &&
        createPortal(
          <div className="bench-print" data-testid="bench-sheets">
            <section>
              <h1>{say('benchRoom.print.safety', { name })}</h1>
              <SafetyList />
              <p>{sayPlan(SAFETY_NOTE)}</p>
              <p>{planSentences(plan, units).join(' ')}</p>
            </section>
            {rungs.map((rung) => (
              <section key={rung.key}>
                <h1>{say('benchRoom.print.sheet', { name, rung: RUNG_NAMES[rung.key] })}</h1>
                <p className="bench-print-line">{say('benchRoom.print.lines')}</p>
                <ExpectedTable rung={rung} blank />
              </section>
            ))}
          </div>,
          document.body,
        )}
    </>
  );
}

function SafetyList() {
  return (
    <ul className="bench-print-ticks">
      {SAFETY_STEPS.map((key) => (
        <li key={key}>{sayPlan(key)}</li>
      ))}
    </ul>
  );
}
