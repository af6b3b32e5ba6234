import { useState } from 'react';
import { createPortal, flushSync } from 'react-dom';
import { fixed } from '../../../state/quantities';
import { useAppState } from '../../../ui/session';
import type { BenchPlan, PlannedRung, PlannedSpeed } from '../../plan';
import { rungName } from '../../rungs';
import { SAFETY_NOTE, SAFETY_STEPS } from '../../safety';
import { say } from '../../say';
import { ExpectedTable } from './ExpectedTable';
import { fleesFlat, partName, planSentences, sayPlan } from './planText';
import '../../../ui/printSheet.css';

/** Prints the safety sheet and a blank sheet for each run; on the page there is only the button. */
export function PrintSheets(props: {
  readonly plan: BenchPlan;
  readonly rungs: readonly PlannedRung[];
  readonly text: string;
}) {
  const { plan, rungs } = props;
  const [printing, setPrinting] = useState(false);
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
          <div className="ui-sheet bench-print" data-testid="bench-sheets">
            <SafetySheet plan={plan} />
            {rungs.flatMap((rung) =>
              rung.speeds.map((speed) => (
                <RunSheet
                  key={`${rung.key} ${speed.speedRpm}`}
                  plan={plan}
                  rung={rung}
                  speed={speed}
                />
              )),
            )}
          </div>,
          document.body,
        )}
    </>
  );
}

function SafetySheet({ plan }: { readonly plan: BenchPlan }) {
  const name = useAppState((state) => state.design.name);
  const units = useAppState((state) => state.settings.units);
  return (
    <section>
      <h1>{say('benchRoom.print.safety', { name })}</h1>
      <Lines names={['date', 'by']} />
      <ul className="ui-sheet-ticks">
        {SAFETY_STEPS.map((key) => (
          <li key={key}>{sayPlan(key)}</li>
        ))}
      </ul>
      <p>{sayPlan(SAFETY_NOTE)}</p>
      <h2>{say('benchRoom.print.runs')}</h2>
      <ul className="bench-print-words">
        {planSentences(plan, units)
          .filter((line) => line !== say('benchRoom.plan.noRange'))
          .map((line) => (
            <li key={line}>{line}</li>
          ))}
      </ul>
    </section>
  );
}

/** A sheet for a run: a step of the ladder at one speed. */
function RunSheet(props: {
  readonly plan: BenchPlan;
  readonly rung: PlannedRung;
  readonly speed: PlannedSpeed;
}) {
  const { plan, rung, speed } = props;
  const name = useAppState((state) => state.design.name);
  const isStill = rung.key === 'drag';
  const atArm = plan.place.kind === 'arm' ? (['arm'] as const) : [];
  return (
    <section data-testid="bench-sheet">
      <h1>{say('benchRoom.print.sheet', { name, rung: rungName(rung.key) })}</h1>
      <h2>
        {isStill
          ? say('benchRoom.print.still')
          : say('benchRoom.print.at', { speed: fixed(speed.speedRpm, 0) })}
      </h2>
      <p>
        {isStill
          ? say('benchRoom.print.everything')
          : say('benchRoom.print.added', {
              parts: rung.added.map((id) => partName(rung.design, id)).join(', '),
            })}
      </p>
      {fleesFlat(rung) && <p>{say('benchRoom.plan.flees')}</p>}
      <Lines names={['date', 'by', 'gauge', 'step', ...atArm, 'zeroBefore', 'zeroAfter', 'note']} />
      <ExpectedTable rung={speed} senses={plan.senses} blank />
      {!isStill && (
        <ul className="ui-sheet-ticks">
          <li>{sayPlan('bench.safety.inspect')}</li>
        </ul>
      )}
    </section>
  );
}

const NAMES = {
  date: 'benchRoom.meta.date',
  by: 'benchRoom.print.by',
  gauge: 'benchRoom.meta.gauge',
  step: 'benchRoom.meta.step',
  arm: 'benchRoom.meta.arm',
  zeroBefore: 'benchRoom.print.zeroBefore',
  zeroAfter: 'benchRoom.print.zeroAfter',
  note: 'benchRoom.meta.note',
} as const;

/** Lines to write on. */
function Lines({ names }: { readonly names: readonly (keyof typeof NAMES)[] }) {
  return (
    <p className="bench-print-lines">
      {names.map((name) => (
        <span key={name} className="bench-print-line">
          {say(NAMES[name])}
        </span>
      ))}
    </p>
  );
}
