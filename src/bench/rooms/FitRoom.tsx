import { useMemo } from 'react';
import { HelpRow } from '../../ui/help/HelpRow';
import { MathText } from '../../ui/MathText';
import { useAppState } from '../../ui/session';
import type { BenchAnalysis, RungAnalysis } from '../analysis';
import type { FittedHead } from '../fitRung';
import type { HeadAnalysis } from '../headAnalysis';
import { type RungKey, rungName } from '../rungs';
import { say } from '../say';
import './bench.css';
import { Estimates } from './fit/Estimates';
import { FitChoices } from './fit/FitChoices';
import { FitPlots } from './fit/FitPlots';
import { Flagged } from './fit/Flagged';
import { fitSentences } from './fit/fitWords';
import { LadderBars } from './fit/LadderBars';
import { leftOutLines } from './fit/leftOut';
import { Returning } from './fit/Returning';
import { RunChoices } from './fit/RunChoices';
import { SplitTable } from './fit/SplitTable';
import { shownReadings } from './fit/shownReadings';
import { useAnalysis } from './useAnalysis';
import { useBench, useDesk } from './useDesk';

/** What the readings say: fitted numbers beside the model's, curves, what is left over, doubts, and the ladder. */
export function FitRoom() {
  const analysis = useAnalysis();
  const wanted = useBench((state) => state.rung);
  const rung = analysis.rungs.find(({ rung: one }) => one.key === wanted) ?? analysis.rungs.at(-1);
  return (
    <section
      className="bench-room bench-split"
      aria-label={say('benchRoom.fit')}
      data-testid="bench-fit"
    >
      <div className="bench-side">
        <RungChoice analysis={analysis} chosen={rung?.rung.key ?? null} />
        <RunChoices analysis={analysis} />
        <FitChoices />
      </div>
      <div
        className="bench-main lower-scroll"
        tabIndex={0}
        role="region"
        aria-label={say('benchRoom.details')}
      >
        <Notes analysis={analysis} />
        {rung ? <RungFit rung={rung} analysis={analysis} /> : <p>{say('benchRoom.fit.none')}</p>}
      </div>
    </section>
  );
}

function RungChoice(props: { readonly analysis: BenchAnalysis; readonly chosen: RungKey | null }) {
  const desk = useDesk();
  const { rungs } = props.analysis;
  if (rungs.length === 0) return null;
  return (
    <label className="bench-field">
      {say('benchRoom.fit.rung')}
      <select
        className="ui-select"
        value={props.chosen ?? ''}
        data-testid="bench-rung"
        onChange={({ target }) => desk.set({ rung: target.value as RungKey })}
      >
        {rungs.map(({ rung, readings }) => (
          <option key={rung.key} value={rung.key}>
            {say('benchRoom.fit.rungLine', { name: rungName(rung.key), count: readings.length })}
          </option>
        ))}
      </select>
    </label>
  );
}

/** Runs and readings that take no part, and why. */
function Notes({ analysis }: { readonly analysis: HeadAnalysis }) {
  const lines = leftOutLines(analysis);
  if (lines.length === 0) return null;
  return (
    <ul className="bench-words" data-testid="bench-left-out">
      {lines.map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  );
}

function RungFit(props: { readonly rung: RungAnalysis; readonly analysis: BenchAnalysis }) {
  const { rung, analysis } = props;
  if (!rung.fitted.ok)
    return <p className="bench-fault">{say(`benchRoom.fitFault.${rung.fitted.error.kind}`)}</p>;
  return <Fitted rung={rung} fitted={rung.fitted.value} analysis={analysis} />;
}

function Fitted(props: {
  readonly rung: RungAnalysis;
  readonly fitted: FittedHead;
  readonly analysis: BenchAnalysis;
}) {
  const { rung, fitted, analysis } = props;
  const units = useAppState((state) => state.settings.units);
  const air = useBench((state) => state.fit.air);
  const { calibration } = analysis;
  const shown = useMemo(
    () => shownReadings(rung, fitted, { calibration, air }),
    [rung, fitted, calibration, air],
  );
  return (
    <div className="bench-stack">
      {air === 'fitted' && !rung.head.hasAir && <p>{say('benchRoom.fit.noAir')}</p>}
      <Estimates rung={rung} fitted={fitted} />
      <ul className="bench-words" data-testid="bench-goodness">
        {fitSentences(fitted.fit, rung, units).map((line) => (
          <li key={line}>
            <MathText text={line} />
          </li>
        ))}
      </ul>
      <FitPlots rung={rung} fitted={fitted} shown={shown} />
      <Flagged shown={shown} />
      <Returning rung={rung} analysis={analysis} />
      <SplitTable rung={rung} fitted={fitted} />
      <LadderBars steps={analysis.ladder} />
      <HelpRow ids={['hysteresis', 'friction', 'residual', 'band95', 'zeroOfGauge', 'loopWork']} />
    </div>
  );
}
