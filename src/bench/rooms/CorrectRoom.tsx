import { useState } from 'react';
import { factor95 } from '../../engine/identify/distributions';
import { show } from '../../state/quantities';
import { displaySecondMoment } from '../../state/shownUnits';
import { HelpRow } from '../../ui/help/HelpRow';
import { MathText } from '../../ui/MathText';
import { useAppState, useRestingDesign, useSession } from '../../ui/session';
import type { BenchAnalysis, RungAnalysis } from '../analysis';
import type { Estimated } from '../fitRung';
import type { HeadAnalysis } from '../headAnalysis';
import { agreementOf } from '../ladder';
import { rungName } from '../rungs';
import { say } from '../say';
import './bench.css';
import { Offers } from './correct/Offers';
import { withHalf } from './fit/fitWords';
import { ExpectedTable } from './plan/ExpectedTable';
import { PrintSheets } from './plan/PrintSheets';
import { partName } from './plan/planText';
import { useAnalysis } from './useAnalysis';
import { usePlan } from './usePlan';

/** What the model lacks, what would put it right, and the run that confirms it. */
export function CorrectRoom() {
  const analysis = useAnalysis();
  const [said, setSaid] = useState('');
  const whole = analysis.rungs.find(({ rung }) => rung.key === 'asDesigned');
  const rung = whole ?? analysis.rungs.at(-1);
  const deficit = rung?.fitted.ok ? rung.fitted.value.deficit : null;
  const left = analysis.apart.filter(({ why }) => why !== 'uncounted');
  return (
    <section
      className="bench-room lower-scroll"
      aria-label={say('benchRoom.correct')}
      data-testid="bench-correct"
      tabIndex={0}
    >
      <div className="bench-stack">
        {/* Always there, so that a screen reader speaks what is written into it. */}
        <p role="status" className="bench-said" data-testid="bench-correct-said">
          {said}
        </p>
        {!whole && left.length > 0 ? (
          <p className="bench-lead" data-testid="bench-not-measured">
            {say('benchRoom.correct.notMeasured', { name: nameOfLeft(left) })}
          </p>
        ) : rung && deficit ? (
          <Corrections rung={rung} deficit={deficit} analysis={analysis} onTried={setSaid} />
        ) : (
          <p>
            <MathText text={say('benchRoom.correct.none')} />
          </p>
        )}
        <Confirming open={said !== '' || (!whole && left.length > 0)} />
      </div>
    </section>
  );
}

function nameOfLeft(left: HeadAnalysis['apart']): string {
  const other = left.find(({ why }) => why === 'otherHead');
  return other?.why === 'otherHead' ? other.name : say('benchRoom.correct.anotherHead');
}

function Corrections(props: {
  readonly rung: RungAnalysis;
  readonly deficit: Estimated;
  readonly analysis: BenchAnalysis;
  readonly onTried: (said: string) => void;
}) {
  const { rung, deficit, analysis, onTried } = props;
  const design = useRestingDesign();
  const isWhole = rung.rung.key === 'asDesigned';
  return (
    <>
      <Lack rung={rung} deficit={deficit} />
      <LadderPoints analysis={analysis} />
      {isWhole ? (
        <Offers
          design={design}
          deficit={deficit}
          modelSpread={rung.fitted.ok ? rung.fitted.value.model.spread : Number.NaN}
          onTried={onTried}
        />
      ) : (
        <p>{say('benchRoom.correct.notWhole', { rung: rungName(rung.rung.key) })}</p>
      )}
    </>
  );
}

/** Steps of the ladder that differ from the model beyond doubt, with the parts that they add. */
function LadderPoints({ analysis: { ladder, rungs } }: { readonly analysis: BenchAnalysis }) {
  const differing = ladder.length > 1 ? ladder.filter(({ agreement }) => !agreement.agrees) : [];
  if (differing.length === 0) return null;
  return (
    <ul className="bench-words" data-testid="bench-points">
      {differing.map(({ to, added }) => {
        const fitted = rungs.find(({ rung }) => rung.key === to)?.rung.design;
        const parts = fitted ? added.map((id) => partName(fitted, id)).join(', ') : '';
        return <li key={to}>{say('benchRoom.correct.points', { rung: rungName(to), parts })}</li>;
      })}
    </ul>
  );
}

/** "The model has 14 +- 3 g mm^2 too little." */
function Lack({ rung, deficit }: { readonly rung: RungAnalysis; readonly deficit: Estimated }) {
  const units = useAppState((state) => state.settings.units);
  const factor = factor95(deficit.freedom);
  const agreement = agreementOf(deficit);
  const line = (name: 'spread' | 'product', variance: number) => {
    const value = deficit[name];
    const half = factor * Math.sqrt(variance);
    if (Math.abs(value) <= half)
      return say(`benchRoom.correct.${name}Agrees`, {
        half: show(displaySecondMoment(half, units), 2),
      });
    return say(`benchRoom.correct.${name}`, {
      amount: withHalf(
        displaySecondMoment(Math.abs(value), units),
        displaySecondMoment(half, units).value,
      ),
      way: say(value >= 0 ? 'benchRoom.correct.little' : 'benchRoom.correct.much'),
    });
  };
  return (
    <div data-testid="bench-lack">
      <p className="bench-lead">
        <MathText text={line('spread', deficit.covariance[0])} />{' '}
        <MathText text={line('product', deficit.covariance[3])} />
      </p>
      <p className="lower-quiet">
        {say('benchRoom.correct.from', {
          rung: rungName(rung.rung.key),
          count: rung.readings.length,
        })}{' '}
        {say(agreement.agrees ? 'benchRoom.correct.agrees' : 'benchRoom.correct.differs')}
      </p>
      <HelpRow ids={['difference', 'product', 'band95', 'returningForce']} />
    </div>
  );
}

/** The run that shows whether the head on the stage does as it should now. */
function Confirming({ open }: { readonly open: boolean }) {
  const { actions } = useSession();
  const plan = usePlan('everyRung');
  if (!plan.ok) return null;
  const rung = plan.value.rungs[plan.value.rungs.length - 1];
  return (
    // Another element once a try-out was made: it opens then, and is closed by hand as before.
    <details className="bench-confirm" data-testid="bench-confirm" open={open} key={String(open)}>
      <summary>{say('benchRoom.correct.confirm')}</summary>
      <ol className="bench-words">
        <li>{say('benchRoom.correct.confirmMake')}</li>
        <li>{say('benchRoom.correct.confirmRun')}</li>
        <li>{say('benchRoom.correct.confirmRead')}</li>
      </ol>
      <div className="bench-buttons">
        <PrintSheets plan={plan.value} rungs={[rung]} text={say('benchRoom.correct.print')} />
        <button
          type="button"
          className="ui-button"
          data-testid="bench-to-readings"
          onClick={() => actions.setSettings({ benchView: 'readings' })}
        >
          {say('benchRoom.correct.toReadings')}
        </button>
      </div>
      <p className="lower-quiet">{say('benchRoom.correct.confirmHelp')}</p>
      <ExpectedTable rung={rung} />
    </details>
  );
}
