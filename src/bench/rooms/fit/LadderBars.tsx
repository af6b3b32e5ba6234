import { useState } from 'react';
import { show, significant } from '../../../state/quantities';
import { displaySecondMoment } from '../../../state/shownUnits';
import { tickText } from '../../../ui/drawn/axes';
import type { PlotData } from '../../../ui/drawn/plotLayout';
import { place, roundTicks } from '../../../ui/drawn/plotScale';
import { MathText } from '../../../ui/MathText';
import { PlotNumbers } from '../../../ui/plots/PlotNumbers';
import { PlotTools } from '../../../ui/plots/PlotTools';
import { useAppState, useSession } from '../../../ui/session';
import type { LadderStep } from '../../ladder';
import { rungName } from '../../rungs';
import { say } from '../../say';
import { useWidth } from '../plots/useWidth';
import { withHalf } from './fitWords';

const ROW = 34;
const NAMES = 190;
const FOOT = 30;

/** What each step of the ladder adds to J_yy - J_zz: measured with its 95 % interval, and modelled. */
export function LadderBars({ steps }: { readonly steps: readonly LadderStep[] }) {
  const units = useAppState((state) => state.settings.units);
  const [host, width] = useWidth<HTMLDivElement>();
  const [asTable, setAsTable] = useState(false);
  const { store } = useSession();
  if (steps.length === 0) return null;
  const { unit } = displaySecondMoment(0, units);
  const value = (one: number) => displaySecondMoment(one, units).value;
  const rows = steps.map((step) => ({
    step,
    name: rungName(step.to),
    measured: value(step.measured.spread),
    model: value(step.model.spread),
    half: value(step.half95.spread) || 0,
  }));
  const ends = rows.flatMap(({ measured, model, half }) => [
    measured - half,
    measured + half,
    model,
  ]);
  const [low, high] = [Math.min(0, ...ends), Math.max(0, ...ends)];
  const x = (one: number) => place(one, low, high, NAMES, Math.max(NAMES + 40, width - 16));
  const height = ROW * rows.length + FOOT;
  const data = ladderData(rows, unit);
  const words = rows.map(({ step, name, measured, model, half }) =>
    say(step.agreement.agrees ? 'benchRoom.ladder.agrees' : 'benchRoom.ladder.differs', {
      name,
      measured: withHalf({ value: measured, unit }, half),
      model: show({ value: model, unit }),
    }),
  );
  return (
    <div className="bench-ladder" ref={host} data-testid="bench-ladder">
      <h3 className="ui-heading">
        <MathText text={say('benchRoom.ladder')} />
      </h3>
      <div className="bench-series-frame">
        {width > 0 && (
          <svg className="bench-plot-svg" viewBox={`0 0 ${width} ${height}`} aria-hidden="true">
            {rows.map(({ step, name, measured, model, half }, k) => {
              const y = ROW * k + 6;
              return (
                <g key={step.to}>
                  <text className="bench-bar-name" x={0} y={y + 11}>
                    {step.from === null ? name : `+ ${name}`}
                  </text>
                  <text className="bench-tick" x={0} y={y + 25}>
                    {`${significant(measured)} (${significant(model)}) ${unit}`}
                  </text>
                  <rect
                    className={measured >= 0 ? 'bench-bar-centres' : 'bench-bar-flees'}
                    x={Math.min(x(0), x(measured))}
                    y={y + 2}
                    width={Math.abs(x(measured) - x(0))}
                    height={10}
                  />
                  <rect
                    className="bench-bar-model"
                    x={Math.min(x(0), x(model))}
                    y={y + 15}
                    width={Math.abs(x(model) - x(0))}
                    height={7}
                  />
                  <path
                    className="bench-whisker"
                    d={`M${x(measured - half)} ${y + 7}H${x(measured + half)}M${x(measured - half)} ${y + 3}v8M${x(measured + half)} ${y + 3}v8`}
                  />
                </g>
              );
            })}
            <path className="bench-plot-zero" d={`M${x(0)} 0V${height - FOOT}`} />
            {roundTicks(low, high, Math.max(2, Math.floor((width - NAMES) / 90))).map((tick) => (
              <text
                key={tick}
                className="bench-tick"
                x={x(tick)}
                y={height - FOOT + 14}
                textAnchor="middle"
              >
                {tickText(tick)}
              </text>
            ))}
          </svg>
        )}
        {asTable && (
          <PlotNumbers data={data} name={say('benchRoom.fit.rung')} testId="bench-ladder-numbers" />
        )}
      </div>
      <p className="lower-quiet">{say('benchRoom.ladderKey', { unit })}</p>
      <PlotTools
        testId="bench-ladder"
        plot={() => ({
          data,
          design: store.getState().design,
          lines: [`${say('benchRoom.ladder')}.`],
          summary: words.join(' '),
          name: 'bench-ladder',
        })}
        asTable={asTable}
        onTable={setAsTable}
      />
      <ul className="bench-words">
        {words.map((line, k) => (
          <li key={rows[k].step.to}>{line}</li>
        ))}
      </ul>
    </div>
  );
}

interface LadderRow {
  readonly step: LadderStep;
  readonly name: string;
  readonly measured: number;
  readonly model: number;
  readonly half: number;
}

/** The ladder as it leaves the page and as a table: a place for each step. */
function ladderData(rows: readonly LadderRow[], unit: string): PlotData {
  const x = rows.map((_, k) => k + 1);
  return {
    x: [0.5, rows.length + 0.5],
    xNames: rows.map(({ name }) => name),
    lines: [],
    points: [
      {
        name: say('benchRoom.plot.measured'),
        shape: 'round',
        state: 'full',
        x,
        y: rows.map(({ measured }) => measured),
        half: rows.map(({ half }) => half),
      },
      {
        name: say('benchRoom.plot.model'),
        shape: 'down',
        state: 'full',
        x,
        y: rows.map(({ model }) => model),
      },
    ],
    xTitle: say('benchRoom.fit.rung'),
    yTitle: `J_yy \u2212 J_zz, ${unit}`,
  };
}
